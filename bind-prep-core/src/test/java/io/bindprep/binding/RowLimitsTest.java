package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Hanger;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import io.bindprep.wording.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hole rows at their limits, by hand: holes of 7 mm at 12 mm (XJDF 2.2 F.9) and of 5/32 in at 1/3 in (F.10), so that on A4
 * at 12 mm the 25 holes lie 0, 12, 24 ... 144 mm off the middle.
 */
class RowLimitsTest {
    private static final Length ONE = new Length(1);
    private static final Length WEB = Length.ofMm(1);
    private static final Pattern COMB = pattern("P12m-rect-0t");
    private static final Pattern WIRE = pattern("W3_1i-square-0t");

    private static Pattern pattern(String id) {
        return Catalogue.builtIn().patterns().byId(id).orElseThrow();
    }

    private static Punch punch(Pattern pattern, int pins, String firstPin, String pullable) throws Exception {
        String table = "id,pattern,pins,guide,first_pin,capacity,pullable,longest_edge,minimum_web,source\nours,"
                + pattern.id() + "," + pins + "," + (firstPin.isEmpty() ? "movable" : "fixed") + "," + firstPin
                + ",2 mm," + pullable + ",17 in," + (pattern == WIRE ? "3/16 in" : "1 mm") + ",our own\n";
        return Catalogue.of(OwnTables.read(List.of(new NamedText("shop.csv", table))))
                .punches()
                .byId("ours")
                .orElseThrow();
    }

    private static HoleRow row(Pattern pattern, Punch punch, Length edge, Hanger hanger) {
        return new RowMaker(pattern, punch, edge, punch.minimumWeb(), hanger).row();
    }

    private static List<Integer> pins(int from, int to) {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }

    private static List<Integer> holes(HoleRow row) {
        return row.holes().stream().map(Hole::pin).toList();
    }

    @Test
    void anEdgeThatJustTakesItsHoles() {
        // 7 + 2 x 1 mm take one hole, 12 mm more another
        assertThat(RowMaker.count(COMB, Length.ofMm(9), WEB, 36)).isEqualTo(1);
        assertThat(RowMaker.count(COMB, Length.ofMm(9).minus(ONE), WEB, 36)).isZero();
        assertThat(RowMaker.count(COMB, Length.ofMm(21), WEB, 36)).isEqualTo(2);
        assertThat(RowMaker.count(COMB, Length.ofMm(21).minus(ONE), WEB, 36)).isEqualTo(1);
        assertThat(RowMaker.count(COMB, A4, WEB, 7)).isEqualTo(7);
        // two ring holes of 6 mm 80 mm apart (ISO 838:1974) take 88 mm; half of them is no row
        Pattern rings = pattern("R2m-ISO");
        assertThat(RowMaker.count(rings, Length.ofMm(88), WEB, 2)).isEqualTo(2);
        assertThat(RowMaker.count(rings, Length.ofMm(88).minus(ONE), WEB, 2)).isZero();
        assertThat(RowMaker.count(rings, A4, WEB, 1)).isZero();
    }

    @Test
    void aPinAtItsLeastWebCutsAHole() throws Exception {
        // fixed guide: 3.5 mm of hole and 1 mm of web
        assertThat(row(COMB, punch(COMB, 20, "4.5 mm", "all"), A4, null).holes().get(0))
                .isEqualTo(new Hole(1, Length.ofMm("4.5")));
        HoleRow nearer = row(COMB, punch(COMB, 20, "4.499 mm", "all"), A4, null);
        assertThat(nearer.holes().get(0).pin()).isEqualTo(2);
        assertThat(nearer.pulledPins()).containsExactly(1);
        assertThat(nearer.minimumWeb()).isGreaterThan(WEB);
    }

