package io.bindprep.report.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.check.FindingKinds;
import io.bindprep.check.Scenario;
import io.bindprep.job.FailOn;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.xml.Parsed;
import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.surefire.log.api.NullConsoleLogger;
import org.apache.maven.plugins.surefire.report.ReportTestCase;
import org.apache.maven.plugins.surefire.report.ReportTestSuite;
import org.apache.maven.plugins.surefire.report.TestSuiteXmlParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Read back by Maven Surefire's reader of test reports, which knows nothing of ours. */
class JunitReportTest {
    // elements and attributes that readers of JUnit XML agree on (common practice, no source: no standard has them)
    private static final Map<String, List<String>> SUBSET = Map.of(
            "testsuite", List.of("name", "tests", "failures", "errors", "skipped", "time"),
            "testcase", List.of("classname", "name", "time"),
            "failure", List.of("type", "message"),
            "skipped", List.of("message"));

    private static ReportTestSuite suite(String xml) throws Exception {
        inSubset(Parsed.of(xml).getDocumentElement());
        List<ReportTestSuite> suites = new TestSuiteXmlParser(new NullConsoleLogger())
                .parse(new InputStreamReader(
                        new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8));
        ReportTestSuite only = suites.get(suites.size() - 1);
        Element root = Parsed.of(xml).getDocumentElement();
        assertThat(root.getAttribute("tests"))
                .isEqualTo(Integer.toString(only.getTestCases().size()));
        assertThat(root.getAttribute("failures")).isEqualTo(count(only, ReportTestCase::hasFailure));
        assertThat(root.getAttribute("skipped")).isEqualTo(count(only, ReportTestCase::hasSkipped));
        assertThat(root.getAttribute("errors")).isEqualTo("0").isEqualTo(count(only, ReportTestCase::hasError));
        return only;
    }

    private static String count(ReportTestSuite suite, java.util.function.Predicate<ReportTestCase> has) {
        return Long.toString(suite.getTestCases().stream().filter(has).count());
    }

