package io.bindprep.pdf;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.InkState.Tone;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Turns painted outlines into marks of the bound-edge frame, cut to clip, trim and strip.
 *
 * <p>Works in user space until a mark is certain, so that what lies away from the strip costs a comparison. White leaves
 * no mark on bare paper; over ink, white text and white lines do. An opaque rectangle hides what lies whole under it.
 */
final class StripCollector {
    private static final int MOST_MARKS = 20_000;
    /** A fill thinner than this is a rule; common practice, no source. */
    private static final double LINE_MM = 1.2;
    /** A fill at least this thick both ways may be a background; common practice, no source. */
    static final double TINT_MM = 3;
    /** A background reaches the trim at least to within this; a sheet is cut no truer (ISO 216 allows 1.5 mm and more). */
    static final double BLEED_SLACK_MM = 0.5;

    private final Rectangle2D strip;
    private final AffineTransform toFrame;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Rectangle2D> inked = new ArrayList<>();
    private final Set<Mark> pictures = Collections.newSetFromMap(new IdentityHashMap<>());

    /** A strip in user space and the transform from there to the bound-edge frame (millimetres). */
    StripCollector(Rectangle2D strip, AffineTransform toFrame) {
        this.strip = strip;
        this.toFrame = toFrame;
    }

    /** How something is painted. */
    record Paint(MarkKind kind, Tone tone, boolean filled, boolean hides, String words) {}

    boolean reaches(double x0, double y0, double x1, double y1) {
        return x1 >= strip.getMinX() && x0 <= strip.getMaxX() && y1 >= strip.getMinY() && y0 <= strip.getMaxY();
    }

    boolean reaches(Rectangle2D b) {
        return reaches(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY());
    }

    Rectangle2D strip() {
        return strip;
    }

    List<Mark> marks() {
        return marks;
    }

    /** Records what is visible of an outline; the caller has found its bounds to reach the strip. */
    void add(Shape outline, Clip clip, Paint paint) {
        if (paint.tone() == Tone.NOTHING) {
            return;
        }
        Rectangle2D bounds = outline.getBounds2D();
        Rectangle2D window = Clip.cut(strip, clip.bounds());
        if (window.isEmpty() || !meets(bounds, window)) {
            return;
        }
        Shape visible = visible(outline, bounds, window, clip);
        if (visible == null) {
            return;
        }
        Shape framed = toFrame.createTransformedShape(visible);
        Rectangle2D box = Clip.cut(framed.getBounds2D(), frameOf(window));
        MarkKind kind = kindOf(paint, box);
        if (paint.hides() && Shapes.isUpright(visible)) {
            hide(box);
        }
        if (paint.tone() == Tone.WHITE && !showsOverInk(kind, box)) {
            return;
        }
        if (paint.tone() == Tone.INK) {
            inked.add(box);
        }
        if (marks.size() >= MOST_MARKS) {
            throw new Budget.Spent("more than " + MOST_MARKS + " marks lie near its bound edge");
        }
        Mark mark = new Mark(
                kind,
                Stage.GEOMETRY,
                framed,
                box.getMinX(),
                box.getMaxX(),
                box.getMinY(),
                box.getMaxY(),
                paint.words());
        marks.add(mark);
        if (paint.kind() == MarkKind.IMAGE) {
            pictures.add(mark);
        }
    }

    /** Whether a mark is a picture, so that only its pixels can tell what prints. */
    boolean isPicture(Mark mark) {
        return pictures.contains(mark);
    }

    private Rectangle2D frameOf(Rectangle2D user) {
        return toFrame.createTransformedShape(user).getBounds2D();
    }

    private static boolean meets(Rectangle2D a, Rectangle2D b) {
        return a.getMaxX() >= b.getMinX()
                && a.getMinX() <= b.getMaxX()
                && a.getMaxY() >= b.getMinY()
                && a.getMinY() <= b.getMaxY();
    }

    private static @Nullable Shape visible(Shape outline, Rectangle2D bounds, Rectangle2D window, Clip clip) {
        if (clip.exactlyBounds()) {
            if (window.contains(bounds)) {
                return outline;
            }
            if (Shapes.isUpright(outline)) {
                Rectangle2D cut = Clip.cut(bounds, window);
                return cut.isEmpty() ? null : cut;
            }
        }
        if (!outline.intersects(window)) {
            return null;
        }
        if (Shapes.segments(outline) > Shapes.MOST_EXACT_SEGMENTS) {
            return outline;
        }
        Area area = new Area(outline);
        area.intersect(new Area(window));
        clip.cut(area);
        return area.isEmpty() ? null : new Path2D.Double(area);
    }

    private static MarkKind kindOf(Paint paint, Rectangle2D box) {
        boolean reachesEdge = box.getMinX() <= BLEED_SLACK_MM;
        boolean broad = box.getWidth() >= TINT_MM && box.getHeight() >= TINT_MM;
        if (paint.filled()
                && reachesEdge
                && broad
                && (paint.kind() == MarkKind.ART || paint.kind() == MarkKind.IMAGE)) {
            return MarkKind.BACKGROUND;
        }
        if (paint.kind() == MarkKind.ART && Math.min(box.getWidth(), box.getHeight()) <= LINE_MM) {
            return MarkKind.LINE;
        }
        return paint.kind();
    }

    private void hide(Rectangle2D cover) {
        marks.removeIf(m -> cover.contains(
                m.nearMm(),
                m.alongStartMm(),
                Math.max(m.farMm() - m.nearMm(), 1e-9),
                Math.max(m.alongEndMm() - m.alongStartMm(), 1e-9)));
        inked.removeIf(cover::contains);
    }

    private boolean showsOverInk(MarkKind kind, Rectangle2D box) {
        boolean legible = kind == MarkKind.TEXT || kind == MarkKind.LINE || kind == MarkKind.ANNOTATION;
        return legible && inked.stream().anyMatch(i -> meets(i, box));
    }
}
