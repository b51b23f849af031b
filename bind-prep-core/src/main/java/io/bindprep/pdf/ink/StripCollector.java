package io.bindprep.pdf.ink;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.strip.SecondLook;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.jspecify.annotations.Nullable;

/**
 * Turns painted outlines into marks of the binding-edge frame, cut to clip, trim and strip.
 *
 * <p>Works in user space until a mark is certain, so that what lies away from the strip costs a comparison. White leaves
 * no mark on bare paper; over ink, white text and white lines do. An opaque rectangle hides what lies whole under it;
 * what is covered otherwise is doubtful, as is what only a rendering can tell: {@link SecondLook} decides those.
 */
public class StripCollector {
    /** A fill thinner than this is a rule; common practice, no source. */
    private static final double LINE_MM = 1.2;
    /** A fill at least this thick both ways may be a background; common practice, no source. */
    public static final double TINT_MM = 3;
    /** A background reaches the trim at least to within this; a sheet is cut no truer (ISO 216 allows 1.5 mm and more). */
    public static final double BLEED_SLACK_MM = 0.5;
    /** The rest of an outline cut at the trim prints nothing below this: a sheet is cut no truer than half a millimetre. */
    private static final double SLIVER_MM = 0.005;
    /** Areas are exact to less than this, in points. */
    private static final double ROUNDING = 1e-9;

    private final Rectangle2D strip;
    private final AffineTransform toFrame;
    private final FoundMarks found = new FoundMarks();
    private final boolean gathers;
    private boolean touched;
    private Source source = new Source(0, "", null);

    /** A strip in user space and the transform from there to the binding-edge frame (millimetres). */
    public StripCollector(Rectangle2D strip, AffineTransform toFrame) {
        this(strip, toFrame, true);
    }

    StripCollector(Rectangle2D strip, AffineTransform toFrame, boolean gathers) {
        this.strip = strip;
        this.toFrame = toFrame;
        this.gathers = gathers;
    }

    /** Only notes whether something reaches a rectangle of user space. */
    static StripCollector touching(Rectangle2D near) {
        return new StripCollector(near, new AffineTransform(), false);
    }

    /**
     * Paint of a mark.
     *
     * @param colour key of the colour: equal colours have equal keys; 0 where it has none
     * @param covers whether it may hide what lies below
     * @param opaque whether it surely hides that
     * @param doubtful whether only a rendering can tell what of it prints
     * @param stage GEOMETRY, or ESTIMATE for text in a font that is not in the file
     */
    public record Paint(
            MarkKind kind,
            Tone tone,
            int colour,
            boolean filled,
            boolean covers,
            boolean opaque,
            boolean doubtful,
            Stage stage,
            String words) {}

    /**
     * Number of the page's own operator, counted from 1, that paints something, or of the annotation.
     *
     * @param operator 0 for an annotation
     */
    public record Source(
            int operator, String name, @Nullable COSDictionary annotation) {}

    boolean reaches(double x0, double y0, double x1, double y1) {
        boolean reaches =
                x1 >= strip.getMinX() && x0 <= strip.getMaxX() && y1 >= strip.getMinY() && y0 <= strip.getMaxY();
        touched |= reaches;
        return reaches;
    }

    final boolean reaches(Rectangle2D b) {
        return reaches(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY());
    }

    /** Returns true if a character or line within these bounds is asked for; there are many, and each costs its outline. */
    boolean reachesThin(double x0, double y0, double x1, double y1) {
        return reaches(x0, y0, x1, y1);
    }

    /** Returns true if bounds are all that is asked for of text, and no words. */
    boolean wantsBoundsAlone() {
        return false;
    }

    /** Returns true if anything was found to reach the strip since this was asked last. */
    boolean touched() {
        boolean was = touched;
        touched = false;
        return was;
    }

    Rectangle2D strip() {
        return strip;
    }

    /** Part of a filled outline with these bounds in the strip; the outline itself where all of it does. */
    Shape near(Path2D outline, Rectangle2D bounds) {
        if (strip.contains(bounds)) {
            return outline;
        }
        Area area = new Area(Reduction.of(outline, strip));
        area.intersect(new Area(strip));
        return area;
    }

    public List<FoundMark> found() {
        return found.all();
    }

    /** Says what paints the outlines that follow. */
    void from(Source painter) {
        source = painter;
    }

