package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Depth.Decider;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchFile;
import io.bindprep.catalogue.PunchLike;
import io.bindprep.catalogue.PunchText;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.table.NamedText;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** At which depth to punch: the element, the free-turning limit sqrt(D^2 - t^2) worked by hand, the content. */
class DepthTest {
    private static final Length NONE = Length.ZERO;

    private static Plan unseen(Fixtures job, String stack) throws Exception {
        return job.planOf(Fixtures.exactly(Length.parse(stack)), A4);
    }

    private static List<PageCount> counts(int... hitAndTight) {
        List<PageCount> counts = new ArrayList<>();
        for (int i = 0; i < hitAndTight.length; i += 2) {
            counts.add(new PageCount(hitAndTight[i], hitAndTight[i + 1], 0));
        }
        return counts;
    }

    @ParameterizedTest
    @CsvSource({
        // check values: up to 1/4 in of stack the shallowest, from 5/16 in a middle one, at 9/16 in the deep one
        // (common practice, no source)
        "1 mm,shallow,3:1",
        "1/4 in,shallow,3:1",
        "5/16 in,middle,3:1",
        "3/8 in,middle,3:1",
        // an element of 9/16 in: deep a size before the stack of 9/16 in, as the check value may mean either
        "7/16 in,deep,3:1",
        "1/2 in,deep,2:1",
        "9/16 in,deep,2:1",
        "1 in,deep,2:1"
    })
    void byTheElementAsTheStepsOfTheTrade(String stack, String setting, String pitch) throws Exception {
        Plan plan = unseen(Fixtures.of(Method.WIRE), stack);
        assertThat(plan.pitchName()).isEqualTo(pitch);
        assertThat(plan.depth().setting().name()).isEqualTo(setting);
        assertThat(plan.depth().decidedBy()).isEqualTo(Decider.ELEMENT);
        assertThat(plan.depth().turnsFreely()).isTrue();
        assertThat(plan.edgeDistance()).isEqualTo(plan.depth().setting().centre());
    }

    @Test
    void aRangeThatStraddlesGoesByTheElement() throws Exception {
        // 10.6 mm and 1/8 in: 9/16 in, of which 0.3 is 4.29; the thinnest would go on 1/2 in
        Stack wide = new Stack(Length.ofMm("9.4"), Length.ofMm("10"), Length.ofMm("10.6"), null, List.of());
        assertThat(Fixtures.of(Method.WIRE).planOf(wide, A4).depth().setting().name())
                .isEqualTo("deep");
    }

    @ParameterizedTest
    @CsvSource({
        // 3-4-5: an element of 10 in units of 1/8 in, a stack of 8, so 6
        "1-1/4 in,1 in,19.05",
        // sqrt(9.525^2 - 8.9^2) = sqrt(90.7256 - 79.21) = 3.3935
        "3/8 in,8.9 mm,3.3935",
        // sqrt(19.05^2 - 14.2875^2) = sqrt(362.9025 - 204.1327) = 12.6004
        "3/4 in,9/16 in,12.6004",
        "3/8 in,3/8 in,0",
        "3/8 in,10 mm,0"
    })
    void theFreeTurningLimitByHand(String diameter, String stack, double limitMm) {
        Length limit = Turning.limit(Length.parse(diameter), Length.parse(stack));
        assertThat(limit.mm()).isCloseTo(limitMm, within(0.0001));
        Length one = new Length(1);
        if (limit.compareTo(one) > 0) {
            assertThat(Turning.within(Length.parse(diameter), Length.parse(stack), limit.minus(one)))
                    .isTrue();
        }
        assertThat(Turning.within(Length.parse(diameter), Length.parse(stack), limit))
                .isFalse();
    }

