package io.bindprep.pdf.ink;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.afm.FontMetrics;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.jspecify.annotations.Nullable;

/**
 * Form fields, links and lines whose appearance is not in the file, estimated as common viewers print them: ISO 32000-1:2008,
 * 12.5.4 (borders), 12.5.6.19 (MK), 12.7.3 and 12.7.4 (fields and what they inherit).
 */
final class Unstyled {
    private static final int MOST_PARENTS = 32;
    /** Flags of a field: ISO 32000-1:2008, Tables 226, 228, 230. */
    private static final int MULTILINE = 1 << 12;

    private static final int PUSHBUTTON = 1 << 16;
    private static final int COMBO = 1 << 17;
    private static final double USUAL_SIZE = 12;
    /** Viewers set text this far from the side of its field, points; common practice, no source. */
    private static final double PADDING = 2;
    /** Part of a field's height that text of no stated size takes; common practice, no source. */
    private static final double AUTO_SIZE = 0.7;

    private Unstyled() {}

    /** An estimate in user space, and the kind of thing it is of. */
    record Look(String kind, List<Shape> shapes) {}

    /** Returns true if a link or field without an appearance may leave anything on paper. */
    static boolean mayPrint(COSDictionary annotation) {
        return switch (annotation.getNameAsString(COSName.SUBTYPE, "")) {
            case "Link" -> borderWidth(annotation) > 0 && inked(annotation.getCOSArray(COSName.C), true);
            case "Widget" -> true;
            default -> false;
        };
    }

    /** Estimated outline; null for what is no link, field or line, and for what prints nothing. */
    static @Nullable Look of(COSDictionary annotation, String kind, Rectangle2D box) {
        return switch (kind) {
            case "Link" -> new Look("link border", List.of(frame(box, borderWidth(annotation), true)));
            case "Widget" -> {
                List<Shape> shapes = field(annotation, box);
                yield shapes.isEmpty() ? null : new Look("form field", shapes);
            }
            case "Line" -> {
                COSArray ends = annotation.getCOSArray(COSName.L);
                yield ends == null || ends.size() < 4 ? null : new Look("comment", List.of(line(annotation, ends)));
            }
            default -> null;
        };
    }

