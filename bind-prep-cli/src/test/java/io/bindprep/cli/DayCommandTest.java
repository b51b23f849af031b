package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DayCommandTest {
    @TempDir
    private Path temp;

    private Path day;

    @BeforeEach
    void files() throws Exception {
        Files.copy(Cli.ROOT.resolve("fixtures/members-handbook-a4.pdf"), temp.resolve("handbook.pdf"));
        Files.writeString(temp.resolve("handbook.yaml"), "stock: bond-20\ncopies: 3\n");
        Files.writeString(temp.resolve("pads.yaml"), "leaves: 50\ntrim: a5\nbinding: coil\ncopies: 4\n");
        day = Files.writeString(temp.resolve("day.yaml"), """
                jobs:
                  - pdf: handbook.pdf
                    job: handbook.yaml
                  - {name: Coil 1, leaves: 50, trim: a5, binding: coil}
                  - {name: Wire, pages: 40, trim: a4, binding: wire}
                  - {name: Coil 2, leaves: 50, trim: a5, binding: coil, copies: 2}
                """);
    }

    @Test
    void aDayFileIsOneListWithEverySheet() throws Exception {
        Path html = temp.resolve("day.html");
        Cli run = Cli.run("day", day.toString(), "-o", html.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        // by hand: wire, coil, wire, coil changes the die three times, wire, wire, coil, coil once
        assertThat(run.out())
                .contains("in this order: ")
                .containsPattern("(?s)in this order: \\d+ \\(die 1,.*given: \\d+ \\(die 3,");
        assertThat(run.out().indexOf("Wire:")).isLessThan(run.out().indexOf("Coil 1:"));
        assertThat(Files.readString(html).split("Job sheet</p>", -1)).hasSize(5);
        Path pdf = temp.resolve("day.pdf");
        assertThat(Cli.run("day", day.toString(), "-o", pdf.toString()).exit()).isZero();
        assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        Path json = temp.resolve("day.json");
        assertThat(Cli.run("day", day.toString(), "-o", json.toString()).exit()).isZero();
        assertThat(Files.readString(json))
                .contains("\"heldBack\" : [ ]", "\"outcome\" : \"planned\"", "\"outcome\" : \"good\"");
    }

    @Test
    void aPdfTakesTheJobFileBesideIt() {
        Cli run = Cli.run(
                "day",
                temp.resolve("handbook.pdf").toString(),
                temp.resolve("pads.yaml").toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("handbook: ", "3 copies", "pads: ", "4 copies");
    }

    @Test
    void aBadDocumentIsHeldBack() {
        Cli run = Cli.run(
                "day",
                Cli.ROOT.resolve("fixtures/cookbook-letter.pdf").toString(),
                temp.resolve("pads.yaml").toString());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).contains("HELD BACK  cookbook-letter: Do not print");
    }

    @Test
    void ratesGiveTimeAndCost() throws Exception {
        Path rates = Files.writeString(temp.resolve("rates.yaml"), "strokes-per-minute: 10 to 20\ncost-per-hour: 60\n");
        Cli run = Cli.run("day", temp.resolve("pads.yaml").toString(), "--rates", rates.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("Total time, at least", "No rate for: ");
        Files.writeString(rates, "cost-an-hour: 60\n");
        Cli wrong = Cli.run("day", temp.resolve("pads.yaml").toString(), "--rates", rates.toString());
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("cost-an-hour", "cost-per-hour");
    }

    @Test
    void wrongJobsAreNamed() throws Exception {
        for (String[] wrong : new String[][] {
            {"jobs: [{leaf: 3}]", "leaf", "leaves"},
            {"jobs: [{trim: a4}]", "neither a PDF nor leaves", "pages"},
            {"jobs: [{trim: a4, leaves: 3, pdf: handbook.pdf}]", "together", "pdf"},
            {"jobs: []", "no list of jobs", ""},
            {"jobs: [{trim: a4, leaves: 3, name: A}, {trim: a4, leaves: 4, name: A}]", "two jobs", "name"},
            {"jobs: [{trim: a4, leaves: 3, stock: nonsense}]", "nonsense", "jobs[1]"},
            {"jobs: [{pdf: missing.pdf}]", "missing", ""},
            {"job: missing.yaml\nleaves: 3", "missing.yaml", "no such file"},
        }) {
            Files.writeString(day, wrong[0]);
            Path output = temp.resolve("out.pdf");
            Cli run = Cli.run("day", day.toString(), "-o", output.toString());
            assertThat(run.exit()).as(wrong[0] + run.out()).isIn(2, 3);
            assertThat(run.err()).as(wrong[0]).contains(wrong[1], wrong[2]);
            assertThat(output).doesNotExist();
        }
    }

    @Test
    void noInputIsOverwritten() throws Exception {
        byte[] before = Files.readAllBytes(temp.resolve("handbook.pdf"));
        Cli run = Cli.run(
                "day", day.toString(), "-o", temp.resolve("handbook.pdf").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(temp.resolve("handbook.pdf")).hasBinaryContent(before);
        assertThat(Cli.run("day", day.toString(), "-o", day.toString()).exit()).isEqualTo(2);
    }

    /** locked.pdf opens with the first line of password.txt (fixtures/README.md). */
    @Test
    void encryptedPdfsTakeAPassword() throws Exception {
        Files.copy(Cli.ROOT.resolve("fixtures/locked.pdf"), temp.resolve("locked.pdf"));
        Files.copy(Cli.ROOT.resolve("fixtures/password.txt"), temp.resolve("password.txt"));
        String locked = temp.resolve("locked.pdf").toString();
        assertThat(Cli.run("day", locked).exit()).isEqualTo(3);
        Path password = temp.resolve("password.txt");
        assertThat(Cli.run("day", locked, "--password-file", password.toString())
                        .exit())
                .isIn(0, 1);
        Files.writeString(day, "jobs: [{pdf: locked.pdf, password-file: password.txt}]");
        Cli run = Cli.run("day", day.toString());
        assertThat(run.exit()).as(run.err()).isIn(0, 1);
        assertThat(run.out()).contains("locked: ");
        assertThat(Cli.run("day", day.toString(), "-o", password.toString()).exit())
                .isEqualTo(2);
        Files.writeString(day, "jobs: [{leaves: 3, trim: a4, password-file: password.txt}]");
        assertThat(Cli.run("day", day.toString()).err()).contains("no PDF is given that it could open");
    }

    @Test
    void aSpoolIsCountedWhereTheShopSaysWhatItHolds() throws Exception {
        Files.writeString(day, "jobs: [{name: A, leaves: 10, trim: a4, copies: 100, overs: none}]");
        Path rates = Files.writeString(temp.resolve("rates.yaml"), "loops-per-spool: {wire 3/16 in: 2000}\n");
        // by hand: 34 loops on A4 (German Wikipedia "Drahtkammbindung"), 3400 for 100 copies, two spools of 2000
        assertThat(Cli.run("day", day.toString(), "--rates", rates.toString()).out())
                .contains("100 pieces, 3400 loops, 2 spools of 2000");
        assertThat(Cli.run("day", day.toString()).out()).contains("100 pieces, 3400 loops\n");
    }
}
