package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchLike;
import io.bindprep.unit.Length;
import io.bindprep.wording.Terms;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A punch of 21 pins at 12 mm (XJDF 2.2 F.9: holes of 7 x 3 mm, centre at 4.5 mm) whose errors are known: the row of pins is
 * 240 mm, so that an error over the whole falls to a hole by the share of its distance. Every number is worked by hand.
 */
class MeasuredPunchTest {
    private static final Pattern PATTERN = pattern("P12m-rect-0t");
    private static final Deviation DEPTH = deviation("0.2", "0.05");
    private static final Deviation SIDE = deviation("0.4", "0.1");
    private static final Deviation SKEW = deviation("0.6", "0.24");
    private static final Deviation PITCH = deviation("1.2", "0.3");
    private static final MeasuredErrors ALL = new MeasuredErrors(DEPTH, SIDE, SKEW, PITCH);
    private static final MeasuredErrors OPPOSITE = new MeasuredErrors(
            deviation("-0.2", "0.05"), deviation("-0.4", "0.1"), deviation("-0.6", "0.24"), deviation("-1.2", "0.3"));

    private static Pattern pattern(String id) {
        return Catalogue.builtIn().patterns().byId(id).orElseThrow();
    }

    private static Deviation deviation(String value, String tolerance) {
        return new Deviation(Length.ofMm(value), Length.ofMm(tolerance));
    }

    private static Punch punch(
            Pattern pattern, int pins, String firstPin, String punchingTolerance, MeasuredErrors errors) {
        return PunchLike.of(
                pattern,
                pins,
                firstPin == null ? null : Length.ofMm(firstPin),
                null,
                punchingTolerance == null ? null : Length.ofMm(punchingTolerance),
                errors);
    }

    private static Punch punch(MeasuredErrors errors) {
        return punch(PATTERN, 21, null, null, errors);
    }

    private static Plan plan(Punch punch, Length punchingTolerance) throws Exception {
        return Fixtures.of(Method.COMB).punchingTolerance(punchingTolerance).plan(10, A4, punch);
    }

