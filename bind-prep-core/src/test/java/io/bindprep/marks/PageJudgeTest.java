package io.bindprep.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.binding.Closing;
import io.bindprep.binding.Depth;
import io.bindprep.binding.ElementChoice;
import io.bindprep.binding.Gap;
import io.bindprep.binding.Hole;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Holes;
import io.bindprep.binding.Margins;
import io.bindprep.binding.PageCount;
import io.bindprep.binding.Plan;
import io.bindprep.block.PagePlace;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Method;
import io.bindprep.page.PageEdge;
import io.bindprep.unit.Length;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Verdicts by plain plane geometry: a hole of 4 x 4 mm whose centre lies 5 mm from the binding edge at 100 mm along, with
 * 1 mm punching tolerance reaches from 2 to 8 mm and from 97 to 103 mm.
 */
class PageJudgeTest {
    private static final PagePlace RECTO = new PagePlace(1, true, PageEdge.LEFT, false);

    private static Plan plan(boolean round) {
        return plan(round, null);
    }

    private static Plan plan(boolean round, Gap gap) {
        return plan(round, gap, 5);
    }

    private static Plan plan(boolean round, Gap gap, int centreMm) {
        return plan(round, gap, centreMm, List.of(new Hole(7, Length.ofMm(100))));
    }

    private static Plan plan(boolean round, Gap gap, int centreMm, List<Hole> holes) {
        HoleRow row = new HoleRow(Length.ofMm(297), holes, List.of(), List.of(), Length.ofMm(90), Length.ZERO, gap);
        return new Plan(
                new Holes(Method.WIRE, "test", "3:1", Length.ofInch(1, 3), Length.ofMm(4), Length.ofMm(4), round),
                "test",
                new ElementChoice(null, null, false, false, List.of(), null),
                Length.ofMm(centreMm),
                new Depth(
                        new DepthSetting("only", Length.ofMm(centreMm), "test"),
                        Length.ofMm(3),
                        null,
                        Depth.Decider.PUNCH),
                row,
                List.of(1),
                new Closing(1, null, null),
                new Margins(Length.ofMm(10), Length.ofMm(1)),
                null,
                List.of());
    }