    @Test
    void paperThatJustTouchesDoesNotTurn() {
        // 3-4-5: 6 mm outside the holes in a circle of 10 mm with 8 mm of stack touch it
        DepthSetting setting = new DepthSetting("a", Length.ofMm(8), "invented");
        Length limit = Turning.limit(Length.ofMm(10), Length.ofMm(8));
        assertThat(new Depth(setting, Length.ofMm(6), limit, null).turnsFreely())
                .isFalse();
        assertThat(new Depth(setting, Length.ofMm(6), limit, null).binds()).isTrue();
        assertThat(new Depth(setting, Length.ofMm("5.999"), limit, null).turnsFreely())
                .isTrue();
    }

    @Test
    void aDepthAtWhichPagesDoNotTurnGivesWayToAShallowerOne() throws Exception {
        // 10.65 mm on 7/16 in leaves sqrt(11.1125^2 - 10.65^2) = 3.17 mm; the middle setting of 5.3 - 1.98 has 3.32 mm
        // outside, the shallow one of 5.08 - 1.98 has 3.10
        Plan plan = unseen(Fixtures.of(Method.WIRE).clearance(NONE), "10.65 mm");
        assertThat(plan.element().name()).isEqualTo("7/16 in");
        assertThat(plan.depth().setting().name()).isEqualTo("shallow");
        assertThat(plan.depth().decidedBy()).isEqualTo(Decider.TURNING);
        assertThat(plan.depth().turnsFreely()).isTrue();
        // 9.1 mm leaves 2.81: not even the shallow one turns
        Plan none = unseen(Fixtures.of(Method.WIRE).clearance(NONE), "9.1 mm");
        assertThat(none.depth().setting().name()).isEqualTo("shallow");
        assertThat(none.depth().decidedBy()).isEqualTo(Decider.TURNING);
        assertThat(none.depth().binds()).isTrue();
    }

    @Test
    void theContentLimitsWhatTheThicknessSuggests() throws Exception {
        PlanChoices choices = Fixtures.of(Method.WIRE).choicesOf(Fixtures.exactly(Length.ofInch(5, 16)), A4);
        assertThat(choices.settings())
                .extracting(p -> p.depth().setting().name())
                .containsExactly("shallow", "middle", "deep");
        // deep hits nothing, but the stack does not ask for it
        assertThat(chosen(choices, counts(0, 0, 0, 0, 0, 0))).isEqualTo("middle ELEMENT");
        assertThat(chosen(choices, counts(0, 0, 2, 0, 0, 0))).isEqualTo("shallow CONTENT");
        assertThat(chosen(choices, counts(0, 1, 0, 2, 0, 0))).isEqualTo("shallow CONTENT");
        // both hit as many: the content does not decide
        assertThat(chosen(choices, counts(2, 3, 2, 3, 0, 0))).isEqualTo("middle ELEMENT");
        assertThat(chosen(choices, counts(3, 0, 2, 9, 0, 0))).isEqualTo("middle ELEMENT");
        assertThatThrownBy(() -> choices.settle(counts(0, 0))).isInstanceOf(IllegalArgumentException.class);
    }

    private static String chosen(PlanChoices choices, List<PageCount> counts) {
        PlanChoices.Settled settled = choices.settle(counts);
        Depth depth = settled.plan().depth();
        assertThat(choices.settings().get(settled.index()).depth().setting()).isEqualTo(depth.setting());
        assertThat(settled.plan().because())
                .isSortedAccordingTo((a, b) -> a.topic().compareTo(b.topic()));
        assertThat(settled.plan().because())
                .filteredOn(r -> r.topic() == Reason.Topic.DEPTH)
                .hasSize(1);
        return depth.setting().name() + " " + depth.decidedBy();
    }

    @Test
    void pagesThatCouldNotBeReadAreSaid() throws Exception {
        PlanChoices choices = Fixtures.of(Method.WIRE).choicesOf(Fixtures.exactly(Length.ofMm(3)), A4);
        PageCount unchecked = new PageCount(0, 0, 4);
        Plan plan = choices.settle(List.of(unchecked, unchecked, unchecked)).plan();
        assertThat(plan.because()).extracting(Sentences::of).anyMatch(t -> t.contains("; 4 not checked"));
    }

