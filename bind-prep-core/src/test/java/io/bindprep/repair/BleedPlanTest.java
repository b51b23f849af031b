package io.bindprep.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.BleedStrip;
import io.bindprep.repair.BleedPlan.BleedFault;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 3 mm of bleed and its mirroring: common practice of prepress, no source. */
class BleedPlanTest {
    private final List<Painted> painted = new ArrayList<>();

    private BleedPlanTest paint(MarkKind kind, double x, double y, double w, double h) {
        painted.add(new Painted(painted.size(), kind, new Rectangle2D.Double(x, y, w, h), true, false));
        return this;
    }

    private BleedPlan plan() {
        return BleedPlan.of(painted, 3);
    }

    @Test
    void artThatEndsAtTheTrimIsMirroredAsDeepAsTheBleed() {
        assertThat(paint(MarkKind.ART, 0, 0, 150, 200).plan().strips()).containsExactly(new BleedStrip(0, 3, 0, 200));
    }

    @Test
    void onlyWhatLacksIsMadeAndFromWhereTheArtEnds() {
        assertThat(paint(MarkKind.IMAGE, -1, 20, 50, 30).plan().strips())
                .containsExactly(new BleedStrip(-1, 2, 20, 50));
    }

    @Test
    void artThatOtherArtCarriesOnLacksNothing() {
        paint(MarkKind.IMAGE, 0, 0, 150, 200).paint(MarkKind.ART, -3, 0, 3, 200);
        assertThat(plan().strips()).isEmpty();
    }

    @Test
    void aPictureWithBleedUponATintWithoutKeepsItsOwn() {
        paint(MarkKind.ART, 0, 0, 150, 200).paint(MarkKind.IMAGE, -3, 50, 60, 40);
        assertThat(plan().strips()).containsExactly(new BleedStrip(0, 3, 0, 50), new BleedStrip(0, 3, 90, 200));
    }

    @Test
    void artThatEndsBeforeTheTrimIsLeftAlone() {
        assertThat(paint(MarkKind.ART, 0.4, 0, 150, 200).plan().strips()).isEmpty();
    }

    @Test
    void linesThatRunOffAreNoArt() {
        paint(MarkKind.LINE, 0, 10, 150, 0.2).paint(MarkKind.ART, 0, 20, 150, 2);
        assertThat(plan().strips()).isEmpty();
    }

    @Test
    void wordsNearTheEdgeLeaveAStripToStretch() {
        paint(MarkKind.ART, 0, 0, 150, 200).paint(MarkKind.TEXT, 1.5, 100, 20, 3);
        assertThat(plan().strips())
                .singleElement()
                .satisfies(s -> assertThat(s.sourceMm()).isCloseTo(1.4, within(1e-9)));
    }

    @Test
    void wordsAtTheEdgeLeaveNothing() {
        paint(MarkKind.ART, 0, 0, 150, 200).paint(MarkKind.TEXT, 0.5, 100, 20, 3);
        assertThat(plan().fault()).isEqualTo(BleedFault.CROWDED);
    }

    @Test
    void wordsBesideAShorterStretchDoNotMatter() {
        paint(MarkKind.ART, 0, 0, 150, 80).paint(MarkKind.TEXT, 0.5, 100, 20, 3);
        assertThat(plan().strips()).containsExactly(new BleedStrip(0, 3, 0, 80));
    }

    @Test
    void aPageThatCannotBeReadSaysSo() {
        assertThat(BleedPlan.of(null, 3).fault()).isEqualTo(BleedFault.UNREADABLE);
    }
}
