package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.job.SpecialLeaves.FoldOut;
import io.bindprep.job.SpecialLeaves.OtherSize;
import io.bindprep.job.SpecialLeaves.Rotated;
import io.bindprep.job.SpecialLeaves.Tab;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpecialReaderTest {
    private static final Stock TAG =
            Catalogue.builtIn().stocks().byId("tag-150").orElseThrow();

    private static SpecialLeaves special(String yaml) throws SettingException {
        return JobReader.toJob(JobSettings.read(yaml, "job.yaml")).special();
    }

    private static PageRange pages(int first, int last) {
        return new PageRange(first, last);
    }

    @Test
    void tabsAsTextAndAsMaps() throws Exception {
        List<Tab> expected = List.of(
                new Tab(pages(5, 5), false, TAG, Length.ofInch(1, 2)),
                new Tab(pages(17, 17), false, TAG, Length.ofInch(1, 2)),
                new Tab(pages(9, 10), true, TAG, Length.ofMm(12)));
        assertThat(special("tabs: before 5, 17 on tag-150; pages 9-10 on tag-150 extending 12 mm")
                        .tabs())
                .isEqualTo(expected);
        assertThat(special("""
                tabs:
                  - {before: [5, 17], stock: tag-150}
                  - {pages: 9-10, stock: tag-150, extension: 12 mm}
                """).tabs()).isEqualTo(expected);
        assertThat(special("tabs: before 3-5 on tag-150 extending none").tabs())
                .extracting(t -> t.pages().first(), t -> t.extension().units())
                .containsExactly(tuple(3, 0L), tuple(4, 0L), tuple(5, 0L));
        assertThat(special("tabs: none").tabs()).isEmpty();
    }

    @Test
    void foldOutsAsTextAndAsMaps() throws Exception {
        List<FoldOut> expected = List.of(
                new FoldOut(pages(7, 8), 2, Length.ofMm(3), null), new FoldOut(pages(21, 21), 3, Length.ofMm(5), TAG));
        assertThat(special("fold-outs: 7-8 in 2 panels; 21 in 3 panels on tag-150 allowing 5 mm")
                        .foldOuts())
                .isEqualTo(expected);
        assertThat(special(
                                "fold-outs: [{pages: 7-8, panels: 2}, {pages: 21, panels: 3, stock: tag-150, allowance: 5 mm}]")
                        .foldOuts())
                .isEqualTo(expected);
    }

    @Test
    void turnedPagesAndOtherSizes() throws Exception {
        assertThat(special("rotated: 12, 14-15; 20 head right").rotated())
                .containsExactly(
                        new Rotated(pages(12, 12), true),
                        new Rotated(pages(14, 15), true),
                        new Rotated(pages(20, 20), false));
        assertThat(special("rotated: 12").rotated()).containsExactly(new Rotated(pages(12, 12), true));
        assertThat(special("rotated: [12, 14-15, {pages: 20, head: right}]").rotated())
                .hasSize(3);
        assertThat(special("other-sizes: 9 at letter; 12-13 at 200 x 297 mm").sizes())
                .containsExactly(
                        new OtherSize(pages(9, 9), new Trim("letter", Length.ofInch(17, 2), Length.ofInch(11, 1))),
                        new OtherSize(pages(12, 13), new Trim("200 x 297 mm", Length.ofMm(200), Length.ofMm(297))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tabs: before 5|tabs[1]",
                "tabs: on tag-150|tabs[1]",
                "tabs: before 5 on no such stock|tabs[1]",
                "tabs: [{stock: tag-150}]|tabs[1]",
                "tabs: [{before: 5, pages: 6, stock: tag-150}]|tabs[1]",
                "tabs: [{before: 5, stok: tag-150}]|tabs[1].stok",
                "tabs: before 5 on tag-150 extending 2 m|tabs[1]",
                "fold-outs: 7-8|fold-outs[1]",
                "fold-outs: 7-8 in 1 panel|fold-outs[1]",
                "fold-outs: 7-8 in 9 panels|fold-outs[1]",
                "fold-outs: [{pages: 7-8, panels: two}]|fold-outs[1].panels",
                "rotated: 12 head up|rotated[1]",
                "rotated: twelve|rotated[1]",
                "other-sizes: 9|other-sizes[1]",
                "other-sizes: 9 at nowhere|other-sizes[1]",
                "press-sheet: nowhere|press-sheet",
                "press-sheet: {bleed: 3 mm}|press-sheet",
                "press-sheet: {size: sra3, gripper: 2}|press-sheet.gripper",
                "press-sheet: sra3, bleed 60 mm|press-sheet",
            })
    void whatIsWrongIsNamedByItsPlace(String yaml, String key) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> special(yaml));
        assertThat(e).as(yaml).isNotNull();
        assertThat(e.key()).isEqualTo(key);
        assertThat(e.remedy()).isNotBlank();
        assertThat(e).hasMessageContaining("job.yaml, line 1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "inserts: 3-6 on tag-150|fold-outs: 6-7 in 2 panels|fold-outs",
                "fold-outs: 6-7 in 2 panels|tabs: 7 on tag-150|tabs",
                "covers: {front: pages 1-2 on tag-150}|tabs: 2 on tag-150|covers"
            })
    void noPageLiesOnTwoLeaves(String one, String other, String key) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> special(one + "\n" + other));
        assertThat(e.key()).isEqualTo(key);
    }

    @Test
    void pressSheets() throws Exception {
        Job job = JobReader.toJob(JobSettings.read("press-sheet: sra3, bleed 2 mm, gripper none", "job.yaml"));
        // ISO 217: SRA3 is 320 x 450 mm
        assertThat(job.supply().pressSheet())
                .isEqualTo(new PressSheet("SRA3", Length.ofMm(320), Length.ofMm(450), Length.ofMm(2), Length.ZERO));
        assertThat(JobReader.toJob(JobSettings.read("press-sheet: 13 x 19 in", "job.yaml"))
                        .supply()
                        .pressSheet()
                        .bleed())
                .isEqualTo(Length.ofMm(3));
        assertThat(JobReader.toJob(JobSettings.read("press-sheet: none", "job.yaml"))
                        .supply()
                        .pressSheet())
                .isNull();
    }

    @Test
    void pagesThatMoveAlongTakeTheirLeavesWithThem() throws Exception {
        SpecialLeaves moved = special("tabs: before 5 on tag-150; 7 on tag-150\nfold-outs: 9 in 2 panels\nrotated: 11")
                .renumbered(r -> Optional.of(new PageRange(r.first() + 2, r.last() + 3)));
        assertThat(moved.tabs()).extracting(Tab::pages).containsExactly(pages(7, 7), pages(9, 10));
        assertThat(moved.foldOuts()).extracting(FoldOut::pages).containsExactly(pages(11, 12));
        assertThat(moved.rotated()).extracting(Rotated::pages).containsExactly(pages(13, 14));
    }
}