    @Test
    void theOtherPitchIsThereToCompare() throws Exception {
        PlanChoices wire = Fixtures.of(Method.WIRE).choicesOf(Fixtures.exactly(Length.ofMm(3)), A4);
        assertThat(wire.others()).extracting(Plan::pitchName).containsExactly("2:1", "2:1", "2:1");
        assertThat(Fixtures.of(Method.WIRE)
                        .choicesOf(Fixtures.exactly(Length.ofMm(15)), A4)
                        .others())
                .extracting(Plan::pitchName)
                .containsOnly("3:1");
        // at 3:1 nothing takes 15 mm, and that is said
        assertThat(Fixtures.of(Method.WIRE)
                        .choicesOf(Fixtures.exactly(Length.ofMm(15)), A4)
                        .others())
                .extracting(Plan::element)
                .containsOnlyNulls();
        assertThat(Fixtures.of(Method.RINGS)
                        .choicesOf(Fixtures.exactly(Length.ofMm(3)), A4)
                        .others())
                .isEmpty();
    }

    @Test
    void ringHolesLieWhereTheRingsAre() throws Exception {
        // 7 or 11 mm (XJDF 2.2 F.2, DIN 5005)
        Plan din = unseen(Fixtures.of(Method.RINGS).pitch("R2m-DIN"), "1 mm");
        assertThat(din.edgeDistance()).isEqualTo(Length.ofMm(11));
        assertThat(din.depth().decidedBy()).isEqualTo(Decider.PATTERN);
        // 12 mm (ISO 838:1974)
        Plan iso = unseen(Fixtures.of(Method.RINGS), "1 mm");
        assertThat(iso.edgeDistance()).isEqualTo(Length.ofMm(12));
        assertThat(iso.depth().decidedBy()).isEqualTo(Decider.PUNCH);
    }

