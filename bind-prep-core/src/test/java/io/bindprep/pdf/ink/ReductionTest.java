package io.bindprep.pdf.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Held against areas of the whole outlines, which the JDK cuts to a thousandth of a point. */
class ReductionTest {
    private static final Rectangle2D WINDOW = new Rectangle2D.Double(0, 0, 40, 300);

    private static Path2D scribble(Random random, int segments) {
        Path2D path = new Path2D.Double(random.nextBoolean() ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        path.moveTo(x(random), y(random));
        for (int i = 0; i < segments; i++) {
            switch (random.nextInt(8)) {
                case 0 -> path.moveTo(x(random), y(random));
                case 1 -> path.closePath();
                case 2, 3 -> path.lineTo(x(random), y(random));
                case 4 -> path.quadTo(x(random), y(random), x(random), y(random));
                default -> path.curveTo(x(random), y(random), x(random), y(random), x(random), y(random));
            }
        }
        return path;
    }

    private static double x(Random random) {
        return random.nextInt(-100, 300);
    }

    private static double y(Random random) {
        return random.nextInt(-50, 400);
    }

    @Test
    void withinTheWindowNothingChanges() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            Path2D path = scribble(random, 2 + random.nextInt(20));
            Path2D less = new Path2D.Double(Reduction.of(path, WINDOW));
            assertThat(less.getWindingRule()).isEqualTo(path.getWindingRule());
            for (int k = 0; k < 200; k++) {
                double x = random.nextDouble() * 40;
                double y = random.nextDouble() * 300;
                assertThat(less.contains(x, y)).as(i + ": " + x + " " + y).isEqualTo(path.contains(x, y));
            }
            Rectangle2D whole = bounds(path);
            Rectangle2D reduced = bounds(less);
            assertThat(reduced.getMinX()).isCloseTo(whole.getMinX(), within(1e-3));
            assertThat(reduced.getMaxX()).isCloseTo(whole.getMaxX(), within(1e-3));
            assertThat(reduced.getMinY()).isCloseTo(whole.getMinY(), within(1e-3));
            assertThat(reduced.getMaxY()).isCloseTo(whole.getMaxY(), within(1e-3));
        }
    }

    private static Rectangle2D bounds(Path2D path) {
        Area area = new Area(path);
        area.intersect(new Area(WINDOW));
        return area.getBounds2D();
    }

    @Test
    void whatLiesBesideBecomesALine() {
        Path2D path = new Path2D.Double();
        path.moveTo(10, 10);
        path.lineTo(50, 10);
        for (int i = 0; i < 1000; i++) {
            path.curveTo(60 + i, 20, 80, 50 + i, 90, 10 + i % 7);
        }
        path.lineTo(10, 200);
        path.closePath();
        assertThat(Outlines.segments(path)).isGreaterThan(1000);
        assertThat(Outlines.segments(Reduction.of(path, WINDOW))).isEqualTo(5);
    }

    @Test
    void whatRunsFarAwayIsNotCutExactly() {
        Path2D path = new Path2D.Double();
        path.moveTo(10, 10);
        for (int i = 0; i < 60; i++) {
            path.lineTo(i % 2 * 1e9, 10 + i);
        }
        assertThat(Outlines.tooLong(path, path.getBounds2D())).isTrue();
        path.transform(AffineTransform.getScaleInstance(1e-3, 1));
        assertThat(Outlines.tooLong(path, path.getBounds2D())).isFalse();
    }
}
