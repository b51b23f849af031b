package io.bindprep.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Punch files; every punch here is invented. */
class PunchFileTest {
    private static Punch read(String text) throws SettingException {
        return PunchFile.read(new NamedText("shop/bench.yaml", text), Catalogue.builtIn());
    }

    private static SettingException wrong(String text) {
        return catchThrowableOfType(SettingException.class, () -> read(text));
    }

    @Test
    void everyKeyIsRead() throws SettingException {
        Punch p = read("""
                id: bench-3-1
                pattern: W3_1i-square-0t
                pins: 40
                first-pin: 1/6 in
                pullable: [1, 2, 39-40]
                depths:
                  deep: 6 mm
                  1: 4.5 mm
                lift: {thickness: 2 mm, paper: 20 sheets, board: 1 mm, film: "0.5 mm, 3 sheets"}
                longest-edge: 14 in
                minimum-web: 3 mm
                elements: 3/16 in to 9/16 in
                punching-tolerance: 0.5 mm
                measured:
                  side: 0.3 mm +- 0.1 mm
                  skew: -0.2 mm ± 0.1 mm
                source: measured on waste
                """);
        assertThat(p.id()).isEqualTo("bench-3-1");
        assertThat(p.pins()).isEqualTo(40);
        assertThat(p.firstPin()).isEqualTo(Length.ofInch(1, 6));
        assertThat(p.pullable()).containsExactly(1, 2, 39, 40);
        assertThat(p.depths()).extracting(DepthSetting::name).containsExactly("1", "deep");
        assertThat(p.depths().get(0).centre()).isEqualTo(Length.ofMm("4.5"));
        assertThat(p.capacity()).isEqualTo(Length.ofMm(2));
        assertThat(p.limit(Stock.Kind.PAPER)).isEqualTo(new LiftLimit(Length.ofMm(2), 20));
        assertThat(p.limit(Stock.Kind.BOARD)).isEqualTo(new LiftLimit(Length.ofMm(1), null));
        assertThat(p.limit(Stock.Kind.FILM)).isEqualTo(new LiftLimit(Length.ofMm("0.5"), 3));
        assertThat(p.longestEdge()).isEqualTo(Length.ofInch(14, 1));
        assertThat(p.minimumWeb()).isEqualTo(Length.ofMm(3));
        assertThat(p.elements()).isEqualTo(ElementSizes.range(Length.ofInch(3, 16), Length.ofInch(9, 16)));
        assertThat(p.punchingTolerance()).isEqualTo(Length.ofMm("0.5"));
        assertThat(p.measured())
                .isEqualTo(new MeasuredErrors(
                        null,
                        new Deviation(Length.ofMm("0.3"), Length.ofMm("0.1")),
                        new Deviation(Length.ofMm("-0.2"), Length.ofMm("0.1")),
                        null));
        assertThat(p.source()).isEqualTo("measured on waste; punch file shop/bench.yaml");
    }

    @Test
    void whatIsLeftOutIsAsTheKeysSay() throws SettingException {
        Punch p = read("pattern: w2_1i-square-0t\npins: 24\n");
        Punch generic =
                Catalogue.builtIn().punches().byId("generic-W2_1i-square-0t").orElseThrow();
        assertThat(p.id()).isEqualTo("bench");
        assertThat(p.firstPin()).isNull();
        assertThat(p.pullable()).isNull();
        assertThat(p.depths()).extracting(DepthSetting::centre).containsExactly(Length.ofMm("6.175"));
        assertThat(p.capacity()).isEqualTo(generic.capacity());
        assertThat(p.limits()).isEmpty();
        assertThat(p.longestEdge()).isEqualTo(generic.longestEdge());
        assertThat(p.minimumWeb()).isEqualTo(generic.minimumWeb());
        assertThat(p.elements()).isNull();
        assertThat(p.punchingTolerance()).isNull();
        assertThat(p.measured()).isNull();
        assertThat(p.source()).isEqualTo("punch file shop/bench.yaml");
    }

