package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.job.PageRange;
import io.bindprep.job.PressSheet;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.SpecialLeaves.FoldOut;
import io.bindprep.job.SpecialLeaves.OtherSize;
import io.bindprep.job.SpecialLeaves.Rotated;
import io.bindprep.job.SpecialLeaves.Tab;
import io.bindprep.job.Supply;
import io.bindprep.job.Trim;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A4 pages bound left at 3:1; what is declared is no mistake, what is not is told. */
class SpecialLeavesRulesTest {
    private static final Length A4_W = Length.ofMm(210);
    private static final Length A4_H = Length.ofMm(297);

    private static SpecialLeaves foldOut(int page, int panels) {
        FoldOut fold = new FoldOut(new PageRange(page, page), panels, Length.ofMm(3), null);
        return new SpecialLeaves(List.of(), List.of(fold), List.of(), List.of());
    }

    private static List<String> rules(Report report) {
        return report.findings().stream().map(Finding::rule).toList();
    }

    private static Finding finding(Report report, String rule) {
        return report.findings().stream()
                .filter(f -> f.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        // half as wide again and more, up to four times, as long at the binding edge
        "420,297,true",
        "314,297,false",
        "316,297,true",
        "630,297,true",
        "850,297,true",
        "860,297,false",
        "420,310,false"
    })
    void aPageLikeAFoldOutIsCalledOne(double width, double height, boolean foldOut) {
        Report report = Scenario.of(4).size(3, width, height).report();
        assertThat(rules(report).contains("fold-out-undeclared")).isEqualTo(foldOut);
        assertThat(rules(report).contains("page-size-mixed")).isEqualTo(!foldOut);
    }

    @Test
    void theSuggestedPanelsAreThoseThatFit() {
        // worked by hand in RunPlannerTest: A3 on its side takes three panels in an A4 book at 3:1
        Finding f = finding(Scenario.of(4).size(3, 420, 297).report(), "fold-out-undeclared");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(3);
        assertThat(f.remedy()).contains("3 in 3 panels");
        Report named = Scenario.of(4).trim("A4", A4_W, A4_H).size(3, 420, 297).report();
        assertThat(finding(named, "fold-out-undeclared").severity()).isEqualTo(Severity.ERROR);
    }

    @Test
    void aDeclaredFoldOutThatFitsIsNoMistake() {
        Report report = Scenario.of(4)
                .trim("A4", A4_W, A4_H)
                .size(3, 400, 297)
                .special(foldOut(3, 2))
                .report();
        assertThat(report.findings()).isEmpty();
        assertThat(report.run().folds()).hasSize(1);
    }

    @Test
    void aDeclaredFoldOutThatDoesNotFitIsAnError() {
        Report report = Scenario.of(4).size(3, 420, 297).special(foldOut(3, 2)).report();
        Finding f = finding(report, "fold-out-too-wide");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.measuredMm()).isCloseTo(420, within(0.001));
        assertThat(f.limitMm()).isCloseTo(402.936, within(0.001));
        assertThat(f.remedy()).contains("3 panels");
        assertThat(rules(report)).doesNotContain("page-size-mixed", "fold-out-undeclared");
    }

    @Test
    void aDeclaredFoldOutThatIsNotWideIsTold() {
        Report report = Scenario.of(4).special(foldOut(3, 2)).report();
        assertThat(rules(report)).containsExactly("fold-out-not-wide");
    }

    @Test
    void turnedPagesAreRightOnlyWhereTheyLieTurned() {
        SpecialLeaves rotated =
                new SpecialLeaves(List.of(), List.of(), List.of(new Rotated(new PageRange(3, 3), true)), List.of());
        assertThat(rules(Scenario.of(4).size(3, 297, 210).special(rotated).report()))
                .doesNotContain("page-rotated", "page-size-mixed");
        assertThat(rules(Scenario.of(4).special(rotated).report())).contains("page-size-mixed");
        assertThat(finding(Scenario.of(4).size(3, 297, 210).report(), "page-rotated")
                        .remedy())
                .contains("rotated");
        // one mistake, one finding: it is not measured against the row of an edge that it is not punched at
        assertThat(rules(Scenario.of(4).size(3, 297, 210).report())).doesNotContain("half-hole");
    }

    @Test
    void aLeafThatEndsInAHoleIsAnErrorDeclaredOrNot() {
        // centres at 8.8 + n x 8.4667 mm: that of pin 33 at 279.73, its hole from 277.75 to 281.72; a Letter leaf ends
        // at 279.4
        Report mixed = Scenario.of(4).size(3, 215.9, 279.4).report();
        Finding f = finding(mixed, "half-hole");
        assertThat(f.pages()).containsExactly(3);
        assertThat(f.message()).contains("279.4 mm", "pin 33", "from 277.7 to 281.7 mm");
        assertThat(rules(mixed)).contains("page-size-mixed");
        Trim letter = new Trim("letter", Length.ofInch(17, 2), Length.ofInch(11, 1));
        SpecialLeaves declared =
                new SpecialLeaves(List.of(), List.of(), List.of(), List.of(new OtherSize(new PageRange(3, 3), letter)));
        Report report = Scenario.of(4).size(3, 215.9, 279.4).special(declared).report();
        assertThat(rules(report)).containsExactly("half-hole");
    }

    @ParameterizedTest
    @CsvSource({
        // the hole of pin 33 reaches from 277.75 to 281.72 mm, with 1 mm of punching tolerance from 276.75 to 282.72
        "276.7,false",
        "276.8,true",
        "282.6,true",
        "282.8,false",
        "294.1,false"
    })
    void thePunchingToleranceCounts(double height, boolean cut) {
        assertThat(rules(Scenario.of(4).size(3, 210, height).report()).contains("half-hole"))
                .isEqualTo(cut);
    }

    @Test
    void aTabMayBeDrawnOrNot() {
        Tab tab = new Tab(
                new PageRange(3, 4),
                true,
                Catalogue.builtIn().stocks().byId("tag-150").orElseThrow(),
                Length.ofMm(10));
        SpecialLeaves tabs = new SpecialLeaves(List.of(tab), List.of(), List.of(), List.of());
        // drawn to the trim, or with its tab
        assertThat(rules(Scenario.of(6).special(tabs).report())).isEmpty();
        assertThat(rules(Scenario.of(6)
                        .size(3, 220, 297)
                        .size(4, 220, 297)
                        .special(tabs)
                        .report()))
                .isEmpty();
        assertThat(rules(Scenario.of(6).size(3, 230, 297).special(tabs).report()))
                .contains("page-size-mixed");
    }

    @Test
    void aPressSheetTooSmallIsAnError() {
        PressSheet a4 = new PressSheet("A4", A4_W, A4_H, Length.ofMm(3), Length.ofMm(10));
        Report report =
                Scenario.of(4).supply(new Supply(Supply.BUILT_IN.overs(), a4)).report();
        assertThat(finding(report, "press-sheet-small").message()).contains("210 x 297 mm", "A4", "3 mm", "10 mm");
        PressSheet sra3 = new PressSheet("SRA3", Length.ofMm(320), Length.ofMm(450), Length.ofMm(3), Length.ofMm(10));
        assertThat(Scenario.of(4)
                        .supply(new Supply(Supply.BUILT_IN.overs(), sra3))
                        .report()
                        .findings())
                .isEmpty();
    }
}
