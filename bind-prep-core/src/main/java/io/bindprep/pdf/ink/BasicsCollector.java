package io.bindprep.pdf.ink;

import io.bindprep.marks.PageBasics;
import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSDictionary;
import org.jspecify.annotations.Nullable;

/** Gathers what is seen of a whole page on the way: fonts that are not in the file, coarse pictures, art at the trim. */
public final class BasicsCollector {
    /** Smaller than this, a picture is a rule or a fade drawn as one. */
    private static final int LEAST_DOTS = 16;

    private static final double LEAST_PICTURE_MM = 3;
    /** Art that stops this short of the trim still reaches it; single floats and roundings of layout programs. */
    private static final double REACH_MM = 0.1;
    /** A shorter stretch along the trim is a speck. */
    private static final double LEAST_STRETCH_MM = 1;

    private static final int MOST_STRETCHES = 200;
    /** Art that begins farther beyond the trim carries none on: bars and page information. */
    private static final double MOST_BLEED_MM = 6;
    /** The edges of the unturned page, clockwise, so that a quarter turn is one step. */
    private static final List<PageEdge> CLOCKWISE =
            List.of(PageEdge.LEFT, PageEdge.TOP, PageEdge.RIGHT, PageEdge.BOTTOM);

    private final PageFacts facts;
    private final double unitMm;
    private final Rectangle2D trim;
    private final Rectangle2D media;
    private final double innerX0;
    private final double innerY0;
    private final double innerX1;
    private final double innerY1;
    private final List<List<Stretch>> stretches = new ArrayList<>();
    private final TreeSet<String> fonts = new TreeSet<>();
    private final TreeSet<String> withoutAppearance = new TreeSet<>();
    private final TreeSet<String> passedOver = new TreeSet<>();
    private @Nullable COSDictionary lastFont;
    private boolean asksForFonts = true;
    private PageBasics.@Nullable Picture coarsest;

    /** A stretch of art along an edge of the trim, in user space, and how far beyond it begins and ends; below 0 within. */
    private record Stretch(double from, double to, double begins, double beyond) {}

    public BasicsCollector(PageFacts facts) {
        this.facts = facts;
        this.unitMm = facts.mmPerUnit();
        this.trim = rectangle(facts.trim());
        this.media = rectangle(facts.media());
        double slack = REACH_MM / unitMm;
        innerX0 = trim.getMinX() + slack;
        innerY0 = trim.getMinY() + slack;
        innerX1 = trim.getMaxX() - slack;
        innerY1 = trim.getMaxY() - slack;
        for (int i = 0; i < CLOCKWISE.size(); i++) {
            stretches.add(new ArrayList<>());
        }
    }

    /** For an engine that has no page yet. */
    static BasicsCollector ofNothing() {
        Box none = new Box(0, 0, 0, 0);
        BasicsCollector nothing = new BasicsCollector(new PageFacts(0, none, none, none, none, false, 0, 1));
        nothing.asksForFonts = false;
        return nothing;
    }

    private static Rectangle2D rectangle(Box b) {
        return new Rectangle2D.Double(b.x0(), b.y0(), b.width(), b.height());
    }

    /** Returns true if bounds in user space reach an edge of the trim, or lie beyond it. */
    boolean reachesTrim(double x0, double y0, double x1, double y1) {
        return x0 <= innerX0 || y0 <= innerY0 || x1 >= innerX1 || y1 >= innerY1;
    }

    boolean reachesTrim(Rectangle2D b) {
        return reachesTrim(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY());
    }

