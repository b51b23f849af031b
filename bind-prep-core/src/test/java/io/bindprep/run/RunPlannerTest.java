package io.bindprep.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.page.PageFacts;
import io.bindprep.page.Pages;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.report.words.Sentences;
import io.bindprep.run.Step.Work;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunPlannerTest {
    private static final Length LETTER_W = Length.ofInch(17, 2);
    private static final Length LETTER_H = Length.ofInch(11, 1);

    private static Run run(String yaml, List<PageFacts> facts, Length width, Length height) throws Exception {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Block block = BlockBuilder.build(job, facts.size());
        LeafSizes sizes = new LeafSizes(job, facts, width, height);
        Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
        Plan plan = Planner.plan(job, block, stack, job.bindingEdge() == BindingEdge.TOP ? width : height);
        return RunPlanner.plan(job, sizes, List.of(new BookPart(block, stack, plan)));
    }

    private static Run run(String yaml, int pages, Length width, Length height) throws Exception {
        return run(yaml, Pages.of(pages, width.mm(), height.mm()), width, height);
    }

    private static Run a4(String yaml, int pages) throws Exception {
        return run(yaml, pages, Length.ofMm(210), Length.ofMm(297));
    }

    private static Step step(Run run, Work work) {
        return run.steps().stream().filter(s -> s.work() == work).findFirst().orElseThrow();
    }

    private static String text(Run run, Work work) {
        return String.join(" ", Sentences.of(step(run, work)));
    }

    @Test
    void aReamWeighsWhatItsBasisWeightSays() throws Exception {
        // definition of basis weight: 500 sheets of 17 x 22 in weigh 20 lb, so 500 Letter sheets 5 lb = 2268 g
        Materials m = run("copies: 10\nsides: one\n", 50, LETTER_W, LETTER_H).materials();
        assertThat(m.runG().doubleValue()).isCloseTo(2267.96185, within(0.001));
        assertThat(m.copyG().doubleValue()).isCloseTo(226.796185, within(0.0001));
        assertThat(m.stocks()).hasSize(1);
        assertThat(m.stocks().get(0).sheets()).isEqualTo(500);
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
                        StockNeed::sheets,
                        StockNeed::overs)
                .containsExactly(
                        tuple(Use.FRONT_COVER, "c1s-10pt", true, 1, 40L, 10L),
                        // 100 pages less cover 2 and insert 4 are 94 pages, 47 leaves; 5 % of 1880 are 94
                        tuple(Use.TEXT, "offset-60", true, 47, 1880L, 94L),
                        tuple(Use.INSERT, "tag-150", true, 2, 80L, 10L),
                        tuple(Use.BACK_COVER, "coverboard-30", false, 1, 40L, 10L));
        assertThat(run.materials().because()).extracting(Sentences::of).anyMatch(b -> b.contains("as the job says"));
        // JCP gives no grammage for cover board: nothing is made up
        assertThat(run.materials().copyG()).isNull();
        // by hand: 47 leaves of 60 lb offset (88.81 g/m2) and 2 of 150 lb tag (244.12 g/m2) on 0.06237 m2
        assertThat(run.materials().knownCopyG().doubleValue()).isCloseTo(260.33 + 30.45, within(0.05));
        assertThat(text(run, Work.PACK))
                .contains("at least 11.6 kg", "The weight of c1s-10pt, coverboard-30 is not known");
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
    void liftsAndStrokes() throws Exception {
        Run run = a4("copies: 200\ncovers: front=film-75, back=coverboard-30", 84);
        assertThat(run.lifts()).extracting(Lift::leaves).containsExactly(1, 14, 14, 14, 1);
        // three lifts of leaves a copy; fronts of 0.005 in by 14, backs of 0.030 in by 2 in 1.9 mm: 600 + 15 + 100
        assertThat(run.strokes()).isEqualTo(715);
        assertThat(run.lifts()).extracting(Lift::cover).containsExactly(true, false, false, false, true);
        assertThat(run.lifts()).extracting(Lift::firstLeaf).containsExactly(1, 2, 16, 30, 44);
        assertThat(run.lifts().get(1).firstPage()).isEqualTo(1);
        assertThat(run.lifts().get(1).lastPage()).isEqualTo(28);
        assertThat(run.lifts().get(4).firstPage()).isNull();
        // 14 x 0.0037 in (JCP O-63)
        assertThat(run.lifts().get(1).thickness()).isEqualTo(Length.ofInch(14 * 37, 10_000));
        assertThat(text(run, Work.PUNCH))
                .contains(
                        "1 film cover, 3 x 14 leaves, 1 board cover",
                        "715 strokes in all for 200 copies. Punch the covers of several copies together");
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
        assertThat(run.steps()).allMatch(s -> !Sentences.of(s).isEmpty());
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
        assertThat(text(a4("binding: coil", 84), Work.CLOSE)).contains("Crimp");
    }

    @ParameterizedTest
    @CsvSource({
        // a sheet of paper rotated: heads stay up when it is flipped on the upright edge
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
        Run run = run("binding-edge: top\nsides: one", 13, Length.ofMm(297), Length.ofMm(210));
        assertThat(text(run, Work.PRINT)).contains("one side");
        assertThat(text(run, Work.JOG)).contains("top edge", "left side");
        assertThat(text(run, Work.SET_PUNCH)).contains("from the left corner");
        assertThat(text(run, Work.TURN_COVER)).contains("over the top edge");
    }

    @Test
    void cautionsDeferAndNameTheirSource() throws Exception {
        Run run = a4("copies: 200", 84);
        List<Caution> all = new ArrayList<>(run.cautions());
        run.steps().forEach(s -> all.addAll(s.cautions()));
        assertThat(all).allSatisfy(c -> {
            assertThat(Sentences.of(c)).isNotBlank();
            assertThat(Sentences.source(c)).isNotBlank();
        });
        assertThat(String.join(
                        " ",
                        all.stream()
                                .map(c -> Sentences.of(c) + Sentences.source(c))
                                .toList()))
                .contains(
                        "Local law",
                        "site rules",
                        "manual",
                        "1910.212",
                        "EN 1010-3",
                        "guillotine",
                        "isolate",
                        "sharp",
                        "weighs about");
    }

    @Test
    void withoutAnElementThereIsNothingToThread() throws Exception {
        Run run = a4("stock: coverboard-48", 200);
        assertThat(run.materials().elements()).isEmpty();
        assertThat(run.materials().because())
                .extracting(Sentences::of)
                .anyMatch(b -> b.contains("no element is counted"));
        assertThat(run.steps()).extracting(Step::work).doesNotContain(Work.THREAD, Work.CLOSE, Work.PUNCH);
    }

    @Test
    void halfSizeLeavesAreCutFromPressSheets() throws Exception {
        // by hand: A5 with 3 mm round it is 154 x 216; an A3 sheet less 10 mm at its long edge 287 x 420: 1 x 1
        // upright, 1 x 2 turned (287 / 216, 420 / 154)
        Length w = Length.ofMm(148);
        Length h = Length.ofMm(210);
        StockNeed one = run("press-sheet: a3\novers: none", 84, w, h)
                .materials()
                .stocks()
                .get(0);
        assertThat(one.press().up()).isEqualTo(2);
        assertThat(one.aCopy()).isEqualTo(42);
        assertThat(one.sheets()).isEqualTo(21);
        // without gripper and bleed four A5 cover an A3 exactly (ISO 216: halves of halves)
        assertThat(run("press-sheet: {size: a3, bleed: none, gripper: none}", 84, w, h)
                        .materials()
                        .stocks()
                        .get(0)
                        .press()
                        .up())
                .isEqualTo(4);
        // 3 leaves 4 up, 5 copies: 5 sheets cut and stacked, 3 x 2 repeated
        StockNeed stacked = run("press-sheet: {size: a3, bleed: none, gripper: none}\ncopies: 5\novers: none", 6, w, h)
                .materials()
                .stocks()
                .get(0);
        assertThat(stacked.sheets()).isEqualTo(5);
        assertThat(stacked.press().imposition()).isEqualTo(Press.Imposition.CUT_AND_STACK);
        // 5 leaves 4 up, 4 copies: 8 cut and stacked, 5 repeated
        StockNeed repeated = run(
                        "press-sheet: {size: a3, bleed: none, gripper: none}\ncopies: 4\novers: none", 10, w, h)
                .materials()
                .stocks()
                .get(0);
        assertThat(repeated.sheets()).isEqualTo(5);
        assertThat(repeated.press().imposition()).isEqualTo(Press.Imposition.STEP_AND_REPEAT);
        // a fold that does not fit is not made to
        assertThat(run("press-sheet: a5", 84, w, h).materials().stocks().get(0).press())
                .isNull();
    }

    @Test
    void aFoldOutByHand() throws Exception {
        // W3_1i-square-0t: holes to 5.08 + 1.984 mm, punching tolerance 1 mm: zone 8.064 mm; A4, allowance 3 mm: first
        // fold at 207, each further panel at most 207 - 11.064 = 195.9356 mm; A3 on its side reaches 420 mm: 402.936 in
        // two panels is too little, 598.871 in three will do
        List<PageFacts> facts = Pages.of(12, 210, 297);
        facts.set(4, Pages.page(5, 420, 297));
        facts.set(5, Pages.page(6, 420, 297));
        Length w = Length.ofMm(210);
        Length h = Length.ofMm(297);
        Fold two = run("fold-outs: 5-6 in 2 panels", facts, w, h).folds().get(0);
        assertThat(two.fits()).isFalse();
        assertThat(two.most().mm()).isCloseTo(402.936, within(0.001));
        assertThat(two.fewest()).isEqualTo(3);
        Run run = run("fold-outs: 5-6 in 3 panels", facts, w, h);
        Fold three = run.folds().get(0);
        assertThat(three.fits()).isTrue();
        assertThat(three.most().mm()).isCloseTo(598.871, within(0.001));
        assertThat(three.pages()).containsExactly(5, 6);
        assertThat(three.folds())
                .extracting(Length::mm)
                .usingElementComparator((a, b) -> Math.abs(a - b) < 0.001 ? 0 : 1)
                .containsExactly(207.0, 313.5);
        assertThat(text(run, Work.FOLD)).contains("Pages 5, 6", "207 mm", "onto the front");
        assertThat(Sentences.of(step(run, Work.TRIM)))
                .anyMatch(i -> i.contains("fold out") && i.contains("420 x 297 mm"));
        // a leaf of A3 weighs two of A4: 75.19 g/m2 (20 lb bond) x 0.06237 m2
        double plain = run("sides: two", 12, w, h).materials().copyG().doubleValue();
        assertThat(run.materials().copyG().doubleValue()).isCloseTo(plain + 75.1946 * 0.21 * 0.297, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 216:2007, 7.1: 2 mm either way between 150 and 600 mm; a PDF's points are off by less than 0.01 mm
        "210.01, 297, '', A4 (210 x 297 mm).",
        "297, 210, '', A4 landscape (297 x 210 mm).",
        "212, 299, '', A4 (210 x 297 mm).",
        "212.01, 297, '', 212 x 297 mm.",
        "240, 330, '', 240 x 330 mm.",
        // the job's own size is meant, not another near it
        "210, 297, trim: a4, A4 (210 x 297 mm).",
        "211, 297, trim: 211 x 297 mm, 211 x 297 mm."
    })
    void leavesAreCutToASizeByItsName(String width, String height, String job, String words) throws Exception {
        Run run = run(job, 12, Length.ofMm(width), Length.ofMm(height));
        assertThat(Sentences.of(step(run, Work.TRIM)).get(0)).startsWith("Cut leaves to " + words);
    }

    @Test
    void aHangerPartsTheElement() throws Exception {
        Run run = run(
                "binding-edge: top\nsides: one\nhanger: 90 mm\novers: none", 13, Length.ofMm(297), Length.ofMm(210));
        List<ElementNeed> pieces = run.materials().elements();
        assertThat(pieces).hasSize(1);
        assertThat(pieces.get(0).pieces()).isEqualTo(2);
        assertThat(pieces.get(0).loops() * 2).isEqualTo((int) pieces.get(0).totalLoops());
        assertThat(text(run, Work.THREAD)).contains("two pieces", "hanger");
    }

    @Test
    void tabsAreCutWiderAndNamed() throws Exception {
        Run run = a4("tabs: before 5 on tag-150 extending 10 mm", 12);
        StockNeed tab = run.materials().stocks().stream()
                .filter(n -> n.use() == Use.TAB)
                .findFirst()
                .orElseThrow();
        assertThat(tab.width()).isEqualTo(Length.ofMm(220));
        assertThat(tab.printed()).isFalse();
        assertThat(text(run, Work.TRIM)).contains("220 x 297 mm, tabs included");
    }

    @ParameterizedTest
    @CsvSource({"210 x 297 mm,8.267716535 x 11.692913386 in", "215.9 x 279.4 mm,8.5 x 11 in"})
    void millimetresAndInchesAgree(String mm, String inch) throws Exception {
        String rest =
                "\ncopies: 7\npress-sheet: {size: %s, bleed: %s, gripper: %s}\ntabs: before 5 on tag-150 extending %s";
        Run a = a4(
                "trim: " + mm
                        + String.format(
                                java.util.Locale.ROOT, rest, "330.2 x 482.6 mm", "3.175 mm", "12.7 mm", "12.7 mm"),
                84);
        Run b = a4(
                "trim: " + inch
                        + String.format(java.util.Locale.ROOT, rest, "13 x 19 in", "1/8 in", "1/2 in", "1/2 in"),
                84);
        assertThat(b.materials().stocks())
                .usingRecursiveComparison()
                .ignoringFields("press.sheet.name")
                .isEqualTo(a.materials().stocks());
        assertThat(b.lifts()).isEqualTo(a.lifts());
        assertThat(b.materials().elements()).isEqualTo(a.materials().elements());
    }

    @ParameterizedTest
    @ValueSource(longs = {17, 19, 23})
    void liftsAddUpAndThicknessIsMonotone(long seed) throws Exception {
        Random random = new Random(seed);
        for (int run = 0; run < 30; run++) {
            int pages = 2 + random.nextInt(300);
            int copies = 1 + random.nextInt(500);
            String job = "copies: " + copies + "\ncovers: front=film-75, back=coverboard-30\ntabs: before "
                    + (1 + random.nextInt(pages)) + " on tag-250";
            Run made = a4(job, pages);
            Block block = BlockBuilder.build(JobReader.toJob(JobSettings.read(job, "job.yaml")), pages);
            assertThat(made.lifts().stream().mapToInt(Lift::leaves).sum())
                    .as("seed " + seed)
                    .isEqualTo(block.leaves().size());
            assertThat(made.strokes())
                    .as("seed " + seed)
                    .isEqualTo((made.lifts().size() - 2L) * copies + (copies + 13) / 14 + (copies + 1) / 2);
            assertThat(made.materials().stocks().stream()
                            .mapToInt(StockNeed::aCopy)
                            .sum())
                    .as("seed " + seed)
                    .isEqualTo(block.leaves().size());
            assertThat(thickness(a4(job, pages + 2))).as("seed " + seed).isGreaterThan(thickness(made));
        }
    }

    private static long thickness(Run run) {
        return run.lifts().stream().mapToLong(l -> l.thickness().units()).sum();
    }
}