    @Test
    void pinsThatTouchTheSheetOrStandOffItByLessThanAPitch() throws Exception {
        // pin 10 at 118 mm touches the end of 114.5 with its 3.5, pin 11 stands off it by 12 mm, a pitch
        Length edge = Length.ofMm("114.5");
        HoleRow all = row(COMB, punch(COMB, 20, "10 mm", "all"), edge, null);
        assertThat(all.pulledPins()).containsExactly(10);
        assertThat(all.fixedPins()).isEmpty();
        assertThat(holes(all)).isEqualTo(pins(1, 9));
        HoleRow none = row(COMB, punch(COMB, 20, "10 mm", "none"), edge, null);
        assertThat(none.fixedPins()).containsExactly(10);
        assertThat(none.pulledPins()).isEmpty();
        // a hair shorter: pin 10 misses the sheet, pin 11 is off by more than a pitch
        HoleRow missed = row(COMB, punch(COMB, 20, "10 mm", "none"), edge.minus(ONE), null);
        assertThat(missed.fixedPins()).isEmpty();
        // a hair longer: pin 11 is off by less than a pitch
        assertThat(row(COMB, punch(COMB, 20, "10 mm", "all"), edge.plus(ONE), null)
                        .pulledPins())
                .containsExactly(10, 11);
    }

    @Test
    void ofPlacesThatLeaveAsManyPinsStuckTheFirstIsTaken() throws Exception {
        // 34 holes on A4 at 1/3 in (German Wikipedia "Drahtkammbindung"), 36 pins that stay: pin 35 or 2 touches the
        // sheet where pin 1 or 3 cuts the first hole, both 1 and 36 in between
        HoleRow row = row(WIRE, punch(WIRE, 36, "", "none"), A4, null);
        assertThat(holes(row)).isEqualTo(pins(1, 34));
        assertThat(row.fixedPins()).containsExactly(35);
    }

    @Test
    void pinsStuckInTheGapCountAsMuchAsThoseAtTheEnd() throws Exception {
        // 12 stays and would be in the gap of 90 mm (12 to 23), 35 stays and touches the end; one pin on neither does
        Hanger hanger = new Hanger(Length.ofMm(90), null);
        HoleRow row = row(WIRE, punch(WIRE, 36, "", "1-11 13-34 36"), A4, hanger);
        assertThat(row.holes().get(0).pin()).isEqualTo(2);
        assertThat(row.fixedPins()).isEmpty();
        assertThat(row.gap().fixedPins()).isEmpty();
        assertThat(row.gap().pulledPins()).isEqualTo(pins(13, 24));
        assertThat(row.pulledPins()).containsAll(List.of(1, 36)).isSorted();
    }

    @Test
    void aHoleThatEndsWhereTheGapBeginsStays() throws Exception {
        // the hole 36 mm off the middle ends at 32.5: a gap of 65 mm leaves it and takes the five at 0, 12 and 24
        Punch punch = punch(COMB, 25, "", "all");
        HoleRow row = row(COMB, punch, A4, new Hanger(Length.ofMm(65), null));
        assertThat(row.gap().pulledPins()).isEqualTo(pins(11, 15));
        assertThat(row.gap().start()).isEqualTo(Length.ofMm(116));
        assertThat(row.gap().end()).isEqualTo(Length.ofMm(181));
        assertThat(row.runs()).containsExactly(10, 10);
        HoleRow wider = row(COMB, punch, A4, new Hanger(Length.ofMm("65.001"), null));
        assertThat(wider.gap().pulledPins()).isEqualTo(pins(10, 16));
    }

    @Test
    void aHoleThatStartsTheGapBelongsToTheFirstRun() {
        // runs are told by the gap's beginning, the hole on it included
        Gap gap = new Gap(Length.ofMm(20), Length.ofMm(30), List.of(), List.of(), null);
        HoleRow row = new HoleRow(
                Length.ofMm(50),
                List.of(new Hole(1, Length.ofMm(10)), new Hole(2, Length.ofMm(20)), new Hole(3, Length.ofMm(40))),
                List.of(),
                List.of(),
                WEB,
                Length.ZERO,
                gap);
        assertThat(row.runs()).containsExactly(2, 1);
        // mirrored 10, 30 and 40: the middle hole lies 10 mm off
        assertThat(row.offset()).isEqualTo(Length.ofMm(10));
    }

