package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.bindprep.catalogue.Method;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.FailOn;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Supply;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Units;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class JobOptionsTest {
    static Stream<Arguments> options() {
        return Stream.of(
                option("copies", "25", Job::copies, 25),
                option("sides", "two-head-to-foot", Job::sides, Sides.TWO_HEAD_TO_FOOT),
                option("binding-edge", "top", Job::bindingEdge, BindingEdge.TOP),
                option("trim", "a5", job -> job.trim().width(), Length.ofMm(148)),
                option("stock", "bond-28", job -> job.stock().name(), "bond-28"),
                option(
                        "covers",
                        "front=film-75",
                        job -> job.frontCover().stock().name(),
                        "film-75"),
                option("inserts", "5-8 on bond-24", job -> job.inserts().get(0).pages(), new PageRange(5, 8)),
                option(
                        "tabs",
                        "before 5 on tag-150",
                        job -> job.special().tabs().size(),
                        1),
                option(
                        "fold-outs",
                        "7-8 in 2 panels",
                        job -> job.special().foldOuts().get(0).panels(),
                        2),
                option("rotated", "12", job -> job.special().rotated().get(0).pages(), new PageRange(12, 12)),
                option(
                        "other-sizes",
                        "9 at letter",
                        job -> job.special().sizes().get(0).pages(),
                        new PageRange(9, 9)),
                option("binding", "coil", Job::binding, Method.COIL),
                option("pitch", "2:1", Job::pitch, "2:1"),
                option("punch", "some punch", Job::punch, "some punch"),
                option("depth", "shallow", Job::depth, "shallow"),
                option("binding-margin", "12 mm", Job::bindingMargin, Length.ofMm(12)),
                option("punching-tolerance", "2 mm", Job::punchingTolerance, Length.ofMm(2)),
                option("clearance", "1/16 in", Job::clearance, Length.ofInch(1, 16)),
                option("minimum-web", "4 mm", Job::minimumWeb, Length.ofMm(4)),
                option("hanger", "90 mm", job -> job.hanger().gap(), Length.ofMm(90)),
                option("overs", "3 %, at least 4", job -> job.supply().overs().on(1000), 30L),
                option("press-sheet", "sra3", job -> job.supply().pressSheet().width(), Length.ofMm(320)),
                option("image-ppi", "200", job -> job.printLimits().imagePpi(), 200),
                option("bleed", "1/8 in", job -> job.printLimits().bleed(), Length.ofInch(1, 8)),
                option("fail-on", "warning", Job::failOn, FailOn.WARNING),
                option("units", "both", Job::units, Units.BOTH),
                option("job-number", "2026-0417", job -> job.order().number(), "2026-0417"),
                option("customer", "Marrowby Library", job -> job.order().customer(), "Marrowby Library"),
                option("due", "Friday noon", job -> job.order().due(), "Friday noon"),
                option(
                        "tables",
                        Cli.ROOT.resolve("fixtures/shop-stocks.csv").toString(),
                        job -> job.catalogue().stocks().byId("felt-200").isPresent(),
                        true));
    }

    private static Arguments option(String key, String value, Function<Job, Object> part, Object expected) {
        return arguments(key, value, part, expected);
    }

    @ParameterizedTest(name = "--{0} {1}")
    @MethodSource("options")
    void everyOptionReachesTheJob(String key, String value, Function<Job, Object> part, Object expected) {
        assertThat(part.apply(job("--" + key, value))).isEqualTo(expected);
        assertThat(part.apply(job("--" + key + "=" + value))).isEqualTo(expected);
    }

    @Test
    void everyJobKeyIsAnOptionAndIsTestedHere() {
        List<Object> tested = options().map(a -> a.get()[0]).toList();
        // accepted findings stand in job files only, as they are bound to what was seen
        List<String> keys =
                JobReader.keys().stream().filter(key -> !key.equals("accept")).toList();
        assertThat(tested).containsExactlyElementsOf(keys);
    }

    @Test
    void withoutOptionsTheJobIsTheBuiltInOneThatTheHelpTells() {
        Job job = job();
        assertThat(job.copies()).isEqualTo(1);
        assertThat(job.sides()).isEqualTo(Sides.TWO);
        assertThat(job.bindingEdge()).isEqualTo(BindingEdge.LEFT);
        assertThat(job.trim()).isNull();
        assertThat(job.stock().name()).isEqualTo("bond-20");
        assertThat(job.frontCover()).isNull();
        assertThat(job.backCover()).isNull();
        assertThat(job.inserts()).isEmpty();
        assertThat(job.special()).isEqualTo(SpecialLeaves.NONE);
        assertThat(job.binding()).isEqualTo(Method.WIRE);
        assertThat(job.pitch()).isNull();
        assertThat(job.punch()).isNull();
        assertThat(job.bindingMargin()).isNull();
        assertThat(job.depth()).isNull();
        assertThat(job.punchingTolerance()).isNull();
        assertThat(job.clearance()).isNull();
        assertThat(job.allowance()).isEqualTo(Length.ofInch(1, 8));
        assertThat(job.supply()).isEqualTo(Supply.BUILT_IN);
        assertThat(job.failOn()).isEqualTo(FailOn.ERROR);
        // the help breaks its lines where they are full
        assertThat(Cli.run("check", "--help").out().replaceAll("\\s+", " "))
                .contains(
                        "(1)",
                        "(two)",
                        "(left)",
                        "(bond-20)",
                        "(none)",
                        "(wire)",
                        "(the punch's own, else 1 mm)",
                        "(by its capacity)",
                        "(5 %, at least 10)",
                        "(error)");
    }

    @Test
    void anOptionGoesBeforeTheJobFile(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("bind-prep.yaml");
        Files.writeString(file, "sides: one\nbinding-edge: top\ncovers:\n  front: film-75\n");
        Job job = job("--job", file.toString(), "--sides", "two", "--covers", "back=coverboard-30");
        assertThat(job.sides()).isEqualTo(Sides.TWO);
        assertThat(job.bindingEdge()).isEqualTo(BindingEdge.TOP);
        assertThat(job.frontCover().stock().name()).isEqualTo("film-75");
        assertThat(job.backCover().stock().name()).isEqualTo("coverboard-30");
    }

    @Test
    void aWrongValueIsNamedByItsOptionAndTheKnownOnesAreListed() {
        Cli run = Cli.run("check", "--binding-edge", "bottom", "book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("bind-prep: --binding-edge: ").contains("\"bottom\"", "left, right, top");
    }

    @Test
    void aWrongValueInsideAnOptionNamesThePart() {
        Cli run = Cli.run("check", "--covers", "front=no such stock", "book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("bind-prep: --covers (front): ");
    }

    @Test
    void aWrongValueInTheJobFileIsNamedByItsLine(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("bind-prep.yaml");
        Files.writeString(file, "sides: one\nbinding-edge: bottom\n");
        Cli run = Cli.run("check", "--job", file.toString(), "--sides", "two", "book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("bind-prep: " + file + ", line 2, column 15: binding-edge: \"bottom\" ")
                .doesNotContain("--binding-edge", "(" + file);
    }

    @Test
    void anUnknownKeyInTheJobFileIsAnError(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("bind-prep.yaml");
        Files.writeString(file, "binding-egde: left\n");
        Cli run = Cli.run("check", "--job", file.toString(), "book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("line 1", "binding-egde", "binding-edge", "fail-on");
    }

    @Test
    void aJobFileThatIsNoneIsNamedByItsOption(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("bind-prep.yaml"), "- one\n");
        Cli run = Cli.run("check", "--job", file.toString(), "book.pdf");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("bind-prep: --job: ").contains(file.toString());
    }

    @Test
    void whatOnlyTheDocumentProvesWrongIsNamedByItsOptionToo() {
        Cli run = Cli.run("check", "--pitch", "5:1", Cli.fixture("members-handbook-a4.pdf"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("bind-prep: --pitch: ").contains("5:1", "Known: ");
    }

    /** The job that these options make. */
    private static Job job(String... options) {
        List<Job> seen = new ArrayList<>();
        List<String> args = new ArrayList<>(List.of("check"));
        args.addAll(List.of(options));
        args.add("book.pdf");
        Cli run = Cli.run(
                request -> {
                    seen.add(request.job());
                    throw new UnreadableInputException(UnreadableInputException.Reason.MISSING, "not there", "Look.");
                },
                args.toArray(String[]::new));
        assertThat(seen).as(run.err()).hasSize(1);
        return seen.get(0);
    }
}
