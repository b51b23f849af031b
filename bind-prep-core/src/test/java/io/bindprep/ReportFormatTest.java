package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReportFormatTest {
    /** A document that can be drawn; the report is not its own, but of as many pages. */
    private static final Path FILE = Path.of(System.getProperty("bindprep.root"), "fixtures", "cookbook-letter.pdf");

    private static CheckRequest request() throws Exception {
        return CheckRequest.of(FILE, "thesis.pdf", JobReader.toJob(JobSettings.empty()));
    }

    private static Report report() throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(FILE));
        return Scenario.of(100)
                .sha256(HexFormat.of().formatHex(digest))
                .hit(51, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "I i İ ı")
                .hit(70, MarkKind.IMAGE, Verdict.TIGHT, null, 9, "")
                .unchecked(7, "cut short")
                .junk(1234)
                .report();
    }

    @ParameterizedTest
    @EnumSource
    void theSameBytesInEveryLocaleAndTimeZoneOnEverySystem(ReportFormat format) throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        String line = System.getProperty("line.separator");
        Report report = report();
        String first = format.write(request(), report);
        assertThat(first).endsWith("\n").doesNotContain("\r");
        try {
            System.setProperty("line.separator", "\r\n");
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
                assertThat(format.write(request(), report)).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
            System.setProperty("line.separator", line);
        }
    }

    @ParameterizedTest
    @EnumSource
    void anUnreadableFileIsSaidToBeOne(ReportFormat format) {
        String said = format.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is no PDF at all.", "Ask for a PDF."));
        boolean client = format == ReportFormat.CLIENT || format == ReportFormat.CLIENT_MD;
        // a designer is asked, not told what to ask for
        assertThat(said)
                .contains("letter.pdf")
                .contains(client ? "Please export it again as a PDF" : "It is no PDF at all.")
                .contains(client ? "was not checked" : "Ask for a PDF.");
    }

    @ParameterizedTest
    @EnumSource
    void theReadmeHasItWithItsFile(ReportFormat format) throws Exception {
        assertThat(Files.readString(Path.of(System.getProperty("bindprep.root"), "README.md")))
                .contains("| `" + format.id() + "` | `NAME" + format.ending() + "` |");
    }

    @Test
    void byName() {
        assertThat(ReportFormat.ids()).doesNotHaveDuplicates().contains("junit");
        assertThat(ReportFormat.of("junit")).contains(ReportFormat.JUNIT);
        assertThat(ReportFormat.of("xml")).isEmpty();
    }
}
