package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.report.words.Sentences;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.SheetHtml;
import io.bindprep.sheet.SheetPaper;
import io.bindprep.sheet.SheetPdf;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences of sheets, pages and letters have at most 25 words, as those of the screen: the rule of this house. */
class WrittenSentencesTest {
    private static final int MOST_WORDS = 25;
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    /** A source in brackets is read apart; it may have brackets of its own. */
    private static final Pattern BRACKETS = Pattern.compile("\\([^()]*\\)");

    private static final Pattern BLOCKS = Pattern.compile(
            "(?s)<style.*?</style>|<svg.*?</svg>|</?(?:p|li|dt|dd|h[1-6]|td|th|div|title|b|summary|figcaption|ul|ol|dl|tr|a|label|header|footer|section|nav|br|span|code|bdi|caption|button|strong|em|small|body|head|html)\\b[^>]*>");

    private static List<String> sentences(String line) {
        String apart = line;
        for (int depth = 0; depth < 3; depth++) {
            apart = BRACKETS.matcher(apart).replaceAll("");
        }
        return Arrays.asList(apart.split("(?<=[.?!])\\s+(?=[\\p{Lu}\\d\\[\"!])"));
    }

    private static List<String> tooLong(Stream<String> lines) {
        return lines.flatMap(l -> sentences(l).stream())
                .filter(s -> s.strip().split("\\s+").length > MOST_WORDS)
                .distinct()
                .toList();
    }

    private static Stream<String> blocks(String html) {
        return Arrays.stream(BLOCKS.matcher(html.replaceAll("(?s)<!--.*?-->", ""))
                        .replaceAll("\n")
                        .split("\n"))
                .map(b -> b.replaceAll("<[^>]*>", " ")
                        .replace("&#39;", "'")
                        .replace("&quot;", "\"")
                        .strip())
                .filter(b -> !b.isEmpty());
    }

    /** Text of a sheet by paragraphs: a line that ends its sentence ends the paragraph, as does one that ends early. */
    private static Stream<String> paragraphs(JobSheet sheet) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPdf.write(sheet, SheetPaper.A4, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            String text =
                    new PDFTextStripper().getText(document).replaceAll("(?m)^page \\d+ of \\d+.*$|^.*sha256 .*$", "\n");
            assertThat(text).contains("WHY");
            String why = text.substring(text.indexOf("WHY") + 4).replaceAll("\\R(?!\\p{Lu})", " ");
            return why.lines();
        }
    }

    @Test
    void theRuleFindsALongSentence() {
        assertThat(tooLong(Stream.of("Short. " + "Word ".repeat(26)))).hasSize(1);
        assertThat(tooLong(Stream.of("Short. " + "Word ".repeat(25) + "(" + "source ".repeat(9) + ")")))
                .isEmpty();
        assertThat(tooLong(blocks("<p>" + "Word ".repeat(20) + "</p><p>" + "Word ".repeat(20) + "</p>")))
                .isEmpty();
        assertThat(tooLong(blocks("<p>" + "Word ".repeat(20) + "<i>" + "Word ".repeat(20) + "</i></p>")))
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "calendar-a4-landscape",
                "cookbook-letter",
                "members-handbook-a4",
                "mixed-sizes",
                "owner-only",
                "planner-a5"
            })
    void everythingWrittenOfTheFixtures(String name) throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> settings : List.of(
                Map.<String, String>of(),
                Map.of("stock", "offset-60", "copies", "250", "covers", "front=film-75, back=coverboard-30"),
                Map.of("binding", "coil", "units", "both", "press-sheet", "sra3", "stock", "120 gsm 150 um"),
                Map.of("binding", "comb", "stock", "coverboard-48", "copies", "4"),
                Map.of("binding", "rings", "punching-tolerance", "3 mm", "binding-margin", "4 mm"),
                Map.of("stock", "25 sheets = 2.6 mm", "binding-edge", "top", "hanger", "90 mm"),
                Map.of("stock", "coverboard-48", "pitch", "3:1", "fold-outs", "1-2 in 3 panels"),
                Map.of(
                        "binding-edge",
                        "right",
                        "tabs",
                        "before 1 on tag-150",
                        "clearance",
                        "usual",
                        "depth",
                        "deep"))) {
            Job job = JobReader.toJob(JobSettings.of(settings));
            CheckRequest request = CheckRequest.of(FIXTURES.resolve(name + ".pdf"), name + ".pdf", job);
            Report report = BindPrep.check(request);
            check(all, settings.toString(), report);
            for (ReportFormat format : List.of(ReportFormat.HTML, ReportFormat.CLIENT, ReportFormat.CLIENT_MD)) {
                all.assertThat(tooLong(blocks(format.write(request, report))))
                        .as(settings + " " + format)
                        .isEmpty();
            }
        }
        all.assertAll();
    }

    @Test
    void plansWithoutADocument() throws Exception {
        SoftAssertions all = new SoftAssertions();
        Job job = JobReader.toJob(JobSettings.of(Map.of("trim", "a4", "copies", "250")));
        check(all, "one", BindPrep.plan(new PlanRequest("p", job, Pile.ofPages(140))));
        check(all, "volumes", BindPrep.plan(new PlanRequest("p", job, Pile.ofPages(1400))));
        all.assertAll();
    }

    private static void check(SoftAssertions all, String as, Report report) throws Exception {
        List<String> reasons = new ArrayList<>();
        report.plan().because().forEach(r -> reasons.add(Sentences.of(r, report.measures())));
        report.stack().because().forEach(r -> reasons.add(Sentences.of(r, report.measures())));
        all.assertThat(tooLong(reasons.stream())).as(as + " reasons").isEmpty();
        all.assertThat(tooLong(TextReport.write(report, new TextStyle(false, 10_000).withNotes())
                        .lines()))
                .as(as + " numbers")
                .isEmpty();
        JobSheet sheet = JobSheet.of(report);
        all.assertThat(tooLong(paragraphs(sheet))).as(as + " sheet").isEmpty();
        all.assertThat(tooLong(blocks(SheetHtml.write(sheet))))
                .as(as + " HTML sheet")
                .isEmpty();
    }
}
