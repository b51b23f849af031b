package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --accept-into}. */
class AcceptCommandTest {
    private static final String HIT = Cli.fixture("cookbook-letter.pdf");

    @TempDir
    private Path temp;

    @Test
    void whatIsAcceptedPassesFromThenOnAndTheJobKeepsItsComments() throws Exception {
        Path job = temp.resolve("job.yaml");
        Files.writeString(job, "# ours\nstock: bond-20 # plain\n");
        Cli first = accept(job, "--job", job.toString());
        assertThat(first.exit()).isEqualTo(1);
        assertThat(first.err()).contains("Accepted ", job.toString());
        assertThat(job)
                .content()
                .startsWith("# ours\nstock: bond-20 # plain\naccept:\n")
                .contains("text-hit", "J. Doe");
        Cli second = Cli.run("check", "--job", job.toString(), HIT);
        assertThat(second.exit()).as(second.out()).isZero();
        assertThat(second.out()).contains("ACCEPTED", "Accepted by J. Doe: seen in print");
        String written = Files.readString(job);
        Cli third = accept(job, "--job", job.toString());
        assertThat(third.err()).contains("Nothing to accept");
        assertThat(job).hasContent(written);
    }

    @Test
    void anotherBindingEdgeIsNotWhatWasAccepted() {
        Path job = temp.resolve("job.yaml");
        accept(job);
        Cli other = Cli.run("check", "--job", job.toString(), "--binding-edge", "top", HIT);
        assertThat(other.out()).contains("acceptance-unmet");
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() throws Exception {
        assertThat(Cli.run("check", "--accept-into", "job.yaml", HIT).err()).contains("--accept-reason");
        assertThat(Cli.run("check", "--accept-who", "J. Doe", HIT).err()).contains("--accept-into");
        assertThat(accept(temp.resolve("job.json")).err()).contains("YAML");
        Path flow = Files.writeString(temp.resolve("flow.yaml"), "accept: []\n");
        assertThat(accept(flow).exit()).isEqualTo(2);
        assertThat(flow).hasContent("accept: []\n");
    }

    @Test
    void noOtherInputIsWrittenOver() throws Exception {
        Path punch = temp.resolve("punch.yaml");
        Files.copy(Path.of("..", "fixtures", "shop-punch.yaml"), punch);
        String before = Files.readString(punch);
        Cli refused = accept(punch, "--punch", punch.toString());
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("never overwritten");
        Path linked = Files.createLink(temp.resolve("linked.yaml"), punch);
        assertThat(accept(linked, "--punch", punch.toString()).exit()).isEqualTo(2);
        assertThat(punch).hasContent(before);
        assertThat(linked).hasContent(before);
    }

    private static Cli accept(Path job, String... more) {
        String[] args = new String[more.length + 8];
        System.arraycopy(
                new String[] {
                    "check",
                    "--accept-into",
                    job.toString(),
                    "--accept-reason",
                    "seen in print",
                    "--accept-who",
                    "J. Doe"
                },
                0,
                args,
                0,
                7);
        System.arraycopy(more, 0, args, 7, more.length);
        args[args.length - 1] = HIT;
        return Cli.run(args);
    }
}
