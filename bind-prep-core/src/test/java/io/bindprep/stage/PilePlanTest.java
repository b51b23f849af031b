package io.bindprep.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.report.build.JunitReport;
import io.bindprep.report.build.SarifReport;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.SheetHtml;
import io.bindprep.unit.Length;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PilePlanTest {
    private static Report plan(Pile pile, Map<String, ?> job) throws SettingException {
        return BindPrep.plan(new PlanRequest("Pile", JobReader.toJob(JobSettings.of(job)), pile));
    }

    /** 120 leaves of 20 lb bond at 0.0037 in (JCP O-63: 93.98 um) make 11.2776 mm, in two sides 240 pages. */
    @Test
    void leavesPagesAndStackAreTheSamePile() throws Exception {
        Map<String, ?> job = Map.of("trim", "a4", "stock", "bond-20");
        Report leaves = plan(Pile.ofLeaves(120), job);
        assertThat(leaves.block().bodyLeaves()).isEqualTo(120);
        assertThat(leaves.stack().nominal().mm()).isBetween(11.277, 11.279);
        assertThat(plan(Pile.ofPages(240), job).stack()).isEqualTo(leaves.stack());
        // 11.28 mm / 93.98 um = 120.03
        Report stack = plan(Pile.ofStack(Length.ofMm("11.28")), job);
        assertThat(stack.block().bodyLeaves()).isEqualTo(120);
        assertThat(stack.stack().nominal().mm()).isBetween(11.2799, 11.2801);
    }

    @Test
    void oneSideIsAPageALeafAndPagesOfCoversComeOnTop() throws Exception {
        assertThat(plan(Pile.ofPages(100), Map.of("trim", "a4", "sides", "one"))
                        .block()
                        .bodyLeaves())
                .isEqualTo(100);
        Report covered = plan(
                Pile.ofLeaves(50),
                Map.of("trim", "a4", "covers", Map.of("front", Map.of("pages", "1-2", "stock", "index-110"))));
        assertThat(covered.block().bodyLeaves()).isEqualTo(50);
        assertThat(covered.block().covers()).isEqualTo(1);
    }

    /** The plan of a document and of its pile are the same wherever no content decides. */
    @Test
    void thePlanIsThatOfTheDocument() throws Exception {
        Path file = Path.of(System.getProperty("bindprep.root")).resolve("fixtures/members-handbook-a4.pdf");
        Map<String, ?> settings = Map.of("trim", "a4", "stock", "bond-20", "copies", 7);
        Report checked =
                BindPrep.check(CheckRequest.of(file, "handbook.pdf", JobReader.toJob(JobSettings.of(settings))));
        Report planned = plan(Pile.ofPages(checked.document().pages().size()), settings);
        assertThat(planned.stack()).isEqualTo(checked.stack());
        assertThat(planned.plan().element()).isEqualTo(checked.plan().element());
        assertThat(planned.plan().row()).isEqualTo(checked.plan().row());
        assertThat(planned.plan().lifts()).isEqualTo(checked.plan().lifts());
        assertThat(planned.run().materials()).isEqualTo(checked.run().materials());
        assertThat(planned.run().strokes()).isEqualTo(checked.run().strokes());
    }

    @Test
    void nothingIsClaimedOfPages() throws Exception {
        Report report = plan(Pile.ofLeaves(60), Map.of("trim", "a4"));
        assertThat(report.documentChecked()).isFalse();
        assertThat(report.outcome()).isEqualTo(Outcome.PLANNED);
        assertThat(report.pages()).isEmpty();
        assertThat(report.run().lifts()).allMatch(l -> l.firstPage() == null && l.lastPage() == null);
        String json = JsonReport.write(report, true);
        assertThat(json)
                .contains(
                        "\"outcome\" : \"planned\"",
                        "\"documentChecked\" : false",
                        "\"pages\" : null",
                        "\"verdicts\" : null");
        String text = TextReport.write(report, TextStyle.PLAIN);
        String html = SheetHtml.write(JobSheet.of(report));
        for (String written : List.of(text, html)) {
            assertThat(written).contains("Plan only").containsIgnoringCase("no PDF was checked");
            assertThat(written).doesNotContain("Good to print").doesNotContain("none hit", "<dt>Pages", "\nPages ");
        }
        assertThat(html).doesNotContain("sha256");
        assertThat(HtmlReport.write(report, List.of()))
                .contains("Plan only: no PDF was checked")
                .doesNotContain("0 pages", "Every page", "SHA-256", "class=\"good\"");
        assertThatThrownBy(() -> SarifReport.write(report)).hasMessageContaining("no PDF was checked");
        assertThatThrownBy(() -> JunitReport.write(report)).hasMessageContaining("no PDF was checked");
    }

    @Test
    void aPileThatNoElementTakesIsNotGood() throws Exception {
        Report report = plan(Pile.ofLeaves(3000), Map.of("trim", "a4"));
        assertThat(report.outcome()).isEqualTo(Outcome.FINDINGS);
        assertThat(report.failed()).isTrue();
        assertThat(TextReport.write(report, TextStyle.PLAIN))
                .startsWith("Plan only: no PDF was checked. Do not bind it. 1 error to resolve.");
    }

    @Test
    void whatIsMissingOrCannotBeIsSaid() {
        wrong("trim", Pile.ofLeaves(10), Map.of());
        wrong("leaves", new Pile(null, null, null), Map.of("trim", "a4"));
        wrong("leaves", Pile.ofLeaves(0), Map.of("trim", "a4"));
        wrong("leaves", Pile.ofLeaves(20_001), Map.of("trim", "a4"));
        wrong("pages", new Pile(10, 20, null), Map.of("trim", "a4"));
        wrong("stack", Pile.ofStack(Length.ZERO), Map.of("trim", "a4"));
        // 100 mm over 2 leaves: no sheet is 50 mm thick
        wrong("stack", new Pile(2, null, Length.ofMm(100)), Map.of("trim", "a4"));
        wrong(
                "stack",
                Pile.ofStack(Length.ofMm(10)),
                Map.of("trim", "a4", "inserts", List.of(Map.of("pages", "3-4", "stock", "index-110"))));
    }

    private static void wrong(String key, Pile pile, Map<String, ?> job) {
        assertThatThrownBy(() -> plan(pile, job))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo(key));
    }
}
