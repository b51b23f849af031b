package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchFile;
import io.bindprep.table.NamedText;
import io.bindprep.unit.Length;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both commands about a punch that need no document: the sheet to punch, and the file of what was read on it. */
class CalibrateCommandTest {
    private static final String BENCH = Cli.fixture("shop-punch.yaml");

    @TempDir
    private Path temp;

    private Cli calibrate(Path file, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "calibrate",
                "--edge-first",
                "3.3 to 7.3 mm",
                "--edge-last",
                "3.1 to 7.1 mm",
                "--end-first",
                "7.1 to 11.1 mm",
                "-o",
                file.toString()));
        args.addAll(Arrays.asList(more));
        return Cli.run(args.toArray(String[]::new));
    }

    @Test
    void aTestSheetIsWrittenForTheJobsPunch() throws Exception {
        Path sheet = temp.resolve("sheet.pdf");
        Cli run = Cli.run("testsheet", "--punch", BENCH, "--trim", "a4", "-o", sheet.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("1 at 4.5 mm, 2 at 5.1 mm, 3 at 6.0 mm", "full size");
        assertThat(new String(Files.readAllBytes(sheet), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void withNothingSaidTheSheetIsOfTheUsualPunchOnA4() {
        Path sheet = temp.resolve("sheet.pdf");
        Cli run = Cli.run("testsheet", "-o", sheet.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("shallow at 5.1 mm");
    }

    @Test
    void aSheetThatIsTooSmallIsWrongUsage() {
        Cli run = Cli.run(
                "testsheet", "--trim", "80 x 80 mm", "-o", temp.resolve("x.pdf").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--trim", "too small");
        assertThat(temp).isEmptyDirectory();
    }

    @Test
    void readingsBecomeThePunchsFileAndThatIsUsed() throws Exception {
        Path file = temp.resolve("bench.yaml");
        Cli run = calibrate(file, "--punch", BENCH, "--depth", "2", "--row", "7 to 286.1 mm");
        assertThat(run.exit()).as(run.err()).isZero();
        // by hand from the readings: 5.3 and 5.1; 9.1 - 8.8; 279.1 - 279.4
        assertThat(run.out())
                .contains("edge distance  5.2 mm +- 0.2 mm", "side offset    0.3 mm +- 0.2 mm")
                .contains("skew           -0.2 mm +- 0.4 mm", "pitch error    -0.3 mm +- 0.4 mm")
                .contains("Set the side guide by 0.3 mm less");
        Punch punch = PunchFile.read(new NamedText("bench.yaml", Files.readString(file)), Catalogue.builtIn());
        assertThat(punch.id()).isEqualTo("bench-3-1");
        assertThat(punch.depths().get(1).centre()).isEqualTo(Length.ofMm("5.2"));

        Cli check = Cli.run(
                "check",
                Cli.fixture("members-handbook-a4.pdf"),
                "--punch",
                file.toString(),
                "--depth",
                "2",
                "--format",
                "json");
        assertThat(check.exit()).as(check.err()).isZero();
        assertThat(check.out()).contains("\"edgeDistanceMm\" : 5.2", "\"sideGuideOffMm\" : 0.3");

        Cli spec = Cli.run(
                "spec",
                Cli.fixture("members-handbook-a4.pdf"),
                "--punch",
                file.toString(),
                "--format",
                "json",
                "-o",
                temp.resolve("sheet.json").toString());
        assertThat(spec.exit()).as(spec.err()).isZero();
        // the row is 0.3 mm shorter, so that it begins 0.15 mm further in: 8.95, less the 0.3 of the guide
        assertThat(Files.readString(temp.resolve("sheet.json")))
                .contains("Set the side guide's own scale to 8.7 mm, as measured");
    }

    @Test
    void thePunchsOwnFileMayBeWrittenOver() throws Exception {
        Path file = Files.copy(Path.of(BENCH), temp.resolve("bench.yaml"));
        for (String depth : List.of("1", "2")) {
            Cli run = calibrate(
                    file, "--punch", file.toString(), "--depth", depth, "--row", "7 to 286.1 mm", "--bar", "100 mm");
            assertThat(run.exit()).as(run.err()).isZero();
        }
        assertThat(Files.readString(file)).contains("\nmeasured:", "  1: 5.2 mm", "  2: 5.2 mm");
    }

    @Test
    void aBuiltInPunchGetsTheNameOfItsFile() throws Exception {
        Path file = temp.resolve("desk.yaml");
        Cli run = calibrate(file, "--punch", "generic-W3_1i-square-0t", "--depth", "shallow", "--row", "279.4 mm");
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("began as generic-W3_1i-square-0t");
        assertThat(Files.readString(file)).contains("id: desk\n");
    }

    @Test
    void readingsThatCannotBeAreNamedByTheirOption() {
        Path file = temp.resolve("bench.yaml");
        Cli run = calibrate(file, "--punch", BENCH, "--depth", "2", "--row", "7 to 290 mm");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--row: ", "no pins in a die", "read the same side".replace("read", "Read"));
        run = calibrate(file, "--punch", BENCH, "--row", "7 to 286.1 mm");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--depth: ", "Known: 1, 2, 3");
        run = calibrate(file, "--punch", BENCH, "--depth", "2", "--row", "7 to 286.1 mm", "--bar", "97 mm");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--bar: ", "not printed at full size");
        assertThat(temp).isEmptyDirectory();
    }

    @Test
    void everyReadingIsAskedFor() {
        Cli run = Cli.run(
                "calibrate", "--punch", BENCH, "-o", temp.resolve("x.yaml").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--edge-first", "--edge-last", "--end-first", "--row");
        run = calibrate(temp.resolve("x.json"), "--punch", BENCH, "--depth", "2", "--row", "279.4 mm");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains(".yaml");
    }
}