    /** Art whose bounds reach the trim, still to be cut to the clip. */
    void art(Rectangle2D bounds, Clip clip) {
        Rectangle2D seen = Clip.cut(Clip.cut(bounds, clip.bounds()), media);
        if (seen.isEmpty() || !reachesTrim(seen)) {
            return;
        }
        double x0 = trim.getMinX();
        double y0 = trim.getMinY();
        double x1 = trim.getMaxX();
        double y1 = trim.getMaxY();
        boolean along = seen.getMaxY() > innerY0 && seen.getMinY() < innerY1;
        boolean across = seen.getMaxX() > innerX0 && seen.getMinX() < innerX1;
        if (along) {
            stretch(0, x0 - seen.getMaxX(), x0 - seen.getMinX(), seen.getMinY(), seen.getMaxY());
            stretch(2, seen.getMinX() - x1, seen.getMaxX() - x1, seen.getMinY(), seen.getMaxY());
        }
        if (across) {
            stretch(1, seen.getMinY() - y1, seen.getMaxY() - y1, seen.getMinX(), seen.getMaxX());
            stretch(3, y0 - seen.getMaxY(), y0 - seen.getMinY(), seen.getMinX(), seen.getMaxX());
        }
    }

    private void stretch(int edge, double begins, double beyond, double from, double to) {
        List<Stretch> known = stretches.get(edge);
        if (begins * unitMm > MOST_BLEED_MM) {
            return;
        }
        if (beyond * unitMm >= -REACH_MM && (to - from) * unitMm >= LEAST_STRETCH_MM && known.size() < MOST_STRETCHES) {
            known.add(new Stretch(from, to, begins, Math.max(0, beyond)));
        }
    }

    /** A picture of so many dots, painted on the unit square of a matrix. */
    void picture(int width, int height, AffineTransform matrix, Clip clip) {
        double w = Math.hypot(matrix.getScaleX(), matrix.getShearY()) * unitMm;
        double h = Math.hypot(matrix.getShearX(), matrix.getScaleY()) * unitMm;
        if (width < LEAST_DOTS || height < LEAST_DOTS || Math.min(w, h) < LEAST_PICTURE_MM) {
            return;
        }
        double ppi = Math.min(width / w, height / h) * 25.4;
        if (coarsest != null && ppi >= coarsest.ppi()) {
            return;
        }
        Rectangle2D square = Outlines.unitSquare(matrix).getBounds2D();
        if (!Clip.cut(Clip.cut(square, clip.bounds()), trim).isEmpty()) {
            coarsest = new PageBasics.Picture(ppi, w, h);
        }
    }

    /** A font that visible text uses. */
    void font(COSDictionary font) {
        if (font != lastFont && asksForFonts) {
            lastFont = font;
            if (!Embedding.holds(font)) {
                fontStandsIn(font);
            }
        }
    }

    /** A font for which another stands in. */
    void fontStandsIn(COSDictionary font) {
        if (fonts.size() < PageBasics.MOST_FONTS) {
            fonts.add(Embedding.name(font));
        }
    }

    /** An annotation that prints as the viewer likes. */
    void withoutAppearance(String kind) {
        withoutAppearance.add(kind);
    }

    /** A fault in the content that every viewer passes over. */
    void passedOver(String fault) {
        if (passedOver.size() < PageBasics.MOST_FONTS) {
            passedOver.add(fault);
        }
    }

    public PageBasics basics() {
        PageBasics.Bleed least = null;
        for (int i = 0; i < CLOCKWISE.size(); i++) {
            for (Stretch s : stretches.get(i)) {
                double mm = s.beyond * unitMm;
                if (s.begins * unitMm < -REACH_MM
                        && (least == null || mm < least.mm())
                        && !carriedOn(s, stretches.get(i))) {
                    int rotated = (i + facts.rotate() / 90) % CLOCKWISE.size();
                    least = new PageBasics.Bleed(CLOCKWISE.get(rotated), mm);
                }
            }
        }
        return new PageBasics(
                List.copyOf(fonts),
                coarsest,
                least,
                List.copyOf(withoutAppearance),
                List.copyOf(passedOver),
                List.of());
    }

    /** Returns true if other art goes farther beyond all along the same stretch, so that no paper shows when the cut is off. */
    private boolean carriedOn(Stretch s, List<Stretch> others) {
        double slack = REACH_MM / unitMm;
        for (Stretch o : others) {
            if (o.beyond > s.beyond + slack
                    && o.begins <= s.beyond + slack
                    && o.from <= s.from + slack
                    && o.to >= s.to - slack) {
                return true;
            }
        }
        return false;
    }
}
