package io.bindprep.picture;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.marks.Verdict;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stretches and hits are invented; what must hold is stated beside each. */
class CloseUpWindowsTest {
    private static Hit hit(Verdict verdict, double start, double end) {
        Mark mark = new Mark(
                MarkKind.TEXT, Stage.GEOMETRY, new Rectangle2D.Double(5, start, 3, end - start), 5, 8, start, end, "");
        return new Hit(mark, verdict, List.of());
    }

    @Test
    void oneHitLiesInTheMiddleOfItsStretch() {
        CloseUpWindow window =
                CloseUpWindows.of(List.of(hit(Verdict.HIT, 100, 104)), 297).get(0);
        assertThat((window.startMm() + window.endMm()) / 2).isEqualTo(102);
    }

    @Test
    void stretchesKeepWithinTheEdge() {
        assertThat(CloseUpWindows.of(List.of(hit(Verdict.TIGHT, 0, 2), hit(Verdict.TIGHT, 295, 297)), 297))
                .hasSize(2)
                .allSatisfy(w -> assertThat(w.startMm()).isNotNegative())
                .allSatisfy(w -> assertThat(w.endMm()).isLessThanOrEqualTo(297));
        assertThat(CloseUpWindows.of(List.of(hit(Verdict.TIGHT, 0, 2)), 20)).containsExactly(new CloseUpWindow(0, 20));
    }

    @Test
    void neighboursShareAStretch() {
        List<CloseUpWindow> windows =
                CloseUpWindows.of(List.of(hit(Verdict.TIGHT, 60, 64), hit(Verdict.TIGHT, 80, 84)), 297);
        assertThat(windows).hasSize(1);
        assertThat(windows.get(0).startMm()).isLessThan(60);
        assertThat(windows.get(0).endMm()).isGreaterThan(84);
    }

    @Test
    void ofManyTheWorstThreeAreShownInOrderAlongTheEdge() {
        List<CloseUpWindow> windows = CloseUpWindows.of(
                List.of(
                        hit(Verdict.HIT, 250, 252),
                        hit(Verdict.TIGHT, 10, 12),
                        hit(Verdict.TIGHT, 70, 72),
                        hit(Verdict.HIT, 130, 132),
                        hit(Verdict.HIT, 190, 192)),
                297);
        assertThat(windows)
                .extracting(w -> Math.round((w.startMm() + w.endMm()) / 2))
                .containsExactly(131L, 191L, 251L);
    }

    @Test
    void ofALongMarkItsBeginningIsShown() {
        CloseUpWindow window =
                CloseUpWindows.of(List.of(hit(Verdict.HIT, 60, 260)), 297).get(0);
        assertThat(window.meets(60, 61)).isTrue();
    }

    @Test
    void nothingHitNothingShown() {
        assertThat(CloseUpWindows.of(List.of(), 297)).isEmpty();
    }
}