    @Test
    void jsonReadsAsYamlDoes() throws SettingException {
        Punch json = PunchFile.read(
                new NamedText(
                        "bench.json",
                        "{\"pattern\": \"W3_1i-square-0t\", \"pins\": 34, \"elements\": [\"1/4 in\"], \"pullable\": 3}"),
                Catalogue.builtIn());
        assertThat(json.elements()).isEqualTo(ElementSizes.only(List.of(Length.ofInch(1, 4))));
        assertThat(json.pullable()).containsExactly(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pims: 3|pims|there is no such setting|line 3",
                "pins: many|pins|not a whole number|line 3",
                "pins: 0|pins|not a whole number from 1 to 1000|line 3",
                "first-pin: left|first-pin|is not a length|line 3",
                "first-pin: 5|first-pin|has no unit|line 3",
                "pullable: 1-99|pullable|has pin 1-99 where pins are 1 to 34|line 3",
                "pullable: some|pullable|is not all, none|line 3",
                "depths: 5 mm|depths|is not 1 to 100 settings by name|line 3",
                "depths: {a: 5 mm, b: 5}|depths.b|has no unit|line 3, column 22",
                "depths: {a: 1.5 mm}|depths.a|hole would be cut open|line 3",
                "depths: {a: 60 mm}|depths.a|more than 50 mm|line 3",
                "lift: {paper: 20 sheets}|lift|has no thickness|line 3",
                "lift: {thickness: 1 mm, wool: 1 mm}|lift.wool|no such setting|line 3",
                "lift: {thickness: 1 mm, film: 2 mm}|lift.film|thicker than the lift of any stock|line 3",
                "lift: {thickness: 1 mm, film: 0 sheets}|lift.film|takes no sheet|line 3",
                "lift: 0 mm|lift|takes nothing|line 3",
                "longest-edge: 5 km|longest-edge|is not a length|line 3",
                "elements: 1/2 in to 1/4 in|elements|larger end first|line 3",
                "elements: all|elements|is not a length|line 3",
                "punching-tolerance: 2 in|punching-tolerance|more than 10 mm|line 3",
                "measured: 1 mm|measured|is no map of errors|line 3",
                "measured: {side: 1 mm}|measured.side|no error with its tolerance|line 3",
                "measured: {tilt: 1 mm +- 1 mm}|measured.tilt|no such setting|line 3",
                "measured: {side: 1 in +- 1 mm}|measured.side|more than 20 mm|line 3",
                "id: other.yaml|id|reads like a file|line 3"
            })
    void aWrongLineIsNamedWithItsKey(String line, String key, String said, String place) {
        String two = line.startsWith("pins") ? "# pins come last\n" : "pins: 34\n";
        SettingException e = wrong("pattern: W3_1i-square-0t\n" + two + line + "\n");
        assertThat(e.key()).isEqualTo("punch");
        assertThat(e)
                .hasMessageStartingWith(key + ": ")
                .hasMessageContaining(said)
                .hasMessageContaining("(shop/bench.yaml, " + place);
        assertThat(e.remedy()).isNotBlank();
    }

    @Test
    void patternAndPinsMustBeGivenAndGoTogether() {
        assertThat(wrong("pins: 3\n")).hasMessageStartingWith("pattern: is not given");
        assertThat(wrong("pattern: R3i-US\n")).hasMessageStartingWith("pins: is not given");
        assertThat(wrong("pattern: R3i-US\npins: 4\n")).hasMessageContaining("is not the 3 holes of R3i-US");
        SettingException e = wrong("pattern: R3-US\npins: 3\n");
        assertThat(e.remedy()).startsWith("Did you mean \"R3i-US\"?");
        assertThat(e.known()).contains("R3i-US");
    }