    @ParameterizedTest
    @CsvSource({"deep,6", "DEEP,6", "6 mm,6", "5.08 mm,5.08", "0.2 in,5.08", "5.25 mm,5.25"})
    void theJobsOwnDepth(String depth, String centre) throws Exception {
        Plan plan = unseen(Fixtures.of(Method.WIRE).depth(depth), "1 mm");
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm(centre));
        assertThat(plan.depth().decidedBy()).isEqualTo(Decider.JOB);
    }

    @Test
    void aLengthAsTheReportShowsItMeansTheSetting() throws Exception {
        // 3 mm + 1/8 in is 6.175 mm, shown as 6.18
        Plan plan =
                unseen(Fixtures.of(Method.WIRE).punch("generic-W2_1i-square-0t").depth("6.18 mm"), "1 mm");
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofMm("6.175"));
    }

    @ParameterizedTest
    @CsvSource({
        "bottom,",
        // half of the hole of 3.97 mm would lie beyond the edge
        "1.9 mm,",
        "26 mm,",
        // the punch is named, and has no such setting
        "5.25 mm,generic-W3_1i-square-0t"
    })
    void aDepthThatIsNoneListsTheSettings(String depth, String punch) {
        assertThatThrownBy(() -> unseen(Fixtures.of(Method.WIRE).punch(punch).depth(depth), "1 mm"))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.key()).isEqualTo("depth");
                    assertThat(e.known()).containsExactly("shallow at 5.08 mm", "middle at 5.3 mm", "deep at 6 mm");
                });
    }

    @Test
    void aCoilTurnsRoundThePaperOutsideItsHoles() throws Exception {
        // 1 mm and 1/8 in go on 6 mm; but holes of 6 mm at 11 mm leave 8 mm outside, sqrt(8^2 + 1^2) = 8.06
        PlanChoices coil = Fixtures.of(Method.COIL).pitch("9.5 mm").choicesOf(Fixtures.exactly(Length.ofMm(1)), A4);
        assertThat(coil.settings())
                .extracting(p -> p.element().name())
                // at 12 mm 9 lie outside: sqrt(9^2 + 1^2) = 9.06; at 13 mm 10: sqrt(10^2 + 1^2) = 10.05
                .containsExactly("9 mm", "10 mm", "11 mm");
        assertThat(coil.settings()).allMatch(p -> p.depth().turnsFreely());
    }

    @Test
    void theClosersOwnSizesAndPunchingToleranceCount() throws Exception {
        Pattern pattern = Catalogue.builtIn().patterns().byId("W3_1i-square-0t").orElseThrow();
        Punch own = PunchLike.of(
                pattern,
                40,
                null,
                ElementSizes.range(Length.ofInch(5, 16), Length.ofInch(3, 8)),
                Length.ofMm("1.5"),
                null);
        Fixtures job = Fixtures.of(Method.WIRE).punchingTolerance(null);
        // 10 leaves of 20 lb bond go on 3/16 in, which it does not close; the next it closes is 5/16 in
        Plan thin = job.plan(10, A4, own);
        assertThat(thin.element().name()).isEqualTo("5/16 in");
        assertThat(thin.punchingTolerance()).isEqualTo(Length.ofMm("1.5"));
        // 80 leaves are at most 8.13 mm, with 1/8 in 11.3: 1/2 in, which is too large for it, and is said all the same
        Plan thick = job.plan(80, A4, own);
        assertThat(thick.element().name()).isEqualTo("1/2 in");
        assertThat(thick.closerTakes()).isEqualTo(own.elements());
        assertThat(thick.because()).extracting(Sentences::of).anyMatch(t -> t.contains("but not this element"));
        assertThat(job.plan(10, A4).punchingTolerance()).isEqualTo(Length.ofMm(1));
        assertThat(job.punchingTolerance(Length.ofMm(2)).plan(10, A4, own).punchingTolerance())
                .isEqualTo(Length.ofMm(2));
    }

    @Test
    void aBookForVolumesGoesByTheThickestThatAnElementTakes() throws Exception {
        // 40 mm go on no 3:1 wire; a volume is at most 9/16 - 1/8 = 7/16 in, for which the rule has the middle setting
        Fixtures job = Fixtures.of(Method.WIRE).pitch("3:1");
        Plan book = unseen(job, "40 mm");
        assertThat(book.element()).isNull();
        assertThat(book.depth().setting().name()).isEqualTo("deep");
        assertThat(book.depth().turnsBelow()).isNull();
        Plan volume = Planner.volume(job.job(), job.block(10), Fixtures.exactly(Length.ofMm(5)), A4, book);
        assertThat(volume.depth().setting()).isEqualTo(book.depth().setting());
        assertThat(volume.edgeDistance()).isEqualTo(book.edgeDistance());
        assertThat(volume.element().name()).isEqualTo("3/8 in");
    }

    /** A shop that wants the steps of the trade has them as data of its punch. */
    @ParameterizedTest
    @CsvSource({"7.9 mm,shallow", "5/16 in,middle", "14.2 mm,middle", "9/16 in,deep"})
    void theStepsOfAShopsPunch(String stack, String setting) throws Exception {
        String rows = "punch,name,centre,from_stack,source\n"
                + "generic-W2_1i-square-0t,shallow,6.175 mm,,\"common practice, no source\"\n"
                + "generic-W2_1i-square-0t,middle,6.6 mm,5/16 in,\"common practice, no source\"\n"
                + "generic-W2_1i-square-0t,deep,7 mm,9/16 in,\"common practice, no source\"\n";
        Job job = JobReader.toJob(
                JobSettings.read("stock: bond-20\npitch: \"2:1\"\ntables: own.csv", "job.yaml"),
                new JobFiles(List.of(new NamedText("own.csv", rows)), null));
        Plan plan = Planner.plan(job, Fixtures.of(Method.WIRE).block(10), Fixtures.exactly(Length.parse(stack)), A4);
        assertThat(plan.depth().setting().name()).isEqualTo(setting);
        assertThat(plan.depth().decidedBy()).isEqualTo(Decider.THICKNESS);
    }

    /** The same in the file of a shop's punch, read and written. */
    @Test
    void theStepsOfAPunchFile() throws Exception {
        String file = "id: bench\npattern: W2_1i-square-0t\npins: 30\n"
                + "depths: {shallow: 6.2 mm, deep: \"7 mm, stack from 9/16 in\"}\n";
        Punch punch = PunchFile.read(new NamedText("bench.yaml", file), Catalogue.builtIn());
        assertThat(punch.depths()).extracting(DepthSetting::fromStack).containsExactly(null, Length.ofInch(9, 16));
        assertThat(PunchFile.read(new NamedText("bench.yaml", PunchText.of(punch)), Catalogue.builtIn())
                        .depths())
                .isEqualTo(punch.depths());
        Fixtures wire = Fixtures.of(Method.WIRE);
        for (String stack : List.of("14.2 mm", "9/16 in")) {
            Plan plan = Planner.plan(wire.job(), wire.block(10), Fixtures.exactly(Length.parse(stack)), A4, punch);
            assertThat(plan.depth().setting().name()).isEqualTo(stack.equals("9/16 in") ? "deep" : "shallow");
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverDeeperThanSuitsNeverWorseThanAnotherThatSuits(int seed) throws Exception {
        Random random = new Random(seed);
        Method method = List.of(Method.WIRE, Method.COIL, Method.COMB).get(random.nextInt(3));
        Length stack = new Length(1 + random.nextInt((int) Length.ofMm(25).units()));
        Length clearance = Length.ofMm(random.nextInt(5));
        PlanChoices choices = Fixtures.of(method).clearance(clearance).choicesOf(Fixtures.exactly(stack), A4);
        List<PageCount> counts = IntStream.range(0, choices.settings().size())
                .mapToObj(i -> new PageCount(random.nextInt(3), random.nextInt(3), 0))
                .toList();
        PlanChoices.Settled settled = choices.settle(counts);
        Element element = choices.settings().get(0).element();
        List<Elements.Entry> sold = Catalogue.builtIn()
                .elements()
                .of(Catalogue.builtIn()
                        .patterns()
                        .byId(choices.settings().get(0).pattern())
                        .orElseThrow());
        double size = (element != null ? element : sold.get(sold.size() - 1).element())
                .size()
                .mm();
        int suited = 0;
        for (int i = 0; i < choices.settings().size(); i++) {
            suited = choices.settings().get(i).depth().outside().mm() <= 0.3 * size + 1e-9 ? i : suited;
        }
        assertThat(settled.index()).isLessThanOrEqualTo(suited);
        boolean anyTurns = IntStream.rangeClosed(0, suited)
                .anyMatch(i -> !choices.settings().get(i).depth().binds());
        assertThat(settled.plan().depth().binds()).isEqualTo(!anyTurns);
        for (int i = 0; anyTurns && i <= suited; i++) {
            if (!choices.settings().get(i).depth().binds()) {
                PageCount other = counts.get(i);
                PageCount chosen = counts.get(settled.index());
                assertThat(chosen.hit()).isLessThanOrEqualTo(other.hit());
            }
        }
        // the same without content: a thicker stack never asks for a shallower setting at the usual clearance
        Length thicker =
                stack.plus(new Length(random.nextInt((int) Length.ofMm(10).units())));
        Fixtures usual = Fixtures.of(method);
        assertThat(place(usual.planOf(Fixtures.exactly(thicker), A4)))
                .isGreaterThanOrEqualTo(place(usual.planOf(Fixtures.exactly(stack), A4)));
    }

    private static int place(Plan plan) {
        return List.of("shallow", "middle", "deep")
                .indexOf(plan.depth().setting().name());
    }
}
