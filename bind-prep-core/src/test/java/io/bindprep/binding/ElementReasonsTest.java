package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static io.bindprep.binding.Fixtures.LETTER;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.paper.Stack;
import io.bindprep.report.words.Sentences;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reasons of an element, and the measure to take where two would do; by hand from JCP's calipers. */
class ElementReasonsTest {
    private static final Length NONE = Length.ZERO;

    private static List<String> reasons(Plan plan, Topic topic) {
        return plan.because().stream()
                .filter(r -> r.topic() == topic)
                .map(Sentences::of)
                .toList();
    }

    private static Stack range(String min, String max) {
        Length low = Length.ofMm(min);
        Length high = Length.ofMm(max);
        return new Stack(low, low, high, null, List.of());
    }

    @Test
    void theSmallestThatTakesTheStack() throws Exception {
        // 42 x (0.0037 + 0.0003) in (JCP O-63) are 4.2672 mm; with 1/8 in 7.4422
        assertThat(reasons(Fixtures.of(Method.WIRE).plan(42, A4), Topic.ELEMENT))
                .last()
                .isEqualTo(
                        "element 5/16 in, the smallest wire 3:1 that takes the stack (7.94 mm, common practice, no source,"
                                + " from memory). The stack of at most 4.27 mm needs 7.44 mm with 3.18 mm of clearance (rule"
                                + " \"usual\": common practice, no source)");
        assertThat(reasons(
                        Fixtures.of(Method.WIRE).clearance(Length.ofMm(3)).planOf(range("4", "4"), A4), Topic.ELEMENT))
                .containsExactly(
                        "element 5/16 in, the smallest wire 3:1 that takes the stack (7.94 mm, common practice, no source,"
                                + " from memory). The stack of at most 4 mm needs 7 mm with 3 mm of clearance (as the job"
                                + " says)");
        // 4:1: centre at 5.08 mm, holes of 4.4
        assertThat(reasons(Fixtures.of(Method.COIL).planOf(range("4", "4"), A4), Topic.ELEMENT))
                .containsExactly(
                        "element 8 mm, the smallest coil that takes the stack (8 mm, common practice, no source). The stack"
                                + " of at most 4 mm needs 7.18 mm with 3.18 mm of clearance (rule \"usual\": common practice,"
                                + " no source). The coil also turns round 2.88 mm of paper outside the holes (derived)");
    }

    @ParameterizedTest
    @CsvSource({
        // Wikipedia "Comb binding": 16 sheets of 20 lb bond on 3/16 in, 25 on 1/4 in; a sheet is 0.0037 in (JCP O-63)
        "1.50368,16,3/16 in,16",
        "1.50369,17,1/4 in,25",
        "1.59766,17,1/4 in,25"
    })
    void aCombByItsSheets(String mm, int sheets, String size, int capacity) throws Exception {
        assertThat(reasons(Fixtures.of(Method.COMB).planOf(range(mm, mm), A4), Topic.ELEMENT))
                .containsExactly("element " + size + ", the smallest comb 9/16 in that takes the stack (" + capacity
                        + " sheets, Wikipedia \"Comb binding\"). The nominal stack of "
                        + Length.ofMm(mm).inMm()
                        + " is as thick as " + sheets + " sheets of 20 lb bond");
    }

    @Test
    void whatIsTooThickForTheLargest() throws Exception {
        Plan plan = Fixtures.of(Method.WIRE).pitch("3:1").clearance(NONE).planOf(range("20", "20"), A4);
        assertThat(reasons(plan, Topic.ELEMENT))
                .containsExactly(
                        "no element: the largest wire 3:1, 9/16 in, takes less (common practice, no source, from"
                                + " memory). The stack of at most 20 mm needs 20 mm with 0 mm of clearance (rule \"none\": common"
                                + " practice, no source: some sizing gauges take the nominal size as the stack)");
        assertThat(plan.chosen().measure()).isNull();
    }

    @Test
    void whatNoSizeIsKnownFor() throws Exception {
        // an invented pattern whose elements nobody sells
        Catalogue shop = Catalogue.of(OwnTables.read(List.of(new NamedText(
                "shop.csv",
                "id,method,row,shape,hole_along,hole_across,spacing,centre,elements\n"
                        + "x,rings,fixed,round,3 mm,3 mm,80 mm,12 mm,staples\n"))));
        Fixtures job = Fixtures.of(Method.RINGS);
        Sizing sizing = new Sizing(
                shop.elements(), shop.patterns().byId("x").orElseThrow(), NONE, false, Length.ofMm(10), null);
        List<Reason> said = new ArrayList<>();
        ElementChoice chosen = new ElementPlanner(job.job(), job.block(3), job.stack(3), sizing, said::add).choose();
        assertThat(chosen).isEqualTo(new ElementChoice(null, null, false, false, List.of(), null));
        assertThat(said).containsExactly(new Reason.NoSizes("x"));
        assertThat(said).extracting(Sentences::of).containsExactly("no element: no sizes are known for x");
    }

    @Test
    void strandsWithTheirSource() {
        // Printing Impressions, Feb 2005: a coil's filament is 0.063 to 0.085 in
        assertThat(WireThicknesses.all())
                .contains(new WireThicknesses.WireThickness(
                        "coil",
                        Length.ofInch(85, 1000),
                        "filament 0.063 to 0.085 in (Printing Impressions, Feb 2005)"));
        assertThat(WireThicknesses.notes().get(0)).contains("thicker end of what is in use");
    }

