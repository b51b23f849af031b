package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher in a checkout of its own, with a java and a mvn that only tell what they were asked. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "a script for sh")
class LauncherTest {
    @TempDir
    private Path temp;

    private Path root;
    private Path launcher;
    private Path jar;
    private Path tools;

    @BeforeEach
    void checkout() throws IOException {
        root = temp.resolve("check out (1)");
        Path cli = root.resolve("bind-prep-cli");
        jar = cli.resolve("target/bind-prep-cli.jar");
        Files.createDirectories(cli.resolve("src/main"));
        Files.createDirectories(root.resolve("bind-prep-core/src/main"));
        for (String pom : List.of("pom.xml", "bind-prep-cli/pom.xml", "bind-prep-core/pom.xml")) {
            Files.writeString(root.resolve(pom), "<project/>");
        }
        launcher = Files.copy(Cli.ROOT.resolve("bind-prep-cli/bind-prep"), cli.resolve("bind-prep"));
        executable(launcher);
        tools = temp.resolve("java home/bin");
        java("17.0.1");
        tool(
                "mvn",
                "echo \"mvn in $(pwd): $*\"; mkdir -p bind-prep-cli/target; touch bind-prep-cli/target/bind-prep-cli.jar");
    }

    @Test
    void buildsOnceThenRunsFromAnyFolderThroughALink() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("a link"), launcher);
        Result first = run(link, "check", "a book.pdf", "");
        assertThat(first.exit()).isZero();
        assertThat(first.err()).contains("building it once", "mvn in " + root.toRealPath(), "-pl bind-prep-cli -am");
        assertThat(first.out())
                .contains("<-jar>", "<" + jar.toRealPath() + ">")
                .endsWith("<check>\n<a book.pdf>\n<>\n");

        Result second = run(link, "--version");
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).endsWith("<--version>\n");
    }

    @Test
    void buildsAgainWhereASourceIsNewer() throws Exception {
        run(launcher, "--version");
        Path source = Files.writeString(root.resolve("bind-prep-core/src/main/New.java"), "class New {}");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(60)));
        assertThat(run(launcher, "--version").err()).contains("building it once");
    }

    @Test
    void aBuildThatLeavesTheJarAsItIsIsNotRepeated() throws Exception {
        tool(
                "mvn",
                "mkdir -p bind-prep-cli/target; [ -f bind-prep-cli/target/bind-prep-cli.jar ] ||"
                        + " touch bind-prep-cli/target/bind-prep-cli.jar");
        run(launcher, "--version");
        Files.setLastModifiedTime(jar, FileTime.from(Instant.now().minusSeconds(60)));
        Files.writeString(root.resolve("bind-prep-core/src/main/New.java"), "class New {}");
        assertThat(run(launcher, "--version").err()).contains("building it once");
        assertThat(run(launcher, "--version").err()).isEmpty();
    }

    @Test
    void whatIsSavedWhileItBuildsIsBuiltNextTime() throws Exception {
        tool(
                "mvn",
                "mkdir -p bind-prep-cli/target; sleep 0.1; echo >>bind-prep-core/src/main/New.java; sleep 0.1;"
                        + " touch bind-prep-cli/target/bind-prep-cli.jar");
        run(launcher, "--version");
        assertThat(run(launcher, "--version").err()).contains("building it once");
    }

    @Test
    void ofSeveralFirstCallsAtOnceOneBuilds() throws Exception {
        assumeThat(Files.isExecutable(Path.of("/usr/bin/flock"))).isTrue();
        tool("mvn", "sleep 1; mkdir -p bind-prep-cli/target; touch bind-prep-cli/target/bind-prep-cli.jar");
        ExecutorService calls = Executors.newFixedThreadPool(2);
        try {
            Future<Result> one = calls.submit(() -> run(launcher, "--version"));
            Future<Result> other = calls.submit(() -> run(launcher, "--version"));
            assertThat(List.of(one.get().exit(), other.get().exit())).containsOnly(0);
            assertThat(one.get().err() + other.get().err()).containsOnlyOnce("building it once");
        } finally {
            calls.shutdown();
        }
    }

    @Test
    void theCommandsExitCodeIsTheLaunchers() throws Exception {
        tool("java", "exit 3");
        Files.createDirectories(jar.getParent());
        Files.writeString(jar, "");
        assertThat(run(launcher, "check").exit()).isEqualTo(3);
    }

    @Test
    void passesOnWhatTheUserWantsOfJava() throws Exception {
        Files.createDirectories(jar.getParent());
        Files.writeString(jar, "");
        assertThat(run(Map.of("BINDPREP_JAVA_OPTS", "-Xmx256m -Xss4m"), launcher, "check")
                        .out())
                .contains("<-Xmx256m>\n<-Xss4m>\n<-jar>");
    }

    @Test
    void keepsAnArchiveOfClassesForTheNextRuns() throws Exception {
        archivingJava();
        Files.createDirectories(jar.getParent());
        Files.writeString(jar, "");
        Path archive = jar.resolveSibling("classes-17.0.1.jsa");
        for (int run = 0; run < 2; run++) {
            Result result = run(launcher, "check", "a book.pdf");
            assertThat(result.exit()).isZero();
            assertThat(result.err()).isEmpty();
            assertThat(result.out())
                    .contains("<-XX:SharedArchiveFile=" + archive.toRealPath() + ">")
                    .endsWith("<check>\n<a book.pdf>\n");
        }
        assertThat(temp.resolve("asked")).hasContent("list\n");
        assertThat(archive).hasContent("classes\n");
        // a newer jar has other classes
        Files.setLastModifiedTime(jar, FileTime.from(Instant.now().plusSeconds(60)));
        run(launcher, "check");
        assertThat(temp.resolve("asked")).hasContent("list\nlist\n");
        try (var files = Files.list(jar.getParent())) {
            assertThat(files).containsExactlyInAnyOrder(jar, archive);
        }
    }

    @Test
    void aJavaThatMakesNoArchiveIsAskedOnce() throws Exception {
        Files.createDirectories(jar.getParent());
        Files.writeString(jar, "");
        run(launcher, "check");
        assertThat(jar.resolveSibling("classes-17.0.1.jsa")).isEmptyFile();
        assertThat(run(launcher, "check").out()).doesNotContain("SharedArchiveFile");
    }

    private void archivingJava() throws IOException {
        tool(
                "java",
                "if [ \"$1\" = -version ]; then echo 'openjdk version \"17.0.1\"' >&2; exit; fi\n"
                        + "for a; do case $a in -XX:DumpLoadedClassList=*) echo list >\"${a#*=}\"; exit 1;; esac; done\n"
                        + "for a; do case $a in -XX:SharedClassListFile=*) cat \"${a#*=}\" >>'" + temp.resolve("asked")
                        + "';; -XX:SharedArchiveFile=*) to=${a#*=};; esac; done\n"
                        + "case $* in *-Xshare:dump*) echo classes >\"$to\"; echo noise; exit 1;; esac\n"
                        + "for a; do printf '<%s>\\n' \"$a\"; done");
    }

    @Test
    void saysWhatIsMissing() throws Exception {
        java("11.0.20");
        assertThat(run(launcher, "check")).satisfies(old -> {
            assertThat(old.exit()).isEqualTo(2);
            assertThat(old.err()).contains("too old (11)", "JDK 17 or newer");
        });
        java("1.8.0_402");
        assertThat(run(launcher, "check").err()).contains("too old");
        Files.delete(tools.resolve("java"));
        assertThat(run(launcher, "check")).satisfies(none -> {
            assertThat(none.exit()).isEqualTo(2);
            assertThat(none.err()).contains("no Java found");
        });
    }

    @Test
    void aFailedBuildIsSaidAndNothingRuns() throws Exception {
        tool("mvn", "echo '[ERROR] no'; exit 1");
        Result run = run(launcher, "check");
        assertThat(run.exit()).isEqualTo(4);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("[ERROR] no", "the build failed");
    }

    private void java(String version) throws IOException {
        tool(
                "java",
                "if [ \"$1\" = -version ]; then echo 'openjdk version \"" + version + "\"' >&2; exit; fi\n"
                        + "for a; do printf '<%s>\\n' \"$a\"; done");
    }

    private void tool(String name, String script) throws IOException {
        Files.createDirectories(tools);
        executable(Files.writeString(tools.resolve(name), "#!/bin/sh\n" + script + "\n"));
    }

    private static void executable(Path file) {
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private record Result(int exit, String out, String err) {}

    private Result run(Path command, String... args) throws Exception {
        return run(Map.of(), command, args);
    }

    private Result run(Map<String, String> variables, Path command, String... args) throws Exception {
        List<String> line = new ArrayList<>(List.of(command.toString()));
        line.addAll(Arrays.asList(args));
        Path out = Files.createTempFile(temp, "out", null);
        Path err = Files.createTempFile(temp, "err", null);
        ProcessBuilder builder = new ProcessBuilder(line)
                .directory(temp.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", tools.getParent().toString());
        builder.environment().merge("PATH", tools.toString(), (path, ours) -> ours + ":" + path);
        builder.environment().putAll(variables);
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Result(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
