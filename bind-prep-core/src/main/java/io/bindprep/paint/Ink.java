package io.bindprep.paint;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws in millimetres from the sheet's top left corner; black, white and one grey, so that any printer does. */
public final class Ink {
    /** Points of 1/72 in to the millimetre. */
    public static final double POINTS_PER_MM = 72 / 25.4;

    private final PDPageContentStream out;
    private final double heightMm;

    Ink(PDPageContentStream out, double heightMm) {
        this.out = out;
        this.heightMm = heightMm;
    }

    private static float pt(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    private float up(double yMm) {
        return pt(heightMm - yMm);
    }

    /** Draws on in a grey: 0 is black, 1 is white. */
    public void grey(double white) throws IOException {
        out.setStrokingColor((float) white);
        out.setNonStrokingColor((float) white);
    }

    /** Draws lines on in that width, millimetres. */
    public void width(double mm) throws IOException {
        out.setLineWidth(pt(mm));
    }

    /** Draws lines on dashed by these lengths in turn, millimetres; whole again without any. */
    public void dash(double... mm) throws IOException {
        float[] pattern = new float[mm.length];
        for (int i = 0; i < mm.length; i++) {
            pattern[i] = pt(mm[i]);
        }
        out.setLineDashPattern(pattern, 0);
    }

    /** A straight line. */
    public void line(double x1, double y1, double x2, double y2) throws IOException {
        out.moveTo(pt(x1), up(y1));
        out.lineTo(pt(x2), up(y2));
        out.stroke();
    }

    /** A rectangle by its upper left corner. */
    public void box(double x, double y, double width, double height, boolean filled) throws IOException {
        out.addRect(pt(x), up(y + height), pt(width), pt(height));
        if (filled) {
            out.fill();
        } else {
            out.stroke();
        }
    }

    /** A circle or ellipse of four Bézier arcs, off by less than 0.03 % of its radius. */
    public void oval(double centreX, double centreY, double width, double height) throws IOException {
        double arc = 0.5522847498;
        float rx = pt(width / 2);
        float ry = pt(height / 2);
        float kx = (float) (rx * arc);
        float ky = (float) (ry * arc);
        float x = pt(centreX);
        float y = up(centreY);
        out.moveTo(x + rx, y);
        out.curveTo(x + rx, y + ky, x + kx, y + ry, x, y + ry);
        out.curveTo(x - kx, y + ry, x - rx, y + ky, x - rx, y);
        out.curveTo(x - rx, y - ky, x - kx, y - ry, x, y - ry);
        out.curveTo(x + kx, y - ry, x + rx, y - ky, x + rx, y);
        out.closeAndStroke();
    }

    /** Settable text on its base line. */
    public void text(Type type, double points, double x, double baseline, String settable) throws IOException {
        out.beginText();
        out.newLineAtOffset(pt(x), up(baseline));
        for (Type.Run run : type.runs(settable)) {
            out.setFont(run.font(), (float) points);
            out.showText(run.text());
        }
        out.endText();
    }

    /** Settable text about a middle. */
    public void centred(Type type, double points, double centre, double baseline, String settable) throws IOException {
        text(type, points, centre - type.widthMm(settable, points) / 2, baseline, settable);
    }

    /** Settable text that ends there. */
    public void right(Type type, double points, double right, double baseline, String settable) throws IOException {
        text(type, points, right - type.widthMm(settable, points), baseline, settable);
    }
}
