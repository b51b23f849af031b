package io.bindprep.run;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.LeafSizes;
import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchLike;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.job.PressSheet;
import io.bindprep.page.Bookmark;
import io.bindprep.page.PageFacts;
import io.bindprep.page.Pages;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.report.words.Sentences;
import io.bindprep.run.Step.Work;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import io.bindprep.volume.VolumePlanner;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words of the steps, one by one, with every number by hand. */
class RunStepsTest {
    private static final Length W = Length.ofMm(210);
    private static final Length H = Length.ofMm(297);

    /** Punches the book on a punch of the shop's own instead. */
    private interface OwnPunch {
        Punch of(Job job, Plan plan);
    }

    private static Run run(String yaml, List<PageFacts> facts, OwnPunch own, Bookmark... bookmarks) throws Exception {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Block block = BlockBuilder.build(job, facts.size());
        LeafSizes sizes = new LeafSizes(job, facts, W, H);
        Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
        Length edge = job.bindingEdge() == BindingEdge.TOP ? W : H;
        Plan plan = Planner.plan(job, block, stack, edge);
        if (own != null) {
            plan = Planner.plan(job, block, stack, edge, own.of(job, plan));
        }
        Split split = VolumePlanner.split(job, plan, block, sizes, List.of(bookmarks));
        return RunPlanner.plan(job, sizes, BookPart.parts(block, stack, plan, split));
    }

    private static Run a4(String yaml, int pages) throws Exception {
        return run(yaml, Pages.of(pages, 210, 297), null);
    }

    private static List<String> lines(Run run, Work work) {
        return run.steps().stream()
                .filter(s -> s.work() == work)
                .findFirst()
                .map(Sentences::of)
                .orElseThrow();
    }

    private static Punch own(Job job, Plan plan, int pins, Length firstPin, MeasuredErrors errors) {
        Pattern pattern = job.catalogue().patterns().byId(plan.pattern()).orElseThrow();
        return PunchLike.of(pattern, pins, firstPin, null, null, errors);
    }

    @Test
    void sheetsToPrintAndToLayOut() throws Exception {
        // 100 pages less two of the cover are 49 leaves, by 40 copies 1960 and 5 %; a cover that is bought is not
        // printed
        Run run = a4("copies: 40\ncovers: {front: pages 1-2 on c1s-10pt, back: coverboard-30}", 100);
        assertThat(lines(run, Work.PRINT))
                .containsExactly(
                        "50 sheets of c1s-10pt (front cover: 1 leaf per copy; 10 overs included).",
                        "2058 sheets of bond-20 (text: 49 leaves per copy; 98 overs included).",
                        "Print both sides, backs head to head. Duplex setting: flip on the long edge.");
        assertThat(run.materials().stocks()).extracting(StockNeed::total).containsExactly(50L, 2058L, 50L);
        // 40 wires and 5 %: 42 of 34 loops (German Wikipedia "Drahtkammbindung")
        assertThat(run.materials().elements().get(0).totalLoops()).isEqualTo(1428);
        Run one = a4("overs: none\nsides: two-head-to-foot\ncovers: {front: pages 1-2 on c1s-10pt}", 4);
        assertThat(lines(one, Work.PRINT))
                .containsExactly(
                        "1 sheet of c1s-10pt (front cover: 1 leaf per copy; 0 overs included).",
                        "1 sheet of bond-20 (text: 1 leaf per copy; 0 overs included).",
                        "Print both sides, backs head to foot. Duplex setting: flip on the short edge.");
    }