    @Test
    void twoHolesOnASideHoldAHanger() throws Exception {
        // at 1/3 in on A4 the second hole lies 131.233 mm off the middle and ends at 129.249: 250 mm leave two on a
        // side, 260 one
        Plan plan = Fixtures.of(Method.WIRE)
                .hanger(new Hanger(Length.ofMm(250), null))
                .plan(10, A4);
        assertThat(plan.row().runs()).containsExactly(2, 2);
        assertThat(Fixtures.reasons(plan, Topic.HANGER))
                .singleElement()
                .asString()
                .startsWith("hanger: no hole within 250 mm in the middle of the edge (the job's gap). It takes 30 holes"
                        + " out")
                .endsWith("in two pieces, for 2 and 2 holes");
        assertThatThrownBy(() -> Fixtures.of(Method.WIRE)
                        .hanger(new Hanger(Length.ofMm(260), null))
                        .plan(10, A4))
                .hasMessage("a gap of 260 mm in a binding edge of 297 mm leaves fewer than 2 holes on a side");
    }

    @ParameterizedTest
    @CsvSource({
        // 60 mm and 3/16 in on both sides are 69.525 mm
        "69.525,the job's gap",
        "69.524,the thumb cut with 4.76 mm of paper on both sides"
    })
    void theWiderOfGapAndThumbCutIsNamed(String gap, String named) throws Exception {
        Hanger hanger = new Hanger(Length.ofMm(gap), new Hanger.ThumbCut(Length.ofMm(60), Length.ofMm(20)));
        assertThat(Fixtures.reasons(Fixtures.of(Method.WIRE).hanger(hanger).plan(10, A4), Topic.HANGER))
                .singleElement()
                .asString()
                .contains("(" + named + ")");
    }

    @Test
    void pinsAreSaidOnce() throws Exception {
        // 34 holes on A4: pin 35 is cut by the end, 36 stands off it by 6.15 mm; a gap of 90 mm takes 12 to 23
        Plan plain = Fixtures.of(Method.WIRE).plan(10, A4);
        assertThat(Fixtures.reasons(plain, Topic.PINS))
                .singleElement()
                .asString()
                .startsWith("pull pins 35, 36, counted");
        Plan hung = Fixtures.of(Method.WIRE)
                .hanger(new Hanger(Length.ofMm(90), null))
                .plan(10, A4);
        assertThat(Fixtures.reasons(hung, Topic.PINS)).hasSize(2);
        assertThat(Fixtures.reasons(hung, Topic.PINS).get(0)).startsWith("pull pins 35, 36, counted");
        assertThat(Fixtures.reasons(hung, Topic.PINS).get(1))
                .isEqualTo("pull pins 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23 too, for the hanger's gap");
        // 22 pins that all cut holes on 11 in (RFC 3806 twentyTwoHoleUS)
        Plan whole = Fixtures.of(Method.WIRE).punch("rfc3806-22-hole-us").plan(10, LETTER);
        assertThat(Fixtures.reasons(whole, Topic.PINS)).containsExactly("no pin to pull");
        // all 36 pins stay: 35 would be cut open, 12 to 23 stand in the gap
        Plan fixed = Fixtures.of(Method.WIRE)
                .hanger(new Hanger(Length.ofMm(90), null))
                .plan(10, A4, punch(WIRE, 36, "", "none"));
        assertThat(Fixtures.reasons(fixed, Topic.PINS))
                .containsExactly(
                        "pin 35 of the punch ours cuts a hole open or too near the end and cannot be pulled",
                        "pins 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23 of the punch ours cut holes into the"
                                + " hanger's gap and cannot be pulled");
        // a thumb cut between two holes takes none out
        Plan between = Fixtures.of(Method.WIRE)
                .hanger(new Hanger(Length.ofMm(1), null))
                .plan(10, A4, punch(WIRE, 34, "", "all"));
        assertThat(Fixtures.reasons(between, Topic.PINS)).containsExactly("no pin to pull");
    }

