package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.job.FailOn;
import io.bindprep.job.Job;
import io.bindprep.job.Sides;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobSourceTest {
    @TempDir
    private Path base;

    @Test
    void failOnGoesBeforeJobAndThatBeforeTheJobFile() throws Exception {
        Path file = Files.writeString(base.resolve("job.yaml"), "sides: one\ncopies: 7\nfail-on: error\n");
        PlexusConfiguration element = JobElementTest.job("<sides>two-head-to-foot</sides><failOn>warning</failOn>");
        Job job = jobOf(new JobSource(element, file.toFile(), "never"));
        assertThat(job.failOn()).isEqualTo(FailOn.NEVER);
        assertThat(job.sides()).isEqualTo(Sides.TWO_HEAD_TO_FOOT);
        assertThat(job.copies()).isEqualTo(7);
        assertThat(jobOf(new JobSource(element, file.toFile(), null)).failOn()).isEqualTo(FailOn.WARNING);
        assertThat(jobOf(new JobSource(null, null, null)).failOn()).isEqualTo(FailOn.ERROR);
    }

    @Test
    void whatADocumentSaysGoesBeforeWhatTheGoalSaysButFailOn() throws Exception {
        Path house = Files.writeString(base.resolve("house.yaml"), "copies: 7\nsides: one\nbinding: comb\n");
        Path own = Files.writeString(base.resolve("own.yaml"), "sides: two-head-to-foot\nbinding: coil\n");
        JobSource goal = new JobSource(JobElementTest.job("<binding>wire</binding>"), house.toFile(), "never");
        Document document = new Document(
                new File("a.pdf"), JobElementTest.job("<sides>one</sides><failOn>error</failOn>"), own.toFile());
        Job job = jobOf(document.over(goal, "a.pdf"));
        assertThat(job.sides()).isEqualTo(Sides.ONE); // its own element
        assertThat(job.binding().name()).isEqualTo("COIL"); // its own file
        assertThat(job.copies()).isEqualTo(7); // the goal's file
        assertThat(job.failOn()).isEqualTo(FailOn.NEVER);
        assertThat(new Document(new File("b.pdf"), null, null).over(goal, "b.pdf"))
                .isSameAs(goal);
    }

    @Test
    void whatAFileNamesCountsFromItsFolderAndWhatThePomNamesFromItsOwn() throws Exception {
        String table = Files.readString(Path.of(System.getProperty("bindprep.root"), "fixtures", "shop-stocks.csv"));
        for (String folder : new String[] {"house", "own", "."}) {
            Files.createDirectories(base.resolve(folder));
            Files.writeString(base.resolve(folder).resolve("stocks.csv"), table + "# " + folder + "\n");
        }
        Path house = Files.writeString(base.resolve("house/job.yaml"), "tables: stocks.csv\n");
        Path own = Files.writeString(base.resolve("own/job.yaml"), "tables: [stocks.csv]\n");
        JobSource goal = new JobSource(null, new File("house/job.yaml"), null);
        assertThat(goal.read(base).text()).contains("# house");
        assertThat(goal.under(null, own.toFile(), "a.pdf").read(base).text()).contains("# own");
        PlexusConfiguration pom = JobElementTest.job("<tables>stocks.csv</tables>");
        assertThat(goal.under(pom, null, "a.pdf").read(base).text()).contains("# .");
        assertThat(new JobSource(pom, house.toFile(), null).read(base).text()).contains("# .");
    }

    @Test
    void aPunchFileCountsFromTheFolderOfWhatNamesItToo() throws Exception {
        Path fixtures = Path.of(System.getProperty("bindprep.root"), "fixtures");
        Path folder = Files.createDirectory(base.resolve("jobs"));
        Files.copy(fixtures.resolve("shop-punch.yaml"), folder.resolve("bench.yaml"));
        Path file = Files.writeString(folder.resolve("job.yaml"), "punch: bench.yaml\n");
        assertThat(jobOf(new JobSource(null, file.toFile(), null)).punch()).isEqualTo("bench-3-1");
        assertWrong(
                new JobSource(JobElementTest.job("<punch>bench.yaml</punch>"), null, null),
                "<job><punch>: \"bench.yaml\" cannot be read: there is no such file");
    }

    @Test
    void aPunchInAFileCountsFromTheFolderOfTheFileThatNamesIt() throws Exception {
        String punch = Files.readString(Path.of(System.getProperty("bindprep.root"), "fixtures", "shop-punch.yaml"));
        Files.createDirectories(base.resolve("house"));
        Files.createDirectories(base.resolve("own"));
        Files.writeString(base.resolve("house/punch.yaml"), punch);
        Path house = Files.writeString(base.resolve("house/job.yaml"), "punch: punch.yaml\n");
        Path own = Files.writeString(base.resolve("own/job.yaml"), "copies: 2\n");
        JobSource both = new JobSource(null, house.toFile(), null).under(null, own.toFile(), "a.pdf");
        assertThat(both.read(base).text()).contains(punch.lines().toList().get(1));
    }

    @Test
    void aWrongSettingIsNamedByWhereItStands() throws Exception {
        Path file = Files.writeString(base.resolve("job.yaml"), "copies: 2\nsides: three\n");
        PlexusConfiguration bottom = JobElementTest.job("<bindingEdge>bottom</bindingEdge>");
        assertWrong(new JobSource(null, file.toFile(), null), "job.yaml, line 2, column 8: sides: \"three\" ");
        assertWrong(new JobSource(bottom, null, null), "<job><bindingEdge>: ");
        assertWrong(new JobSource(null, null, "sometimes"), "<failOn> (bindprep.failOn): ");
        assertWrong(new JobSource(JobElementTest.job("<failOn>sometimes</failOn>"), null, null), "<job><failOn>: ");
        assertWrong(
                new JobSource(null, new File("no such file.yaml"), null), "<jobFile>: cannot read no such file.yaml");
        JobSource goal = new JobSource(null, null, null);
        assertWrong(goal.under(bottom, null, "a.pdf"), "a.pdf: <job><bindingEdge>: ");
        assertWrong(goal.under(null, file.toFile(), "a.pdf"), "a.pdf: job.yaml, line 2, column 8: sides: ");
        Files.writeString(file, "copies: [2\n");
        assertWrong(goal.under(null, file.toFile(), "a.pdf"), "a.pdf: <jobFile>: ");
    }

    @Test
    void aNameOfAnEarlierVersionIsToldTheNewOne() throws Exception {
        assertThatThrownBy(
                        () -> new JobSource(JobElementTest.job("<boundEdge>left</boundEdge>"), null, null).read(base))
                .hasMessageStartingWith("<job><boundEdge>: ")
                .hasMessageContaining("bound-edge is now binding-edge");
        assertThatThrownBy(() ->
                        new JobSource(JobElementTest.job("<clearMargin>4 mm</clearMargin>"), null, null).read(base))
                .hasMessageContaining("clear-margin is now binding-margin");
    }

    private void assertWrong(JobSource source, String start) {
        assertThatThrownBy(() -> source.read(base))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageStartingWith(start);
    }

    private Job jobOf(JobSource source) throws MojoExecutionException {
        return source.read(base).job();
    }
}
