package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import io.bindprep.wording.Terms;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choice of pattern, punch and settings for a job, and its reasons. */
class PunchChoiceTest {
    private static final Length ONE = new Length(1);

    private static List<String> reasons(Plan plan, Topic topic) {
        return plan.because().stream()
                .filter(r -> r.topic() == topic)
                .map(Sentences::of)
                .toList();
    }

    private static Pattern pattern(String id) {
        return Catalogue.builtIn().patterns().byId(id).orElseThrow();
    }

    private static Punch generic(String pattern) {
        return Catalogue.builtIn().punches().generic(pattern(pattern));
    }

    @Test
    void theWiresPitchGoesByTheStack() throws Exception {
        // 9/16 in at 3:1 takes 130 sheets of 20 lb bond (common practice, no source, from memory), 0.0037 in each (JCP
        // O-63)
        Length most = Length.ofInch(481, 1000);
        Plan fine = Fixtures.of(Method.WIRE).clearance(null).planOf(Fixtures.exactly(most), A4);
        assertThat(reasons(fine, Topic.PITCH))
                .containsExactly(
                        "pitch 3:1: the largest 3:1 wire, 9/16 in, takes the stack of 12.22 mm (common practice, no"
                                + " source)");
        Plan wide = Fixtures.of(Method.WIRE).clearance(null).planOf(Fixtures.exactly(most.plus(ONE)), A4);
        assertThat(reasons(wide, Topic.PITCH))
                .containsExactly("pitch 2:1: the largest 3:1 wire, 9/16 in, does not take the stack of 12.22 mm (common"
                        + " practice, no source)");
    }

    /** Source: CIP4 XJDF 2.2, F.2 to F.8; of three and eleven holes it has one pattern each, and of 6 in between two one. */
    @ParameterizedTest
    @CsvSource({
        "3 holes,R3i-US",
        "3-hole,R3i-US",
        "three rings,R3i-US",
        "11 holes,R11m-7h4s",
        "6 in,R2i-US-b",
    })
    void aRowOfRingsGoesByItsHoles(String typed, String pattern) throws Exception {
        assertThat(Fixtures.of(Method.RINGS).pitch(typed).plan(10, A4).pattern())
                .isEqualTo(pattern);
    }

