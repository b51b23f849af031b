package io.bindprep.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Deviation;
import io.bindprep.gauge.PrintedPage.Box;
import io.bindprep.job.Job;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Punches with errors that are known, their holes read from what the PDF shows and from nothing else, rounded to the tenth
 * and off by up to the reading error: calibration gives the errors back within its tolerances, and a plan has every hole
 * where the punch cuts it within what it says is open.
 */
class RoundTripTest {
    private static final int SEEDS = 1000;
    private static final double ERROR = 0.2;

    /** Results are written to the hundredth, tolerances up to the next. */
    private static final double ROUNDING = 0.0151;

    private static final List<Case> CASES = new ArrayList<>();

    /** A sheet that was printed, and where its paper takes its holes from. */
    private record Case(
            String name, String punch, Map<String, Object> settings, TestSheet sheet, SheetOperator operator) {}

    /** Errors of a punch by itself, over the row of holes. */
    private record Truth(double depth, double side, double skew, double pitch) {}

    @BeforeAll
    static void print() throws Exception {
        add("wire on A4, the guide moves", Jobs.BENCH, Map.of("depth", "two"));
        add(
                "wire on A4, the guide is fixed",
                Jobs.BENCH + "first-pin: 8.8 mm\nminimum-web: 2 mm\n",
                Map.of("depth", "two"));
        add(
                "wire on A5 in the middle of many pins",
                Jobs.BENCH.replace("34", "52") + "first-pin: 7.6 mm\nminimum-web: 2 mm\n",
                Map.of("depth", "one", "trim", "a5"));
        add("comb on Letter", "pattern: P16_9i-rect-0t\npins: 21\n", Map.of("binding", "comb", "trim", "letter"));
        add(
                "coil on Letter, round holes",
                "pattern: C4_1i-round\npins: 43\n",
                Map.of("binding", "coil", "trim", "letter"));
        add("two rings on A4", "pattern: R2m-ISO\npins: 2\n", Map.of("binding", "rings", "trim", "a4"));
        add(
                "a calendar, bound at its top",
                "pattern: W2_1i-square-0t\npins: 24\n",
                Map.of("trim", "a4 landscape", "binding-edge", "top"));
    }

    private static void add(String name, String punch, Map<String, Object> settings) throws Exception {
        Job job = Jobs.of(punch, settings);
        CASES.add(new Case(name, punch, settings, TestSheet.of(job), new SheetOperator(Jobs.pdf(job), 1)));
    }

    @Test
    void theSheetShowsWhatThePublishedRowsAre() {
        // A4: 34 holes at 1/3 in (German Wikipedia "Drahtkammbindung"), centre 0.2 in or the setting's; first at 8.800
        // mm, derived
        List<Box> targets = CASES.get(0).operator().targets();
        assertThat(targets).hasSize(34);
        for (int i = 0; i < 34; i++) {
            assertThat(targets.get(i).middleX()).isCloseTo(8.8 + i * 25.4 / 3, within(0.001));
            assertThat(targets.get(i).middleY()).isCloseTo(5.1, within(0.001));
            assertThat(targets.get(i).width()).isCloseTo(25.4 * 5 / 32, within(0.001));
        }
        // Letter comb: 19 holes, the first at 11.1125 mm (RFC 3806 nineteenHoleUS, derived)
        List<Box> comb = CASES.get(3).operator().targets();
        assertThat(comb).hasSize(19);
        assertThat(comb.get(0).middleX()).isCloseTo(11.1125, within(0.001));
        // ISO 838: two holes 80 mm apart, 12 mm from the edge, on A4 the first at 108.5 mm
        List<Box> rings = CASES.get(5).operator().targets();
        assertThat(rings).hasSize(2);
        assertThat(rings.get(0).middleX()).isCloseTo(108.5, within(0.001));
        assertThat(rings.get(1).middleX()).isCloseTo(188.5, within(0.001));
        assertThat(rings.get(0).middleY()).isCloseTo(12, within(0.001));
        assertThat(rings.get(0).width()).isCloseTo(6, within(0.001));
    }

    @Test
    void scalesOfTheSheetSayWhatTheyAre() {
        for (Case c : CASES) {
            assertThat(c.operator().bar())
                    .as(c.name())
                    .isCloseTo(c.sheet().ruler() == Ruler.MM ? 100 : 101.6, within(0.001));
            assertThat(c.operator().rungs()).as(c.name()).isGreaterThan(100);
            for (double mm = 2; mm < c.sheet().edge().mm() - 2; mm += 0.7) {
                assertThat(c.operator().onEdgeScale(mm)).as(c.name()).isCloseTo(mm, within(0.005));
            }
            double centre = c.sheet().settings().get(0).centre().mm();
            for (double mm = centre - 2; mm < centre + 2; mm += 0.1) {
                assertThat(c.operator().onReadingPage(mm, 1))
                        .as(c.name())
                        .isCloseTo(mm, within(c.sheet().ruler() == Ruler.MM ? 0.0501 : 0.0636));
            }
        }
    }