    @Test
    void whoAskedForTheWebIsSaid() throws Exception {
        Plan own = Fixtures.of(Method.WIRE).minimumWeb(Length.ofMm(2)).plan(10, A4);
        // 34 pitches of 1/3 in are 287.87 mm: 4.57 on either side, less half of 5/32 in
        assertThat(Fixtures.reasons(own, Topic.ROW))
                .containsExactly("35 whole holes on 297 mm, the first 4.57 mm from the end. Paper left at the ends:"
                        + " 2.58 mm. Minimum, set by the job: 2 mm (no standard gives it). The side guide centres the row"
                        + " (XJDF 2.2, Appendix F)");
        Plan fixed = Fixtures.of(Method.COMB).plan(10, A4, punch(COMB, 20, "10 mm", "all"));
        assertThat(Fixtures.reasons(fixed, Topic.ROW))
                .containsExactly(
                        "20 whole holes on 297 mm, the first 10 mm from the end. Paper left at the ends:"
                                + " 6.5 mm. Minimum, set by the punch: 1 mm (no standard gives it). The punch's side guide is fixed");
    }

    @ParameterizedTest
    @CsvSource({
        // 24 holes from 10 to 286 mm on 297: turned over they begin at 11
        "1,false,either end may go to the side guide,within",
        "0.999,true,the same end to the side guide on every lift,beyond"
    })
    void aRowOffTheMiddleByThePunchingTolerance(String punchingTolerance, boolean sameEnd, String how, String where)
            throws Exception {
        Plan plan = Fixtures.of(Method.COMB)
                .punchingTolerance(Length.ofMm(punchingTolerance))
                .plan(10, A4, punch(COMB, 24, "10 mm", "all"));
        assertThat(plan.row().offset()).isEqualTo(Length.ofMm(1));
        assertThat(plan.sameEndToGuide()).isEqualTo(sameEnd);
        assertThat(Fixtures.reasons(plan, Topic.FEED))
                .containsExactly(how + ". A leaf fed turned over has its holes 1 mm off the others, " + where + " the "
                        + Terms.PUNCHING_TOLERANCE + " of 1 mm");
    }

