package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.bindprep.BindPrep;
import io.bindprep.cli.batch.Answer;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.batch.Summary;
import io.bindprep.cli.input.FolderWalk;
import io.bindprep.cli.input.InputFile;
import io.bindprep.cli.input.StandardInput;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import io.bindprep.request.CheckRequest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BatchTest {
    @TempDir
    private Path temp;

    private Path folder;

    @BeforeEach
    void folder() throws IOException {
        folder = Files.createDirectories(temp.resolve("in"));
        copy("members-handbook-a4.pdf", "b/handbook.PDF");
        copy("cookbook-letter.pdf", "a.pdf");
        copy("damaged.pdf", "b/c/damaged.pdf");
        copy("locked.pdf", "z.pdf");
        copy("picture.pdf", "b/picture.pdf");
    }

    private void copy(String fixture, String to) throws IOException {
        Path target = folder.resolve(to);
        Files.createDirectories(target.getParent());
        Files.copy(Path.of(fixture(fixture)), target);
    }

    private List<String> names() {
        return Stream.of("a.pdf", "b/c/damaged.pdf", "b/handbook.PDF", "b/picture.pdf", "z.pdf")
                .map(name -> folder + "/" + name)
                .toList();
    }

    @Test
    void aFolderIsItsPdfFilesInOrderOneLineEachTheSameAsOneByOne() {
        for (String threads : List.of("1", "3")) {
            Cli all = Cli.run("check", "--format", "jsonl", "--threads", threads, folder.toString());
            assertThat(all.exit()).isEqualTo(3);
            List<JsonNode> lines = lines(all);
            assertThat(lines.stream().map(line -> line.at("/input/file").asString()))
                    .containsExactlyElementsOf(names());
            for (int i = 0; i < lines.size(); i++) {
                Cli one = Cli.run("check", "--format", "json", names().get(i));
                assertThat(lines.get(i)).isEqualTo(JsonMapper.shared().readTree(one.out()));
            }
            assertThat(all.err()).startsWith("5 files: 3 unreadable, 1 with findings, 1 good\n");
        }
    }

    private static List<JsonNode> lines(Cli run) {
        return run.out().lines().map(line -> JsonMapper.shared().readTree(line)).toList();
    }

    @Test
    void theOrderIsThatOfTheFilesWhicheverIsDoneFirst() throws Exception {
        CountDownLatch others = new CountDownLatch(names().size() - 1);
        Engine firstIsLast = request -> {
            if (request.name().endsWith("a.pdf")) {
                waitFor(others);
            } else {
                others.countDown();
            }
            return BindPrep.check(request);
        };
        Cli run = Cli.run(firstIsLast, "check", "--format", "jsonl", "--threads", "5", folder.toString());
        assertThat(lines(run).stream().map(line -> line.at("/input/file").asString()))
                .containsExactlyElementsOf(names());
        // each other one was begun before the first was done, or it would not have ended
        assertThat(others.getCount()).isZero();
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void noMoreAreCheckedAtOnceThanAsked() {
        AtomicInteger now = new AtomicInteger();
        Set<Integer> seen = ConcurrentHashMap.newKeySet();
        Engine counting = request -> {
            seen.add(now.incrementAndGet());
            try {
                return BindPrep.check(request);
            } finally {
                now.decrementAndGet();
            }
        };
        Cli.run(counting, "check", "--format", "jsonl", "--threads", "2", folder.toString());
        assertThat(seen).isSubsetOf(1, 2).contains(1);
    }

    /** An engine whose every check has a helper wherever it may, and that notes how many work at once. */
    private static Engine helped(Set<Integer> seen) {
        AtomicInteger now = new AtomicInteger();
        return request -> {
            seen.add(now.incrementAndGet());
            boolean helper = request.helpers().tryAcquire();
            try {
                if (helper) {
                    seen.add(now.incrementAndGet());
                }
                return BindPrep.check(request);
            } finally {
                if (helper) {
                    now.decrementAndGet();
                    request.helpers().release();
                }
                now.decrementAndGet();
            }
        };
    }

    @Test
    void helpersOfFilesCountAmongTheThreads() {
        Set<Integer> two = ConcurrentHashMap.newKeySet();
        Cli.run(helped(two), "check", "--format", "jsonl", "--threads", "2", folder.toString());
        assertThat(two).containsExactlyInAnyOrder(1, 2);
        Set<Integer> one = ConcurrentHashMap.newKeySet();
        Cli.run(helped(one), "check", "--format", "jsonl", "--threads", "1", folder.toString());
        assertThat(one).containsExactly(1);
    }

    @Test
    void helpersCountAmongTheThreadsOfAWatchToo() throws IOException {
        Path watched = Files.createDirectory(temp.resolve("watched"));
        Files.copy(Path.of(fixture("planner-a5.pdf")), watched.resolve("planner.pdf"));
        Files.copy(Path.of(fixture("members-handbook-a4.pdf")), watched.resolve("handbook.pdf"));
        Set<Integer> seen = ConcurrentHashMap.newKeySet();
        Cli run = Cli.run(
                helped(seen), "check", "--watch", watched.toString(), "--once", "--interval", "1", "--threads", "1");
        assertThat(run.err()).contains("2 files: ");
        assertThat(seen).containsExactly(1);
    }

    @Test
    void aFileAloneHasAHelperUnlessOneThreadIsAskedFor() {
        Set<Integer> seen = ConcurrentHashMap.newKeySet();
        Cli.run(helped(seen), "check", fixture("planner-a5.pdf"));
        assertThat(seen).containsExactlyInAnyOrder(1, 2);
        Set<Integer> one = ConcurrentHashMap.newKeySet();
        Cli.run(helped(one), "check", "--threads", "1", fixture("planner-a5.pdf"));
        assertThat(one).containsExactly(1);
    }

    @Test
    void linksAreFollowedOnceAndLoopsEnd() throws IOException {
        Files.createSymbolicLink(folder.resolve("b/again"), folder);
        Files.createSymbolicLink(folder.resolve("same"), folder.resolve("b"));
        Files.createSymbolicLink(folder.resolve("linked.pdf"), Path.of(fixture("planner-a5.pdf")));
        Files.createSymbolicLink(folder.resolve("lost.pdf"), folder.resolve("nothing"));
        copy("planner-a5.pdf", ".hidden.pdf");
        copy("planner-a5.pdf", "page.pdf.part");
        List<String> names = new ArrayList<>(names());
        names.addAll(4, List.of(folder + "/linked.pdf", folder + "/lost.pdf"));
        assertThat(FolderWalk.of(folder, null)).extracting(InputFile::name).containsExactlyElementsOf(names);
    }

    @Test
    void aFolderThatDoesNotOpenIsNotPassedOver() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
        assumeThat(Files.isReadable(closed)).as("for root every folder opens").isFalse();
        Cli run = Cli.run("check", "--format", "jsonl", folder.toString());
        assertThat(lines(run))
                .filteredOn(line -> line.at("/input/file").asString().endsWith("/closed"))
                .singleElement()
                .satisfies(line ->
                        assertThat(line.at("/problem/reason").asString()).isEqualTo("refused"));
    }

    @Test
    void aFolderWithoutPdfIsUnreadable() {
        Cli run = Cli.run("check", "--format", "json", fixture("sources"));
        assertThat(run.exit()).isEqualTo(3);
        assertThat(JsonMapper.shared()
                        .readTree(run.out())
                        .at("/0/problem/reason")
                        .asString())
                .isEqualTo("missing");
        assertThat(Cli.run("check", fixture("sources")).err()).contains("There is no PDF in the folder");
    }

    @Test
    void everyFileHasItsLineWhateverHappens() {
        Engine broken = request -> {
            if (request.name().endsWith("z.pdf")) {
                throw new IllegalStateException("seventh hole");
            }
            return BindPrep.check(request);
        };
        Cli run = Cli.run(broken, "check", "--format", "jsonl", "--pitch", "5:1", folder.toString());
        assertThat(run.exit()).isEqualTo(4);
        assertThat(lines(run).stream().map(line -> line.path("outcome").asString()))
                .containsExactly("wrong-setting", "unreadable", "wrong-setting", "unreadable", "internal-error");
        assertThat(lines(run).get(0).at("/problem/key").asString()).isEqualTo("pitch");
        assertThat(run.err())
                .containsSubsequence(
                        "5 files: 1 with an internal error, 2 unreadable, 2 with a wrong setting\n",
                        "  internal error  " + folder + "/z.pdf",
                        "  unreadable      " + folder + "/b/c/damaged.pdf",
                        "  wrong setting   " + folder + "/a.pdf: --pitch");
    }

    @Test
    void theSummaryNamesTheWorstFirstAndCountsTheRest() {
        Summary summary = new Summary();
        IntStream.range(0, 20)
                .forEach(i ->
                        summary.add(new Answer("f" + i, Answer.Kind.FINDINGS, 1, "", "", i % 10 + " errors", i % 10)));
        summary.add(new Answer("bad\u001b[31m", Answer.Kind.UNREADABLE, 3, "", "", "it is empty", 0));
        summary.add(new Answer("good", Answer.Kind.GOOD, 0, "", "", "", 0));
        List<String> lines = summary.text(22).lines().toList();
        assertThat(lines.get(0)).isEqualTo("22 files: 1 unreadable, 20 with findings, 1 good");
        assertThat(lines.get(1)).isEqualTo("  unreadable      bad?[31m: it is empty");
        assertThat(lines.get(2)).isEqualTo("  findings        f9: 9 errors");
        assertThat(lines.get(3)).isEqualTo("  findings        f19: 9 errors");
        assertThat(lines).hasSize(14);
        assertThat(lines.get(13)).isEqualTo("  and 9 more that are not good");
    }

    @Test
    void whereMemoryRanShortInCompanyAFileIsCheckedOnceMoreAlone() {
        AtomicInteger now = new AtomicInteger();
        Set<String> tried = ConcurrentHashMap.newKeySet();
        Engine tight = request -> {
            int company = now.incrementAndGet();
            try {
                if (request.name().endsWith("handbook.PDF") && tried.add(request.name())) {
                    UnreadableInputException e = new UnreadableInputException(Reason.TOO_MUCH, "Too much.", "Ask.");
                    e.initCause(new OutOfMemoryError());
                    throw e;
                }
                if (request.name().endsWith("handbook.PDF")) {
                    assertThat(company).isEqualTo(1);
                }
                return BindPrep.check(request);
            } finally {
                now.decrementAndGet();
            }
        };
        Cli run = Cli.run(tight, "check", "--format", "jsonl", "--threads", "4", folder.toString());
        assertThat(tried).hasSize(1);
        assertThat(run.out())
                .isEqualTo(
                        Cli.run("check", "--format", "jsonl", folder.toString()).out());
    }

    @Test
    void writesEachFilesReportsToo() throws IOException {
        Path reports = temp.resolve("reports");
        Cli run = Cli.run("check", "--format", "jsonl", "--write", "json=" + reports + "/", folder.toString());
        assertThat(run.exit()).isEqualTo(3);
        try (Stream<Path> files = Files.list(reports)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("a.json", "damaged.json", "handbook.json", "picture.json", "z.json");
        }
    }

    @Test
    void threadsAreFromOneToMany() {
        for (String wrong : List.of("0", "257", "-1", "two")) {
            Cli run = Cli.run("check", "--threads", wrong, folder.toString());
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.err()).contains("--threads", wrong);
        }
    }

    /** The digest is that of sha256sum (coreutils); on the screen none is shown, so none is worked out. */
    @Test
    void theDigestIsWorkedOutForReportsThatHoldIt() throws Exception {
        List<Boolean> asked = new ArrayList<>();
        Engine told = request -> {
            asked.add(request.digest());
            return BindPrep.check(request);
        };
        InputStream none = InputStream.nullInputStream();
        String book = fixture("cookbook-letter.pdf");
        Path json = temp.resolve("book.json");
        Cli.run(none, told, "check", book);
        Cli.run(none, told, "check", "--write", json.toString(), book);
        Cli.run(none, told, "check", "--since", json.toString(), book);
        Cli.run(none, told, "check", "--format", "jsonl", book);
        assertThat(asked).containsExactly(false, true, true, true);
        assertThat(JsonMapper.shared()
                        .readTree(Files.readString(json))
                        .at("/input/sha256")
                        .asString())
                .isEqualTo("729f14870174ef2ae69220cb82ee8e6c6591716c74b82b5094d84cd72f7c2453");
        assertThat(BindPrep.check(CheckRequest.of(Path.of(book), "a", JobReader.toJob(JobSettings.empty()))
                                .withoutDigest())
                        .document()
                        .sha256())
                .isEmpty();
    }

    @Test
    void aDocumentMayComeByStandardInput() throws Exception {
        byte[] bytes = Files.readAllBytes(Path.of(fixture("cookbook-letter.pdf")));
        Cli run = Cli.run(new ByteArrayInputStream(bytes), BindPrep::check, "check", "--format", "json", "-");
        JsonNode named = JsonMapper.shared()
                .readTree(Cli.run("check", "--format", "json", fixture("cookbook-letter.pdf"))
                        .out());
        JsonNode piped = JsonMapper.shared().readTree(run.out());
        assertThat(piped.at("/input/file").asString()).isEqualTo("stdin.pdf");
        assertThat(piped.at("/input/sha256")).isEqualTo(named.at("/input/sha256"));
        assertThat(piped.at("/findings")).isEqualTo(named.at("/findings"));
        assertThat(Cli.run("check", "-").exit()).as("nothing comes").isEqualTo(3);
        assertThat(Cli.run("check", "-", "-").exit()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"proof", "spec", "shift"})
    void whatMakesOneFileOfAnotherTakesItByStandardInputToo(String verb) throws Exception {
        Path document = Path.of(fixture("cookbook-letter.pdf"));
        Path made = temp.resolve("made.pdf");
        Cli named = Cli.run(verb, document.toString(), "-o", made.toString());
        Cli piped = Cli.run(Files.newInputStream(document), BindPrep::check, verb, "-", "-o", made.toString());
        assertThat(piped.exit()).as(piped.err()).isEqualTo(named.exit());
        assertThat(piped.out()).isEqualTo(named.out().replace(document.toString(), "stdin.pdf"));
        assertThat(made).exists();
    }

    @Test
    void whatComesByStandardInputIsPrivateAndRemoved() throws Exception {
        List<Path> kept = new ArrayList<>();
        Engine looking = request -> {
            kept.add(request.file());
            try {
                assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(request.file())))
                        .isEqualTo("rw-------");
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
            return BindPrep.check(request);
        };
        InputStream in = Files.newInputStream(Path.of(fixture("members-handbook-a4.pdf")));
        Cli run = Cli.run(in, looking, "check", "-");
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(kept).hasSize(1).allSatisfy(file -> assertThat(file).doesNotExist());
    }

    @Test
    void standardInputIsBounded() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'x';
            }
        };
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> StandardInput.spooled(endless, 200_000))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("200000");
    }

    @Test
    void anAnswerThatIsLostIsNoSuccess() {
        Writer full = new Writer() {
            @Override
            public void write(char[] buffer, int from, int length) throws IOException {
                throw new IOException("no space left");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        List<String> checked = new ArrayList<>();
        int exit = new Main(
                        InputStream.nullInputStream(),
                        new PrintWriter(full),
                        new PrintWriter(err),
                        Cli.NONE,
                        request -> {
                            checked.add(request.name());
                            return BindPrep.check(request);
                        })
                .run("check", "--format", "jsonl", "--threads", "1", folder.toString());
        assertThat(exit).isEqualTo(2);
        assertThat(err.toString()).contains("standard output cannot be written");
        assertThat(checked).hasSize(1);
    }
}
