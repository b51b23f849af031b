package io.bindprep.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Reason;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Calibration by worked examples; every number beside them worked by hand from the readings. */
class CalibratorTest {
    private static final Map<String, Object> TWO = Map.of("depth", "two");

    private static Deviation deviation(String value, String tolerance) {
        return new Deviation(Length.ofMm(value), Length.ofMm(tolerance));
    }

    private static Calibration calibrated(String punch, String first, String last, String end, String row, String bar)
            throws Exception {
        return Calibrator.calibrate(Jobs.of(punch, TWO), Readings.of(first, last, end, row, bar, null), false);
    }

    /** Letter is read in inches: what comes of it and what cannot be is told in them, and 4 in of the bar are measured. */
    @Test
    void readingsOnLetterAreInInches() throws Exception {
        Map<String, Object> letter = Map.of("depth", "two", "trim", "letter");
        // middles 0.2025 and 0.210 in, on a bar of 4.005 in: 1.00125 times as much, 0.2065 in the middle
        Readings readings = Readings.of(
                "0.125 to 0.280 in", "0.130 to 0.290 in", "0.255 to 0.410 in", "0.255 to 10.588 in", "4.005 in", null);
        Calibration found = Calibrator.calibrate(Jobs.of(Jobs.BENCH.replace("34", "32"), letter), readings, false);
        assertThat(found.edge().value().inches()).isCloseTo(0.2065, within(0.0003));
        assertThat(CalibrationText.write(found))
                .contains("edge distance  0.207 in +- 0.009 in")
                .doesNotContainPattern("\\d mm\\b");
        Readings off = Readings.of(
                "0.125 to 0.280 in", "0.130 to 0.290 in", "0.655 to 0.810 in", "0.255 to 10.588 in", "4.005 in", null);
        assertThatThrownBy(() -> Calibrator.calibrate(Jobs.of(Jobs.BENCH.replace("34", "32"), letter), off, false))
                .hasMessageContaining("0.655 in to 0.81 in")
                .hasMessageContaining("lies 0.4 in off the 0.333 in of the first hole");
    }

