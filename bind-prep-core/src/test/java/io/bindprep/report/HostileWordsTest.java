package io.bindprep.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.Acceptance;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageBasics;
import io.bindprep.marks.Verdict;
import io.bindprep.report.build.JunitReport;
import io.bindprep.report.build.SarifReport;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.report.xjdf.XjdfTicket;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** No report hands on a mark from outside that rewrites a screen or turns its writing round. */
class HostileWordsTest {
    // Unicode 15, 23.1: C0 and C1 codes; Unicode Annex 9: marks that override or embed a direction
    private static final String MARKS = "\u0007\u001B[31m\u007F\u0085\u009B31m\u202A\u202B\u202D\u202E\u2066\u2067";

    private static Report hostile() throws Exception {
        return Scenario.of(4)
                .file("a" + MARKS + "b.pdf")
                .hit(1, MarkKind.TEXT, Verdict.HIT, 3, 4, "c" + MARKS + "d")
                .unchecked(2, "e" + MARKS + "f")
                .basics(3, new PageBasics(List.of("g" + MARKS + "h"), null, null))
                .accepting(new Acceptance("text-tight", "1", "i" + MARKS + "j", "k" + MARKS + "l", "m" + MARKS + "n"))
                .report();
    }

    private static List<String> marks(String text) {
        return text.codePoints()
                .filter(c -> Character.getType(c) == Character.CONTROL && c != '\n' && c != '\t'
                        || c >= 0x202A && c <= 0x202E
                        || c >= 0x2066 && c <= 0x2069)
                .mapToObj(Integer::toHexString)
                .distinct()
                .toList();
    }

    @Test
    void everyFormat() throws Exception {
        Report report = hostile();
        assertThat(marks(MARKS)).hasSize(11);
        Map<String, String> written = Map.of(
                "text", TextReport.write(report, new TextStyle(false, 80, true)),
                "json", JsonReport.write(report, true),
                "html", HtmlReport.write(report, List.of()),
                "sarif", SarifReport.write(report),
                "junit", JunitReport.write(report),
                "xjdf", XjdfTicket.write(report));
        assertThat(JsonMapper.shared()
                        .readTree(written.get("json"))
                        .at("/input/file")
                        .stringValue())
                .as("JSON stays exact")
                .isEqualTo("a" + MARKS + "b.pdf");
        written.forEach((format, text) -> assertThat(marks(text)).as(format).isEmpty());
    }
}