    @Test
    void betweenTwoSizesAPackDecides() throws Exception {
        // JCP A55 and L70: 100 leaves of 119.38 um and two covers of 254 +-20.32; 0.4384 to 0.5416 in
        Plan plan = Fixtures.of(Method.WIRE)
                .clearance(NONE)
                .stocks("offset-60", "c1s-10pt")
                .plan(100, LETTER);
        assertThat(plan.chosen().straddles()).extracting(Element::name).containsExactly("1/2 in", "9/16 in");
        // 0.1 in (F. T. Carson, NBS RP69) are 22 sheets; (12.7 mm - 2 x 0.27432) x 22 / 100 are 2.6733 mm, to the um
        // below
        assertThat(plan.chosen().measure())
                .isEqualTo(new PackMeasure(Length.ofInch(1, 2), "offset-60", 22, Length.ofMm("2.673")));
        assertThat(reasons(plan, Topic.ELEMENT))
                .last()
                .isEqualTo(
                        "the stack, likely 11.14 to 13.76 mm, falls between 1/2 in and 9/16 in. Measure a pack of 22 sheets"
                                + " of offset-60. At 2.67 mm or less use 1/2 in, which takes a stack of 12.7 mm (a pack of at"
                                + " least 0.1 in: F. T. Carson, NBS Research Paper RP69, 1929)");
    }

    @Test
    void betweenTheLargestAndNothing() throws Exception {
        // ten leaves of 0.0037 in as a stack of 31 to 32 mm around 1-1/4 in: 28 sheets are 0.1036 in, 31.75 x 28 / 10
        Plan plan = Fixtures.of(Method.WIRE).pitch("2:1").clearance(NONE).planOf(range("31", "32"), A4);
        assertThat(plan.element()).isNull();
        assertThat(plan.chosen().straddles()).isEmpty();
        assertThat(plan.chosen().measure())
                .isEqualTo(new PackMeasure(Length.ofInch(5, 4), "bond-20", 28, Length.ofMm("88.9")));
        assertThat(reasons(plan, Topic.ELEMENT))
                .last()
                .asString()
                .startsWith(
                        "at its thinnest, 31 mm, the stack goes on 1-1/4 in. Measure a pack of 28 sheets of bond-20. At 88.9 mm or");
    }

    @ParameterizedTest
    @CsvSource({
        // two covers of 0.024 + 0.001 in (JCP L70) are 1.27 mm; 3/16 in less the clearance is what a stack may be
        "3.4925,0",
        "3.4926,-0.001",
        "3.4915,0.002"
    })
    void whereTheCoversAloneAreAsThick(String clearance, String pack) throws Exception {
        Length most = Length.ofMm("4.7625").minus(Length.ofMm(clearance));
        Stack stack = new Stack(most, most, most.plus(new Length(1)), null, List.of());
        Plan plan = Fixtures.of(Method.WIRE)
                .clearance(Length.ofMm(clearance))
                .stocks("bond-20", "c1s-24pt")
                .planOf(stack, A4);
        assertThat(plan.chosen().measure().packAtMost()).isEqualTo(Length.ofMm(pack));
        String said = reasons(plan, Topic.ELEMENT).get(1);
        assertThat(said.contains(" or less use ")).isEqualTo(pack.equals("0.002"));
    }

    @Test
    void ofStocksWithAsManyLeavesTheFirstIsMeasured() throws Exception {
        // two covers and two leaves: the cover comes first
        Fixtures job = Fixtures.of(Method.WIRE).clearance(NONE).stocks("bond-20", "coverboard-18");
        Plan plan = Planner.plan(job.job(), job.block(2), range("4.7", "4.8"), A4);
        assertThat(plan.chosen().measure().stock()).isEqualTo("coverboard-18");
        Plan three = Planner.plan(job.job(), job.block(3), range("4.7", "4.8"), A4);
        assertThat(three.chosen().measure().stock()).isEqualTo("bond-20");
    }

    @ParameterizedTest
    @CsvSource({
        // wire: the size less the clearance; comb: 25 sheets of 0.0037 in; coil of 8 mm with 5 mm outside: sqrt(64 -
        // 25) = 6.245, and 8 - 3 = 5
        "W3_1i-square-0t,1/4 in,3,3.35",
        "P16_9i-rect-0t,1/4 in,3,2.3495",
        "C4_1i-round,8 mm,3,5",
        // 8 - 1 = 7 is more than the circle has; a hair below it
        "C4_1i-round,8 mm,1,6.244972",
        // 3-4-5: 10 mm with 6 outside leave less than 8
        "C4_1i-round,10 mm,1,7.999972"
    })
    void theMostThatAnElementTakes(String pattern, String size, String clearance, String most) {
        Length outside = size.equals("10 mm") ? Length.ofMm(6) : Length.ofMm(5);
        Sizing sizing = new Sizing(
                Catalogue.builtIn().elements(),
                Catalogue.builtIn().patterns().byId(pattern).orElseThrow(),
                Length.ofMm(clearance),
                !pattern.startsWith("P16"), // a comb by its capacity
                outside,
                null);
        Length found = sizing.known().stream()
                .filter(e -> e.element().name().equals(size))
                .map(sizing::most)
                .findFirst()
                .orElseThrow();
        assertThat(found).isEqualTo(Length.ofMm(most));
        // the most it takes it is the smallest for, or a smaller one is; a hair more it does not take
        assertThat(sizing.smallest(found).orElseThrow().element().size()).isLessThanOrEqualTo(Length.parse(size));
        assertThat(sizing.smallest(found.plus(new Length(1)))
                        .orElseThrow()
                        .element()
                        .size())
                .isGreaterThan(Length.parse(size));
    }
}
