package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.A5;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Patterns;
import io.bindprep.catalogue.Punch;
import io.bindprep.report.words.Sentences;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleRowTest {
    private static Pattern pattern(String id) {
        return Catalogue.builtIn().patterns().byId(id).orElseThrow();
    }

    private static HoleRow row(Pattern pattern, Punch punch, Length edge) {
        return new RowMaker(pattern, punch, edge, punch.minimumWeb(), null).row();
    }

    private static HoleRow generic(String id, Length edge) {
        return row(pattern(id), Catalogue.builtIn().punches().generic(pattern(id)), edge);
    }

    @ParameterizedTest
    @CsvSource({
        // 3:1: 34 on A4 (German Wikipedia "Drahtkammbindung"); 32 on Letter and 24 on A5: common practice, no source
        "W3_1i-square-0t,297 mm,34,8.800",
        "W3_1i-square-0t,11 in,32,8.467",
        "W3_1i-square-0t,210 mm,24,7.633",
        // 2:1: 23 on A4, 21 on Letter (XJDF 2.2, F.10); 16 on A5: common practice, no source
        "W2_1i-round-0t,297 mm,23,8.800",
        "W2_1i-round-0t,11 in,21,12.700",
        "W2_1i-round-0t,210 mm,16,9.750",
        "W2_1i-square-0t,297 mm,23,8.800",
        // comb: 19 on 11 in (RFC 3806 nineteenHoleUS), 21 on A4 (Wikipedia "Comb binding")
        "P16_9i-rect-0t,11 in,19,11.1125",
        "P16_9i-rect-0t,297 mm,21,5.625",
        // metric coil: 30 on 297 mm, 26 on 257 mm (RFC 3806 metric30Hole, metric26Hole)
        "C9.5m-round-0t,297 mm,30,10.75",
        "C9.5m-round-0t,257 mm,26,9.75",
        // rings: counts and spacings of XJDF 2.2 F.2 to F.4, first centre = (edge - span) / 2
        "R2m-ISO,297 mm,2,108.5",
        "R2m-DIN,297 mm,2,108.5",
        "R2m-ISO,210 mm,2,65.0",
        "R3i-US,11 in,3,31.75",
        "R4m-DIN-A4,297 mm,4,28.5"
    })
    void publishedCountsAndCentredFirstHoles(String id, String edge, int count, double firstMm) {
        HoleRow row = generic(id, Length.parse(edge));
        assertThat(row.holes()).hasSize(count);
        assertThat(row.holes().get(0).centre().mm()).isCloseTo(firstMm, within(0.0005));
        assertThat(row.holes().get(0).pin()).isEqualTo(1);
        assertThat(row.fixedPins()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 216:2007, 7.1: A4 may be cut 2 mm short; A4 as 841 pt; 11 in cut short by a college print shop's 1/16 in.
        // The published counts hold on all of them.
        "W3_1i-square-0t,295 mm,34",
        "W3_1i-square-0t,841 pt,34",
        "W2_1i-square-0t,841 pt,23",
        "P16_9i-rect-0t,841 pt,21",
        "W3_1i-square-0t,277.8125 mm,32",
        "W2_1i-square-0t,277.8125 mm,21",
        "P16_9i-rect-0t,277.8125 mm,19",
        "C9.5m-round-0t,295 mm,30"
    })
    void countsHoldOnSheetsCutShort(String id, String edge, int count) {
        assertThat(generic(id, Length.parse(edge)).holes()).hasSize(count);
    }

    @Test
    void rfc3806TwentyTwoHolesOnElevenInch() throws Exception {
        // RFC 3806 4.2.1 twentyTwoHoleUS: 22 at 1/2 in on 11 in, so the first centre lies at (279.4 - 266.7) / 2 = 6.35
        // mm
        HoleRow row = HoleRow.centred(pattern("W2_1i-round-0t"), LETTER, 22);
        assertThat(row.holes().get(0).centre()).isEqualTo(Length.ofMm("6.35"));
        Plan plan = Fixtures.of(Method.WIRE).punch("rfc3806-22-hole-us").plan(42, LETTER);
        assertThat(plan.row().holes()).hasSize(22).isEqualTo(row.holes());
    }

    @Test
    void letterAtThreeToOneIsExactlyThirtyThreePitches() {
        // 11 in = 33 x 1/3 in: in units of 1/914400 in without remainder
        assertThat(LETTER.units() % pattern("W3_1i-square-0t").pitch().units()).isZero();
        HoleRow row = generic("W3_1i-square-0t", LETTER);
        // pin 33 would stand exactly on the end
        assertThat(row.holes().get(31).centre().plus(pattern("W3_1i-square-0t").pitch()))
                .isEqualTo(LETTER);
        assertThat(row.pulledPins()).startsWith(33);
    }

    @Test
    void holesThatTouchTheEndAreRefused() {
        // 20 comb holes on 11 in leave exactly no web; a 17th 2:1 hole on 210 mm leaves 0.225 mm: by arithmetic
        assertThat(HoleRow.centred(pattern("P16_9i-rect-0t"), LETTER, 20).minimumWeb())
                .isEqualTo(Length.ZERO);
        assertThat(HoleRow.centred(pattern("W2_1i-round-0t"), A5, 17).minimumWeb())
                .isEqualTo(Length.ofMm("0.225"));
        assertThat(generic("P16_9i-rect-0t", LETTER).holes()).hasSize(19);
        assertThat(generic("W2_1i-round-0t", A5).holes()).hasSize(16);
        // a web of nothing asked for: touching the end still leaves no paper, so one hole fewer is whole only above
        // zero
        assertThat(RowMaker.count(pattern("P16_9i-rect-0t"), LETTER, new Length(1), 31))
                .isEqualTo(19);
    }

    @Test
    void pinsBesideTheSheetArePulled() {
        // A4 at 3:1, first centre 8.8 mm: pin 35 stands at 296.67 mm, half on the sheet; pin 36 clears it by 6.15 mm,
        // under a pitch; pin 37 by 14.6 mm
        HoleRow row = generic("W3_1i-square-0t", A4);
        assertThat(row.pulledPins()).containsExactly(35, 36);
        assertThat(row.holes().stream().map(Hole::pin).toList())
                .isEqualTo(IntStream.rangeClosed(1, 34).boxed().toList());
    }

    @Test
    void fixedGuideLeavesWhatCannotBePulled() throws Exception {
        // a punch of our own invention: the guide stands half a pitch off pin 1, pins 1 and 2 come out
        Punch own = Catalogue.of(OwnTables.read(List.of(new NamedText("shop.csv", """
                        id,pattern,pins,guide,first_pin,capacity,pullable,longest_edge,minimum_web,source
                        ours,W3_1i-square-0t,40,fixed,1/6 in,2 mm,1-2,14 in,3 mm,our own
                        """))))
                .punches()
                .byId("ours")
                .orElseThrow();
        HoleRow row = row(pattern("W3_1i-square-0t"), own, A4);
        // pin 1 at 4.233 mm leaves 2.25 mm, pin 35 at 292.1 leaves 2.92, pin 36 misses the sheet by 1.6
        assertThat(row.pulledPins()).containsExactly(1);
        assertThat(row.fixedPins()).containsExactly(35);
        assertThat(row.holes()).hasSize(33);
        Plan plan = Fixtures.of(Method.WIRE).plan(42, A4, own);
        assertThat(plan.row()).isEqualTo(row);
        assertThat(plan.because())
                .extracting(Sentences::of)
                .anyMatch(b -> b.contains("pin 35 ") && b.contains("cannot be pulled"));
    }

    @Test
    void rowsNeverLeaveTheSheet() {
        // property, seed 3806: every hole whole with its web, evenly spaced, centred, every pin accounted for
        Random random = new Random(3806);
        for (Pattern pattern : Catalogue.builtIn().patterns().all()) {
            Punch punch = Catalogue.builtIn().punches().generic(pattern);
            for (int run = 0; run < 100; run++) {
                Length edge = new Length(Length.ofMm(60).units()
                        + random.nextLong(Length.ofMm(371).units()));
                int count = RowMaker.count(pattern, edge, punch.minimumWeb(), punch.pins());
                if (count == 0) {
                    continue;
                }
                HoleRow row = row(pattern, punch, edge);
                Length half = pattern.holeAlong().half();
                assertThat(row.holes()).hasSize(count);
                Length first = row.holes().get(0).centre();
                Length last = row.holes().get(count - 1).centre();
                assertThat(first.minus(half)).isGreaterThanOrEqualTo(punch.minimumWeb());
                assertThat(edge.minus(last).minus(half)).isGreaterThanOrEqualTo(punch.minimumWeb());
                assertThat(edge.minus(last).minus(first).abs().units()).isLessThanOrEqualTo(1);
                assertThat(row.minimumWeb()).isGreaterThanOrEqualTo(punch.minimumWeb());
                if (pattern.repeating() && count < punch.pins()) {
                    // one more would not keep its web
                    assertThat(HoleRow.centred(pattern, edge, count + 1).minimumWeb())
                            .isLessThan(punch.minimumWeb());
                }
                assertThat(row.pulledPins()).noneMatch(p -> p <= count).hasSizeLessThanOrEqualTo(2);
            }
        }
    }

    @Test
    void everyPatternOfTheCatalogueIsThere() {
        // XJDF 2.2 Appendix F: 25 patterns; three coil pitches that are in no standard
        assertThat(Catalogue.builtIn().patterns().all()).hasSize(28);
        assertThat(Catalogue.builtIn().patterns().all().stream()
                        .filter(p -> p.source().startsWith("XJDF2.2")))
                .hasSize(25);
        assertThat(Catalogue.builtIn().patterns().all().stream()
                        .filter(p -> p.source().contains("common practice, no source"))
                        .map(Pattern::pitchName))
                .containsExactlyInAnyOrder("4:1", "5:1", "6 mm");
        assertThat(Patterns.notes().get(0))
                .startsWith("Copyright (c) 2000-2020")
                .contains("(CIP4)");
        assertThat(Catalogue.builtIn().patterns().all())
                .allSatisfy(
                        p -> assertThat(Catalogue.builtIn().punches().generic(p).pattern())
                                .isEqualTo(p.id()));
    }

    @ParameterizedTest
    @CsvSource({
        // XJDF 2.2 Appendix F, default distance of the centre in points of 1/72 in, two decimals
        "W3_1i-square-0t,14.40", "W2_1i-round-0t,17.50", "P16_9i-rect-0t,13.50", "P12m-rect-0t,12.76",
        "C9.5m-round-0t,31.18", "R2m-ISO,34.02", "R2m-DIN,31.18", "R3i-US,29.25"
    })
    void axesAreThoseOfXjdf(String id, double points) {
        // comb: 3/16 in is 13.50 pt; XJDF prints 13.54
        assertThat(pattern(id).centre().inches() * 72).isCloseTo(points, within(0.005));
    }
}
