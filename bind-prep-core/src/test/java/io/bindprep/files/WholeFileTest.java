package io.bindprep.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path folder;

    @Test
    void writesOverAnOldFileAndLeavesNothingElse() throws IOException {
        Path file = folder.resolve("spec.html");
        WholeFile.write(file, "old, and longer", Inputs.NONE);
        WholeFile.write(file, "ü", Inputs.NONE);
        assertThat(file).hasBinaryContent("ü".getBytes(UTF_8));
        assertThat(names()).containsExactly("spec.html");
    }

    @Test
    void aBareNameGoesToTheWorkingFolder() throws IOException {
        Path bare = Path.of("whole-file-test.tmp");
        try {
            WholeFile.write(bare, "here", Inputs.NONE);
            assertThat(bare).hasContent("here");
        } finally {
            Files.deleteIfExists(bare);
        }
    }

    @Test
    void contentThatFailsHalfWayLeavesTheOldFile() throws IOException {
        Path file = Files.writeString(folder.resolve("proof.pdf"), "old");
        assertThatThrownBy(() -> WholeFile.write(
                        file,
                        out -> {
                            out.write(new byte[100_000]);
                            throw new IOException("No space left on device");
                        },
                        Inputs.NONE))
                .hasMessage("No space left on device");
        assertThatThrownBy(() -> WholeFile.write(
                        file,
                        out -> {
                            out.write(1);
                            throw new StackOverflowError();
                        },
                        Inputs.NONE))
                .isInstanceOf(StackOverflowError.class);
        assertThat(file).hasContent("old");
        assertThat(names()).containsExactly("proof.pdf");
    }

    /** The device that is always full, of Linux. */
    @Test
    void aFullDeviceIsAnErrorAndStaysADevice() {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full));
        assertThatThrownBy(() -> WholeFile.write(full, "lost", Inputs.NONE)).isInstanceOf(IOException.class);
        assertThat(Files.exists(full) && !Files.isRegularFile(full)).isTrue();
    }

    @Test
    void aProcessThatIsEndedLeavesNothing() throws Exception {
        Process writing = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Endless.class.getName(),
                        folder.resolve("proof.pdf").toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(writing.getInputStream().read()).isEqualTo('w');
            assertThat(names()).hasSize(1);
            writing.destroy();
            assertThat(writing.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(names()).isEmpty();
        } finally {
            writing.destroyForcibly();
        }
    }

    @Test
    void theInputIsNeverOverwritten() throws IOException {
        Path input = Files.writeString(folder.resolve("book.pdf"), "book");
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), Path.of("book.pdf"));
        for (Path target : List.of(input, folder.resolve("./book.pdf"), link)) {
            assertThatThrownBy(() -> WholeFile.write(target, "shifted", Inputs.NONE.plus("the PDF", input)))
                    .isInstanceOf(FileSystemException.class)
                    .hasMessageContaining(target.toString())
                    .hasMessageContaining("never overwritten");
        }
        assertThat(input).hasContent("book");
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Files.createDirectory(folder.resolve("real"));
        Path link = Files.createSymbolicLink(folder.resolve("latest.html"), Path.of("real/spec.html"));
        WholeFile.write(link, "first", Inputs.NONE);
        WholeFile.write(link, "second", Inputs.NONE);
        assertThat(link).isSymbolicLink();
        assertThat(folder.resolve("real/spec.html")).hasContent("second");

        Path loop = folder.resolve("loop");
        Files.createSymbolicLink(loop, loop);
        assertThatThrownBy(() -> WholeFile.write(loop, "", Inputs.NONE)).isInstanceOf(FileSystemLoopException.class);
    }

    @Test
    void permissionsStayAsTheyWere() throws IOException {
        Path file = Files.writeString(folder.resolve("spec.html"), "old");
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        Path usual = folder.resolve("usual.html");
        WholeFile.write(usual, "new", Inputs.NONE);
        assertThat(Files.getPosixFilePermissions(usual)).isEqualTo(Files.getPosixFilePermissions(file));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        WholeFile.write(file, "new", Inputs.NONE);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }

    @Test
    void aProtectedFileIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("spec.html"), "old");
        assumeTrue(file.toFile().setReadOnly());
        assumeFalse(Files.isWritable(file), "this user may write everything");
        assertThatThrownBy(() -> WholeFile.write(file, "new", Inputs.NONE)).hasMessageContaining("write-protected");
        assertThat(file).hasContent("old");
    }

    @Test
    void aFolderAndAMissingFolderAreSaid() {
        assertThatThrownBy(() -> WholeFile.write(folder, "", Inputs.NONE)).hasMessageContaining("a folder");
        assertThatThrownBy(() -> WholeFile.write(folder.resolve("no/spec.html"), "", Inputs.NONE))
                .isInstanceOf(NoSuchFileException.class)
                .hasMessageContaining("there is no folder " + folder.resolve("no"));
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).toList();
        }
    }

    /** Begins to write a file and never ends. */
    static final class Endless {
        public static void main(String[] args) throws IOException {
            WholeFile.write(Path.of(args[0]), Endless::begin, Inputs.NONE);
        }

        private static void begin(OutputStream out) throws IOException {
            out.write(new byte[100_000]);
            System.out.println("writing");
            for (; ; ) {
                Thread.onSpinWait();
            }
        }
    }
}
