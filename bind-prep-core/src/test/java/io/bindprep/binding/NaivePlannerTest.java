package io.bindprep.binding;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A second, naive planner tries every element, hole and pin on random books in floating point, and must agree. Pitches,
 * holes and centres: XJDF 2.2, Appendix F; combs: Wikipedia "Comb binding"; all else: common practice, no source.
 */
class NaivePlannerTest {
    private static final int JOBS = 10_000;
    private static final double EPS = 1e-6;
    private static final double SHEET = 0.0037 * 25.4;

    // size in inches, sheets of 20 lb bond
    private static final double[][] FINE = {
        {3 / 16.0, 25}, {1 / 4.0, 40}, {5 / 16.0, 60}, {3 / 8.0, 75}, {7 / 16.0, 90}, {1 / 2.0, 110}, {9 / 16.0, 130}
    };
    private static final double[][] WIDE = {{5 / 8.0, 150}, {3 / 4.0, 190}, {7 / 8.0, 215}, {1, 240}, {1.25, 275}};
    private static final double[][] COMB = {
        {3 / 16.0, 16},
        {1 / 4.0, 25},
        {5 / 16.0, 40},
        {3 / 8.0, 55},
        {7 / 16.0, 70},
        {1 / 2.0, 85},
        {9 / 16.0, 100},
        {5 / 8.0, 125},
        {3 / 4.0, 150},
        {7 / 8.0, 175},
        {1, 200},
        {1.125, 250},
        {1.25, 275},
        {1.5, 325},
        {1.75, 375},
        {2, 425}
    };

    /** Pitch, hole along and across the edge, centres of the settings, least paper at the ends, all in mm. */
    private record Cut(double pitch, double along, double across, double[] centres, double web, double[][] elements) {}

    private static final Cut WIRE_3_1 =
            new Cut(25.4 / 3, 25.4 * 5 / 32, 25.4 * 5 / 32, new double[] {5.08, 5.3, 6}, 25.4 * 3 / 16, FINE);
    private static final Cut WIRE_2_1 =
            new Cut(12.7, 6.35, 6.35, new double[] {6.175, 6.5, 3 + 0.16 * 25.4}, 25.4 * 3 / 16, WIDE);
    private static final Cut COMB_US =
            new Cut(25.4 * 9 / 16, 25.4 * 5 / 16, 3.175, new double[] {25.4 * 3 / 16, 5.1, 5.5}, 25.4 / 32, COMB);

    @Test
    void agreesOnTenThousandRandomBooks() throws Exception {
        Random random = new Random(20_270);
        Map<String, Job> jobs = new HashMap<>();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < JOBS; i++) {
            boolean comb = random.nextInt(3) == 0;
            int um = 60 + 5 * random.nextInt(40);
            int drift = um / 20;
            int leaves = 1 + random.nextInt(300);
            Length edge = Length.ofMm(String.valueOf(40 + random.nextInt(390)));
            String yaml = "binding: " + (comb ? "comb" : "wire") + "\nstock: " + um + " um tolerance " + drift + " um";
            Job job = jobs.get(yaml);
            if (job == null) {
                job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
                jobs.put(yaml, job);
            }
            Block block = BlockBuilder.build(job, 2 * leaves);
            Stack stack = StackEstimator.estimate(
                    block.leaves().stream().map(Leaf::stock).toList(), Length.ofMm(100), edge);
            Plan plan = Planner.plan(job, block, stack, edge);
            String found = (plan.element() == null
                            ? "none"
                            : size(plan.element().size().mm())) + " "
                    + plan.row().holes().size() + " " + plan.row().pulledPins() + " "
                    + plan.depth().setting().name() + " " + plan.lifts().size();
            String naive = naive(comb, um / 1000.0, leaves, edge.mm());
            if (!found.equals(naive)) {
                wrong.add(yaml + ", " + leaves + " leaves on " + edge.inMm() + ": " + found + ", not " + naive);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static String naive(boolean comb, double caliper, int leaves, double edge) {
        double nominal = caliper * leaves;
        Cut cut = comb ? COMB_US : nominal <= 130 * SHEET + EPS ? WIRE_3_1 : WIRE_2_1;
        double size = 0;
        for (double[] element : cut.elements()) {
            if (size == 0 && nominal <= element[1] * SHEET + EPS) {
                size = element[0] * 25.4;
            }
        }
        int holes = 0;
        while (holes * cut.pitch() + cut.along() + 2 * cut.web() <= edge + EPS) {
            holes++;
        }
        double first = (edge - (holes - 1) * cut.pitch()) / 2;
        List<Integer> pulled = new ArrayList<>();
        int pins = (int) (17 * 25.4 / cut.pitch() + EPS) + 1;
        for (int pin = holes + 1; holes > 0 && pin <= pins; pin++) {
            double near = first + (pin - 1) * cut.pitch() - cut.along() / 2;
            if (near - edge < cut.pitch() - EPS) {
                pulled.add(pin);
            }
        }
        int lift = Math.max(1, (int) (1.9 / caliper + EPS));
        return (size == 0 ? "none" : size(size)) + " " + holes + " " + pulled + " " + depth(cut, size, nominal) + " "
                + (leaves + lift - 1) / lift;
    }

    /** The deepest with no more paper outside than 0.3 of the element, at which pages turn: else the shallowest. */
    private static String depth(Cut cut, double size, double nominal) {
        double[][] all = cut.elements();
        double by = size == 0 ? all[all.length - 1][0] * 25.4 : size;
        int best = 0;
        for (int i = 0; i < 3; i++) {
            double outside = cut.centres()[i] - cut.across() / 2;
            boolean turns = size == 0 || outside * outside + nominal * nominal < size * size;
            best = turns && outside <= 0.3 * by + EPS ? i : best;
        }
        return List.of("shallow", "middle", "deep").get(best);
    }

    private static String size(double mm) {
        return String.valueOf(Math.round(mm * 100_000));
    }
}
