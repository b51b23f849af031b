package io.bindprep.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.run.Step.Work;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunPlannerTest {
    private static final Length LETTER_W = Length.ofInch(17, 2);
    private static final Length LETTER_H = Length.ofInch(11, 1);

    private static Run run(String yaml, int pages, Length width, Length height) throws Exception {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Block block = BlockBuilder.build(job, pages);
        Stack stack =
                StackEstimator.estimate(block.leaves().stream().map(Leaf::stock).toList(), width, height);
        Plan plan = Planner.plan(job, block, stack, job.boundEdge().name().equals("TOP") ? width : height);
        return RunPlanner.plan(job, width, height, List.of(new Bound(block, stack, plan)));
    }

    private static Run a4(String yaml, int pages) throws Exception {
        return run(yaml, pages, Length.ofMm(210), Length.ofMm(297));
    }

    private static Step step(Run run, Work work) {
        return run.steps().stream().filter(s -> s.work() == work).findFirst().orElseThrow();
    }

    private static String text(Run run, Work work) {
        return String.join(" ", step(run, work).instructions());
    }

    @Test
    void aReamWeighsWhatItsBasisWeightSays() throws Exception {
        // definition of basis weight: 500 sheets of 17 x 22 in weigh 20 lb, so 500 Letter sheets 5 lb = 2268 g
        Materials m = run("copies: 10\nsides: one\n", 50, LETTER_W, LETTER_H).materials();
        assertThat(m.runG().doubleValue()).isCloseTo(2267.96185, within(0.001));
        assertThat(m.copyG().doubleValue()).isCloseTo(226.796185, within(0.0001));
        assertThat(m.stocks()).hasSize(1);
        assertThat(m.stocks().get(0).net()).isEqualTo(500);
    }

    @Test
    void sheetsByStockWithOvers() throws Exception {
        Run run = a4(
                "copies: 40\nstock: offset-60\novers: 5 %, at least 10\n"
                        + "covers: {front: pages 1-2 on c1s-10pt, back: coverboard-30}\n"
                        + "inserts: 9-12 on tag-150\n",
                100);
        assertThat(run.materials().stocks())
                .extracting(
                        StockNeed::use,
                        n -> n.stock().name(),
                        StockNeed::printed,
                        StockNeed::aCopy,
                        StockNeed::net,
                        StockNeed::overs)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Use.FRONT_COVER, "c1s-10pt", true, 1, 40L, 10L),
                        // 100 pages less cover 2 and insert 4 are 94 pages, 47 leaves; 5 % of 1880 are 94
                        org.assertj.core.groups.Tuple.tuple(Use.TEXT, "offset-60", true, 47, 1880L, 94L),
                        org.assertj.core.groups.Tuple.tuple(Use.INSERT, "tag-150", true, 2, 80L, 10L),
                        org.assertj.core.groups.Tuple.tuple(Use.BACK_COVER, "coverboard-30", false, 1, 40L, 10L));
        assertThat(run.materials().because()).anyMatch(b -> b.contains("as the job says"));
        // JCP gives no grammage for cover board: nothing is made up
        assertThat(run.materials().copyG()).isNull();
        assertThat(run.steps()).noneMatch(s -> s.work() == Work.PACK);
    }

    @Test
    void loopsForAllCopies() throws Exception {
        // 34 loops on A4: German Wikipedia "Drahtkammbindung"
        ElementNeed wire =
                a4("copies: 40\novers: none", 84).materials().elements().get(0);
        assertThat(wire.loops()).isEqualTo(34);
        assertThat(wire.pieces()).isEqualTo(40);
        assertThat(wire.spares()).isZero();
        assertThat(wire.totalLoops()).isEqualTo(34 * 40);
        // 21 rings on A4: Wikipedia "Comb binding"
        assertThat(a4("binding: comb", 84).materials().elements().get(0).loops())
                .isEqualTo(21);
        ElementNeed coil = a4("binding: coil", 84).materials().elements().get(0);
        assertThat(coil.loops()).isZero();
        assertThat(coil.length().compareTo(Length.ofMm(297))).isLessThanOrEqualTo(0);
    }

    @Test
    void liftsAndPulls() throws Exception {
        Run run = a4("copies: 200\ncovers: front=film-75, back=coverboard-30", 84);
        assertThat(run.lifts()).extracting(Lift::leaves).containsExactly(1, 14, 14, 14, 1);
        assertThat(run.pulls()).isEqualTo(1000);
        assertThat(run.lifts()).extracting(Lift::cover).containsExactly(true, false, false, false, true);
        assertThat(run.lifts()).extracting(Lift::firstLeaf).containsExactly(1, 2, 16, 30, 44);
        assertThat(run.lifts().get(1).firstPage()).isEqualTo(1);
        assertThat(run.lifts().get(1).lastPage()).isEqualTo(28);
        assertThat(run.lifts().get(4).firstPage()).isNull();
        // 14 x 0.0037 in (JCP O-63)
        assertThat(run.lifts().get(1).thickness()).isEqualTo(Length.ofInch(14 * 37, 10_000));
        assertThat(text(run, Work.PUNCH)).contains("1 (cover) (film), 14, 14, 14, 1 (cover) (board)", "1000 pulls");
    }

    @ParameterizedTest
    @CsvSource({
        "wire,PRINT TRIM SET_PUNCH JOG PUNCH COVERS THREAD CLOSE TURN_COVER CHECK PACK",
        "coil,PRINT TRIM SET_PUNCH JOG PUNCH COVERS THREAD CLOSE CHECK PACK",
        "comb,PRINT TRIM SET_PUNCH JOG PUNCH COVERS THREAD CLOSE CHECK PACK",
        "rings,PRINT TRIM SET_PUNCH JOG PUNCH COVERS THREAD CLOSE CHECK PACK"
    })
    void stepsInTradeOrder(String binding, String order) throws Exception {
        Run run = a4("copies: 3\nbinding: " + binding, 84);
        assertThat(run.steps()).extracting(s -> s.work().name()).containsExactly(order.split(" "));
        assertThat(run.steps()).allMatch(s -> !s.instructions().isEmpty());
    }

    @Test
    void theBackCoverIsLaidOnTheFrontAndTurnedOnlyOnWire() throws Exception {
        // common practice, no source: back cover on top of the front one while closing, then turned so that the seam
        // is hidden
        Run wire = a4("covers: front=film-75, back=coverboard-30", 84);
        assertThat(text(wire, Work.COVERS)).contains("back cover on top of the front", "outside down");
        assertThat(text(wire, Work.TURN_COVER)).contains("back cover", "seam", "hidden");
        assertThat(text(a4("", 84), Work.COVERS)).contains("last leaf on top", "last page down");
        for (String other : List.of("coil", "comb", "rings")) {
            assertThat(text(a4("binding: " + other, 84), Work.COVERS)).contains("reading order");
        }
        assertThat(text(a4("binding: coil", 84), Work.CLOSE)).contains("crimp");
    }

    @ParameterizedTest
    @CsvSource({
        // a sheet of paper turned: heads stay up when it is flipped on the upright edge
        "two,portrait,long",
        "two,landscape,short",
        "two-head-to-foot,portrait,short",
        "two-head-to-foot,landscape,long"
    })
    void duplexEdge(String sides, String stands, String edge) throws Exception {
        boolean portrait = stands.equals("portrait");
        Length wide = Length.ofMm(portrait ? 210 : 297);
        Length high = Length.ofMm(portrait ? 297 : 210);
        assertThat(text(run("sides: " + sides, 20, wide, high), Work.PRINT)).contains("on the " + edge + " edge");
    }

    @Test
    void aTopBoundCalendar() throws Exception {
        Run run = run("bound-edge: top\nsides: one", 13, Length.ofMm(297), Length.ofMm(210));
        assertThat(text(run, Work.PRINT)).contains("one side");
        assertThat(text(run, Work.JOG)).contains("top edge", "left side");
        assertThat(text(run, Work.SET_PUNCH)).contains("from the left corner");
        assertThat(text(run, Work.TURN_COVER)).contains("over the head");
    }

    @Test
    void cautionsDeferAndNameTheirSource() throws Exception {
        Run run = a4("copies: 200", 84);
        String all = run.cautions() + " " + run.steps();
        assertThat(all)
                .contains(
                        "local law",
                        "site rules",
                        "manual",
                        "1910.212",
                        "EN 1010-3",
                        "guillotine",
                        "isolate",
                        "sharp",
                        "weighs about");
        run.steps()
                .forEach(s -> s.cautions().forEach(c -> {
                    assertThat(c.text()).isNotBlank();
                    assertThat(c.source()).isNotBlank();
                }));
    }

    @Test
    void withoutAnElementThereIsNothingToThread() throws Exception {
        Run run = a4("stock: coverboard-48", 200);
        assertThat(run.materials().elements()).isEmpty();
        assertThat(run.materials().because()).anyMatch(b -> b.contains("no element is counted"));
        assertThat(run.steps()).extracting(Step::work).doesNotContain(Work.THREAD, Work.CLOSE, Work.PUNCH);
    }
}