    @Test
    void theLongestEdgeOfAPunch() throws Exception {
        // 17 in are 51 pitches of 1/3 in; holes of 5/32 in with 3/16 in of web leave room for 49.4
        Length longest = Length.ofInch(17, 1);
        assertThat(Fixtures.of(Method.WIRE).pitch("3:1").plan(10, longest).row().holes())
                .hasSize(50);
        assertThatThrownBy(() -> Fixtures.of(Method.WIRE).pitch("3:1").plan(10, longest.plus(ONE)))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("punch"))
                .hasMessageEndingWith("is longer than the punch generic-W3_1i-square-0t takes (431.8 mm)");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                // nothing goes on 8 mm: which of the job's settings is to change
                "-,generic-W3_1i-square-0t,-,punch,3:1",
                "3:1,-,-,pitch,3:1",
                "3:1,generic-W3_1i-square-0t,-,pitch,3:1",
                "3:1,-,2,minimum-web,2 mm",
                "-,-,2,minimum-web,2 mm"
            })
    void anEdgeThatTakesNoHoleNamesTheSettingToChange(
            String pitch, String punch, String web, String key, String value) {
        Fixtures job =
                Fixtures.of(Method.WIRE).pitch(pitch).punch(punch).minimumWeb(web == null ? null : Length.ofMm(web));
        assertThatThrownBy(() -> job.plan(10, Length.ofMm("7.9"))).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.key()).isEqualTo(key);
            assertThat(e.value()).isEqualTo(value);
            assertThat(e.remedy())
                    .isEqualTo(
                            "choose another pitch, punch" + (web == null ? "" : ", minimum-web") + " or binding edge");
            assertThat(e.known()).isEmpty();
        });
    }

    @Test
    void patternsThatFitInstead() {
        // four holes over 240 mm do not go on A5's 210, two over 80 do; three over 8-1/2 in take 223.8 mm
        assertThatThrownBy(() -> Fixtures.of(Method.RINGS).pitch("R4m-DIN-A4").plan(10, Length.ofMm(210)))
                .isInstanceOfSatisfying(
                        SettingException.class,
                        e -> assertThat(e.known())
                                .contains("R2m-ISO", "R2m-DIN", "R4m-DIN-A5")
                                .doesNotContain("R4m-DIN-A4", "R3i-US", "W3_1i-square-0t"));
    }

    @Test
    void partOfASetIsNoRow() throws Exception {
        // four pins 80 mm apart, the first 20 mm from a fixed guide: on 210 mm the fourth would stand at 260
        Punch four = punch(pattern("R4m-DIN-A4"), 4, "20 mm", "all");
        Plan part = Fixtures.of(Method.RINGS).plan(10, Length.ofMm(210), four);
        assertThat(part.row().holes()).isEmpty();
        assertThat(Fixtures.reasons(part, Topic.ROW))
                .containsExactly("no hole row: the binding edge of 210 mm is too short for a hole with its web");
        assertThat(Fixtures.of(Method.RINGS).plan(10, A4, four).row().holes()).hasSize(4);
    }

    @Test
    void skewOfTwoHolesAndOfOne() throws Exception {
        // ISO 838:1974: 6 mm holes 80 mm apart, 12 mm off: 6 - 4 (rings: common practice, no source) over 80
        Plan rings = Fixtures.of(Method.RINGS).plan(10, A4);
        assertThat(rings.skew())
                .isEqualTo(new Skew(Length.ofMm(2), Length.ofMm(80), Length.ofMm(4), "common practice, no source"));
        // 2 in 80 over 297
        assertThat(rings.skew().riseOverMm(A4)).isEqualTo(7.425);
        Plan one = Fixtures.of(Method.WIRE).plan(10, Length.ofMm(20));
        assertThat(one.row().holes()).hasSize(1);
        assertThat(one.skew()).isNull();
        assertThat(Fixtures.reasons(one, Topic.SKEW))
                .containsExactly("maximum skew: not known, as there is no row that could slant");
    }

    @ParameterizedTest
    @CsvSource({
        // 3.96875 mm of hole less a wire of 1.2 are 2.76875; so much paper lies outside it at 2.76875 + 1.984375, in
        // whole units of 1/914400 in
        "4.753111111,2.77,has no more room in the hole of 3.97 mm",
        "4.753083333,2.77,has 2.77 mm of room in the hole of 3.97 mm",
        "4.75,2.77,has 2.77 mm of room in the hole of 3.97 mm",
        // half of the hole is 1.984375
        "1.985,0,has 2.77 mm of room in the hole of 3.97 mm"
    })
    void whatLimitsTheSkew(String depth, String rise, String why) throws Exception {
        Plan plan = Fixtures.of(Method.WIRE).depth(depth + " mm").plan(10, A4);
        assertThat(Fixtures.reasons(plan, Topic.SKEW))
                .singleElement()
                .asString()
                .startsWith("maximum skew " + rise + " mm over the 279.4 mm from first to last hole. ")
                .contains(why, "1.2 mm thick (common practice, no source)")
                .endsWith("holes 1 mm off their place. A greater skew may reach print");
    }

    @Test
    void aStrandThatFillsTheHoleLetsNothingSlant() throws Exception {
        // an invented pattern for rings: holes of 3 mm, wire thicknesses of 4 mm
        String table = "id,method,row,shape,hole_along,hole_across,spacing,centre,elements\n"
                + "narrow,rings,fixed,round,3 mm,3 mm,80 mm,12 mm,rings mm\n"
                + "unknown,rings,fixed,round,3 mm,3 mm,80 mm,12 mm,staples\n";
        Catalogue shop = Catalogue.of(OwnTables.read(List.of(new NamedText("shop.csv", table))));
        List<String> said = new ArrayList<>();
        for (String id : List.of("narrow", "unknown")) {
            Pattern pattern = shop.patterns().byId(id).orElseThrow();
            Punch punch = shop.punches().generic(pattern);
            RowPlanner planner = new RowPlanner(
                    Fixtures.of(Method.RINGS).job(), pattern, punch, A4, reason -> said.add(Sentences.of(reason)));
            Skew skew = planner.skew(planner.row(), pattern.centre(), Length.ofMm(1));
            assertThat(skew == null ? null : skew.rise()).isEqualTo(id.equals("narrow") ? Length.ZERO : null);
        }
        assertThat(said).contains("maximum skew: not known, as no wire thickness is known for staples");
    }
}
