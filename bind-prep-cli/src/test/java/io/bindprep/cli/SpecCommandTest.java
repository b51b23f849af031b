package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpecCommandTest {
    private static final Path HANDBOOK = Cli.ROOT.resolve("fixtures/members-handbook-a4.pdf");

    @TempDir
    private Path temp;

    @Test
    void writesASheetThatIsAPdf() throws Exception {
        Path sheet = temp.resolve("sheet.pdf");
        Cli run = Cli.run("spec", HANDBOOK.toString(), "--stock", "bond-20", "-o", sheet.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(new String(Files.readAllBytes(sheet), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void jsonHasTheRun() throws Exception {
        Path sheet = temp.resolve("sheet.json");
        Cli run = Cli.run(
                "spec",
                HANDBOOK.toString(),
                "--stock",
                "bond-20",
                "--copies",
                "40",
                "--format",
                "json",
                "-o",
                sheet.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(Files.readString(sheet)).contains("\"outcome\"", "\"materials\"", "\"assembly\"");
    }

    @Test
    void theEndingSaysTheFormat() throws Exception {
        Path page = temp.resolve("sheet.html");
        assertThat(Cli.run("spec", HANDBOOK.toString(), "-o", page.toString()).exit())
                .isZero();
        assertThat(page).content().startsWith("<!doctype html>");
        Path json = temp.resolve("sheet.JSON");
        assertThat(Cli.run("spec", HANDBOOK.toString(), "-o", json.toString()).exit())
                .isZero();
        assertThat(json).content().startsWith("{");
    }

    @Test
    void anEndingThatContradictsIsRefused() {
        Path page = temp.resolve("sheet.html");
        Cli run = Cli.run("spec", HANDBOOK.toString(), "--format", "json", "-o", page.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("sheet.html ends in .html", "json");
        for (String verb : new String[] {"proof", "shift"}) {
            Cli other = Cli.run(verb, HANDBOOK.toString(), "-o", page.toString());
            assertThat(other.exit()).as(verb).isEqualTo(2);
            assertThat(other.err()).contains("end its name in .pdf");
        }
        assertThat(Cli.run("testsheet", "-o", page.toString()).exit()).isEqualTo(2);
        assertThat(temp).isEmptyDirectory();
    }

    @Test
    void aSheetOfABadDocumentIsWrittenAndFails() {
        Path sheet = temp.resolve("sheet.pdf");
        Cli run = Cli.run(
                "spec",
                Cli.ROOT.resolve("fixtures/cookbook-letter.pdf").toString(),
                "--paper",
                "letter",
                "-o",
                sheet.toString());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(sheet).exists();
    }

    @Test
    void theInputIsNeverOverwritten() throws Exception {
        Path copy = Files.copy(HANDBOOK, temp.resolve("book.pdf"));
        Cli run = Cli.run("spec", copy.toString(), "-o", copy.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("book.pdf");
        assertThat(copy).hasSameBinaryContentAs(HANDBOOK);
    }

    @Test
    void ofAFileThatCannotBeReadThereIsNoSheet() {
        Path sheet = temp.resolve("sheet.pdf");
        Cli run = Cli.run("spec", Cli.ROOT.resolve("fixtures/word-file.pdf").toString(), "-o", sheet.toString());
        assertThat(run.exit()).isEqualTo(3);
        assertThat(sheet).doesNotExist();
        assertThat(temp).isEmptyDirectory();
    }
}
