package io.bindprep.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScratchTest {
    @Test
    void goesWhenClosedWithAllThatIsInIt() throws IOException {
        Path file;
        Path folder;
        try (Scratch one = Scratch.file();
                Scratch several = Scratch.folder()) {
            file = one.path();
            folder = several.path();
            try (OutputStream out = Scratch.write(file)) {
                out.write('a');
                out.write(new byte[] {'b', 'c'});
            }
            assertThat(file).hasContent("abc");
            Files.writeString(folder.resolve("1.pdf"), "one");
            Files.writeString(Files.createDirectory(folder.resolve("more")).resolve("2.pdf"), "two");
        }
        assertThat(file).doesNotExist();
        assertThat(folder).doesNotExist();
    }

    @Test
    void noOtherUserReadsIt() throws IOException {
        try (Scratch one = Scratch.file();
                Scratch several = Scratch.folder()) {
            assumeTrue(Files.getFileStore(one.path()).supportsFileAttributeView("posix"));
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(one.path())))
                    .isEqualTo("rw-------");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(several.path())))
                    .isEqualTo("rwx------");
        }
    }

    /** The device that is always full, of Linux. */
    @Test
    void aFullFolderIsNamedWithWhatToDo() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full));
        try (OutputStream out = Scratch.write(full)) {
            for (Runnable write : new Runnable[] {() -> lost(out, 1), () -> lost(out, 100_000)}) {
                write.run();
            }
        }
    }

    private static void lost(OutputStream out, int bytes) {
        assertThatThrownBy(() -> {
                    if (bytes == 1) {
                        out.write(1);
                    } else {
                        out.write(new byte[bytes]);
                    }
                })
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("no room for a working copy in /dev (")
                .hasMessageEndingWith("); make room there");
    }

    @Test
    void goesWithAProcessThatIsEnded(@TempDir Path temporary) throws Exception {
        Process working = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Endless.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(working.getInputStream().read()).isEqualTo('w');
            assertThat(temporary).isNotEmptyDirectory();
            working.destroy();
            assertThat(working.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(temporary).isEmptyDirectory();
        } finally {
            working.destroyForcibly();
        }
    }

    /** Keeps a file and a folder with another in it, and never ends. */
    static final class Endless {
        public static void main(String[] args) throws IOException {
            Files.writeString(Scratch.file().path(), "half a proof");
            Files.writeString(Scratch.folder().path().resolve("1.pdf"), "half a volume");
            System.out.println("working");
            for (; ; ) {
                Thread.onSpinWait();
            }
        }
    }
}
