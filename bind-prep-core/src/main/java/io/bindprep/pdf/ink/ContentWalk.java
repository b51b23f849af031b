package io.bindprep.pdf.ink;

import io.bindprep.pdf.ink.ContentFollower.ClipPath;
import io.bindprep.pdf.ink.ContentFollower.Step;
import io.bindprep.pdf.ink.ContentFollower.TextPlace;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Tells a follower what the engine carries out. */
final class ContentWalk {
    /** For the many operators that neither paint nor end a path. */
    private static final AffineTransform NOWHERE = new AffineTransform();

    private final ContentFollower follower;
    private final PaintedBounds painted;
    private @Nullable Rectangle2D path;
    private @Nullable ClipPath clip;
    private @Nullable Point2D textStart;
    private boolean broken;

    ContentWalk(ContentFollower follower, PaintedBounds painted) {
        this.follower = follower;
        this.painted = painted;
    }

    void begin(byte[] content, @Nullable COSBase form, InkEngine engine) {
        follower.begin(
                content,
                form instanceof COSStream stream ? stream : null,
                engine.getResources().getCOSObject(),
                engine.ctm().createAffineTransform());
    }

    /** An operator is about to be carried out. */
    void before(String name, InkEngine engine) {
        painted.clear();
        path = null;
        clip = null;
        TextState text = engine.ink.text;
        textStart = switch (name) {
            case "Tj", "TJ" -> text.here();
            case "'", "\"" -> text.nextLine();
            default -> null;
        };
        if (!engine.path.isEmpty() && endsPath(name)) {
            path = engine.path.bounds();
            if (engine.clips()) {
                boolean upright = Outlines.isUpright(engine.path.outline(Path2D.WIND_NON_ZERO));
                clip = upright ? ClipPath.RECTANGLE : ClipPath.ANY;
            }
        }
    }

    /** It was carried out. */
    void after(String name, int start, int end, InkEngine engine) {
        if (endsPath(name) || isTold(name)) {
            boolean placed = path != null || painted.painted() != null;
            follower.step(new Step(
                    name,
                    start,
                    end,
                    placed ? engine.ctm().createAffineTransform() : NOWHERE,
                    path,
                    clip,
                    painted.painted(),
                    painted.kind(),
                    painted.prints(),
                    engine.ink.masked,
                    engine.ink.text.mode.intValue(),
                    place(engine)));
        }
    }

    private static boolean endsPath(String name) {
        return switch (name) {
            case "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "n" -> true;
            default -> false;
        };
    }

    private static boolean isTold(String name) {
        return switch (name) {
            case "m", "re", "sh", "Do", "BI", "Tj", "TJ", "'", "\"", "q", "Q", "cs", "sc", "scn", "g", "rg", "k" ->
                true;
            default -> false;
        };
    }

    private @Nullable TextPlace place(InkEngine engine) {
        TextState text = engine.ink.text;
        TextFont font = text.font;
        if (textStart == null || font == null) {
            return null;
        }
        AffineTransform matrix = engine.ctm().createAffineTransform();
        matrix.concatenate(new AffineTransform(text.a, text.b, text.c, text.d, textStart.getX(), textStart.getY()));
        double length = text.a * text.a + text.b * text.b;
        double along = (text.e - textStart.getX()) * text.a + (text.f - textStart.getY()) * text.b;
        return new TextPlace(
                matrix, text.size * text.scale, length > 0 ? along / length : 0, text.rise, font.isVertical());
    }

    /** Notes content that breaks off. */
    void broken(boolean breaksOff) {
        broken |= breaksOff;
    }

    boolean broken() {
        return broken;
    }

    void end() {
        follower.end();
    }
}
