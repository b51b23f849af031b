package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.table.NamedText;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Findings of a plan alone: nothing on a good job, and each slip that spoils a book. */
class PlanFindingsTest {
    private static final String[][] STOCKS = {
        {"bond-20", ""},
        {"80 gsm bulk 1.25", ""},
        {"offset-60", "covers: {front: c1s-10pt, back: c1s-10pt}\n"},
        {"25 sheets = 2.4 mm", "covers: {front: c1s-10pt, back: coverboard-30}\n"}
    };
    private static final String COVERED =
            "copies: 250\nstock: bond-20\ncovers: {front: clear-7mil, back: coverboard-30}";
    private static final double[][] SIZES = {{210, 297}, {215.9, 279.4}, {148, 210}};
    private static final int[] LEAVES = {5, 20, 35, 50, 70, 100};

    /** Plain books of trade stocks and sizes: 216 jobs, of which none is told an error or a warning. */
    @Test
    void goodJobsAreQuiet() throws Exception {
        Map<String, TreeSet<String>> told = new TreeMap<>();
        int jobs = 0;
        for (String binding : new String[] {"wire", "comb", "coil"}) {
            for (String[] stock : STOCKS) {
                for (double[] size : SIZES) {
                    for (int leaves : LEAVES) {
                        String job = "binding: " + binding + "\nstock: \"" + stock[0] + "\"\n" + stock[1];
                        jobs++;
                        for (Finding f : PlannedReport.of(job, 2 * leaves, size[0], size[1])
                                .findings()) {
                            if (f.severity() != Severity.NOTE) {
                                told.computeIfAbsent(f.rule(), k -> new TreeSet<>())
                                        .add(binding + " " + stock[0] + " " + size[0] + " " + leaves);
                            }
                        }
                    }
                }
            }
        }
        assertThat(jobs).isEqualTo(216);
        assertThat(told).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // holes of 3.97 mm (XJDF 2.2 F.10) leave 0.12, 1.52 and 2.02 mm
        "2.1 mm,ERROR,paper-outside-short",
        "3.5 mm,WARNING,paper-outside-short",
        "4 mm,WARNING,",
        "4 mm,ERROR,",
        // 23 mm do not lie inside 3/16 in
        "25 mm,ERROR,paper-outside-long",
        // sqrt(4.7625^2 - 0.94^2) = 4.67: 4.6 mm turn, 4.7 mm do not lie inside
        "6.6 mm,ERROR,",
        "6.7 mm,ERROR,paper-outside-long"
    })
    void paperOutsideTheHoles(String depth, Severity severity, String finding) throws Exception {
        Report report = PlannedReport.of("stock: bond-20\ndepth: " + depth, 20, 215.9, 279.4);
        if (finding == null) {
            assertThat(PlannedReport.findings(report, severity))
                    .doesNotContain("paper-outside-short", "paper-outside-long", "pages-turn-stiffly");
        } else {
            assertThat(PlannedReport.findings(report, severity)).containsOnlyOnce(finding);
        }
    }

    @Test
    void aHangerBelongsAtTheTop() throws Exception {
        String job = "stock: bond-20\nhanger: 100 mm\nbinding-edge: ";
        assertThat(PlannedReport.findings(PlannedReport.of(job + "left", 20, 210, 297), Severity.WARNING))
                .contains("hanger-at-side");
        assertThat(PlannedReport.findings(PlannedReport.of(job + "top", 20, 210, 297), Severity.WARNING))
                .doesNotContain("hanger-at-side");
    }

    /** A printed tab of one page takes a leaf: what was a back is a front from there on. */
    @Test
    void aPrintedTabThatMovesLaterPagesSaysSo() throws Exception {
        Report report = PlannedReport.of("stock: bond-20\ntabs: 5 on tag-150", 20, 210, 297);
        assertThat(report.findings())
                .filteredOn(f -> f.rule().equals("blank-back-added"))
                .singleElement()
                .satisfies(f -> assertThat(f.pages()).containsExactly(5));
    }

    /** 200 sheets of 20 lb bond (75.2 g/m2) in 1 mm would be 0.07 cm3/g: a slip. */
    @Test
    void aPackOfAnImpossibleBulkIsAskedBack() {
        assertThatThrownBy(() -> PlannedReport.of("stock: \"bond-20 200 sheets = 1 mm\"", 20, 210, 297))
                .hasMessageContaining("bulk");
    }

    /**
     * 250 copies of 40 leaves of 0.0037 in (JCP O-63), fronts of 7 mil film, backs of 0.030 in board (JCP Q20), lifts of
     * 1.9 mm (common practice, no source): 4 lifts a copy would be 1000 strokes. By hand: 2 lifts of leaves a copy, 10 fronts
     * or 2 backs in a lift, so 250 x 2 + 25 + 125 = 650.
     */
    @Test
    void coversOfSeveralCopiesArePunchedTogether() throws Exception {
        Report report = PlannedReport.of(COVERED, 80, 210, 297);
        assertThat(report.run().lifts()).hasSize(4);
        assertThat(report.run().strokes()).isEqualTo(650);
    }

    /** The same on a punch of the shop's own, which takes 1.9 mm of paper but 5 sheets of film: 250 x 2 + 50 + 125 = 675. */
    @Test
    void coversArePooledOnAShopsPunchToo() throws Exception {
        String punch = "pattern: W3_1i-square-0t\npins: 40\nlift: {thickness: 1.9 mm, film: 5 sheets}\n";
        Job job = JobReader.toJob(
                JobSettings.read(COVERED + "\npunch: own.yaml", "job.yaml"),
                new JobFiles(List.of(), new NamedText("own.yaml", punch)));
        Report report = PlannedReport.of(job, 80, 210, 297);
        assertThat(report.plan().punch()).isEqualTo("own");
        assertThat(report.run().strokes()).isEqualTo(675);
    }

    /**
     * 188 sheets of 20 lb bond go on 3/4 in by its chart, but 188 x 0.0040 in (JCP O-63, thickest) = 0.752 in do not close in
     * it; 187 close, and only the thickest lot turns stiffly, which is a note.
     */
    @Test
    void aRangeIsANoteUntilTheStackMayNotClose() throws Exception {
        Report closes = PlannedReport.of("stock: bond-20", 374, 215.9, 279.4);
        assertThat(PlannedReport.findings(closes, Severity.WARNING)).isEmpty();
        assertThat(PlannedReport.findings(closes, Severity.NOTE)).contains("pages-turn-stiffly");
        // 0.1 mm of reading over 14 sheets is 7.1 um: 187 are at most 18.91 mm, beside which 3.9 mm do not turn in
        // 19.05
        Report measured = PlannedReport.of("stock: \"14 sheets = 1.316 mm\"", 374, 215.9, 279.4);
        assertThat(PlannedReport.findings(measured, Severity.NOTE))
                .doesNotContain("pages-turn-stiffly", "stack-straddles");
        Report open = PlannedReport.of("stock: bond-20", 376, 215.9, 279.4);
        assertThat(PlannedReport.findings(open, Severity.WARNING)).containsExactly("stack-may-not-close");
    }
}