    /** Records what is visible of an outline; the caller has found its bounds to reach the strip. */
    void add(Shape outline, Clip clip, Paint paint) {
        if (!gathers || paint.tone() == Tone.NOTHING) {
            return;
        }
        Rectangle2D bounds = Outlines.bounds(outline);
        Rectangle2D window = Clip.cut(strip, clip.bounds());
        if (window.isEmpty() || !meets(bounds, window)) {
            return;
        }
        Shape visible = visible(outline, bounds, window, clip);
        if (visible == null) {
            return;
        }
        Shape framed = toFrame.createTransformedShape(visible);
        Rectangle2D box = Clip.cut(Outlines.bounds(framed), frameOf(window));
        if (isSliver(box, Outlines.bounds(toFrame.createTransformedShape(outline)))
                && isAtEnd(box)
                && !isThin(frameOf(window))) {
            return;
        }
        MarkKind kind = kindOf(paint, box);
        if (paint.covers()) {
            found.cover(framed, box, paint.opaque());
        }
        boolean doubtful = paint.doubtful() || clip.inexact() || uncut(outline, bounds, window);
        if (kind == MarkKind.BACKGROUND && Parts.mayBeSeveral(framed)) {
            Path2D.Double[] parts = Parts.split(framed, b -> isOfBackground(paint, Clip.cut(b, box)));
            for (Path2D.Double part : parts) {
                Rectangle2D partBox = part == null ? box : Clip.cut(Outlines.bounds(part), box);
                if (part != null && partBox.getWidth() > 0 && partBox.getHeight() > 0) {
                    record(part, partBox, part == parts[0] ? kind : inlandKind(paint, partBox), paint, doubtful);
                }
            }
            return;
        }
        record(framed, box, kind, paint, doubtful);
    }

    /** Returns true for a clip that lets no more than a sliver be seen of anything: renderers widen it to a row of dots. */
    private static boolean isThin(Rectangle2D clip) {
        return clip.getWidth() < SLIVER_MM || clip.getHeight() < SLIVER_MM;
    }

    /** Returns true if a sliver lies along an end of the strip; a clip as thin as that elsewhere still prints a line. */
    private boolean isAtEnd(Rectangle2D box) {
        Rectangle2D all = frameOf(strip);
        boolean across = box.getWidth() < SLIVER_MM
                && (box.getMinX() <= all.getMinX() + SLIVER_MM || box.getMaxX() >= all.getMaxX() - SLIVER_MM);
        return across
                || box.getHeight() < SLIVER_MM
                        && (box.getMinY() <= all.getMinY() + SLIVER_MM || box.getMaxY() >= all.getMaxY() - SLIVER_MM);
    }

    /** Returns true for what float numbers leave within the page of an outline that lies beyond it. */
    private static boolean isSliver(Rectangle2D left, Rectangle2D whole) {
        return left.getWidth() < SLIVER_MM && whole.getWidth() > left.getWidth() + SLIVER_MM
                || left.getHeight() < SLIVER_MM && whole.getHeight() > left.getHeight() + SLIVER_MM;
    }

    /** Returns true if a part of an outline that as a whole is a background is so too, or ends before anything may be read of it. */
    private static boolean isOfBackground(Paint paint, Rectangle2D part) {
        return kindOf(paint, part) == MarkKind.BACKGROUND
                || part.getMinX() <= BLEED_SLACK_MM && part.getWidth() < TINT_MM;
    }

    /** Several parts may reach the edge together without any of them being a background. */
    private static MarkKind inlandKind(Paint paint, Rectangle2D box) {
        MarkKind kind = kindOf(paint, box);
        return kind == MarkKind.BACKGROUND ? paint.kind() : kind;
    }

    private void record(Shape framed, Rectangle2D box, MarkKind kind, Paint paint, boolean doubtful) {
        boolean white = paint.tone() == Tone.WHITE;
        // white rectangles are there to cover; other white outlines may be lettering in a tint
        if (white && (paint.kind() == MarkKind.ART && Outlines.isUpright(framed) || !found.mayLieUnder(box))) {
            return;
        }
        boolean blends = kind != MarkKind.BACKGROUND && found.mayBlendIn(paint, box);
        Mark mark = new Mark(
                kind, paint.stage(), framed, box.getMinX(), box.getMaxX(), box.getMinY(), box.getMaxY(), paint.words());
        found.add(new FoundMark(mark, paint, source, white || doubtful || blends));
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
        if (isWithin(window, bounds) && clip.leavesWhole(Clip.cut(bounds, window))) {
            return outline;
        }
        if (Outlines.isUpright(outline)) {
            Rectangle2D cut = Clip.cut(bounds, window);
            if (cut.isEmpty() || clip.leavesWhole(cut)) {
                return cut.isEmpty() ? null : cut;
            }
        }
        if (!outline.intersects(window)) {
            return null;
        }
        if (Outlines.tooLong(outline, bounds)) {
            return outline;
        }
        Area area = new Area(Reduction.of(outline, window));
        area.intersect(new Area(window));
        clip.cut(area);
        return area.isEmpty() ? null : new Path2D.Double(area);
    }

    /** Returns true if bounds lie in a window, to the rounding of an outline that was cut to it before. */
    private static boolean isWithin(Rectangle2D window, Rectangle2D bounds) {
        return !bounds.isEmpty()
                && bounds.getMinX() >= window.getMinX() - ROUNDING
                && bounds.getMaxX() <= window.getMaxX() + ROUNDING
                && bounds.getMinY() >= window.getMinY() - ROUNDING
                && bounds.getMaxY() <= window.getMaxY() + ROUNDING;
    }

    /** Returns true if an outline was too long to be cut exactly. */
    private static boolean uncut(Shape outline, Rectangle2D bounds, Rectangle2D window) {
        return !isWithin(window, bounds) && Outlines.tooLong(outline, bounds);
    }

    /** Kind of the mark that a paint makes in a box of the binding-edge frame. */
    public static MarkKind kindOf(Paint paint, Rectangle2D box) {
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
}