    /**
     * Sides 3.3 and 7.3: middle 5.3; 3.1 and 7.1: 5.1; so 5.2 in the middle, the last 0.2 shallower. Ends 7.1 and 11.1: 9.1,
     * 0.3 beyond the 8.8 where 34 holes of 1/3 in on 297 mm begin. From 7.0 to 286.1 is 279.1, 0.3 less than 33 x 25.4 / 3
     * = 279.4. Each reading to 0.2: 0.2, 2 x 0.2, 0.2, 2 x 0.2.
     */
    @Test
    void aWorkedExampleWithARule() throws Exception {
        Calibration found =
                calibrated(Jobs.BENCH, "3.3 to 7.3 mm", "3.1 mm to 7.1 mm", "7.1 to 11.1 mm", "7.0 to 286.1 mm", null);
        assertThat(found.edge()).isEqualTo(deviation("5.2", "0.2"));
        assertThat(found.skew()).isEqualTo(deviation("-0.2", "0.4"));
        assertThat(found.side()).isEqualTo(deviation("0.3", "0.2"));
        assertThat(found.pitch()).isEqualTo(deviation("-0.3", "0.4"));
        Punch punch = found.punch();
        assertThat(punch.depths())
                .extracting(DepthSetting::name, DepthSetting::centre)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("one", Length.ofMm("4.5")),
                        org.assertj.core.groups.Tuple.tuple("two", Length.ofMm("5.2")),
                        org.assertj.core.groups.Tuple.tuple("three", Length.ofMm(6)));
        assertThat(punch.measured())
                .isEqualTo(new MeasuredErrors(
                        deviation("0", "0.2"),
                        deviation("0.3", "0.2"),
                        deviation("-0.2", "0.4"),
                        deviation("-0.3", "0.4")));
        // across: half the slant of 0.2, 0.2 of depth, half of 0.4 of skew: 0.5; along: 0.2 and 0.4: 0.6
        assertThat(found.open()).isEqualTo(Length.ofMm("0.6"));
    }

    /**
     * The bar of 100 mm measures 99.5: every length is 0.995 of what was read. 280.6 x 0.995 = 279.197, 0.203 short; read to
     * 0.4 and the bar's 0.2 in 100, which is 0.5612 on 280.6: 0.9612, and 0.003 to come to the hundredth: 0.97.
     */
    @Test
    void aBarThatIsShortScalesEveryReading() throws Exception {
        Calibration found = calibrated(Jobs.BENCH, "5.2 mm", "5.2 mm", "8.9 mm", "7.0 to 287.6 mm", "99.5 mm");
        assertThat(found.pitch().value()).isEqualTo(Length.ofMm("-0.2"));
        assertThat(found.pitch().tolerance().mm()).isBetween(0.961, 0.98);
        // 5.2 x 0.995 = 5.174; 8.9 x 0.995 - 8.8 = 0.0555
        assertThat(found.edge().value()).isEqualTo(Length.ofMm("5.17"));
        assertThat(found.side().value()).isEqualTo(Length.ofMm("0.06"));
        assertThat(found.skew().value()).isEqualTo(Length.ZERO);
    }

    @Test
    void whatARuleMeasuredIsNotScaled() throws Exception {
        Calibration found = calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "8.8 mm", "279.3 mm", "99.5 mm");
        assertThat(found.pitch()).isEqualTo(deviation("-0.1", "0.4"));
        assertThat(found.edge().value()).isEqualTo(Length.ofMm("5.07"));
    }

    @Test
    void moreOfTheBarIsSurer() throws Exception {
        Calibration of100 = calibrated(Jobs.BENCH, "5 mm", "5 mm", "9 mm", "7 to 286.4 mm", "100 mm");
        Calibration of250 = calibrated(Jobs.BENCH, "5 mm", "5 mm", "9 mm", "7 to 286.4 mm", "250 mm of 250 mm");
        // 279.4 x 0.2 / 100 = 0.559 and 279.4 x 0.2 / 250 = 0.224, on top of 0.4
        assertThat(of100.pitch()).isEqualTo(deviation("0", "0.96"));
        assertThat(of250.pitch()).isEqualTo(deviation("0", "0.63"));
    }

    /** 52 pins, of which A4 has 34: over the whole row errors and tolerances are 51 / 33 of what was read. */
    @Test
    void aFileHoldsErrorsOverTheWholeRowOfPins() throws Exception {
        Calibration found =
                calibrated(Jobs.BENCH.replace("34", "52"), "5.0 mm", "5.33 mm", "8.8 mm", "7.0 to 286.73 mm", null);
        MeasuredErrors errors = found.punch().measured();
        assertThat(errors.skew().value()).isEqualTo(Length.ofMm("0.51"));
        assertThat(errors.skew().tolerance().mm()).isBetween(0.4 * 51 / 33, 0.4 * 51 / 33 + 0.02);
        assertThat(errors.pitch().value()).isEqualTo(Length.ofMm("0.51"));
        // in the middle of the holes 5.165; 9 pitches on, in the middle of all pins, 0.09 more
        assertThat(found.punch().depths().get(1).centre().mm()).isBetween(5.249, 5.261);
        // and a plan of the same sheet is back where it was read
        Job job = Jobs.of(found.punch(), TWO);
        Plan plan = Jobs.plan(job, TestSheet.of(job));
        assertThat(plan.edgeDistance().mm()).isBetween(5.154, 5.176);
    }

    @Test
    void plansTakeHolesWhereTheyWereFound() throws Exception {
        String fixed = Jobs.BENCH + "first-pin: 8.8 mm\n";
        Calibration found =
                calibrated(fixed, "3.3 to 7.3 mm", "3.1 to 7.1 mm", "7.1 to 11.1 mm", "7.0 to 286.1 mm", null);
        Job job = Jobs.of(found.punch(), TWO);
        Plan plan = Jobs.plan(job, TestSheet.of(job));
        // 8.8 + 0.3; the last 279.4 - 0.3 on; the sixth 5 / 33 of the way
        assertThat(plan.row().holes().get(0).centre()).isEqualTo(Length.ofMm("9.1"));
        assertThat(plan.row().holes().get(33).centre()).isEqualTo(Length.ofMm("288.2"));
        assertThat(plan.row().holes().get(5).centre().mm())
                .isBetween(9.1 + 279.1 * 5 / 33 - 1e-4, 9.1 + 279.1 * 5 / 33 + 1e-4);
        assertThat(plan.row().guideOff()).isEqualTo(Length.ZERO);
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm("5.2"));
        // less is open than the 1 mm that holds where nobody says
        assertThat(plan.punchingTolerance()).isEqualTo(Length.ofMm(1));
        assertThat(plan.because())
                .extracting(Sentences::of)
                .anyMatch(t -> t.contains("pin 1 stands 0.3 mm too far from the fixed guide"))
                .anyMatch(t -> t.contains("measured 0.3 mm shorter than the 279.4 mm"))
                .anyMatch(t -> t.contains("more than the 0.6 mm that calibration leaves open"));
    }

    @Test
    void aGuideThatMovesIsSetByWhatWasFound() throws Exception {
        Calibration found = calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "9.1 mm", "7.0 to 286.4 mm", null);
        Job job = Jobs.of(found.punch(), TWO);
        Plan plan = Jobs.plan(job, TestSheet.of(job));
        assertThat(plan.row().holes().get(0).centre()).isEqualTo(Length.ofMm("8.8"));
        assertThat(plan.row().guideOff()).isEqualTo(Length.ofMm("0.3"));
        assertThat(plan.because())
                .filteredOn(r -> r.topic() == Reason.Topic.FEED)
                .extracting(Sentences::of)
                .anyMatch(t -> t.contains("set the side guide's own scale to 8.5 mm"));
    }

    /** Sum of how lifts differ, by the punch's file, and what the measuring left open; a job that allows more keeps it. */
    @Test
    void whatTheMeasuringLeftOpenWidensThePunchingTolerance() throws Exception {
        Calibration found = calibrated(
                Jobs.BENCH + "punching-tolerance: 0.8 mm\n", "5.2 mm", "5.0 mm", "9.1 mm", "7.0 to 286.1 mm", null);
        assertThat(found.open()).isEqualTo(Length.ofMm("0.6"));
        Job own = Jobs.of(found.punch(), TWO);
        assertThat(Jobs.plan(own, TestSheet.of(own)).punchingTolerance()).isEqualTo(Length.ofMm("1.4"));
        Job less = Jobs.of(found.punch(), Map.of("depth", "two", "punching-tolerance", "0.5 mm"));
        assertThat(Jobs.plan(less, TestSheet.of(less)).punchingTolerance()).isEqualTo(Length.ofMm("1.4"));
        Job more = Jobs.of(found.punch(), Map.of("depth", "two", "punching-tolerance", "2 mm"));
        assertThat(Jobs.plan(more, TestSheet.of(more)).punchingTolerance()).isEqualTo(Length.ofMm(2));
    }

    @Test
    void anotherSettingKeepsAllThatEitherAllows() throws Exception {
        Calibration one = calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "9.1 mm", "7.0 to 286.4 mm", null);
        Readings next = Readings.of("6.2 mm", "6.4 mm", "9.0 mm", "7.0 to 286.4 mm", null, null);
        Calibration both = Calibrator.calibrate(Jobs.of(one.punch(), Map.of("depth", "three")), next, false);
        assertThat(both.punch().depths())
                .extracting(DepthSetting::centre)
                .endsWith(Length.ofMm("5.1"), Length.ofMm("6.3"));
        // 0 +- 0.4 and 0.2 +- 0.4: from -0.4 to 0.6; 0.3 +- 0.2 and 0.2 +- 0.2: from 0 to 0.5
        assertThat(both.punch().measured().skew()).isEqualTo(deviation("0.1", "0.5"));
        assertThat(both.punch().measured().side()).isEqualTo(deviation("0.25", "0.25"));
        assertThat(both.punch().source()).containsOnlyOnce("measured with a test sheet");
        Calibration afresh = Calibrator.calibrate(Jobs.of(one.punch(), Map.of("depth", "three")), next, true);
        assertThat(afresh.punch().measured().skew()).isEqualTo(deviation("0.2", "0.4"));
    }

    @Test
    void measurementsThatExcludeEachOtherAreRefused() throws Exception {
        Calibration one = calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "9.8 mm", "7.0 to 286.4 mm", null);
        Readings next = Readings.of("5.1 mm", "5.1 mm", "8.4 mm", "7.0 to 286.4 mm", null, null);
        assertThatThrownBy(() -> Calibrator.calibrate(Jobs.of(one.punch(), TWO), next, false))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("side offset")
                .hasMessageContaining("-0.4 mm +- 0.2 mm")
                .hasMessageContaining("1 mm +- 0.2 mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                // each by itself
                "edge-first|51 mm|5.1 mm|8.8 mm|7 to 286.4 mm|-|45.9 mm deeper",
                "edge-first|5.1|5.1 mm|8.8 mm|7 to 286.4 mm|-|has no unit",
                "edge-first|7.1 to 3.1 mm|5.1 mm|8.8 mm|7 to 286.4 mm|-|does not end beyond where it begins",
                "edge-first|1.9 mm|5.1 mm|8.8 mm|7 to 286.4 mm|-|would cut the hole of 3.97 mm open at the binding edge",
                "edge-first|0 to 4 mm|5.1 mm|8.8 mm|7 to 286.4 mm|-|open at the binding edge",
                "edge-last|5.1 mm|3 to 12 mm|8.8 mm|7 to 286.4 mm|-|a hole of 9 mm, where W3_1i-square-0t has one of 3.97 mm",
                "edge-last|5.1 mm|250 mm|8.8 mm|7 to 286.4 mm|-|lies off the sheet, which ends at 210 mm",
                "end-first|5.1 mm|5.1 mm|1.5 mm|7 to 286.4 mm|-|open at the end of the sheet",
                "end-first|5.1 mm|5.1 mm|17.3 mm|15.4 to 294.8 mm|-|another hole was read",
                "bar|5.1 mm|5.1 mm|8.8 mm|7 to 286.4 mm|98.9 mm|not printed at full size",
                "bar|5.1 mm|5.1 mm|8.8 mm|7 to 286.4 mm|247 mm of 250 mm|not printed at full size",
                "bar|5.1 mm|5.1 mm|8.8 mm|7 to 286.4 mm|50 mm of 50 mm|too short to tell",
                // against each other
                "edge-last|5.1 mm|7.6 mm|8.8 mm|7 to 286.4 mm|-|did not lie against the back stop",
                "edge-last|3.1 to 7.1 mm|3.1 to 8 mm|8.8 mm|7 to 286.4 mm|-|which one die does not cut",
                "row|5.1 mm|5.1 mm|8.8 mm|7 to 277.9 mm|-|other holes were read",
                "row|5.1 mm|5.1 mm|8.8 mm|7 to 288.5 mm|-|no pins in a die stand 2.1 mm off",
                "row|5.1 mm|5.1 mm|8.8 mm|27 to 306.4 mm|-|off where it lies from the end of the paper",
            })
    void readingsThatCannotBeAreRefusedWithTheReason(
            String key, String first, String last, String end, String row, String bar, String reason) {
        assertThatThrownBy(() -> calibrated(Jobs.BENCH, first, last, end, row, bar))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.key()).isEqualTo(key);
                    assertThat(e.remedy()).isNotBlank();
                })
                .hasMessageContaining(reason);
    }

    @ParameterizedTest
    @CsvSource({"0 mm,better than anyone reads", "0.04 mm,better than anyone reads", "2 mm,more than 1 mm"})
    void aReadingErrorIsOneThatEyesHave(String error, String reason) {
        assertThatThrownBy(() -> Readings.of("5 mm", "5 mm", "9 mm", "279 mm", null, error))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("reading-error"))
                .hasMessageContaining(reason);
    }

    @Test
    void limitsAreNoErrors() throws Exception {
        // 1 % of the bar; 2 mm of skew and twice the error; 1 mm of pitch, twice the error
        assertThat(calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "8.8 mm", "279.4 mm", "101 mm")
                        .byRule())
                .isFalse();
        assertThat(calibrated(Jobs.BENCH, "4.1 mm", "6.5 mm", "8.8 mm", "279.4 mm", null)
                        .skew())
                .isEqualTo(deviation("2.4", "0.4"));
        assertThat(calibrated(Jobs.BENCH, "5.1 mm", "5.1 mm", "8.8 mm", "280.8 mm", null)
                        .pitch())
                .isEqualTo(deviation("1.4", "0.4"));
    }

    @Test
    void punchAndSettingMustBeNamed() throws Exception {
        Readings readings = Readings.of("5 mm", "5 mm", "9 mm", "279.4 mm", null, null);
        assertThatThrownBy(() -> Calibrator.calibrate(Jobs.named(Map.of()), readings, false))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("punch"));
        assertThatThrownBy(() -> Calibrator.calibrate(Jobs.of(Jobs.BENCH, Map.of()), readings, false))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.key()).isEqualTo("depth");
                    assertThat(e.known()).containsExactly("one", "two", "three");
                });
    }
}
