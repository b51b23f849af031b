package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
    @TempDir
    private Path temp;

    @Test
    void plansAPileAndWritesItsSheet() throws Exception {
        for (String name : new String[] {"sheet.pdf", "sheet.html", "sheet.json"}) {
            Path sheet = temp.resolve(name);
            Cli run = Cli.run("plan", "--leaves", "60", "--trim", "a4", "-o", sheet.toString());
            assertThat(run.exit()).as(run.err()).isZero();
            assertThat(run.out()).startsWith("Plan only: no PDF was checked.").doesNotContain("Good to print");
            assertThat(Files.size(sheet)).isPositive();
        }
        assertThat(new String(Files.readAllBytes(temp.resolve("sheet.pdf")), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        assertThat(Files.readString(temp.resolve("sheet.json"))).contains("\"documentChecked\" : false");
        assertThat(Files.readString(temp.resolve("sheet.html"))).contains("Plan only");
    }

    @Test
    void jsonOnStandardOutputIsTheReport() {
        Cli run = Cli.run("plan", "--pages", "120", "--trim", "a5", "--format", "json");
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("{").contains("\"outcome\" : \"planned\"", "\"leaves\" : 60");
    }

    @Test
    void whatIsMissingIsNamedByItsOption() {
        Cli run = Cli.run("plan", "--leaves", "60");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--trim");
        assertThat(Cli.run("plan", "--trim", "a4").err()).contains("--leaves", "pages", "stack");
        assertThat(Cli.run("plan", "--trim", "a4", "--stack", "12").err()).contains("--stack", "no unit");
    }

    @Test
    void aPileTooThickFails() {
        Cli run = Cli.run("plan", "--leaves", "3000", "--trim", "a4");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).contains("Do not bind it. 1 error to resolve.");
    }

    @Test
    void theJobFileIsNeverOverwritten() throws Exception {
        Path job = Files.writeString(temp.resolve("job.json"), "{\"trim\": \"a4\"}");
        Cli run = Cli.run("plan", "--leaves", "60", "--job", job.toString(), "-o", job.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(Files.readString(job)).isEqualTo("{\"trim\": \"a4\"}");
    }

    @Test
    void aTicketWithoutAPdfAndNoReportOfOne() throws Exception {
        Path ticket = temp.resolve("job.xjdf");
        assertThat(Cli.run("plan", "--leaves", "60", "--trim", "a4", "-o", ticket.toString())
                        .exit())
                .isZero();
        assertThat(Files.readString(ticket))
                .contains("<XJDF", "HoleMakingParams")
                .doesNotContain("FileSpec");
        Cli sarif = Cli.run(
                "plan",
                "--leaves",
                "60",
                "--trim",
                "a4",
                "-o",
                temp.resolve("a.sarif").toString());
        assertThat(sarif.exit()).isEqualTo(2);
        assertThat(sarif.err()).contains("is not a format of this file", ".xjdf");
    }

    /** By hand: 60 leaves of 20 lb bond, 20 in a lift of 1.9 mm (common practice, no source), are 3 strokes at 10 a minute. */
    @Test
    void ratesQuoteOneJob() throws Exception {
        Path rates = Files.writeString(temp.resolve("rates.yaml"), "strokes-per-minute: 10\n");
        Cli run = Cli.run("plan", "--leaves", "60", "--trim", "a4", "--rates", rates.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("Time and cost", "Strokes | 3 | 10 | 0.3 min", "Total time, at least");
        assertThat(Cli.run("plan", "--leaves", "60", "--trim", "a4", "--rates", rates.toString(), "--format", "json")
                        .err())
                .contains("holds no quote");
        assertThat(Cli.run(
                                "plan",
                                "--leaves",
                                "60",
                                "--trim",
                                "a4",
                                "--rates",
                                rates.toString(),
                                "-o",
                                rates.toString())
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void errorsSpeakOfNoPdf() {
        Cli run = Cli.run("plan", "--pages", "20", "--trim", "a4", "--inserts", "30-31 on index-110");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("pages 1-20").doesNotContain("PDF");
    }
}
