package io.bindprep.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftoversTest {
    @TempDir
    private Path folder;

    private Path file(String name) throws IOException {
        return Files.writeString(folder.resolve(name), "half");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** A process that has ended: its number is free, or some other process has it that began at another time. */
    private static long ended() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .start();
        process.getInputStream().readAllBytes();
        process.waitFor();
        return process.pid();
    }

    @Test
    void theNextRunClearsWhatAKilledOneLeft() throws Exception {
        file(".bind-prep-" + ended() + "-1000000000000-1.tmp");
        WholeFile.write(folder.resolve("new.txt"), "all", Inputs.NONE);
        assertThat(names()).containsExactly("new.txt");
    }

    @Test
    void aNumberThatAnotherProcessHasByNowIsNotTheOwner() throws Exception {
        file(".bind-prep-" + ProcessHandle.current().pid() + "-1000000000000-1.tmp");
        WholeFile.write(folder.resolve("new.txt"), "all", Inputs.NONE);
        assertThat(names()).containsExactly("new.txt");
    }

    @Test
    void filesOfLivingProcessesAndOfPeopleStay() throws Exception {
        String own = "." + Leftovers.prefix() + "999999999.tmp";
        file(own);
        file(".bind-prep-notes.tmp");
        file("bind-prep-12-1000000000000-3.pdf");
        WholeFile.write(folder.resolve("new.txt"), "all", Inputs.NONE);
        assertThat(names())
                .containsExactlyInAnyOrder(own, ".bind-prep-notes.tmp", "bind-prep-12-1000000000000-3.pdf", "new.txt");
    }

    @Test
    void foldersOfWorkingCopiesGoWithAllInThem() throws Exception {
        Path left = Files.createDirectory(folder.resolve("bind-prep-" + ended() + "-1000000000000-123"));
        Files.writeString(left.resolve("whole-1.pdf"), "half");
        Leftovers.clear(folder, Leftovers.WORKING);
        assertThat(names()).isEmpty();
    }

    @Test
    void aWorkingCopyIsNamedByItsProcess() throws Exception {
        try (Scratch scratch = Scratch.file()) {
            assertThat(scratch.path().getFileName().toString()).startsWith(Leftovers.prefix());
        }
    }
}