    @Test
    void knownErrorsAreRecoveredWithinTheReadingError() throws Exception {
        for (int seed = 0; seed < SEEDS; seed++) {
            Case c = CASES.get(seed % CASES.size());
            String name = c.name() + ", seed " + seed;
            Random random = new Random(seed);
            Truth truth =
                    new Truth(uniform(random, 0.8), uniform(random, 1.2), uniform(random, 0.9), uniform(random, 0.7));
            Calibration found = Calibrator.calibrate(Jobs.of(c.punch(), c.settings()), read(c, truth, random), false);

            double centre = c.sheet().settings().get(0).centre().mm();
            assertHolds(found.edge(), centre + truth.depth(), name + ", edge distance");
            assertHolds(found.side(), truth.side(), name + ", side offset");
            assertHolds(found.skew(), truth.skew(), name + ", skew");
            assertHolds(found.pitch(), truth.pitch(), name + ", pitch error");
            assertThat(found.edge().tolerance().mm()).as(name).isLessThanOrEqualTo(1.14 * ERROR + ROUNDING);
            assertThat(found.skew().tolerance().mm()).as(name).isLessThanOrEqualTo(2.1 * ERROR + ROUNDING);
            assertThat(found.side().tolerance().mm()).as(name).isLessThanOrEqualTo(2.1 * ERROR + ROUNDING);
            assertThat(found.pitch().tolerance().mm()).as(name).isLessThanOrEqualTo(5 * ERROR + ROUNDING);
            if (seed < 150) {
                assertPlanned(c, truth, found, name);
            }
        }
    }

    private static void assertHolds(Deviation found, double truth, String name) {
        assertThat(found.value().mm())
                .as(name)
                .isCloseTo(truth, within(found.tolerance().mm() + 1e-6));
    }

    /** A plan made with the punch's file has the holes where the punch cuts them. */
    private static void assertPlanned(Case c, Truth truth, Calibration found, String name) throws Exception {
        Job job = Jobs.of(found.punch(), c.settings());
        Plan plan = Jobs.plan(job, c.sheet());
        List<Box> targets = c.operator().targets();
        assertThat(plan.row().holes()).as(name).hasSameSizeAs(targets);
        double open = found.open().mm();
        boolean movable = found.punch().firstPin() == null;
        for (int i = 0; i < targets.size(); i++) {
            Hole hole = plan.row().holes().get(i);
            double share = (double) i / (targets.size() - 1);
            // the guide is set by what was found, and the plan centres the row as it is
            double guide = movable
                    ? found.punch().measured().side().value().mm()
                            + found.pitch().value().mm() / 2
                    : 0;
            double along = alongOf(targets, i) + truth.side() + truth.pitch() * share - guide;
            double across = targets.get(i).middleY() + truth.depth() + truth.skew() * (share - 0.5);
            assertThat(hole.centre().mm()).as(name + ", hole " + i).isCloseTo(along, within(open + ROUNDING));
            assertThat(plan.edgeDistance().mm()).as(name + ", hole " + i).isCloseTo(across, within(open + ROUNDING));
        }
        assertThat(plan.punchingTolerance()).as(name).isGreaterThanOrEqualTo(found.open());
        assertThat(plan.punchingTolerance()).as(name).isGreaterThanOrEqualTo(Length.ofMm(1));
    }

    private static double alongOf(List<Box> targets, int hole) {
        return targets.get(hole).middleX();
    }

    /** The operator's numbers: what was cut, where it lies on the scales, read to a tenth and off by no more than the error. */
    private static Readings read(Case c, Truth truth, Random random) throws Exception {
        SheetOperator operator = c.operator();
        List<Box> targets = operator.targets();
        Box first = targets.get(0);
        Box last = targets.get(targets.size() - 1);
        double scale = 1 + uniform(random, 0.004);
        double printOff = uniform(random, 1.5);
        double firstAcross = first.middleY() + truth.depth() - truth.skew() / 2;
        double lastAcross = last.middleY() + truth.depth() + truth.skew() / 2;
        double firstAlong = first.middleX() + truth.side();
        double lastAlong = last.middleX() + truth.side() + truth.pitch();
        double halfAcross = first.height() / 2;
        double halfAlong = first.width() / 2;
        return Readings.of(
                sides(operator, firstAcross, halfAcross, scale, random),
                sides(operator, lastAcross, halfAcross, scale, random),
                sides(operator, firstAlong, halfAlong, scale, random),
                SheetOperator.mm(
                        tenths(operator.onEdgeScale((firstAlong - halfAlong - printOff) / scale), random),
                        tenths(operator.onEdgeScale((lastAlong - halfAlong - printOff) / scale), random)),
                String.format(
                        Locale.ROOT, "%.1f mm of %.1f mm", tenths(operator.bar() * scale, random), operator.bar()),
                ERROR + " mm");
    }

    private static String sides(SheetOperator operator, double middle, double half, double scale, Random random) {
        // the nearest line is within half a tenth, so that with a slip of a tenth more it is within the error
        return SheetOperator.mm(
                operator.onReadingPage(middle - half, scale) + slip(random),
                operator.onReadingPage(middle + half, scale) + slip(random));
    }

    private static double slip(Random random) {
        return (random.nextInt(3) - 1) / 10.0;
    }

    private static double tenths(double mm, Random random) {
        return Math.round((mm + uniform(random, ERROR - 0.05)) * 10) / 10.0;
    }

    private static double uniform(Random random, double most) {
        return (2 * random.nextDouble() - 1) * most;
    }
}
