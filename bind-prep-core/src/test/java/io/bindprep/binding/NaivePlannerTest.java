package io.bindprep.binding;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.NaivePlanner.Cut;
import io.bindprep.binding.NaivePlanner.Pins;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A second, naive planner tries every element, hole and pin on random books in floating point, and must agree. */
class NaivePlannerTest {
    private static final int JOBS = 10_000;

    private final Map<String, Job> jobs = new HashMap<>();
    private final Map<String, Integer> kinds = new HashMap<>();

    @Test
    void agreesOnTenThousandRandomBooks() throws Exception {
        Random random = new Random(20_270);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < JOBS; i++) {
            String found = compared(random, "");
            if (!found.isEmpty()) {
                wrong.add(found);
            }
        }
        assertThat(wrong).isEmpty();
        // none of the kinds may be so rare that agreeing on it says nothing
        assertThat(kinds.keySet())
                .contains(
                        "wire",
                        "comb",
                        "coil",
                        "covers",
                        "hanger",
                        "own punch",
                        "fixed guide",
                        "pin that stays",
                        "no row",
                        "no element",
                        "gap too wide");
        assertThat(kinds.values()).allMatch(count -> count > 100);
    }

    /** Plans one random book both ways; empty where they agree. */
    private String compared(Random random, String none) throws Exception {
        String method = List.of("wire", "wire", "comb", "coil").get(random.nextInt(4));
        int um = 60 + 5 * random.nextInt(40);
        int coverUm = random.nextInt(3) == 0 ? 150 + 50 * random.nextInt(12) : 0;
        int gap = random.nextInt(4) == 0 ? 20 + random.nextInt(130) : 0;
        int leaves = 1 + random.nextInt(300);
        double edge = 8 + random.nextInt(440);
        String yaml = "binding: " + method + "\nstock: " + um + " um tolerance 1 um"
                + (coverUm == 0 ? "" : "\ncovers: {front: " + coverUm + " um, back: " + coverUm + " um}")
                + (gap == 0 ? "" : "\nhanger: " + gap + " mm");
        Job job = jobs.get(yaml);
        if (job == null) {
            job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
            jobs.put(yaml, job);
        }
        NaivePlanner.Book book = new NaivePlanner.Book(um / 1000.0, coverUm / 1000.0, leaves, edge, gap);
        Cut cut = NaivePlanner.usual(method, book);
        Pins pins = cut.usual();
        String punchFile = "";
        if (random.nextInt(3) == 0) {
            cut = random.nextBoolean() ? cut : NaivePlanner.other(cut);
            pins = pins(random);
            punchFile = file(cut, pins);
        }
        String found = planned(job, book, punchFile);
        String naive = new NaivePlanner(book, cut, pins).text();
        count(method, coverUm, gap, pins, punchFile, naive);
        return found.equals(naive)
                ? none
                : yaml + "\n" + punchFile + leaves + " leaves on " + edge + " mm: " + found + ", not " + naive;
    }

    private void count(String method, int coverUm, int gap, Pins pins, String punchFile, String naive) {
        kinds.merge(method, 1, Integer::sum);
        kinds.merge(coverUm == 0 ? "no covers" : "covers", 1, Integer::sum);
        kinds.merge(gap == 0 ? "no hanger" : "hanger", 1, Integer::sum);
        kinds.merge(punchFile.isEmpty() ? "usual punch" : "own punch", 1, Integer::sum);
        kinds.merge(pins.firstMm() < 0 ? "movable guide" : "fixed guide", 1, Integer::sum);
        for (String kind : List.of("pin that stays", "no row", "no element", "gap too wide")) {
            if (naive.contains(kind)) {
                kinds.merge(kind, 1, Integer::sum);
            }
        }
    }

    private static Pins pins(Random random) {
        int count = 8 + random.nextInt(60);
        TreeSet<Integer> pullable = null;
        if (random.nextInt(3) > 0) {
            pullable = new TreeSet<>();
            for (int i = random.nextInt(12); i > 0; i--) {
                pullable.add(1 + random.nextInt(count));
            }
        }
        double first = random.nextBoolean() ? -1 : random.nextInt(15);
        return new Pins(
                count, first, pullable, 1 + random.nextInt(6), random.nextInt(5) * 0.5 + 1, 1 + random.nextInt(3));
    }

    private static String file(Cut cut, Pins pins) {
        StringBuilder depths = new StringBuilder();
        for (int i = 0; i < pins.depths(); i++) {
            depths.append(i == 0 ? "" : ", ")
                    .append("d")
                    .append(i)
                    .append(": ")
                    .append(cut.centres()[i])
                    .append(" mm");
        }
        String pullable = pins.pullable() == null
                ? "all"
                : pins.pullable().isEmpty() ? "none" : pins.pullable().toString();
        return "pattern: " + cut.pattern() + "\npins: " + pins.count() + "\nfirst-pin: "
                + (pins.firstMm() < 0 ? "movable" : pins.firstMm() + " mm") + "\npullable: " + pullable
                + "\nminimum-web: " + pins.webMm() + " mm\nlift: " + pins.liftMm() + " mm\ndepths: {" + depths + "}\n";
    }

    private static String planned(Job job, NaivePlanner.Book book, String punchFile) throws Exception {
        Block block = BlockBuilder.build(job, 2 * book.leaves());
        Length edge = Length.ofMm(String.valueOf(book.edge()));
        Stack stack =
                StackEstimator.estimate(block.leaves().stream().map(Leaf::stock).toList(), Length.ofMm(100), edge);
        try {
            Plan plan;
            if (punchFile.isEmpty()) {
                plan = Planner.plan(job, block, stack, edge);
            } else {
                Punch punch = PunchFile.read(new NamedText("own.yaml", punchFile), Catalogue.builtIn());
                plan = Planner.plan(job, block, stack, edge, punch);
            }
            return text(plan);
        } catch (SettingException e) {
            assertThat(e.key()).isEqualTo("hanger");
            return "gap too wide";
        }
    }

    private static String text(Plan plan) {
        Element element = plan.element();
        HoleRow row = plan.row();
        Gap gap = row.gap();
        return NaivePlanner.text(
                element == null ? 0 : element.size().mm(),
                row.holes().size(),
                row.holes().isEmpty() ? 0 : row.holes().get(0).centre().mm(),
                row.pulledPins(),
                row.fixedPins(),
                gap == null ? List.of() : gap.fixedPins(),
                plan.edgeDistance().mm(),
                plan.lifts().size());
    }
}
