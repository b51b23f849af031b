package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.block.Leaf;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.catalogue.Method;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
    private static final Length NONE = Length.ZERO;

    @Test
    void fortyTwoLeavesOfCopierOnA4() throws Exception {
        // 42 x 0.0037 in (JCP O-63): at most 4.27 mm, with 1/8 in of clearance 7.44 mm: 5/16 in
        Plan plan = Fixtures.of(Method.WIRE).plan(42, A4);
        assertThat(plan.pattern()).isEqualTo("W3_1i-square-0t");
        assertThat(plan.pitchName()).isEqualTo("3:1");
        assertThat(plan.element().name()).isEqualTo("5/16 in");
        assertThat(plan.closer()).isEqualTo(Length.ofInch(5, 16));
        // XJDF 2.2 F.10: centre at 0.2 in, hole 5/32 in square
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm("5.08"));
        assertThat(plan.holeAlong()).isEqualTo(Length.ofInch(5, 32)).isEqualTo(plan.holeAcross());
        assertThat(plan.round()).isFalse();
        // 34 loops on A4: German Wikipedia "Drahtkammbindung"
        assertThat(plan.loops()).isEqualTo(34);
        // about 20 sheets of 20 lb a lift, evened out: common practice, no source
        assertThat(plan.lifts()).containsExactly(14, 14, 14);
        assertThat(plan.punchingTolerance()).isEqualTo(Length.ofMm(1));
        assertThat(plan.chosen().straddles()).isEmpty();
        assertThat(String.join("\n", plan.because().stream().map(Sentences::of).toList()))
                .contains(
                        "pitch 3:1",
                        "element 5/16 in",
                        "34 whole holes",
                        "pull pins 35, 36",
                        "lifts of 3 x 14 leaves",
                        "XJDF",
                        "common practice, no source");
    }

    @ParameterizedTest
    @CsvSource({
        // binding edge to far side of the hole, punching tolerance zero: centre + half the hole of XJDF 2.2 Appendix F
        "WIRE,3:1,7.06,3.10",
        "WIRE,2:1,9.35,3.00",
        "COMB,9/16 in,6.35,3.175",
        "COMB,12 mm,6.00,3.00"
    })
    void holeZones(Method method, String pitch, double zone, double outside) throws Exception {
        Plan plan = Fixtures.of(method).pitch(pitch).punchingTolerance(NONE).plan(42, A4);
        assertThat(plan.holeZone().mm()).isCloseTo(zone, within(0.005));
        assertThat(plan.edgeDistance().minus(plan.holeAcross().half()).mm()).isCloseTo(outside, within(0.005));
    }

    @Test
    void threeToOneUpToNineSixteenthsThenTwoToOneThenNothing() throws Exception {
        // 3:1 is sold to 9/16 in, 2:1 to 1-1/4 in: common practice, no source
        Fixtures wire = Fixtures.of(Method.WIRE).clearance(NONE);
        Length just = Length.ofInch(9, 16);
        assertThat(wire.planOf(Fixtures.exactly(just), A4).pitchName()).isEqualTo("3:1");
        assertThat(wire.planOf(Fixtures.exactly(just), A4).element().name()).isEqualTo("9/16 in");
        Plan over = wire.planOf(Fixtures.exactly(just.plus(new Length(1))), A4);
        assertThat(over.pitchName()).isEqualTo("2:1");
        assertThat(over.element().name()).isEqualTo("5/8 in");
        Length most = Length.ofInch(5, 4);
        assertThat(wire.planOf(Fixtures.exactly(most), A4).element().name()).isEqualTo("1-1/4 in");
        Plan none = wire.planOf(Fixtures.exactly(most.plus(new Length(1))), A4);
        assertThat(none.element()).isNull();
        assertThat(none.closer()).isNull();
        assertThat(none.because())
                .extracting(Sentences::of)
                .anyMatch(b -> b.contains("no element") && b.contains("1-1/4 in"));
    }

    @Test
    void aStackOverNineSixteenthsDoesNotGoOnForcedThreeToOne() throws Exception {
        Plan plan = Fixtures.of(Method.WIRE).pitch("3:1").planOf(Fixtures.exactly(Length.ofMm(20)), A4);
        assertThat(plan.pitchName()).isEqualTo("3:1");
        assertThat(plan.element()).isNull();
    }

    @Test
    void hundredSheetsWithCoversStraddleHalfAnInch() throws Exception {
        // JCP A55 and L70: 0.490 in, 0.4384 to 0.5416 in; with no clearance 1/2 in at the thin end, 9/16 at the thick
        // end
        Plan plan = Fixtures.of(Method.WIRE)
                .clearance(NONE)
                .stocks("offset-60", "c1s-10pt")
                .plan(100, LETTER);
        assertThat(plan.chosen().straddles().stream().map(Element::name).toList())
                .containsExactly("1/2 in", "9/16 in");
        assertThat(plan.element()).isEqualTo(plan.chosen().straddles().get(1));
        assertThat(plan.because()).extracting(Sentences::of).anyMatch(b -> b.contains("Measure a pack"));
    }

    @ParameterizedTest
    @CsvSource({
        // Wikipedia "Comb binding": capacity in sheets of 20 lb bond by nominal size
        "16,3/16 in", "25,1/4 in", "40,5/16 in", "55,3/8 in", "70,7/16 in", "85,1/2 in", "100,9/16 in", "125,5/8 in",
        "150,3/4 in", "175,7/8 in", "200,1 in", "250,1-1/8 in", "275,1-1/4 in", "325,1-1/2 in", "375,1-3/4 in",
                "425,2 in"
    })
    void combCapacities(int sheets, String size) throws Exception {
        Length thick = Length.ofInch(37L * sheets, 10_000);
        Plan plan = Fixtures.of(Method.COMB).planOf(Fixtures.exactly(thick), LETTER);
        assertThat(plan.element().name()).isEqualTo(size);
        Plan over = Fixtures.of(Method.COMB).planOf(Fixtures.exactly(thick.plus(new Length(1))), LETTER);
        assertThat(over.element() == null
                        || over.element().size().compareTo(plan.element().size()) > 0)
                .isTrue();
        assertThat(plan.loops()).isEqualTo(19);
        assertThat(plan.closer()).isNull();
    }

    @Test
    void bindingMargins() throws Exception {
        // G. Markovits, "Good Wire Work is a Balancing Act", Printing News: 3/8 in at 3:1, 1/2 in at 2:1
        assertThat(Fixtures.of(Method.WIRE).plan(42, A4).bindingMargin()).isEqualTo(Length.ofInch(3, 8));
        assertThat(Fixtures.of(Method.WIRE).pitch("2:1").plan(42, A4).bindingMargin())
                .isEqualTo(Length.ofInch(1, 2));
        // a college print shop's guide: 1/4 in more; the comb's zone is 1/4 in (RFC 3806: 3/16 + 1/16 in)
        assertThat(Fixtures.of(Method.COMB).plan(42, A4).bindingMargin()).isEqualTo(Length.ofInch(1, 2));
        assertThat(Fixtures.of(Method.WIRE)
                        .bindingMargin(Length.ofMm(7))
                        .plan(42, A4)
                        .bindingMargin())
                .isEqualTo(Length.ofMm(7));
    }

    @Test
    void defaultsByMethod() throws Exception {
        Plan coil = Fixtures.of(Method.COIL).plan(42, A4);
        // Printing Impressions, Feb 2005: 4:1 or 6 mm usual
        assertThat(coil.pitchName()).isEqualTo("4:1");
        assertThat(coil.loops()).isZero();
        // at most 4.27 mm + 3.175 mm: the next whole millimetre
        assertThat(coil.element().name()).isEqualTo("8 mm");
        // ISO 838:1974 two holes 80 mm apart; XJDF 2.2 F.3 three holes 4.25 in apart
        assertThat(Fixtures.of(Method.RINGS).plan(42, A4).pattern()).isEqualTo("R2m-ISO");
        assertThat(Fixtures.of(Method.RINGS).plan(42, LETTER).pattern()).isEqualTo("R3i-US");
        assertThat(Fixtures.of(Method.RINGS).plan(42, LETTER).pitch()).isEqualTo(Length.ofInch(17, 4));
    }

    @Test
    void pitchesByNameAndId() throws Exception {
        assertThat(Fixtures.of(Method.COIL).pitch("5:1").plan(42, A4).pattern()).isEqualTo("C5_1i-round");
        assertThat(Fixtures.of(Method.COIL)
                        .pitch("c9.5M-round-0t")
                        .plan(42, A4)
                        .row()
                        .holes())
                .hasSize(30);
        assertThat(Fixtures.of(Method.COMB).pitch("9/16in").plan(42, A4).pattern())
                .isEqualTo("P16_9i-rect-0t");
        assertThat(Fixtures.of(Method.WIRE).pitch("W2_1i-round-0t").plan(42, A4).round())
                .isTrue();
        // Wikipedia, "Comb binding": 7/16 in takes 70 sheets, 3/8 in 55; the next larger sizes in mm are 12 and 10
        assertThat(Fixtures.of(Method.COMB)
                        .pitch("12 mm")
                        .plan(56, A4)
                        .element()
                        .name())
                .isEqualTo("12 mm");
    }

    @Test
    void wrongSettingsListTheKnownOnes() {
        wrong("pitch", Fixtures.of(Method.WIRE).pitch("4:1"), A4, "3:1", "2:1", "W3_1i-square-0t");
        wrong("pitch", Fixtures.of(Method.COIL).pitch("3:1"), A4, "4:1", "5:1");
        wrong("punch", Fixtures.of(Method.WIRE).punch("mine"), A4, "generic-W3_1i-square-0t");
        wrong("punch", Fixtures.of(Method.WIRE).punch("generic-R3i-US"), A4, "generic-W3_1i-square-0t");
        wrong(
                "punch",
                Fixtures.of(Method.WIRE).pitch("2:1").punch("generic-W3_1i-square-0t"),
                A4,
                "generic-W2_1i-round-0t");
        wrong("pitch", Fixtures.of(Method.RINGS).pitch("R4m-DIN-A4"), Length.ofMm(210), "R2m-ISO");
        wrong("punch", Fixtures.of(Method.WIRE).pitch("3:1"), Length.ofMm(500));
        wrong("pitch", Fixtures.of(Method.WIRE).pitch("3:1"), Length.ofMm(8));
    }

    @Test
    void aSizeThatOnlyTheDocumentAsksForHasNoHolesInsteadOfAWrongSetting() throws Exception {
        for (int mm : new int[] {8, 500}) {
            Plan plan = Fixtures.of(Method.WIRE).plan(42, Length.ofMm(mm));
            assertThat(plan.row().holes()).isEmpty();
            assertThat(plan.because()).extracting(Sentences::of).anyMatch(b -> b.startsWith("no hole row"));
        }
    }

    private static void wrong(String key, Fixtures fixtures, Length edge, String... known) {
        assertThatThrownBy(() -> fixtures.plan(42, edge)).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.key()).isEqualTo(key);
            assertThat(e.known()).contains(known);
            assertThat(e.remedy()).isNotBlank();
        });
    }

    @Test
    void aboutTwentySheetsALift() throws Exception {
        // a desktop punch takes about 20 sheets of 20 lb, 1.9 mm: common practice, no source
        assertThat(Fixtures.of(Method.WIRE).plan(20, A4).lifts()).containsExactly(20);
        assertThat(Fixtures.of(Method.WIRE).plan(21, A4).lifts()).containsExactly(11, 10);
        assertThat(Fixtures.of(Method.WIRE).plan(43, A4).lifts()).containsExactly(15, 14, 14);
        // covers go by themselves
        assertThat(Fixtures.of(Method.WIRE)
                        .stocks("bond-20", "coverboard-30")
                        .plan(42, A4)
                        .lifts())
                .containsExactly(1, 14, 14, 14, 1);
        assertThat(Fixtures.of(Method.WIRE)
                        .stocks("bond-20", "clear-7mil")
                        .plan(10, A4)
                        .lifts())
                .containsExactly(1, 10, 1);
    }

    @Test
    void liftsAddUpAndKeepWithinThePunch() {
        // property, seed 838
        Random random = new Random(838);
        List<Stock> stocks = Catalogue.builtIn().stocks().all();
        for (int run = 0; run < 300; run++) {
            Map<Stock.Kind, LiftLimit> limits = new EnumMap<>(Stock.Kind.class);
            for (Stock.Kind kind : Stock.Kind.values()) {
                limits.put(
                        kind,
                        new LiftLimit(
                                Length.ofMm(1 + random.nextInt(3)),
                                random.nextBoolean() ? 1 + random.nextInt(20) : null));
            }
            List<Leaf> leaves = new ArrayList<>();
            int count = 1 + random.nextInt(120);
            for (int i = 0; i < count; i++) {
                leaves.add(new Leaf(
                        random.nextInt(20) == 0 ? Leaf.Role.FOLD_OUT : Leaf.Role.TEXT,
                        stocks.get(random.nextInt(random.nextBoolean() ? 5 : stocks.size())),
                        1,
                        null,
                        1 + random.nextInt(2),
                        Length.ZERO));
            }
            List<Integer> lifts = LiftMaker.lifts(leaves, limits::get);
            assertThat(lifts).allMatch(l -> l > 0);
            assertThat(lifts.stream().mapToInt(Integer::intValue).sum()).isEqualTo(count);
            int at = 0;
            for (int lift : lifts) {
                List<Leaf> in = leaves.subList(at, at + lift);
                assertThat(in.stream().map(l -> l.stock().kind()).distinct()).hasSize(1);
                LiftLimit limit = limits.get(in.get(0).stock().kind());
                BigDecimal thick = in.stream().map(Leaf::nominalUm).reduce(BigDecimal.ZERO, BigDecimal::add);
                int layers = in.stream().mapToInt(Leaf::layers).sum();
                assertThat(lift == 1 || thick.compareTo(limit.thickness().micrometres()) <= 0)
                        .isTrue();
                assertThat(lift == 1 || limit.sheets() == null || layers <= limit.sheets())
                        .isTrue();
                at += lift;
            }
        }
    }

    @Test
    void boardAndFilmGoByTheirOwnLimits() {
        Stock board = Catalogue.builtIn().stocks().byId("coverboard-18").orElseThrow();
        Stock film = Catalogue.builtIn().stocks().byId("film-75").orElseThrow();
        List<Leaf> leaves = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            leaves.add(new Leaf(Leaf.Role.TAB, i < 3 ? board : film, null, null));
        }
        // by hand: three boards of 0.457 mm, two at once in 1 mm; three films, one at once by number
        List<Integer> lifts = LiftMaker.lifts(
                leaves,
                kind -> kind == Stock.Kind.BOARD
                        ? new LiftLimit(Length.ofMm(1), null)
                        : new LiftLimit(Length.ofMm(2), 1));
        assertThat(lifts).containsExactly(2, 1, 1, 1, 1);
    }

    @Test
    void elementNeverShrinksWithTheStack() throws Exception {
        // property over every seventh number of leaves to 300
        Length before = Length.ZERO;
        for (int leaves = 1; leaves <= 300; leaves += 7) {
            Plan plan = Fixtures.of(Method.WIRE).plan(leaves, A4);
            Length size =
                    plan.element() == null ? Length.ofMm(1000) : plan.element().size();
            assertThat(size).isGreaterThanOrEqualTo(before);
            before = size;
        }
        assertThat(before).isEqualTo(Length.ofMm(1000));
    }
}