    private static Mark mark(MarkKind kind, double x0, double x1, double y0, double y1) {
        return new Mark(kind, Stage.GEOMETRY, new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0), x0, x1, y0, y1, "");
    }

    private static PageVerdict judge(boolean round, PagePlace place, Mark... marks) {
        return new PageJudge(plan(round)).judge(new PageMarks(1, List.of(marks), null), place, 297);
    }

    private static Verdict of(double x0, double x1, double y0, double y1) {
        return judge(false, RECTO, mark(MarkKind.TEXT, x0, x1, y0, y1)).verdict();
    }

    @Test
    void aMarkInTheHoleIsHitAndOneThatOnlyTouchesIsNot() {
        assertThat(of(4, 6, 99, 101)).isEqualTo(Verdict.HIT);
        assertThat(of(7.9, 9, 102.9, 110)).isEqualTo(Verdict.HIT);
        assertThat(of(8, 9, 99, 101)).isEqualTo(Verdict.TIGHT);
        assertThat(of(4, 6, 103, 110)).isEqualTo(Verdict.TIGHT);
        assertThat(of(0, 2, 99, 101)).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void theBindingMarginItselfIsClear() {
        assertThat(of(10, 12, 99, 101)).isEqualTo(Verdict.CLEAR);
        assertThat(of(9.99, 12, 99, 101)).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void aRoundHoleHasNoCorners() {
        // the corner of the square, 3 mm off both ways, is 4.24 mm from the centre; the circle's radius is 3 mm
        Mark corner = mark(MarkKind.TEXT, 7.5, 7.9, 102.5, 102.9);
        assertThat(judge(false, RECTO, corner).verdict()).isEqualTo(Verdict.HIT);
        assertThat(judge(true, RECTO, corner).verdict()).isEqualTo(Verdict.TIGHT);
        // 2.1 mm off both ways is 2.97 mm from the centre
        assertThat(judge(true, RECTO, mark(MarkKind.TEXT, 7.05, 7.4, 102.05, 102.4))
                        .verdict())
                .isEqualTo(Verdict.HIT);
    }

    @Test
    void anOutlineIsHeldToItsOwnShapeNotItsBounds() {
        // a frame whose bounds cover the hole but whose ink runs round it
        Path2D frame = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        frame.append(new Rectangle2D.Double(1, 90, 8, 20), false);
        frame.append(new Rectangle2D.Double(1.5, 90.5, 7, 19), false);
        Mark m = new Mark(MarkKind.LINE, Stage.GEOMETRY, frame, 1, 9, 90, 110, "");
        assertThat(judge(false, RECTO, m).verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void aMirroredPageIsHeldFromItsOtherEnd() {
        PagePlace verso = new PagePlace(2, false, PageEdge.LEFT, true);
        Mark m = mark(MarkKind.TEXT, 4, 6, 196, 198);
        assertThat(judge(false, verso, m).verdict()).isEqualTo(Verdict.HIT);
        assertThat(judge(false, RECTO, m).verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void aThumbCutTakesWhatLiesInItsHalfEllipse() {
        // 60 x 20 mm about the middle at 148.5, with 1 mm punching-tolerance: half centres 31 along and 21 deep
        Gap gap = new Gap(
                Length.ofMm(100),
                Length.ofMm(197),
                List.of(),
                List.of(),
                new Gap.ThumbCut(Length.ofMm(60), Length.ofMm(20)));
        PageJudge judge = new PageJudge(plan(false, gap));
        assertThat(judge.stripMm()).isEqualTo(22);
        assertThat(thumb(judge, 20, 22, 148, 149)).isEqualTo(Verdict.HIT);
        assertThat(thumb(judge, 21, 22, 148, 149)).isEqualTo(Verdict.CLEAR);
        // 31 x sqrt(1 - (11/21)^2) is 26.4 mm: at 11 mm deep the cut reaches from 122.1 to 174.9
        assertThat(thumb(judge, 11, 12, 176, 180)).isEqualTo(Verdict.CLEAR);
        assertThat(thumb(judge, 11, 12, 173, 180)).isEqualTo(Verdict.HIT);
        Mark off = mark(MarkKind.TEXT, 11, 12, 148, 149);
        PageVerdict hit = judge.judge(new PageMarks(1, List.of(off), null), RECTO, 297);
        assertThat(hit.hits()).singleElement().extracting(Hit::pins).isEqualTo(List.of());
        // a page read from its other end, 10 mm longer: the middle of the leaf lies at 158.5 of it
        PagePlace verso = new PagePlace(2, false, PageEdge.LEFT, true);
        Mark far = mark(MarkKind.TEXT, 11, 12, 180, 184);
        assertThat(judge.judge(new PageMarks(2, List.of(far), null), verso, 307).verdict())
                .isEqualTo(Verdict.HIT);
    }

    private static Verdict thumb(PageJudge judge, double x0, double x1, double y0, double y1) {
        Mark mark = mark(MarkKind.TEXT, x0, x1, y0, y1);
        return judge.judge(new PageMarks(1, List.of(mark), null), RECTO, 297).verdict();
    }

    @Test
    void oneScanIsHeldAgainstEveryPlan() {
        // with its centre at 5 mm the hole reaches from 2 to 8 mm, at 9 mm from 6 to 12, which is beyond the margin of
        // 10
        PlanTrial trial = new PlanTrial(List.of(plan(false), plan(false, null, 9)), List.of(plan(false, null, 16)), 4);
        // 16 + 2 + 1 mm, and 1 mm more to look at
        assertThat(trial.stripMm()).isEqualTo(20);
        assertThat(trial.reachMm()).isEqualTo(19);
        trial.judge(page(3, 4, 5), RECTO, 297);
        trial.judge(page(1, 9, 11), RECTO, 297);
        trial.judge(page(2, 30, 31), RECTO, 297);
        trial.judge(new PageMarks(4, List.of(), "broken"), RECTO, 297);
        assertThat(trial.pages(0, Verdict.HIT)).containsExactly(3);
        assertThat(trial.pages(0, Verdict.TIGHT)).containsExactly(1);
        assertThat(trial.pages(1, Verdict.HIT)).containsExactly(1);
        assertThat(trial.pages(1, Verdict.TIGHT)).containsExactly(3);
        assertThat(trial.pages(2, Verdict.TIGHT)).containsExactly(1, 3);
        assertThat(trial.pages(2, Verdict.UNCHECKED)).containsExactly(4);
        assertThat(trial.choiceCounts()).containsExactly(new PageCount(1, 1, 1), new PageCount(1, 1, 1));
        assertThat(trial.verdicts(1)).extracting(PageVerdict::page).containsExactly(1, 2, 3, 4);
        assertThat(trial.verdicts(1).get(0))
                .isEqualTo(new PageJudge(plan(false, null, 9)).judge(page(1, 9, 11), RECTO, 297));
    }

    @Test
    void aPageThatWasNotLookedAtIsNoVerdict() {
        PlanTrial trial = new PlanTrial(List.of(plan(false)), List.of(), 1);
        assertThatThrownBy(() -> trial.verdicts(0)).isInstanceOf(IllegalStateException.class);
    }

    private static PageMarks page(int number, double near, double far) {
        return new PageMarks(number, List.of(mark(MarkKind.TEXT, near, far, 99, 101)), null);
    }

    @Test
    void aMarkAcrossSeveralHolesNamesThemAll() {
        // holes of 4 mm with 1 mm punching tolerance at 100, 110 and 120 mm; on a verso counted from the other end
        List<Hole> holes =
                List.of(new Hole(7, Length.ofMm(100)), new Hole(8, Length.ofMm(110)), new Hole(9, Length.ofMm(120)));
        PageJudge judge = new PageJudge(plan(false, null, 5, holes));
        PageMarks rule = new PageMarks(1, List.of(mark(MarkKind.LINE, 4, 5, 50, 108)), null);
        assertThat(judge.judge(rule, RECTO, 297).hits()).extracting(Hit::pins).containsExactly(List.of(7, 8));
        PagePlace verso = new PagePlace(2, false, PageEdge.RIGHT, true);
        PageMarks rotated = new PageMarks(2, List.of(mark(MarkKind.LINE, 4, 5, 297 - 108, 297 - 50)), null);
        assertThat(judge.judge(rotated, verso, 297).hits())
                .extracting(Hit::pins)
                .containsExactly(List.of(7, 8));
    }

    @Test
    void backgroundIsNeverAHit() {
        PageVerdict v = judge(false, RECTO, mark(MarkKind.BACKGROUND, 0, 15, 0, 297));
        assertThat(v.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(v.background()).isTrue();
        assertThat(v.nearest()).isNull();
    }

    @Test
    void aPictureThatMayBeAPhotographIsNeverMoreThanTight() {
        Rectangle2D inHole = new Rectangle2D.Double(4, 99, 2, 2);
        Mark doubtful = new Mark(MarkKind.IMAGE, Stage.ESTIMATE, inHole, 4, 6, 99, 101, "");
        assertThat(judge(false, RECTO, doubtful).verdict()).isEqualTo(Verdict.TIGHT);
        Mark certain = new Mark(MarkKind.IMAGE, Stage.RASTER, inHole, 4, 6, 99, 101, "");
        assertThat(judge(false, RECTO, certain).verdict()).isEqualTo(Verdict.HIT);
    }

    @Test
    void anUnreadPageIsNeverClear() {
        PageVerdict v = new PageJudge(plan(false)).judge(new PageMarks(1, List.of(), "broken"), RECTO, 297);
        assertThat(v.verdict()).isEqualTo(Verdict.UNCHECKED);
    }

    @Test
    void theWorstHitComesFirstAndNamesItsPins() {
        PageVerdict v = judge(false, RECTO, mark(MarkKind.TEXT, 9, 12, 10, 12), mark(MarkKind.LINE, 4, 6, 99, 101));
        assertThat(v.hits()).extracting(Hit::pins).containsExactly(List.of(7), List.of());
        assertThat(v.nearest().nearMm()).isEqualTo(4);
    }
}
