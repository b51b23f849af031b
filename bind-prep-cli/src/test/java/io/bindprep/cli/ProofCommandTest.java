package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.cli.console.ExitCode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProofCommandTest {
    @TempDir
    private Path folder;

    private Cli run(String file, String... more) {
        String[] args = new String[4 + more.length];
        args[0] = "proof";
        args[1] = file;
        args[2] = "-o";
        args[3] = folder.resolve("proof.pdf").toString();
        System.arraycopy(more, 0, args, 4, more.length);
        return Cli.run(args);
    }

    @Test
    void writesAProof() {
        Cli run = run(Cli.fixture("cookbook-letter.pdf"), "--pitch", "3:1", "--flagged");
        assertThat(run.exit()).as(run.err()).isEqualTo(ExitCode.GOOD);
        assertThat(run.out()).startsWith("Proof written: ").contains("pages 14, 27, 40-44");
        assertThat(folder.resolve("proof.pdf")).isNotEmptyFile();
    }

    @Test
    void saysWhyNothingIsWritten() {
        Cli run = run(Cli.fixture("owner-only.pdf"));
        assertThat(run.exit()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.out()).startsWith("Nothing written.").contains("does not allow it to be changed");
        assertThat(folder.resolve("proof.pdf")).doesNotExist();
    }

    @Test
    void takesTheShopsOwnTablesFromAnOptionAndFromTheJobFile() throws Exception {
        String tables = Cli.fixture("shop-stocks.csv");
        Cli option = run(Cli.fixture("members-handbook-a4.pdf"), "--tables", tables, "--stock", "felt-200");
        assertThat(option.exit()).as(option.err()).isEqualTo(ExitCode.GOOD);
        Files.copy(Path.of(tables), folder.resolve("shop.csv"));
        Path job = Files.writeString(folder.resolve("job.yaml"), "tables: shop.csv\nstock: felt-200\n");
        Cli file = run(Cli.fixture("members-handbook-a4.pdf"), "--job", job.toString());
        assertThat(file.exit()).as(file.err()).isEqualTo(ExitCode.GOOD);
    }

    @Test
    void neverWritesOverItsInput() throws Exception {
        Path input = Files.copy(Path.of(Cli.fixture("mixed-sizes.pdf")), folder.resolve("proof.pdf"));
        byte[] before = Files.readAllBytes(input);
        Cli run = run(input.toString());
        assertThat(run.exit()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("--output").contains("proof.pdf");
        assertThat(Files.readAllBytes(input)).isEqualTo(before);
    }

    @Test
    void tellsOfWhatItCannotReadAndOfWrongSettings() {
        assertThat(run(Cli.fixture("word-file.pdf")).exit()).isEqualTo(ExitCode.UNREADABLE);
        Cli wrong = run(Cli.fixture("mixed-sizes.pdf"), "--pitch", "9:1");
        assertThat(wrong.exit()).isEqualTo(ExitCode.USAGE);
        assertThat(wrong.err()).contains("--pitch");
    }
}