    private static void inSubset(Element element) {
        assertThat(SUBSET).containsKey(element.getTagName());
        List<String> attributes = new ArrayList<>();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            attributes.add(element.getAttributes().item(i).getNodeName());
        }
        assertThat(attributes).containsExactlyInAnyOrderElementsOf(SUBSET.get(element.getTagName()));
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i).getNodeType() == Node.ELEMENT_NODE) {
                inSubset((Element) children.item(i));
            }
        }
    }

    private static ReportTestCase test(ReportTestSuite suite, String name) {
        return suite.getTestCases().stream()
                .filter(t -> t.getName().equals(name))
                .reduce((a, b) -> {
                    throw new AssertionError(name + " stands twice");
                })
                .orElseThrow();
    }

    private static Scenario scenario() {
        return Scenario.of(6)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter \"one\"")
                .hit(4, MarkKind.TEXT, Verdict.HIT, 12, 5, "two")
                .hit(5, MarkKind.LINE, Verdict.TIGHT, null, 9, "")
                .junk(7);
    }

    @Test
    void eachCheckIsATest() throws Exception {
        ReportTestSuite suite = suite(JunitReport.write(scenario().report()));
        assertThat(suite.getTestCases()).hasSize(1 + FindingKinds.all().size());
        ReportTestCase text = test(suite, "text-hit");
        assertThat(text.hasFailure()).isTrue();
        assertThat(text.getFailureType()).isEqualTo("error");
        assertThat(text.getFailureMessage()).startsWith("2 pages: text in the holes. Worst on page 3");
        assertThat(text.getFailureDetail()).contains("\nDo: Have it moved 5.4 mm away");
        assertThat(test(suite, "line-tight").hasSkipped()).isTrue();
        assertThat(test(suite, "header-junk").isSuccessful()).isTrue();
        assertThat(test(suite, "art-hit").isSuccessful()).isTrue();
        assertThat(test(suite, JunitReport.READABLE).isSuccessful()).isTrue();
    }

    @Test
    void theJobSaysWhatFails() throws Exception {
        ReportTestSuite strict =
                suite(JunitReport.write(scenario().failOn(FailOn.WARNING).report()));
        assertThat(test(strict, "line-tight").hasFailure()).isTrue();
        assertThat(test(strict, "header-junk").isSuccessful()).isTrue();
        ReportTestSuite lax =
                suite(JunitReport.write(scenario().failOn(FailOn.NEVER).report()));
        assertThat(count(lax, ReportTestCase::hasFailure)).isEqualTo("0");
        assertThat(test(lax, "text-hit").hasSkipped()).isTrue();
    }

    @Test
    void whatWasNotLookedAtHasNotPassed() throws Exception {
        ReportTestSuite unchecked = suite(JunitReport.write(
                Scenario.of(3).unchecked(2, "cut short").unchecked(3, "other").report()));
        assertThat(test(unchecked, "page-unchecked").hasFailure()).isTrue();
        assertThat(test(unchecked, "page-unchecked").getFailureDetail()).contains("cut short", "other");
        assertThat(test(unchecked, "text-hit").hasSkipped()).isTrue();
        assertThat(test(unchecked, "page-size").isSuccessful()).isTrue();
        ReportTestSuite holeless =
                suite(JunitReport.write(Scenario.of(2).noHoles().report()));
        assertThat(test(holeless, "edge-unpunchable").hasFailure()).isTrue();
        assertThat(test(holeless, "image-hit").hasSkipped()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "/home/agent-7/work/build/book.pdf, book.pdf",
        "C:\\agent\\work\\book.pdf, book.pdf",
        "./build/book.pdf, build/book.pdf",
        "build\\book.pdf, build/book.pdf"
    })
    void aNameHasNoPathOfTheMachine(String given, String name) throws Exception {
        String xml = JunitReport.write(Scenario.of(1).file(given).report());
        assertThat(Parsed.of(xml).getDocumentElement().getAttribute("name")).isEqualTo(name);
        assertThat(suite(xml).getTestCases().get(0).getFullClassName())
                .isEqualTo("bind-prep." + name.replace('.', '_'));
    }

    @Test
    void hostileWordsAndNamesBreakNothing() throws Exception {
        ReportTestSuite suite = suite(JunitReport.write(Scenario.of(1)
                .file("a\u0000\u001B]0;<x>&\"\u202E.pdf")
                .unchecked(1, "\u0001 ]]> \uFFFF \uD800 <failure>")
                .report()));
        assertThat(suite.getTestCases().get(0).getFullClassName())
                .startsWith("bind-prep.a\uFFFD\uFFFD]0;<x>&\"\uFFFD_pdf");
        assertThat(test(suite, "page-unchecked").getFailureMessage())
                .endsWith("\uFFFD ]]> \uFFFD \uFFFD <failure>. Page 1.");
    }

    @Test
    void anUnreadableFileFailsItsOnlyTest() throws Exception {
        ReportTestSuite suite = suite(JunitReport.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is a word processor's file.", "Ask for a PDF.")));
        assertThat(suite.getTestCases()).singleElement().satisfies(t -> {
            assertThat(t.getName()).isEqualTo(JunitReport.READABLE);
            assertThat(t.getFailureType()).isEqualTo("not-pdf");
            assertThat(t.getFailureDetail()).endsWith("Ask for a PDF.");
        });
    }

    @Test
    void theFirstTestHasTheTimeOfAllUnderANameOfNoMachine() throws Exception {
        ReportTestSuite suite = suite(JunitReport.write(
                Scenario.of(4).file("/srv/in/book.pdf").report(), "in/book.pdf", Duration.ofMillis(61_234)));
        assertThat(suite.getFullClassName()).contains("book");
        assertThat(suite.getTimeElapsed()).isEqualTo(61.234f);
        assertThat(test(suite, JunitReport.READABLE).getTime()).isEqualTo(61.234f);
        assertThat(suite.getTestCases().stream()
                        .mapToDouble(ReportTestCase::getTime)
                        .sum())
                .isCloseTo(61.234, within(0.001));
        assertThat(suite(JunitReport.write(Scenario.of(4).report())).getTimeElapsed())
                .isZero();
    }

    @Test
    void whatCouldNotBeReadIsSaidWithoutTheMachineToo() {
        String said = JunitReport.unreadable(
                "/srv/in/a.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "/srv/in/a.pdf is no PDF.", "Ask for a PDF."),
                "in/a.pdf");
        assertThat(said).contains("in/a.pdf is no PDF.").doesNotContain("/srv");
    }
}
