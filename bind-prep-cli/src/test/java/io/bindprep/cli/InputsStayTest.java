package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No command writes over a file that it reads, by whatever name, and says which it is. */
class InputsStayTest {
    private static final List<String> READINGS = List.of(
            "--edge-first",
            "3.3 to 7.3 mm",
            "--edge-last",
            "3.1 to 7.1 mm",
            "--end-first",
            "7.1 to 11.1 mm",
            "--row",
            "7 to 286.1 mm",
            "--depth",
            "2");

    @TempDir
    private Path folder;

    private Path pdf;
    private Path job;
    private Path punch;
    private Path tables;
    private Path password;

    @BeforeEach
    void aWholeJob() throws IOException {
        pdf = copied("cookbook-letter.pdf", "book.pdf");
        punch = copied("shop-punch.yaml", "punch.yaml");
        tables = copied("shop-stocks.csv", "stocks.csv");
        password = copied("password.txt", "secret.txt");
        job = Files.writeString(
                folder.resolve("job.yaml"), "tables: [stocks.csv]\npunch: punch.yaml\nstock: bond-20\n");
    }

    private Path copied(String fixture, String name) throws IOException {
        return Files.copy(Path.of(Cli.fixture(fixture)), folder.resolve(name));
    }

    private void refused(Path input, String option, List<String> line) throws IOException {
        Map<Path, byte[]> before = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                before.put(file, Files.readAllBytes(file));
            }
        }
        Cli run = Cli.run(line.toArray(String[]::new));
        assertThat(run.exit()).as(line + "\n" + run.out() + run.err()).isEqualTo(2);
        // the ending may refuse it first
        assertThat(run.err()).contains(option, input.getFileName().toString());
        assertThat(run.err())
                .containsPattern("is an input(?s:.*)never overwritten; name another file|end (its name|it) in ");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrderElementsOf(before.keySet());
        }
        for (Map.Entry<Path, byte[]> was : before.entrySet()) {
            assertThat(was.getKey()).hasBinaryContent(was.getValue());
        }
    }

    private static List<String> line(String command, Object... more) {
        List<String> line = new ArrayList<>(List.of(command));
        Arrays.stream(more).map(String::valueOf).forEach(line::add);
        return line;
    }

    @Test
    void ofAnyCommandWithADocument() throws IOException {
        for (String command : List.of("shift", "proof", "spec")) {
            for (Path input : List.of(pdf, job, punch, tables, password)) {
                refused(input, "--output", line(command, pdf, "--job", job, "--password-file", password, "-o", input));
            }
        }
    }

    @Test
    void ofReportsOfACheck() throws IOException {
        for (Path input : List.of(pdf, job, punch, tables, password)) {
            refused(
                    input,
                    "--write",
                    line("check", pdf, "--job", job, "--password-file", password, "--write", "json=" + input));
        }
    }

    @Test
    void ofCommandsWithoutADocumentButForThePunchOfACalibration() throws IOException {
        for (Path input : List.of(job, punch, tables)) {
            refused(input, "--output", line("testsheet", "--job", job, "-o", input));
        }
        List<String> calibrate = line("calibrate", "--job", job, "-o");
        calibrate.add(job.toString());
        calibrate.addAll(READINGS);
        refused(job, "--output", calibrate);
        calibrate.set(4, punch.toString());
        Cli run = Cli.run(calibrate.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(punch).content().isNotEqualTo(Files.readString(Path.of(Cli.fixture("shop-punch.yaml"))));
    }

    @Test
    void throughLinksOfEitherKind() throws IOException {
        // by endings that the reports have, so that nothing but the link itself is refused
        Path soft = Files.createSymbolicLink(folder.resolve("soft.pdf"), Path.of("job.yaml"));
        Path hard = Files.createLink(folder.resolve("hard.pdf"), job);
        for (Path link : List.of(soft, hard)) {
            refused(link, "--output", line("shift", pdf, "--job", job, "-o", link));
            assertThat(Cli.run("shift", pdf.toString(), "--job", job.toString(), "-o", link.toString())
                            .err())
                    .contains("is an input", "never overwritten");
        }
        Path report = Files.createLink(folder.resolve("hard.json"), job);
        refused(report, "--write", line("check", pdf, "--job", job, "--write", "json=" + report));
        assertThat(Cli.run("check", pdf.toString(), "--job", job.toString(), "--write", "json=" + report)
                        .err())
                .contains("is an input", "never overwritten");
    }

    @Test
    void ofTheVolumesOfABook() throws IOException {
        Path second = Files.move(job, folder.resolve("book-2.pdf"));
        Cli run = Cli.run("shift", pdf.toString(), "--job", second.toString(), "--split", "-o", folder + "/book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(second).content().startsWith("tables:");
    }

    /** A watch's report is named after the file, and the job may have that very name. */
    @Test
    void ofAWatch() throws IOException {
        Path reports = Files.createDirectory(folder.resolve("reports"));
        Path named = Files.move(job, reports.resolve("book.pdf.json"));
        Files.writeString(named, "{\"stock\": \"bond-20\"}");
        Cli run = Cli.run(
                "check",
                "--watch",
                folder.toString(),
                "--out",
                reports.toString(),
                "--once",
                "--job",
                named.toString(),
                "--interval",
                "1");
        assertThat(run.err()).contains("book.pdf.json", "never overwritten");
        assertThat(named).hasContent("{\"stock\": \"bond-20\"}");
        assertThat(reports.resolve("book.pdf.txt")).exists();
    }
}