    @Test
    void theWholeRowOnA4() throws Exception {
        Punch punch = punch(ALL);
        MeasuredPins stand = new MeasuredPins(PATTERN, punch);
        assertThat(stand.at(1)).isEqualTo(Length.ZERO);
        assertThat(stand.at(11)).isEqualTo(Length.ofMm("120.6"));
        assertThat(stand.at(21)).isEqualTo(Length.ofMm("241.2"));
        Plan plan = plan(punch, null);
        HoleRow row = plan.row();
        // (297 - 241.2) / 2 = 27.9, then 12.06 from hole to hole
        assertThat(row.holes()).hasSize(21);
        assertThat(row.holes().get(0)).isEqualTo(new Hole(1, Length.ofMm("27.9")));
        assertThat(row.holes().get(1)).isEqualTo(new Hole(2, Length.ofMm("39.96")));
        assertThat(row.holes().get(20)).isEqualTo(new Hole(21, Length.ofMm("269.1")));
        assertThat(row.guideOff()).isEqualTo(Length.ofMm("0.4"));
        assertThat(row.gap()).isNull();
        // 27.9 - 3.5
        assertThat(row.minimumWeb()).isEqualTo(Length.ofMm("24.4"));
        // symmetric along the edge; a leaf fed turned over has its deep end where the others have the shallow one
        assertThat(row.offset()).isEqualTo(Length.ofMm("0.6"));
        assertThat(row.slant()).isEqualTo(Length.ofMm("0.6"));
        assertThat(row.stretch()).isEqualTo(Length.ofMm("1.2"));
        assertThat(stand.deeper(row)).isEqualTo(Length.ofMm("0.2"));
        assertThat(stand.slant(row)).isEqualTo(Length.ofMm("0.6"));
        // across: half the slant 0.3, depth 0.05, skew at the outer pins 0.24 / 2; along: 0.1 and 0.3
        assertThat(stand.leftOpen(row)).isEqualTo(Length.ofMm("0.47"));
        assertThat(new PunchRow(PATTERN, punch.unmeasured(), punch.depths(), row).leftOpen(punch))
                .isEqualTo(Length.ofMm("0.47"));
        // the shallow setting of 4.5 mm cuts 0.2 deeper
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm("4.7"));
        assertThat(plan.depth().outside()).isEqualTo(Length.ofMm("3.2"));
        assertThat(Fixtures.reasons(plan, Topic.FEED))
                .first()
                .isEqualTo(
                        "set the side guide's own scale to 27.5 mm for the first hole. It was measured to place holes"
                                + " 0.4 mm too far from it, to within 0.1 mm");
        assertThat(Fixtures.reasons(plan, Topic.ROW))
                .last()
                .isEqualTo("the row of pins was measured 1.2 mm longer than the 240 mm of its pattern, to 0.3 mm, which"
                        + " grows from hole to hole");
        assertThat(Fixtures.reasons(plan, Topic.DEPTH))
                .first()
                .isEqualTo(
                        "in the middle of this row the holes were measured to lie 4.7 mm from the binding edge at shallow");
        assertThat(Fixtures.reasons(plan, Topic.SKEW))
                .singleElement()
                .asString()
                .endsWith(
                        ". The punch itself takes 0.6 mm of the skew: its last hole was measured deeper than its first");
    }

    @Test
    void theSameErrorsTheOtherWay() throws Exception {
        Plan plan = plan(punch(OPPOSITE), null);
        // (297 - 238.8) / 2
        assertThat(plan.row().holes().get(0).centre()).isEqualTo(Length.ofMm("29.1"));
        assertThat(plan.row().holes().get(20).centre()).isEqualTo(Length.ofMm("267.9"));
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm("4.3"));
        assertThat(new MeasuredPins(PATTERN, punch(OPPOSITE)).leftOpen(plan.row()))
                .isEqualTo(Length.ofMm("0.47"));
        assertThat(Fixtures.reasons(plan, Topic.FEED))
                .first()
                .asString()
                .contains("own scale to 29.5 mm", "0.4 mm too near to it");
        assertThat(Fixtures.reasons(plan, Topic.ROW)).last().asString().contains("1.2 mm shorter than the 240 mm");
        assertThat(Fixtures.reasons(plan, Topic.SKEW))
                .last()
                .asString()
                .contains("0.6 mm", "measured shallower than its first");
    }

    @Test
    void aShortRowTakesTheSharesOfItsPins() {
        // 12 holes on 150 mm, pins 1 to 12: 132 mm of the 240, their middle 54 mm short of that of the whole
        HoleRow row = new RowMaker(PATTERN, punch(ALL), Length.ofMm(150), Length.ofMm(1), null).row();
        assertThat(row.holes()).hasSize(12);
        MeasuredPins stand = new MeasuredPins(PATTERN, punch(ALL));
        // 0.2 - 0.6 x 54 / 240
        assertThat(stand.deeper(row)).isEqualTo(Length.ofMm("0.065"));
        assertThat(stand.slant(row)).isEqualTo(Length.ofMm("0.33"));
        // across: 0.165 + 0.05 + 0.24 x (66 + 54) / 240; along: 0.1 + 0.3 x 132 / 240 = 0.265
        assertThat(stand.leftOpen(row)).isEqualTo(Length.ofMm("0.335"));
        // along goes first where the side was measured badly: 0.3 + 0.165
        MeasuredErrors side = new MeasuredErrors(DEPTH, deviation("0.4", "0.3"), SKEW, PITCH);
        assertThat(new MeasuredPins(PATTERN, punch(side)).leftOpen(row)).isEqualTo(Length.ofMm("0.465"));
    }

    @Test
    void whatWasNotMeasuredIsLeftAsThePatternHasIt() throws Exception {
        for (MeasuredErrors errors : new MeasuredErrors[] {null, new MeasuredErrors(null, null, null, null)}) {
            MeasuredPins stand = new MeasuredPins(PATTERN, punch(errors));
            HoleRow row = new RowMaker(PATTERN, punch(errors), A4, Length.ofMm(1), null).row();
            // (297 - 240) / 2
            assertThat(row.holes().get(0).centre()).isEqualTo(Length.ofMm("28.5"));
            assertThat(row.guideOff()).isEqualTo(Length.ZERO);
            assertThat(List.of(stand.deeper(row), stand.slant(row), stand.leftOpen(row)))
                    .containsOnly(Length.ZERO);
            Plan plan = plan(punch(errors), null);
            assertThat(Fixtures.reasons(plan, Topic.FEED)).hasSize(1);
            assertThat(Fixtures.reasons(plan, Topic.ROW)).hasSize(1);
            // the reason of shallow, and nothing measured
            assertThat(Fixtures.reasons(plan, Topic.DEPTH)).hasSize(1);
            assertThat(Fixtures.reasons(plan, Topic.SKEW))
                    .singleElement()
                    .asString()
                    .doesNotContain("the punch itself");
        }
    }

    @Test
    void withoutARowOnlyTheDepthIsKnown() {
        // 7 mm of hole and two webs of 1 mm do not go on 8 mm
        HoleRow none = new RowMaker(PATTERN, punch(ALL), Length.ofMm(8), Length.ofMm(1), null).row();
        assertThat(none.holes()).isEmpty();
        MeasuredPins stand = new MeasuredPins(PATTERN, punch(ALL));
        assertThat(stand.deeper(none)).isEqualTo(Length.ofMm("0.2"));
        assertThat(stand.slant(none)).isEqualTo(Length.ZERO);
        assertThat(stand.leftOpen(none)).isEqualTo(Length.ZERO);
    }

    @Test
    void onePinHasNoRowToShareOver() {
        MeasuredPins one = new MeasuredPins(PATTERN, punch(PATTERN, 1, null, null, ALL));
        HoleRow row = new RowMaker(PATTERN, punch(PATTERN, 1, null, null, ALL), A4, Length.ofMm(1), null).row();
        assertThat(row.holes()).containsExactly(new Hole(1, Length.ofMm("148.5")));
        assertThat(one.deeper(row)).isEqualTo(Length.ofMm("0.2"));
        // the side's 0.1 mm is more than the depth's 0.05
        assertThat(one.leftOpen(row)).isEqualTo(Length.ofMm("0.1"));
    }

    @ParameterizedTest
    @CsvSource({
        // pin 1 is measured 0.4 mm off its place, towards and away from the guide
        "ALL,10.4,too far from",
        "OPPOSITE,9.6,too near to"
    })
    void aFixedGuideCannotBeSet(String which, String first, String way) throws Exception {
        Plan plan = plan(punch(PATTERN, 21, "10", null, which.equals("ALL") ? ALL : OPPOSITE), null);
        assertThat(plan.row().holes().get(0)).isEqualTo(new Hole(1, Length.ofMm(first)));
        assertThat(plan.row().guideOff()).isEqualTo(Length.ZERO);
        assertThat(Fixtures.reasons(plan, Topic.ROW))
                .contains("pin 1 stands 0.4 mm " + way + " the fixed guide, as measured to 0.1 mm");
        assertThat(Fixtures.reasons(plan, Topic.FEED)).hasSize(1);
    }

    @Test
    void aLongerRowOfPinsMayLoseAHole() {
        // 25 holes at 12 mm are 288 mm, 289.44 as measured (1.2 over 240); holes of 7 mm and webs of 1 mm: 298.44 holds
        // them exactly
        Punch long25 = punch(PATTERN, 25, null, null, new MeasuredErrors(null, null, null, deviation("1.44", "0")));
        Length web = Length.ofMm(1);
        Length exact = Length.ofMm("298.44");
        assertThat(new RowMaker(PATTERN, long25, exact, web, null).row().holes())
                .hasSize(25);
        HoleRow less = new RowMaker(PATTERN, long25, exact.minus(new Length(1)), web, null).row();
        assertThat(less.holes()).hasSize(24);
        assertThat(less.pulledPins()).containsExactly(25);
        // two ring holes 80 mm apart, measured 81, with 6 mm of hole and 1 mm of web: 88 would do, 89 does
        Pattern rings = pattern("R2m-ISO");
        Punch two = punch(rings, 2, null, null, new MeasuredErrors(null, null, null, deviation("1", "0")));
        assertThat(new RowMaker(rings, two, Length.ofMm(89), web, null).row().holes())
                .hasSize(2);
        assertThat(new RowMaker(rings, two, Length.ofMm("88.5"), web, null)
                        .row()
                        .holes())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            delimiter = '|',
            value = {
                // 0.47 mm is left open; 1 mm is common practice, no source
                "-|-|1|1 mm (common practice, no source: as true as a jogged lift goes in by hand), more than the 0.47 mm that calibration leaves open at worst",
                "0.8|-|1.27|1.27 mm: the 0.47 mm that calibration leaves open at worst, plus the 0.8 mm"
                        + " of the punch's file",
                "-|0.3|0.47|0.47 mm: the 0.47 mm that calibration leaves open at worst",
                "-|0.47|0.47|0.47 mm: the 0.47 mm that calibration leaves open at worst",
                "-|0.48|0.48|0.48 mm as the job says, more than the 0.47 mm that calibration leaves open at" + " worst",
                "0.8|2|2|2 mm as the job says, more than the 0.47 mm that calibration leaves open at worst,"
                        + " plus the 0.8 mm of the punch's file"
            })
    void registrationIsNeverLessThanWhatIsLeftOpen(String stated, String asked, String punchingTolerance, String why)
            throws Exception {
        Plan plan = plan(punch(PATTERN, 21, null, stated, ALL), asked == null ? null : Length.ofMm(asked));
        assertThat(plan.punchingTolerance()).isEqualTo(Length.ofMm(punchingTolerance));
        assertThat(Fixtures.reasons(plan, Topic.MARGIN)).contains(Terms.PUNCHING_TOLERANCE + " " + why);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            delimiter = '|',
            value = {
                "-|-|1|" + Terms.PUNCHING_TOLERANCE
                        + " 1 mm either way: the punch was not measured (common practice, no source: as true as a jogged lift goes in by hand)",
                "0.8|-|0.8|" + Terms.PUNCHING_TOLERANCE + " 0.8 mm, as measured on the punch ours",
                "0.8|0.5|0.5|-"
            })
    void registrationOfAPunchThatNobodyCalibrated(String stated, String asked, String punchingTolerance, String why)
            throws Exception {
        Plan plan = plan(punch(PATTERN, 21, null, stated, null), asked == null ? null : Length.ofMm(asked));
        assertThat(plan.punchingTolerance()).isEqualTo(Length.ofMm(punchingTolerance));
        // the binding margin is the other reason of its topic
        assertThat(Fixtures.reasons(plan, Topic.MARGIN)).hasSize(why == null ? 1 : 2);
        if (why != null) {
            assertThat(Fixtures.reasons(plan, Topic.MARGIN)).contains(why);
        }
    }
}
