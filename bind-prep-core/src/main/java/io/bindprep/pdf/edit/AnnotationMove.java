package io.bindprep.pdf.edit;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.jspecify.annotations.Nullable;

/**
 * Moves what lies on a page beside its content: annotations and form fields, article beads, viewports.
 *
 * <p>An appearance needs no change: it is fitted into its annotation's rectangle (ISO 32000-1:2008, 12.5.5, algorithm 8.1).
 * Printer's marks and trap nets stay, for they belong to the sheet.
 */
final class AnnotationMove {
    /** Points x, y one after the other (Tables 173-192; Path of PDF 2.0). */
    private static final List<String> POINTS = List.of("Rect", "QuadPoints", "L", "Vertices", "CL", "InkList", "Path");

    /** Distances. */
    private static final List<String> DISTANCES = List.of("RD", "LL", "LLE", "LLO");

    private static final List<String> OF_THE_SHEET = List.of("PrinterMark", "TrapNet");

    /** Original and copy of a thing that lies on two pages. */
    private record Moved(COSDictionary before, AffineTransform by) {}

    private final Map<COSDictionary, Moved> done = new IdentityHashMap<>();

    void movePage(COSDictionary page, AffineTransform t) {
        COSArray annotations = page.getCOSArray(COSName.ANNOTS);
        if (annotations != null) {
            COSArray moved = new COSArray();
            for (int i = 0; i < annotations.size(); i++) {
                moved.add(annotation(annotations.get(i), annotations.getObject(i), page, t));
            }
            page.setItem(COSName.ANNOTS, moved);
        }
        each(page.getCOSArray(COSName.B), bead -> points(bead, "R", t));
        each(page.getCOSArray(COSName.getPDFName("VP")), viewport -> points(viewport, "BBox", t));
    }

    /** Moves links that lie for the most part upon what moves, seen through a frame. */
    void moveLinks(COSDictionary page, AffineTransform t, AffineTransform frame, Rectangle2D thing) {
        COSArray annotations = page.getCOSArray(COSName.ANNOTS);
        for (int i = 0; annotations != null && i < annotations.size(); i++) {
            if (annotations.getObject(i) instanceof COSDictionary link
                    && "Link".equals(link.getNameAsString(COSName.SUBTYPE))
                    && !done.containsKey(link)
                    && liesOn(rectangle(link.getCOSArray(COSName.RECT), frame), thing)) {
                done.put(link, new Moved(new COSDictionary(link), t));
                move(link, t);
            }
        }
    }

    private static boolean liesOn(@Nullable Rectangle2D link, Rectangle2D thing) {
        if (link == null || link.getHeight() > 3 * thing.getHeight()) {
            return false;
        }
        Rectangle2D common = link.createIntersection(thing);
        return !common.isEmpty() && common.getWidth() * common.getHeight() * 2 > link.getWidth() * link.getHeight();
    }

    private static @Nullable Rectangle2D rectangle(@Nullable COSArray four, AffineTransform frame) {
        if (four == null || four.size() < 4) {
            return null;
        }
        float[] c = four.toFloatArray();
        Rectangle2D box = new Rectangle2D.Double(
                Math.min(c[0], c[2]), Math.min(c[1], c[3]), Math.abs(c[2] - c[0]), Math.abs(c[3] - c[1]));
        return frame.createTransformedShape(box).getBounds2D();
    }

    private interface Change {
        void on(COSDictionary thing);
    }

    private void each(@Nullable COSArray things, Change change) {
        for (int i = 0; things != null && i < things.size(); i++) {
            if (things.getObject(i) instanceof COSDictionary thing && !done.containsKey(thing)) {
                done.put(thing, new Moved(new COSDictionary(thing), new AffineTransform()));
                change.on(thing);
            }
        }
    }

    private COSBase annotation(COSBase item, @Nullable COSBase object, COSDictionary page, AffineTransform t) {
        if (!(object instanceof COSDictionary annotation)
                || OF_THE_SHEET.contains(annotation.getNameAsString(COSName.SUBTYPE, ""))) {
            return item;
        }
        Moved already = done.get(annotation);
        if (already != null && already.by().equals(t)) {
            return item;
        }
        if (already != null) {
            // one annotation on two pages that move differently: each gets its own
            COSDictionary copy = new COSDictionary(already.before());
            copy.setItem(COSName.P, page);
            move(copy, t);
            return copy;
        }
        done.put(annotation, new Moved(new COSDictionary(annotation), t));
        move(annotation, t);
        return item;
    }

    private static void move(COSDictionary annotation, AffineTransform t) {
        POINTS.forEach(key -> points(annotation, key, t));
        if (t.getScaleX() != 1) {
            DISTANCES.forEach(key -> distances(annotation, key, t.getScaleX()));
        }
    }

    private static void distances(COSDictionary annotation, String key, double scale) {
        COSBase value = annotation.getDictionaryObject(COSName.getPDFName(key));
        if (value instanceof COSNumber number) {
            annotation.setFloat(key, (float) (number.floatValue() * scale));
        } else if (value instanceof COSArray array) {
            annotation.setItem(key, mapped(array, AffineTransform.getScaleInstance(scale, scale), 1));
        }
    }

    /** Replaces an entry of points by a moved copy: the array itself may be another annotation's too. */
    static void points(COSDictionary thing, String key, AffineTransform t) {
        COSArray array = thing.getCOSArray(COSName.getPDFName(key));
        if (array != null) {
            thing.setItem(key, mapped(array, t, 2));
        }
    }

    private static COSArray mapped(COSArray array, AffineTransform t, int depth) {
        COSArray moved = new COSArray();
        for (int i = 0; i < array.size(); i++) {
            COSBase value = array.getObject(i);
            if (value instanceof COSArray inner && depth > 0) {
                moved.add(mapped(inner, t, depth - 1));
            } else if (value instanceof COSNumber number) {
                boolean x = i % 2 == 0;
                Point2D p = new Point2D.Double(x ? number.floatValue() : 0, x ? 0 : number.floatValue());
                t.transform(p, p);
                moved.add(new COSFloat((float) (x ? p.getX() : p.getY())));
            } else {
                moved.add(array.get(i));
            }
        }
        return moved;
    }
}
