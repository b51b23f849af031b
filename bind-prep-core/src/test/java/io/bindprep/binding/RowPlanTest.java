package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Hole rows with gaps, webs, feeding and skew; lengths along the edge worked by hand from pitch, hole and edge. */
class RowPlanTest {
    private static final Hanger NINETY = new Hanger(Length.ofMm(90), null);

    private static Punch punch(String pattern, int pins, String firstPin, String pullable, String web)
            throws Exception {
        String table = "id,pattern,pins,guide,first_pin,capacity,pullable,longest_edge,minimum_web,source\nours,"
                + pattern
                + "," + pins + "," + (firstPin.isEmpty() ? "movable" : "fixed") + "," + firstPin + ",2 mm," + pullable
                + ",17 in," + web + ",our own\n";
        return Catalogue.of(OwnTables.read(List.of(new NamedText("shop.csv", table))))
                .punches()
                .byId("ours")
                .orElseThrow();
    }

    private static List<Integer> pins(int from, int to) {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }

    @Test
    void aGapForTheHangerTakesOutTheHolesInTheMiddle() throws Exception {
        // A4's long edge at 3:1 (34 holes, German Wikipedia "Drahtkammbindung"): centres 4.23, 12.7 ... 46.57, 55.03 mm
        // off the middle; less half the hole of 3.97 mm the sixth comes to 44.58, inside 45, and the seventh to 53.05
        HoleRow row = Fixtures.of(Method.WIRE).hanger(NINETY).plan(10, A4).row();
        assertThat(row.gap().pulledPins()).isEqualTo(pins(12, 23));
        assertThat(row.runs()).containsExactly(11, 11);
        assertThat(row.pulledPins()).startsWith(12).endsWith(23, 35, 36);
        assertThat(row.gap().start()).isEqualTo(Length.ofMm("103.5"));
        assertThat(row.gap().end()).isEqualTo(Length.ofMm("193.5"));
        // at 2:1 (23 holes, XJDF 2.2 F.10) one stands in the middle; 12.7 x 3 - 3.175 is inside 45, 12.7 x 4 - 3.175
        // not
        Plan wide = Fixtures.of(Method.WIRE).pitch("2:1").hanger(NINETY).plan(10, A4);
        assertThat(wide.row().gap().pulledPins()).isEqualTo(pins(9, 15));
        assertThat(wide.pieces()).containsExactly(8, 8);
        assertThat(wide.loops()).isEqualTo(16);
        assertThat(wide.because())
                .filteredOn(r -> r.topic() == Reason.Topic.HANGER)
                .extracting(Sentences::of)
                .singleElement()
                .asString()
                .contains("90 mm", "7 holes", "two pieces, for 8 and 8 holes");
    }

    @Test
    void aThumbCutKeepsItsWebToTheHoles() throws Exception {
        // 60 mm with 3/16 in on both sides is 69.525 mm: more than a gap of 60
        Hanger tight = new Hanger(Length.ofMm(60), new Hanger.ThumbCut(Length.ofMm(60), Length.ofMm(20)));
        Gap gap = Fixtures.of(Method.WIRE).hanger(tight).plan(10, A4).row().gap();
        assertThat(gap.end().minus(gap.start())).isEqualTo(Length.ofMm("69.525"));
        assertThat(gap.thumbCut()).isEqualTo(new Gap.ThumbCut(Length.ofMm(60), Length.ofMm(20)));
    }