    @Test
    void pressSheetsAreCutAsTheyWereImposed() throws Exception {
        // A4 twice on A3 without bleed and gripper (ISO 216); 42 leaves of one copy on 21 sheets, 21 x 2 with each leaf
        // repeated
        Run stacked = a4("press-sheet: {size: a3, bleed: none, gripper: none}\novers: none", 84);
        assertThat(lines(stacked, Work.PRINT).get(0))
                .isEqualTo("21 press sheets A3 of bond-20 (text: 42 leaves per copy, 2 up; 0 overs included).");
        assertThat(lines(stacked, Work.TRIM))
                .containsExactly(
                        "Cut leaves to A4 (210 x 297 mm). If they were printed larger, cut the left edge first and"
                                + " measure from it.",
                        "Each press sheet of text holds 2 leaves of one copy. Cut the pile of each copy and stack the cut"
                                + " piles in order.");
        // one leaf, two copies: two sheets cut and stacked, one with the leaf repeated
        Run repeated = a4("copies: 2\npress-sheet: {size: a3, bleed: none, gripper: none}\novers: none", 2);
        assertThat(lines(repeated, Work.PRINT).get(0))
                .startsWith("1 press sheet A3 of bond-20 (text: 1 leaf per copy, 2 up");
        assertThat(lines(repeated, Work.TRIM).get(1))
                .isEqualTo("Each press sheet of text holds the same leaf twice. Each cut pile serves one copy.");
        // as many either way: cut and stacked, for the copies come in order
        StockNeed even = a4("copies: 2\npress-sheet: {size: a3, bleed: none, gripper: none}\novers: none", 4)
                .materials()
                .stocks()
                .get(0);
        assertThat(even.sheets()).isEqualTo(2);
        assertThat(even.press().imposition()).isEqualTo(Press.Imposition.CUT_AND_STACK);
        // one leaf on a sheet is trimmed, nothing more
        assertThat(lines(a4("press-sheet: {size: 230 x 320 mm}\novers: none", 84), Work.TRIM))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        // gripper of 10 mm along the long edge: 287 x 420 of an A3 sheet (ISO 216) whichever way it is given
        "297,420,10,0,297,100,2",
        "420,297,10,0,297,100,2",
        "297,420,0,0,297,100,4",
        // 90 x 134 with 3 mm all round is 96 x 140: 2 x 4 turned, 2 x 3 upright
        "297,420,10,3,90,134,8",
        // with 5 mm 100 x 144: 2 x 2 upright, 1 x 4 turned
        "297,420,10,5,90,134,4",
        // 287 / 143.5 and 420 / 210 without a remainder
        "297,420,10,0,143.5,210,4",
        "297,420,10,0,143.6,210,2",
        // a gripper that leaves no paper, or less than none
        "100,420,100,0,50,50,0",
        "100,420,170,0,50,50,0"
    })
    void leavesOnAPressSheetByHand(
            String w, String h, String gripper, String bleed, String leafW, String leafH, int up) {
        PressSheet sheet =
                new PressSheet("sheet", Length.ofMm(w), Length.ofMm(h), Length.ofMm(bleed), Length.ofMm(gripper));
        assertThat(Imposer.up(sheet, Length.ofMm(leafW), Length.ofMm(leafH))).isEqualTo(up);
        assertThat(Imposer.up(sheet, Length.ofMm(leafH), Length.ofMm(leafW))).isEqualTo(up);
    }

    @Test
    void leavesOfAnotherSizeAreCutByThemselves() throws Exception {
        assertThat(lines(a4("tabs: before 5 on tag-150 extending 10 mm", 12), Work.TRIM))
                .hasSize(2)
                .last()
                .isEqualTo("1 leaf per copy of tag-150 (tab) is cut to 220 x 297 mm, tabs included.");
        // as wide as the book but shorter, and the other way round
        List<PageFacts> facts = Pages.of(12, 210, 297);
        facts.set(4, Pages.page(5, 210, 148));
        facts.set(5, Pages.page(6, 210, 148));
        facts.set(8, Pages.page(9, 148, 297));
        facts.set(9, Pages.page(10, 148, 297));
        assertThat(lines(run("", facts, null), Work.TRIM).subList(1, 3))
                .containsExactly(
                        "1 leaf per copy of bond-20 (text) is cut to 210 x 148 mm.",
                        "1 leaf per copy of bond-20 (text) is cut to 148 x 297 mm.");
    }

    @ParameterizedTest
    @CsvSource({
        // A book of 210 mm, 3 mm of allowance, holes to 8 mm: first fold at 207, further panels of 207 - 11 = 196
        "210,2,1,true,false",
        "210.001,2,2,true,true",
        "403,2,2,true,true",
        "403.001,2,3,false,true",
        "403.001,3,3,true,true",
        "599,3,3,true,true",
        "599.001,3,4,false,true"
    })
    void foldsAtTheirLimits(String flat, int panels, int fewest, boolean fits, boolean wide) {
        Fold fold = Fold.of(List.of(5), Length.ofMm(flat), panels, W, Length.ofMm(3), Length.ofMm(8));
        assertThat(fold.most()).isEqualTo(Length.ofMm(207 + 196L * (panels - 1)));
        assertThat(fold.fewest()).isEqualTo(fewest);
        assertThat(fold.fits()).isEqualTo(fits);
        assertThat(fold.wide()).isEqualTo(wide);
        assertThat(fold.folds()).hasSize(fits && wide ? panels - 1 : 0);
        if (fits && wide) {
            assertThat(fold.folds().get(0)).isEqualTo(Length.ofMm(207));
        }
    }

    @Test
    void aBookWithoutRoomBetweenZoneAndTrimFoldsNothing() {
        // 14 - 3 for the first fold, 8 + 3 for the holes: no panel at all
        assertThat(Fold.fewest(Length.ofMm(20), Length.ofMm(14), Length.ofMm(3), Length.ofMm(8)))
                .isEqualTo(Integer.MAX_VALUE);
        // 0.001 mm more leaves panels of 0.001: (20 - 11.001) / 0.001 and the first
        assertThat(Fold.fewest(Length.ofMm(20), Length.ofMm("14.001"), Length.ofMm(3), Length.ofMm(8)))
                .isEqualTo(9000);
    }

    @Test
    void foldsAreToldByTheirPages() throws Exception {
        // holes to 5.08 + 1.984 and 1 mm: 8.064; A4 and 3 mm: first fold at 207, second halfway along the rest of 213
        List<PageFacts> facts = Pages.of(12, 210, 297);
        facts.set(4, Pages.page(5, 400, 297));
        facts.set(5, Pages.page(6, 400, 297));
        facts.set(8, Pages.page(9, 420, 297));
        facts.set(9, Pages.page(10, 420, 297));
        String keep = ". Keep every fold inside the trim and clear of the holes.";
        Run run = run("fold-outs: [5-6 in 2 panels, 9-10 in 3 panels]", facts, null);
        assertThat(lines(run, Work.FOLD))
                .containsExactly(
                        "Pages 5, 6: fold at 207 mm from the binding edge, the first fold onto the front" + keep,
                        "Pages 9, 10: fold at 207 mm, 313.5 mm from the binding edge, the first fold onto"
                                + " the front, the others to and fro" + keep);
        assertThat(lines(run("fold-outs: 5 in 2 panels\nsides: one", Pages.of(6, 210, 297), null), Work.FOLD))
                .containsExactly("Page 5: no wider than the book. Nothing to fold.");
    }

    @Test
    void howThePunchIsSet() throws Exception {
        // 34 holes on A4 at 1/3 in leave 8.8 mm; 36 pins: 35 is cut by the end, 36 misses it by less than a pitch
        Run generic = a4("", 84);
        String first = ". First hole centre: 9 mm from the head";
        String centre = "Set the punch for W3_1i-square-0t: hole centre 5 mm from the binding edge. ";
        assertThat(lines(generic, Work.SET_PUNCH))
                .containsExactly(centre + "Pull pins 35, 36, counted from the side guide" + first + ".");
        List<PageFacts> facts = Pages.of(84, 210, 297);
        assertThat(lines(run("", facts, (job, plan) -> own(job, plan, 34, null, null)), Work.SET_PUNCH))
                .containsExactly(centre + "No pin to pull" + first + ".");
        assertThat(lines(run("", facts, (job, plan) -> own(job, plan, 35, null, null)), Work.SET_PUNCH))
                .containsExactly(centre + "Pull pin 35, counted from the side guide" + first + ".");
        MeasuredErrors side =
                new MeasuredErrors(null, new Deviation(Length.ofMm("0.4"), Length.ofMm("0.1")), null, null);
        assertThat(lines(run("", facts, (job, plan) -> own(job, plan, 34, null, side)), Work.SET_PUNCH))
                .containsExactly(
                        centre + "No pin to pull" + first + ". Set the side guide's own scale to 8.4 mm, as measured.");
    }

    @Test
    void aRowOffTheMiddleIsFedAlike() throws Exception {
        List<PageFacts> facts = Pages.of(84, 210, 297);
        String jog =
                "Jog each lift square at the left edge and at the head. Feed every lift with the head to the side guide";
        assertThat(lines(run("", facts, null), Work.JOG)).containsExactly(jog + ".");
        // 33 holes from 10 mm on: turned over they begin at 297 - 10 - 32 x 8.467 = 16.07
        assertThat(lines(run("", facts, (job, plan) -> own(job, plan, 33, Length.ofMm(10), null)), Work.JOG))
                .containsExactly(jog + ". A leaf fed the other way would miss the element.");
    }

    @Test
    void volumesAreToldApartWhereTheyDiffer() throws Exception {
        // 300 leaves of 60 lb offset (JCP A55: 0.0047 in) go on no wire; cut before page 281, 10 leaves off the even
        // share.
        // 15 leaves a lift are within 1.9 mm, 16 would be 1.91: 140 leaves are 10 lifts of 14, 160 are 11 of up to 15
        Run run = run("copies: 3\nstock: offset-60", Pages.of(600, 210, 297), null, new Bookmark("Fish", 281));
        List<String> punch = lines(run, Work.PUNCH);
        assertThat(punch).hasSize(2);
        assertThat(punch.get(0)).isEqualTo("21 lifts per copy: 10 of volume 1, 11 of volume 2. Thickest lift: 1.8 mm.");
        assertThat(punch.get(1)).isEqualTo("63 strokes in all for 3 copies.");
        assertThat(run.lifts()).filteredOn(l -> l.volume() == 2).hasSize(11);
        // 140 and 160 x 0.0047 in are as thick as 178 and 204 sheets of 20 lb bond: 3/4 in takes 190, 7/8 in 215
        assertThat(lines(run, Work.CLOSE).get(0))
                .isEqualTo(
                        "Volume 1: Set the closer to 3/4 in, the nominal size of the wire. Volume 2: Set the closer to"
                                + " 7/8 in, the nominal size of the wire.");
        // the same for both is said once
        assertThat(lines(run, Work.SET_PUNCH).get(0)).doesNotContain("Volume");
        Run one = run("stock: offset-60", Pages.of(600, 210, 297), null, new Bookmark("Fish", 281));
        assertThat(lines(one, Work.PUNCH).get(1)).isEqualTo("21 strokes in all.");
        assertThat(lines(a4("", 10), Work.PUNCH))
                .containsExactly("1 lift per copy, in order: 5 leaves. Thickest lift: 0.5 mm.", "1 stroke in all.");
    }

    @Test
    void howMuchItWeighs() throws Exception {
        // 42 leaves of 0.06237 m2 and 75.1946 g/m2 (20 lb on 500 x 17 x 22 in) are 196.97 g, 200 copies 39.39 kg
        Run run = a4("copies: 200", 84);
        assertThat(lines(run, Work.PACK)).containsExactly("The run weighs about 39.4 kg without elements and packing.");
        assertThat(lines(run, Work.CHECK))
                .contains("A copy weighs about 197 g without its element. A lighter copy may miss a leaf.");
        assertThat(run.steps().get(run.steps().size() - 1).cautions())
                .extracting(Sentences::of)
                .containsExactly(
                        "Judge the load before you lift or carry it. The run weighs about 39.4 kg. Carry it in several"
                                + " loads.");
        // 5 leaves are 23.4 g: said in grams, and nobody carries them in several loads
        Run light = a4("", 10);
        assertThat(lines(light, Work.PACK)).containsExactly("The run weighs about 23 g without elements and packing.");
        assertThat(light.steps().get(light.steps().size() - 1).cautions())
                .extracting(Sentences::of)
                .containsExactly("Judge the load before you lift or carry it. The run weighs about 23 g.");
    }

    @Test
    void threadingAndClosingByMethod() throws Exception {
        // 42 x 0.0040 in are at most 4.27 mm; with 1/8 in a wire of 5/16 in, a coil of 8 mm, rings of 16 mm; as a comb
        // 46 sheets, 3/8 in (Wikipedia "Comb binding": 55)
        Run wire = a4("", 84);
        assertThat(lines(wire, Work.THREAD))
                .containsExactly("Cut wire 5/16 in to 34 loops. Hang the copy in it, one loop per hole.");
        assertThat(lines(wire, Work.CLOSE).get(0))
                .isEqualTo("Set the closer to 5/16 in, the nominal size of the wire.");
        // 297 less 4.4 of hole and 3.175 of web are 45.6 pitches of 6.35 mm
        assertThat(lines(a4("binding: coil", 84), Work.THREAD))
                .containsExactly(
                        "Curve the binding edge slightly. Start at one end and turn coil 8 mm through all 46 holes.");
        assertThat(lines(a4("binding: comb", 84), Work.THREAD))
                .containsExactly(
                        "Cut comb 3/8 in to 21 rings. Open it on the machine no wider than needed. Hang the copy on it,"
                                + " a ring in every hole.");
        assertThat(lines(a4("binding: rings", 84), Work.THREAD))
                .containsExactly("Open the 16 mm mechanism, both halves at once. Lay the copy on its 2 rings.");
    }
}