    private static Shape line(COSDictionary annotation, COSArray ends) {
        float[] p = ends.toFloatArray();
        Path2D.Double path = new Path2D.Double();
        path.moveTo(p[0], p[1]);
        path.lineTo(p[2], p[3]);
        return new BasicStroke(
                        (float) Math.max(borderWidth(annotation), 0.1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                .createStrokedShape(path);
    }

    private static Shape frame(Rectangle2D box, double width, boolean astride) {
        double out = astride ? width / 2 : 0;
        Area frame = new Area(grown(box, out));
        frame.subtract(new Area(grown(box, out - width)));
        return frame;
    }

    private static Rectangle2D grown(Rectangle2D b, double by) {
        return new Rectangle2D.Double(
                b.getX() - by, b.getY() - by, Math.max(0, b.getWidth() + 2 * by), Math.max(0, b.getHeight() + 2 * by));
    }

    /** The width of a border, 1 where nothing is said. */
    private static double borderWidth(COSDictionary annotation) {
        COSDictionary style = annotation.getCOSDictionary(COSName.BS);
        if (style != null) {
            return style.getFloat(COSName.W, 1);
        }
        COSArray border = annotation.getCOSArray(COSName.BORDER);
        return border == null
                ? 1
                : border.size() > 2 && border.getObject(2) instanceof COSNumber n ? n.floatValue() : 0;
    }

    /** Returns true if a colour of an annotation leaves ink: none in an empty array, none of white. */
    private static boolean inked(@Nullable COSArray colour, boolean unsaid) {
        if (colour == null) {
            return unsaid;
        }
        double least = 1;
        double most = 0;
        for (COSBase part : colour.toList()) {
            if (part instanceof COSNumber n) {
                least = Math.min(least, n.floatValue());
                most = Math.max(most, n.floatValue());
            }
        }
        return colour.size() > 0 && (colour.size() == 4 ? most > 0.002 : least < 0.998);
    }

    private static List<Shape> field(COSDictionary widget, Rectangle2D box) {
        List<Shape> shapes = new ArrayList<>();
        COSDictionary look = widget.getCOSDictionary(COSName.MK);
        if (look != null && inked(look.getCOSArray(COSName.BG), false)) {
            shapes.add(box);
        }
        if (look != null && inked(look.getCOSArray(COSName.BC), false) && borderWidth(widget) > 0) {
            shapes.add(frame(box, borderWidth(widget), false));
        }
        Rectangle2D inner = grown(box, -PADDING);
        if (inner.isEmpty()) {
            return shapes;
        }
        int flags = inherited(widget, COSName.FF) instanceof COSNumber n ? n.intValue() : 0;
        boolean rotated = look != null && look.getInt(COSName.R, 0) % 360 != 0;
        String kind = inherited(widget, COSName.FT) instanceof COSName name ? name.getName() : "";
        switch (kind) {
            case "Tx" -> shapes.addAll(words(widget, value(widget), inner, rotated || (flags & MULTILINE) != 0));
            case "Ch" -> {
                boolean list = (flags & COMBO) == 0 && inherited(widget, COSName.OPT) != null;
                shapes.addAll(words(widget, list ? "list" : value(widget), inner, rotated || list));
            }
            case "Btn" -> {
                String caption = look == null ? "" : look.getString(COSName.CA, "");
                if ((flags & PUSHBUTTON) != 0) {
                    shapes.addAll(caption.isEmpty() ? List.of() : List.of(inner));
                } else if (ticked(widget)) {
                    double side = Math.min(inner.getWidth(), inner.getHeight());
                    shapes.add(new Rectangle2D.Double(
                            inner.getCenterX() - side / 2, inner.getCenterY() - side / 2, side, side));
                }
            }
            default -> {
                // a signature shows nothing without an appearance
            }
        }
        return shapes;
    }

    private static boolean ticked(COSDictionary widget) {
        COSBase state = widget.getDictionaryObject(COSName.AS);
        COSBase shown = state == null ? inherited(widget, COSName.V) : state;
        return shown instanceof COSName name && !name.getName().equals("Off");
    }

    private static List<Shape> words(COSDictionary widget, String words, Rectangle2D inner, boolean whole) {
        if (words.isBlank()) {
            return List.of();
        }
        double size = size(widget, inner);
        double width = Math.min(inner.getWidth(), width(words) * size);
        int quadding = inherited(widget, COSName.Q) instanceof COSNumber n ? n.intValue() : 0;
        double room = inner.getWidth() - width;
        double x = inner.getX() + (quadding == 1 ? room / 2 : quadding == 2 ? room : 0);
        return List.of(whole ? inner : new Rectangle2D.Double(x, inner.getY(), width, inner.getHeight()));
    }

    /** The width of words in Helvetica of size 1, by its published metrics; an em for what is not in it. */
    private static double width(String words) {
        FontMetrics metrics = Standard14Fonts.getAFM("Helvetica");
        double width = 0;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            String name = c < 128 ? Character.isLetter(c) ? String.valueOf(c) : "zero" : "";
            width += name.isEmpty() || metrics == null ? 1 : metrics.getCharacterWidth(name) / 1000;
        }
        return width;
    }

    private static double size(COSDictionary widget, Rectangle2D inner) {
        String appearance = inherited(widget, COSName.DA) instanceof COSString s ? s.getString() : "";
        String[] words = appearance.strip().split("\\s+");
        for (int i = 1; i < words.length; i++) {
            if (words[i].equals("Tf")) {
                try {
                    double size = Double.parseDouble(words[i - 1]);
                    return size > 0 ? size : AUTO_SIZE * inner.getHeight();
                } catch (NumberFormatException e) {
                    return USUAL_SIZE;
                }
            }
        }
        return USUAL_SIZE;
    }

    private static String value(COSDictionary widget) {
        COSBase value = inherited(widget, COSName.V);
        if (value instanceof COSArray several && several.size() > 0) {
            value = several.getObject(0);
        }
        return value instanceof COSString s ? s.getString() : value instanceof COSName n ? n.getName() : "";
    }

    private static @Nullable COSBase inherited(COSDictionary widget, COSName key) {
        COSDictionary at = widget;
        for (int i = 0; at != null && i < MOST_PARENTS; i++) {
            COSBase found = at.getDictionaryObject(key);
            if (found != null) {
                return found;
            }
            at = at.getCOSDictionary(COSName.PARENT);
        }
        return null;
    }
}
