package io.bindprep.cli.watch;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.bindprep.BindPrep;
import io.bindprep.ReportFormat;
import io.bindprep.cli.Cli;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.batch.FileCheck;
import io.bindprep.cli.output.ReportOutput;
import io.bindprep.cli.output.TextOutput;
import io.bindprep.files.Inputs;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.report.text.TextStyle;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class WatchTest {
    private static final Path GOOD = Path.of(fixture("members-handbook-a4.pdf"));
    private static final Path HIT = Path.of(fixture("cookbook-letter.pdf"));

    @TempDir
    private Path temp;

    private Path in;
    private Path out;
    private final List<String> checked = Collections.synchronizedList(new ArrayList<>());
    private final Engine recording = request -> {
        checked.add(request.name());
        return BindPrep.check(request);
    };

    @BeforeEach
    void folders() throws IOException {
        in = Files.createDirectory(temp.resolve("in"));
        out = temp.resolve("out");
        Files.copy(GOOD, in.resolve("handbook.pdf"));
    }

    private Cli pass(String... more) {
        List<String> args = new ArrayList<>(
                List.of("check", "--watch", in.toString(), "--out", out.toString(), "--once", "--interval", "1"));
        args.addAll(Arrays.asList(more));
        return Cli.run(recording, args.toArray(String[]::new));
    }

    private List<String> files(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void eachFileIsCheckedOnceHoweverOftenTheWatchBegins() throws Exception {
        Files.createDirectories(in.resolve("monday"));
        Files.copy(HIT, in.resolve("monday/cookbook.pdf"));
        Cli first = pass();
        assertThat(first.exit()).as(first.err()).isEqualTo(1);
        assertThat(first.out())
                .startsWith("good            handbook.pdf\nfindings        monday/cookbook.pdf: 2 pages punched, ")
                .hasLineCount(2);
        assertThat(first.err()).startsWith("2 files: 1 with findings, 1 good\n");
        assertThat(files(out))
                .containsExactly(
                        ".bind-prep-ledger",
                        "handbook.pdf.json",
                        "handbook.pdf.txt",
                        "monday/cookbook.pdf.json",
                        "monday/cookbook.pdf.txt");
        assertThat(Files.readString(out.resolve("handbook.pdf.json"))).contains("\"file\" : \"handbook.pdf\"");
        assertThat(files(in)).containsExactly("handbook.pdf", "monday/cookbook.pdf");

        Cli second = pass();
        assertThat(second.exit()).isZero();
        assertThat(second.out()).isEmpty();
        assertThat(checked).containsExactlyInAnyOrder("handbook.pdf", "monday/cookbook.pdf");
    }

    @Test
    void withoutOutTheReportsLieBesideAndAreNoInputs() throws Exception {
        for (int i = 0; i < 2; i++) {
            Cli run = Cli.run(
                    recording,
                    "check",
                    "--watch",
                    in.toString(),
                    "--once",
                    "--interval",
                    "1",
                    "--reports",
                    "html,xjdf");
            assertThat(run.exit()).as(run.err()).isZero();
        }
        assertThat(files(in))
                .containsExactly(".bind-prep-ledger", "handbook.pdf", "handbook.pdf.html", "handbook.pdf.xjdf");
        assertThat(checked).containsExactly("handbook.pdf");
    }

    @Test
    void whatIsInTheFolderOfTheReportsIsNoInput() throws Exception {
        out = Files.createDirectory(in.resolve("reports"));
        Files.copy(HIT, out.resolve("someone-elses.pdf"));
        pass();
        assertThat(checked).containsExactly("handbook.pdf");
    }

    @Test
    void aFileThatIsReplacedIsCheckedAgainOneThatIsPutThereAgainIsNot() throws Exception {
        pass();
        Files.setLastModifiedTime(
                in.resolve("handbook.pdf"), FileTime.from(Instant.now().minusSeconds(60)));
        assertThat(pass().out()).isEmpty();
        Files.copy(HIT, in.resolve("handbook.pdf"), StandardCopyOption.REPLACE_EXISTING);
        assertThat(pass().out()).startsWith("findings        handbook.pdf");
        assertThat(checked).containsExactly("handbook.pdf", "handbook.pdf");
        assertThat(Files.readString(out.resolve("handbook.pdf.txt"))).contains("Do not print");
    }

    @Test
    void anotherJobAsksAllAgain() {
        pass();
        assertThat(pass("--stock", "bond-28").out()).startsWith("good            handbook.pdf");
        assertThat(pass("--stock", "bond-28").out()).isEmpty();
        assertThat(pass("--stock", "bond-28", "--reports", "json").out()).isNotEmpty();
    }

    @Test
    void aBadFileIsToldOnceUntilItChanges() throws Exception {
        Path bad = in.resolve("bad.pdf");
        Files.writeString(bad, "no PDF");
        Cli run = pass();
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).contains("unreadable      bad.pdf: is not a PDF");
        assertThat(Files.readString(out.resolve("bad.pdf.json"))).contains("not-pdf");
        assertThat(pass().out()).isEmpty();
        Files.copy(GOOD, bad, StandardCopyOption.REPLACE_EXISTING);
        assertThat(pass().out()).startsWith("good            bad.pdf");
    }

    @Test
    void aFileThatGrowsIsLeftForTheNextPass() throws Exception {
        Path growing = in.resolve("growing.pdf");
        byte[] bytes = Files.readAllBytes(GOOD);
        Files.write(growing, Arrays.copyOf(bytes, 1000));
        Thread writer = new Thread(() -> {
            try {
                for (int at = 1000; at < 9000; at += 1000) {
                    Thread.sleep(300);
                    Files.write(growing, Arrays.copyOfRange(bytes, at, at + 1000), StandardOpenOption.APPEND);
                }
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        writer.start();
        Cli run = pass();
        writer.join();
        assertThat(run.exit()).isZero();
        assertThat(run.err()).contains("growing.pdf is still growing");
        assertThat(checked).containsExactly("handbook.pdf");
        Files.write(growing, bytes);
        assertThat(pass().out()).startsWith("good            growing.pdf");
    }

    @Test
    void twoEqualLooksAndTheEndOfAPdfTellThatAFileIsWholeElseTen() throws Exception {
        Settling settling = new Settling();
        Path half = Files.write(temp.resolve("half.pdf"), Arrays.copyOf(Files.readAllBytes(GOOD), 5000));
        FileStamp whole = FileStamp.of(GOOD);
        assertThat(settling.look("a", GOOD, whole)).isFalse();
        assertThat(settling.look("a", GOOD, new FileStamp(whole.size() + 1, 0, 0)))
                .isFalse();
        assertThat(settling.grew("a")).isTrue();
        assertThat(settling.look("a", GOOD, whole)).isFalse();
        assertThat(settling.look("a", GOOD, whole)).isTrue();
        for (int look = 1; look < 10; look++) {
            assertThat(settling.look("half", half, FileStamp.of(half))).isFalse();
        }
        assertThat(settling.look("half", half, FileStamp.of(half))).isTrue();
    }

    @Test
    void aFileThatChangesWhileItIsCheckedHasNoReportOfIt() throws Exception {
        List<Integer> answers = new ArrayList<>();
        Engine slow = request -> {
            var report = BindPrep.check(request);
            if (answers.isEmpty()) {
                answers.add(report.pages().size());
                try {
                    Files.copy(HIT, in.resolve("handbook.pdf"), StandardCopyOption.REPLACE_EXISTING);
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
                return report;
            }
            answers.add(report.pages().size());
            return report;
        };
        String[] args = {"check", "--watch", in.toString(), "--out", out.toString(), "--once", "--interval", "1"};
        Cli first = Cli.run(slow, args);
        assertThat(first.out()).isEmpty();
        assertThat(files(out)).containsExactly(".bind-prep-ledger");
        Cli second = Cli.run(slow, args);
        assertThat(second.out()).startsWith("findings        handbook.pdf");
        // pages of the two: fixtures/README.md
        assertThat(answers).hasSize(2).last().isEqualTo(100);
    }

    @Test
    void whereReportsCannotBeWrittenTheFileIsNotForgotten() throws Exception {
        Files.createDirectories(out.resolve("handbook.pdf.json"));
        Cli run = pass("--reports", "json");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("cannot write", "handbook.pdf.json");
        Files.delete(out.resolve("handbook.pdf.json"));
        assertThat(pass("--reports", "json").out()).startsWith("good            handbook.pdf");
    }

    @Test
    void anOlderReportDoesNotStandWhereThereIsNoNewOne() throws Exception {
        pass("--reports", "json");
        assertThat(out.resolve("handbook.pdf.json")).exists();
        Cli run = pass("--reports", "json", "--pitch", "5:1");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).startsWith("wrong setting   handbook.pdf: --pitch");
        assertThat(out.resolve("handbook.pdf.json")).doesNotExist();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void noPdfOfTheFolderIsWrittenOverThroughALink() throws Exception {
        Path other = Files.copy(HIT, in.resolve("cookbook.pdf"));
        pass();
        byte[] was = Files.readAllBytes(other);
        Files.copy(HIT, in.resolve("third.pdf"));
        Files.createSymbolicLink(out.resolve("third.pdf.json"), other);
        assertThat(pass().err()).contains("this is an input (the PDF");
        assertThat(other).hasBinaryContent(was);
        Files.delete(out.resolve(Ledger.NAME));
        Files.createSymbolicLink(out.resolve(Ledger.NAME), other);
        assertThat(pass().err()).contains(Ledger.NAME, "this is an input (the PDF");
        assertThat(other).hasBinaryContent(was);
    }

    @Test
    void theLedgerOutlivesACutLineAndOddNames() throws Exception {
        Files.createDirectory(out);
        Ledger.Entry entry = new Ledger.Entry(
                "a".repeat(64),
                "b".repeat(64),
                new FileStamp(3, 1_795_618_800_123_456_789L, 1_795_618_800_987_654_321L));
        String odd = "tab\t, line\nend, \\t and größe.pdf";
        try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
            ledger.add(odd, entry);
            ledger.add("second.pdf", entry);
        }
        Path file = out.resolve(Ledger.NAME);
        byte[] whole = Files.readAllBytes(file);
        for (int cut = 0; cut < whole.length; cut++) {
            Files.write(file, Arrays.copyOf(whole, cut));
            try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
                ledger.add("third.pdf", entry);
            }
            try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
                assertThat(ledger.last("third.pdf")).as("cut at %s", cut).contains(entry);
                assertThat(ledger.last(odd).isPresent() || cut < whole.length / 2 + 40)
                        .isTrue();
            }
        }
        try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
            assertThat(ledger.last(odd)).contains(entry);
            assertThatThrownBy(() -> Ledger.open(out, Inputs.NONE)).hasMessageContaining("another bind-prep");
        }
    }

    @Test
    void linesThatLaterOnesOvertookGoAtTheNextStartAndTheLockStays() throws Exception {
        Files.createDirectory(out);
        Ledger.Entry old = new Ledger.Entry("a".repeat(64), "b".repeat(64), new FileStamp(3, 4, 5));
        Ledger.Entry now = new Ledger.Entry("a".repeat(64), "c".repeat(64), new FileStamp(6, 7, 8));
        try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
            for (int i = 0; i < 100; i++) {
                ledger.add("book.pdf", i < 99 ? old : now);
            }
            ledger.add("other.pdf", old);
        }
        assertThat(ledgerLines()).isEqualTo(101);
        try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
            assertThat(ledgerLines()).isEqualTo(2);
            assertThat(ledger.last("book.pdf")).contains(now);
            assertThatThrownBy(() -> Ledger.open(out, Inputs.NONE)).hasMessageContaining("another bind-prep");
            ledger.add("third.pdf", now);
        }
        try (Ledger ledger = Ledger.open(out, Inputs.NONE)) {
            assertThat(ledger.last("book.pdf")).contains(now);
            assertThat(ledger.last("other.pdf")).contains(old);
            assertThat(ledger.last("third.pdf")).contains(now);
        }
        assertThat(files(out)).containsExactly(Ledger.NAME);
    }

    @Test
    void otherBytesOfTheSameSizeAndTimeAreNoticed() throws Exception {
        assumeThat(in.getFileSystem().supportedFileAttributeViews())
                .as("this system keeps no time of change")
                .contains("unix");
        pass();
        Path book = in.resolve("handbook.pdf");
        FileTime time = Files.getLastModifiedTime(book);
        byte[] bytes = Files.readAllBytes(book);
        // white space behind the file's end mark
        bytes[bytes.length - 1] = ' ';
        Files.write(book, bytes);
        Files.setLastModifiedTime(book, time);
        assertThat(pass().out()).startsWith("good            handbook.pdf");
        // and put in its place by another name, as a copy program does
        bytes[bytes.length - 1] = '\t';
        Path part = Files.write(in.resolve("handbook.part"), bytes);
        Files.setLastModifiedTime(part, time);
        Files.move(part, book, StandardCopyOption.REPLACE_EXISTING);
        assertThat(pass().out()).startsWith("good            handbook.pdf");
        assertThat(pass().out()).isEmpty();
    }

    @Test
    void wrongUsageIsTold() {
        assertUsage(
                "--watch: there is no folder",
                "--watch",
                temp.resolve("nowhere").toString());
        assertUsage("--watch goes without FILE", "--watch", in.toString(), GOOD.toString());
        assertUsage("--watch goes without --write", "--watch", in.toString(), "--write", "json=a.json");
        assertUsage("--watch goes without --write", "--watch", in.toString(), "--format", "json");
        assertUsage("--once goes with --watch", "--once", GOOD.toString());
        assertUsage("formats: text, json", "--watch", in.toString(), "--reports", "pdf");
        assertUsage("--interval", "--watch", in.toString(), "--interval", "0");
    }

    private static void assertUsage(String words, String... args) {
        List<String> all = new ArrayList<>(List.of("check"));
        all.addAll(Arrays.asList(args));
        Cli run = Cli.run(all.toArray(String[]::new));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains(words);
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there are no such signals")
    void aSignalEndsItInOrderAndTheNextBeginGoesOn() throws Exception {
        Process first = start();
        await(() -> Files.exists(out.resolve("handbook.pdf.json")));
        Files.copy(HIT, in.resolve("cookbook.pdf"));
        await(() -> Files.exists(out.resolve("cookbook.pdf.json")));
        await(() -> ledgerLines() == 2);
        first.destroy();
        assertThat(first.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(first.exitValue()).isZero();
        List<String> lines = new ArrayList<>();
        Files.readAllLines(temp.resolve("said"))
                .forEach(line -> lines.add(
                        JsonMapper.shared().readTree(line).at("/input/file").asString()));
        assertThat(lines).containsExactly("handbook.pdf", "cookbook.pdf");

        Files.copy(GOOD, in.resolve("later.pdf"));
        Process second = start();
        await(() -> ledgerLines() == 3);
        second.destroy();
        assertThat(second.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readAllLines(temp.resolve("said"))).hasSize(1);
        assertThat(Files.readString(temp.resolve("err")))
                .endsWith("bind-prep: stopped; what was not finished is checked the next time\n1 file: 1 good\n");
        assertThat(files(out)).noneMatch(name -> name.endsWith(".tmp"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void toldToEndItFinishesTheFilesAtHandAndBeginsNoOther(int threads) throws Exception {
        for (String name : List.of("a.pdf", "b.pdf", "c.pdf")) {
            Files.copy(GOOD, in.resolve(name));
        }
        CountDownLatch begun = new CountDownLatch(threads);
        CountDownLatch go = new CountDownLatch(1);
        Engine slow = request -> {
            begun.countDown();
            try {
                assertThat(go.await(60, TimeUnit.SECONDS)).isTrue();
            } catch (InterruptedException e) {
                throw new AssertionError("the file at hand was given up", e);
            }
            return BindPrep.check(request);
        };
        ReportOutput output = new TextOutput(new PrintWriter(Writer.nullWriter()), TextStyle.PLAIN, true);
        Job job = JobReader.toJob(JobSettings.empty());
        List<String> checked = new ArrayList<>();
        Watch watch = new Watch(
                new WatchOptions.Settings(in, out, List.of(ReportFormat.JSON), false, Duration.ofSeconds(1)),
                reports -> new FileCheck(slow, job, null, null, output, reports, new Semaphore(threads)),
                threads,
                "a".repeat(64),
                Inputs.NONE,
                new PrintWriter(Writer.nullWriter()),
                answer -> checked.add(answer.name()));
        Thread other = new Thread(() -> {
            try {
                assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            watch.stop();
            go.countDown();
        });
        other.start();
        assertThat(watch.run()).isZero();
        other.join();
        List<String> all = files(in).stream().sorted().toList();
        assertThat(checked).containsExactlyElementsOf(all.subList(0, threads));
        assertThat(watch.waiting()).isEqualTo(all.size() - threads);
        assertThat(ledgerLines()).isEqualTo(threads);
        assertThat(files(out).stream().filter(name -> name.endsWith(".json"))).hasSize(threads);
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "io.bindprep.cli.Main",
                        "check",
                        "--format",
                        "jsonl",
                        "--watch",
                        in.toString(),
                        "--out",
                        out.toString(),
                        "--interval",
                        "1")
                .redirectOutput(temp.resolve("said").toFile())
                .redirectError(temp.resolve("err").toFile())
                .start();
    }

    private long ledgerLines() {
        try (Stream<String> lines = Files.lines(out.resolve(Ledger.NAME))) {
            return lines.count();
        } catch (IOException e) {
            return 0;
        }
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        Instant end = Instant.now().plus(Duration.ofSeconds(60));
        while (!condition.getAsBoolean()) {
            assertThat(Instant.now()).isBefore(end);
            Thread.sleep(50);
        }
    }
}