    @ParameterizedTest
    @ValueSource(strings = {"- a\n", "a: [\n", "pattern: &x W\n", "pins: *x\n"})
    void aFileThatIsNoneIsToldAsThePunchFile(String text) {
        SettingException e = wrong(text);
        assertThat(e.key()).isEqualTo("punch");
        assertThat(e).hasMessageContaining("shop/bench.yaml");
    }

    @Test
    void fileNamesAreToldFromNames() {
        assertThat(PunchFile.isNamed("bench.yaml")).isTrue();
        assertThat(PunchFile.isNamed(" C:\\shop\\bench.YML ")).isTrue();
        assertThat(PunchFile.isNamed("bench.json")).isTrue();
        assertThat(PunchFile.isNamed("generic-W3_1i-square-0t")).isFalse();
        Catalogue.builtIn()
                .punches()
                .all()
                .forEach(p -> assertThat(PunchFile.isNamed(p.id())).isFalse());
    }

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    /** Property: what is written reads as the same punch, to the last unit. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsWrittenReadsAsTheSamePunch(long seed) throws SettingException {
        Punch punch = invented(new Random(seed));
        String text = PunchText.of(punch);
        assertThat(PunchText.of(punch)).isEqualTo(text);
        assertThat(read(text)).as("seed " + seed + "\n" + text).isEqualTo(punch);
    }

    private static Punch invented(Random random) {
        List<Pattern> patterns = Catalogue.builtIn().patterns().all();
        Pattern pattern = patterns.get(random.nextInt(patterns.size()));
        int pins = pattern.repeating()
                ? 1 + random.nextInt(90)
                : pattern.spacings().size() + 1;
        String source = List.of("measured: on waste", "007", "a \"gauge\", # 1 \\ two", "- x", "µm, 50 %")
                        .get(random.nextInt(5))
                + "; punch file shop/bench.yaml";
        List<DepthSetting> depths = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            Length centre = pattern.holeAcross().plus(new Length(random.nextInt(600_000)));
            depths.add(new DepthSetting(List.of("1", "02", "deep: a", "x y").get(i), centre, source));
        }
        Length capacity = new Length(36_000 + random.nextInt(100_000));
        Map<Stock.Kind, LiftLimit> limits = new TreeMap<>();
        for (Stock.Kind kind : Stock.Kind.values()) {
            if (random.nextBoolean()) {
                Length thickness = capacity.minus(new Length(random.nextInt(36_000)));
                limits.put(kind, new LiftLimit(thickness, random.nextBoolean() ? null : 1 + random.nextInt(40)));
            }
        }
        Length small = new Length(1 + random.nextInt(400_000));
        Length large = small.plus(new Length(1 + random.nextInt(900_000)));
        ElementSizes sizes = List.of(ElementSizes.range(small, large), ElementSizes.only(List.of(large, small)))
                .get(random.nextInt(2));
        return new Punch(
                List.of("bench", "007", "our punch", "1e3").get(random.nextInt(4)),
                pattern.id(),
                pins,
                random.nextBoolean() ? null : new Length(random.nextInt(900_000)),
                depths,
                capacity,
                limits,
                random.nextBoolean()
                        ? null
                        : IntStream.rangeClosed(1, pins)
                                .filter(i -> random.nextBoolean())
                                .boxed()
                                .toList(),
                new Length(1 + random.nextInt(20_000_000)),
                new Length(random.nextInt(200_000)),
                random.nextBoolean() ? null : sizes,
                random.nextBoolean() ? null : new Length(random.nextInt(300_000)),
                random.nextBoolean()
                        ? null
                        : new MeasuredErrors(
                                deviation(random),
                                deviation(random),
                                deviation(random),
                                new Deviation(Length.ZERO, Length.ofMm(1))),
                source);
    }

    private static Deviation deviation(Random random) {
        return random.nextBoolean()
                ? null
                : new Deviation(new Length(random.nextInt(200_000) - 100_000), new Length(random.nextInt(36_000)));
    }
}