    @Test
    void aHangerThatLeavesNoRowOrHasNoLoopsIsAnError() {
        Hanger most = new Hanger(Length.ofMm(260), null);
        assertThatThrownBy(() -> Fixtures.of(Method.WIRE).hanger(most).plan(10, A4))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("hanger"));
        assertThatThrownBy(() -> Fixtures.of(Method.RINGS).hanger(NINETY).plan(10, A4))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("hanger"));
    }

    @Test
    void pinsOverTheGapThatCannotBePulledAreSaid() throws Exception {
        Plan plan = Fixtures.of(Method.WIRE)
                .hanger(NINETY)
                .plan(10, A4, punch("W3_1i-square-0t", 36, "", "12-20 35 36", "3/16 in"));
        assertThat(plan.row().gap().fixedPins()).containsExactly(21, 22, 23);
        assertThat(plan.because()).extracting(Sentences::of).anyMatch(t -> t.contains("pins 21, 22, 23 "));
        // three more holes on the right than on the left: a leaf turned over would not match
        assertThat(plan.sameEndToGuide()).isTrue();
    }

    @Test
    void aGapOnARowThatStandsOffTheMiddleStaysInPairs() throws Exception {
        // first pin 9.2 mm from the guide, 34 holes: centres lie 0.4 mm further from the left end than from the right,
        // so by itself the hole at 44.58 - 0.4 on the one side and 44.58 + 0.4 on the other are inside 45; a gap of
        // 89.2 mm takes only the one
        HoleRow row = Fixtures.of(Method.WIRE)
                .hanger(new Hanger(Length.ofMm("89.2"), null))
                .plan(10, A4, punch("W3_1i-square-0t", 36, "9.2 mm", "all", "3/16 in"))
                .row();
        assertThat(row.gap().pulledPins()).isEqualTo(pins(12, 23));
        assertThat(row.runs()).containsExactly(11, 11);
    }

    @Test
    void theJobsWebGoesBeforeThePunchs() throws Exception {
        // 22 holes at 2:1 on 11 in leave 3.18 mm (RFC 3806 4.2.1 twentyTwoHoleUS), 21 leave 9.53 mm (XJDF 2.2 F.10)
        Fixtures wide = Fixtures.of(Method.WIRE).pitch("2:1");
        assertThat(wide.plan(10, LETTER).row().holes()).hasSize(21);
        assertThat(wide.minimumWeb(Length.ofMm(3)).plan(10, LETTER).row().holes())
                .hasSize(22);
        assertThat(wide.minimumWeb(Length.ofMm("3.2")).plan(10, LETTER).row().holes())
                .hasSize(21);
        assertThat(wide.minimumWeb(Length.ofMm(10)).plan(10, LETTER).row().holes())
                .hasSize(20);
        // no web asked for: a 20th comb hole on 11 in would leave none (RFC 3806 nineteenHoleUS has 19)
        assertThat(Fixtures.of(Method.COMB)
                        .minimumWeb(Length.ZERO)
                        .plan(10, LETTER)
                        .row()
                        .holes())
                .hasSize(19);
        assertThatThrownBy(() -> wide.minimumWeb(Length.ofMm(40)).plan(10, Length.ofMm(60)))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("minimum-web"));
    }

    @Test
    void aMovableGuideIsSetSoThatNoPinStaysStuck() throws Exception {
        // 36 pins, the first two to be pulled: with pin 1 on the first of 34 holes pins 35 and 36 would have to go
        Plan plan = Fixtures.of(Method.WIRE).plan(10, A4, punch("W3_1i-square-0t", 36, "", "1-2", "3/16 in"));
        assertThat(plan.row().fixedPins()).isEmpty();
        assertThat(plan.row().pulledPins()).containsExactly(1, 2);
        assertThat(plan.row().holes().get(0).pin()).isEqualTo(3);
        assertThat(plan.row().holes().get(0).centre().mm()).isCloseTo(8.8, within(0.0005));
    }

    @Test
    void aRowOffTheMiddleAsksForTheSameEndAtTheGuide() throws Exception {
        // centres 12.7 to 283.633 mm on 297: a leaf turned over lies 0.667 mm off
        Punch own = punch("W3_1i-square-0t", 40, "1/6 in", "1-2", "3 mm");
        Plan loose = Fixtures.of(Method.WIRE).plan(10, A4, own);
        assertThat(loose.row().offset().mm()).isCloseTo(0.6667, within(0.0005));
        assertThat(loose.sameEndToGuide()).isFalse();
        Plan strict =
                Fixtures.of(Method.WIRE).punchingTolerance(Length.ofMm("0.5")).plan(10, A4, own);
        assertThat(strict.sameEndToGuide()).isTrue();
        assertThat(strict.because())
                .filteredOn(r -> r.topic() == Reason.Topic.FEED)
                .extracting(Sentences::of)
                .singleElement()
                .asString()
                .contains("same end to the side guide", "0.67 mm");
        for (Method method : Method.values()) {
            assertThat(Fixtures.of(method).plan(10, A4).sameEndToGuide())
                    .as(method.name())
                    .isFalse();
        }
    }

    @ParameterizedTest
    @CsvSource({
        // hole less wire thickness: 3.969 - 1.2 over 31 x 8.4667; wire thickness: common practice, no source
        "WIRE,3:1,2.769,262.467",
        // the paper outside the hole, 3 mm (XJDF 2.2 F.10: centre 3 mm + d/2), is less than 6.35 - 1.5; 20 x 12.7
        "WIRE,2:1,3.0,254.0",
        // 4.4 - 2.159 (0.085 in: Printing Impressions, Feb 2005) over 42 x 6.35
        "COIL,4:1,2.241,266.7",
        // 3.175 - 1; 18 x 14.2875
        "COMB,9/16 in,2.175,257.175"
    })
    void skewByHand(Method method, String pitch, double rise, double over) throws Exception {
        Skew skew = Fixtures.of(method).pitch(pitch).plan(10, LETTER).skew();
        assertThat(skew.rise().mm()).isCloseTo(rise, within(0.001));
        assertThat(skew.over().mm()).isCloseTo(over, within(0.001));
        assertThat(skew.degrees()).isCloseTo(Math.toDegrees(Math.atan(rise / over)), within(0.001));
        assertThat(skew.wireThicknessSource()).isNotBlank();
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void pulledPinsLeaveOnlyWholeHolesWithTheirWeb(int seed) throws Exception {
        Random random = new Random(seed);
        Pattern pattern =
                List.of("W3_1i-square-0t", "W2_1i-round-0t", "P16_9i-rect-0t", "C9.5m-round-0t", "C5_1i-round").stream()
                        .map(id -> Catalogue.builtIn().patterns().byId(id).orElseThrow())
                        .toList()
                        .get(random.nextInt(5));
        int count = 5 + random.nextInt(60);
        String first = random.nextBoolean() ? "" : random.nextInt(300) / 10.0 + " mm";
        String pullable =
                List.of("all", "none", "1-3", "1 " + (count - 1) + "-" + count).get(random.nextInt(4));
        Punch punch = punch(pattern.id(), count, first, pullable, random.nextInt(80) / 10.0 + " mm");
        Length edge = new Length(
                Length.ofMm(60).units() + random.nextInt((int) Length.ofMm(370).units()));
        Length web = punch.minimumWeb().compareTo(Length.ZERO) > 0 ? punch.minimumWeb() : new Length(1);
        Hanger hanger = random.nextBoolean() ? null : new Hanger(Length.ofMm(5L + random.nextInt(100)), null);
        HoleRow row = new RowMaker(pattern, punch, edge, web, hanger).row();

        Length half = pattern.holeAlong().half();
        Set<Integer> used = new HashSet<>(row.pulledPins());
        for (Hole hole : row.holes()) {
            assertThat(used.add(hole.pin())).as("pin %d once", hole.pin()).isTrue();
            assertThat(hole.centre().minus(half)).isGreaterThanOrEqualTo(web);
            assertThat(edge.minus(hole.centre()).minus(half)).isGreaterThanOrEqualTo(web);
            if (row.gap() != null && !row.gap().fixedPins().contains(hole.pin())) {
                assertThat(hole.centre().plus(half).compareTo(row.gap().start()) <= 0
                                || hole.centre().minus(half).compareTo(row.gap().end()) >= 0
                                // half of an odd unit is rounded down
                                || hole.centre()
                                                .times(2)
                                                .minus(edge)
                                                .abs()
                                                .minus(pattern.holeAlong())
                                                .compareTo(row.gap()
                                                        .end()
                                                        .minus(row.gap().start()))
                                        >= 0)
                        .as("hole %s keeps clear of %s", hole, row.gap())
                        .isTrue();
            }
        }
        assertThat(row.pulledPins()).allMatch(punch::canPull).isSorted();
        assertThat(row.fixedPins()).noneMatch(punch::canPull).doesNotContainAnyElementsOf(used);
        assertThat(row.runs().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(row.holes().size());
        if (punch.firstPin() == null && pullable.equals("all") && !row.holes().isEmpty()) {
            assertThat(row.offset().units()).isLessThanOrEqualTo(1);
        }
        if (!row.holes().isEmpty()) {
            // every pin from the first to the last hole is there, pulled or stuck: none is forgotten
            int low = row.holes().get(0).pin();
            int high = row.holes().get(row.holes().size() - 1).pin();
            List<Integer> all = new ArrayList<>(used);
            all.addAll(row.fixedPins());
            assertThat(all).containsAll(pins(low, high));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void inchesAndMillimetresPlanAlike(int seed) throws Exception {
        Random random = new Random(seed);
        String[] inches = new String[4];
        String[] mm = new String[4];
        int[] sixteenths = {128 + random.nextInt(140), 1 + random.nextInt(4), 16 + random.nextInt(48), random.nextInt(6)
        };
        for (int i = 0; i < 4; i++) {
            inches[i] = sixteenths[i] + "/16 in";
            // 1/16 in is 1.5875 mm
            mm[i] = new java.math.BigDecimal("1.5875").multiply(new java.math.BigDecimal(sixteenths[i])) + " mm";
        }
        assertThat(planned(inches)).isEqualTo(planned(mm));
    }

    private static Plan planned(String[] lengths) throws Exception {
        return Fixtures.of(Method.WIRE)
                .minimumWeb(Length.parse(lengths[1]))
                .hanger(new Hanger(Length.parse(lengths[2]), null))
                .clearance(Length.parse(lengths[3]))
                .plan(30, Length.parse(lengths[0]));
    }
}
