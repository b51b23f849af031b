package io.bindprep.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.check.Checker;
import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Box;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.problem.SettingException;
import io.bindprep.run.BookPart;
import io.bindprep.run.RunPlanner;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** From a job's text to the report, every stage but the PDF's own a real one. */
class WholeLineTest {
    private static Report letter(int pages, String yaml) throws SettingException {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Box box = new Box(0, 0, 612, 792);
        List<PageFacts> facts = IntStream.rangeClosed(1, pages)
                .mapToObj(p -> new PageFacts(p, box, box, box, box, true, 0, 1))
                .toList();
        List<PageVerdict> clear = IntStream.rangeClosed(1, pages)
                .mapToObj(p -> new PageVerdict(p, Verdict.CLEAR, null, List.of(), false, null))
                .toList();
        Block block = BlockBuilder.build(job, pages);
        Stack stack = StackEstimator.estimate(
                block.leaves().stream().map(Leaf::stock).toList(), Length.ofInch(17, 2), Length.ofInch(11, 1));
        Plan plan = Planner.plan(job, block, stack, Length.ofInch(11, 1));
        return Checker.report(
                new DocumentFacts("manual.pdf", "", "00ff", facts, false, 0, false, 0, List.of(), true),
                job,
                block,
                stack,
                plan,
                List.of(),
                Split.NONE,
                RunPlanner.plan(
                        job,
                        new LeafSizes(job, facts, Length.ofInch(17, 2), Length.ofInch(11, 1)),
                        List.of(new BookPart(block, stack, plan))),
                clear);
    }

    // derived from JCP O-63: 50 sheets of 20 lb (0.0037 +-0.0003 in) are 4.699 mm, 4.318 to 5.080 mm
    @Test
    void fiftySheetsOfCopier() throws SettingException {
        Report report = letter(100, "trim: letter");
        String text = TextReport.write(report, TextStyle.PLAIN.withNotes());
        assertThat(report.findings()).extracting(Finding::rule).allMatch(r -> r.equals("stack-straddles"));
        assertThat(text)
                .contains("50 leaves and no cover per copy, 50 of them printed.")
                .contains("0.19 in, range 0.17 to 0.20 in")
                .contains("the job names no stock")
                .contains("32 holes");
    }

    // derived from JCP A55 and L70: 100 sheets of 60 lb offset and two covers of 10 pt C1S are 0.490 in, 0.4384 to
    // 0.5416 in, which lies across two elements
    @Test
    void aStackAcrossTwoElements() throws SettingException {
        Report report = letter(200, "clearance: none\nstock: offset-60\ncovers: front=c1s-10pt, back=c1s-10pt\n");
        Finding f = report.findings().stream()
                .filter(x -> x.rule().equals("stack-straddles"))
                .findFirst()
                .orElseThrow();
        assertThat(f.message()).contains("0.49 in, range 0.44 to 0.54 in");
        assertThat(report.plan().chosen().straddles()).hasSize(2);
    }

    // common practice, no source: no twin loop over 1-1/4 in
    @Test
    void aStackThatNoWireTakes() throws SettingException {
        Report report = letter(1000, "stock: offset-60");
        assertThat(report.failed()).isTrue();
        assertThat(report.findings().get(0).rule()).isEqualTo("stack-too-thick");
        assertThat(report.findings().get(0).message())
                .contains("the largest, 1-1/4 in, takes 275 sheets of 20 lb bond");
        assertThat(letter(200, "stock: offset-80\npitch: 3:1").findings().get(0).rule())
                .isEqualTo("pitch-too-thick");
    }

    @Test
    void aBlankBackBeforeAnInsert() throws SettingException {
        Report report = letter(12, "inserts: 4-5 on tag-150");
        assertThat(report.findings().stream()
                        .filter(f -> f.rule().equals("blank-back-added"))
                        .findFirst()
                        .orElseThrow()
                        .pages())
                .containsExactly(3);
    }

    @Test
    void tabsStandOutBeyondCoversCutToTheTrim() throws SettingException {
        String tabs = "tabs: before 5, 41 on tag-150";
        Report bare = letter(84, tabs);
        assertThat(bare.findings()).extracting(Finding::rule).doesNotContain("tabs-beyond-covers");
        Report covered = letter(84, tabs + "\ncovers: front=film-75, back=coverboard-30\n");
        assertThat(covered.findings())
                .anyMatch(f -> f.rule().equals("tabs-beyond-covers")
                        && f.severity() == Severity.NOTE
                        && f.message().contains("Tabs extend 1/2 in beyond"));
    }
}