    /** Source: CIP4 XJDF 2.2, F.2: ISO 838, DIN 5005 and RFC 3806 have two holes at 80 mm. */
    @Test
    void aRowThatSeveralPatternsHaveIsAskedFor() {
        assertThatThrownBy(() -> Fixtures.of(Method.RINGS).pitch("80 mm").plan(10, A4))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.known()).contains("R2m-DIN", "R2m-ISO", "R2m-MIB"))
                .hasMessageContaining("\"80 mm\" can be several patterns of rings: say which");
        assertThatThrownBy(() -> Fixtures.of(Method.WIRE).pitch("3 holes").plan(10, A4))
                .hasMessageContaining("no pitch or pattern \"3 holes\" is known for wire");
    }

    @ParameterizedTest
    @CsvSource({"11", "14", "17"})
    void threeRingsOnAUsSheetAsCut(int inches) throws Exception {
        // ASME Y14.1 A and B and legal are 11, 17 and 14 in; 1/16 in either way by a college print shop's guide
        Length edge = Length.ofInch(inches, 1);
        Length cut = Length.ofInch(1, 16);
        // the longest edge of a generic punch is 17 in
        List<Length> within =
                inches == 17 ? List.of(edge, edge.minus(cut)) : List.of(edge, edge.minus(cut), edge.plus(cut));
        for (Length length : within) {
            Plan plan = Fixtures.of(Method.RINGS).plan(10, length);
            assertThat(plan.pattern()).isEqualTo("R3i-US");
            assertThat(reasons(plan, Topic.PITCH))
                    .containsExactly("three rings R3i-US (XJDF 2.2 F.3): the binding edge of " + length.inMm()
                            + " is that of a US sheet");
        }
        Plan shorter = Fixtures.of(Method.RINGS).plan(10, edge.minus(cut).minus(ONE));
        assertThat(shorter.pattern()).isEqualTo("R2m-ISO");
        assertThat(reasons(shorter, Topic.PITCH))
                .singleElement()
                .asString()
                .startsWith("two rings R2m-ISO (ISO 838:1974): the binding edge of ")
                .endsWith(" is not that of a US sheet");
    }

    @ParameterizedTest
    @CsvSource({
        "COIL,4:1,5:1",
        "COIL,5:1,4:1",
        "COIL,6 mm,4:1",
        "COMB,9/16 in,12 mm",
        "COMB,12 mm,9/16 in",
        "WIRE,2:1,3:1"
    })
    void theOtherPitchOfAMethod(Method method, String pitch, String other) throws Exception {
        PlanChoices choices = Fixtures.of(method).pitch(pitch).choicesOf(Fixtures.exactly(Length.ofMm(3)), A4);
        assertThat(choices.settings()).extracting(Plan::pitchName).containsOnly(pitch);
        assertThat(choices.others()).hasSize(3).extracting(Plan::pitchName).containsOnly(other);
        assertThat(reasons(choices.others().get(0), Topic.PITCH))
                .containsExactly("pitch " + other + ", for comparison");
    }

    @Test
    void aPunchAndAPitchMustAgree() throws Exception {
        Punch square = generic("W2_1i-square-0t");
        // the pitch's name says nothing of the hole's shape, the pattern's id does
        assertThat(Fixtures.of(Method.WIRE).pitch("2:1").plan(10, A4, square).pattern())
                .isEqualTo("W2_1i-square-0t");
        assertThat(Fixtures.of(Method.WIRE)
                        .pitch("w2_1I-square-0t")
                        .plan(10, A4, square)
                        .pattern())
                .isEqualTo("W2_1i-square-0t");
        for (String pitch : List.of("W2_1i-round-0t", "3:1")) {
            SettingException e = catchThrowableOfType(
                    SettingException.class,
                    () -> Fixtures.of(Method.WIRE).pitch(pitch).plan(10, A4, square));
            assertThat(e)
                    .hasMessage("the punch generic-W2_1i-square-0t cuts W2_1i-square-0t, the job's pitch is " + pitch);
            assertThat(e.known())
                    .contains("generic-W2_1i-square-0t", "generic-W3_1i-square-0t", "rfc3806-22-hole-us")
                    .allMatch(id -> id.contains("W") || id.startsWith("rfc3806"));
        }
        assertThatThrownBy(() -> Fixtures.of(Method.COMB).plan(10, A4, square))
                .hasMessage("the punch generic-W2_1i-square-0t cuts W2_1i-square-0t, which is not for comb");
        assertThat(reasons(Fixtures.of(Method.WIRE).plan(10, A4, square), Topic.PITCH))
                .containsExactly("pitch 2:1, which the punch generic-W2_1i-square-0t cuts");
        assertThat(reasons(Fixtures.of(Method.WIRE).pitch("2:1").plan(10, A4), Topic.PITCH))
                .containsExactly("pitch 2:1 as the job says");
    }

    @Test
    void aDepthOfTheJobsOwnStandsInItsPlace() throws Exception {
        PlanChoices choices = Fixtures.of(Method.WIRE).depth("5.25 mm").choicesOf(Fixtures.exactly(Length.ofMm(3)), A4);
        assertThat(choices.settings())
                .extracting(p -> p.depth().setting().name())
                .containsExactly("shallow", "5.25 mm", "middle", "deep");
    }

    @ParameterizedTest
    @CsvSource({
        // half of 3 mm: at that the hole is open; deeper than an inch is a slip of the unit (our own)
        "1.5 mm,holes whose centre lies 1.5 mm from the binding edge of 3 mm would be open at it",
        "25.401 mm,holes whose centre lies 25.4 mm from the binding edge are deeper than any punch cuts them"
    })
    void aDepthBeyondTheLimitsSaysWhy(String depth, String why) {
        assertThatThrownBy(() ->
                        Fixtures.of(Method.COMB).pitch("12 mm").depth(depth).plan(10, A4))
                .hasMessage(why);
    }

    @ParameterizedTest
    @CsvSource({"1.501 mm", "1 in"})
    void aDepthAtTheLimitsIsTaken(String depth) throws Exception {
        assertThat(Fixtures.of(Method.COMB)
                        .pitch("12 mm")
                        .depth(depth)
                        .plan(10, A4)
                        .edgeDistance())
                .isEqualTo(Length.parse(depth));
    }

    @Test
    void aTestSheetIsDrawnForEverySettingOrTheJobsOwn() throws Exception {
        Fixtures wire = Fixtures.of(Method.WIRE);
        PunchRow all = Planner.unmeasured(wire.job(), A4);
        assertThat(all.settings()).extracting(DepthSetting::name).containsExactly("shallow", "middle", "deep");
        assertThat(all.row().holes()).hasSize(34);
        assertThat(Planner.unmeasured(wire.depth("middle").job(), A4).settings())
                .extracting(DepthSetting::name)
                .containsExactly("middle");
    }

    @Test
    void aRowOfSoManyHolesIsCentred() {
        // 1/3 in on 11 in: one hole in the middle, or three, the first 8.467 mm before it
        Pattern wire = pattern("W3_1i-square-0t");
        assertThat(HoleRow.centred(wire, LETTER, 1).holes()).containsExactly(new Hole(1, Length.ofInch(11, 2)));
        assertThat(HoleRow.centred(wire, LETTER, 3).holes().get(0).centre())
                .isEqualTo(Length.ofInch(11, 2).minus(Length.ofInch(1, 3)));
        assertThatThrownBy(() -> HoleRow.centred(wire, LETTER, 0)).isInstanceOf(IllegalArgumentException.class);
        // a set of two is two
        assertThat(HoleRow.centred(pattern("R2m-ISO"), A4, 2).holes()).hasSize(2);
        assertThatThrownBy(() -> HoleRow.centred(pattern("R2m-ISO"), A4, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void closerAndMarginHaveTheirReasons() throws Exception {
        Plan wire = Fixtures.of(Method.WIRE).plan(42, A4);
        assertThat(reasons(wire, Topic.CLOSER))
                .containsExactly("closer at the element's nominal 5/16 in (common practice, no source)");
        assertThat(reasons(wire, Topic.MARGIN))
                .containsExactly(Terms.BINDING_MARGIN
                        + " 9.53 mm at 3:1 (G. Markovits, \"Good Wire Work is a Balancing Act\", Printing" + " News)");
        // 4.76 mm of centre, 1.59 of hole and 1/4 in
        Plan comb = Fixtures.of(Method.COMB).plan(42, A4);
        assertThat(reasons(comb, Topic.CLOSER)).isEmpty();
        assertThat(reasons(comb, Topic.MARGIN))
                .containsExactly(Terms.BINDING_MARGIN
                        + " 12.7 mm at 9/16 in (1/4 in beyond the holes (a college print shop's guide))");
        assertThat(reasons(
                        Fixtures.of(Method.WIRE).bindingMargin(Length.ofMm(7)).plan(42, A4), Topic.MARGIN))
                .containsExactly(Terms.BINDING_MARGIN + " 7 mm as the job says");
    }
}
