package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;

/** Draws as the inside of an SVG whose user unit is a millimetre, in the colour of the text around it. */
final class SvgPen implements Pen {
    private final StringBuilder out = new StringBuilder();
    private double width = 0.25;
    private String dashes = "";

    /** Drawings so far. */
    String elements() {
        return out.toString();
    }

    @Override
    public void width(double mm) {
        width = mm;
    }

    @Override
    public void dash(double... mm) {
        StringBuilder list = new StringBuilder();
        for (double length : mm) {
            list.append(list.isEmpty() ? "" : " ").append(number(length));
        }
        dashes = list.isEmpty() ? "" : " stroke-dasharray=\"" + list + "\"";
    }

    @Override
    public void line(double x1, double y1, double x2, double y2) {
        out.append("<path d=\"M" + number(x1) + " " + number(y1) + "L" + number(x2) + " " + number(y2) + "\"");
        stroked();
    }

    @Override
    public void box(double x, double y, double boxWidth, double height, boolean filled) {
        out.append("<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(boxWidth) + "\" height=\""
                + number(height) + "\"");
        if (filled) {
            out.append(" fill=\"currentColor\"/>\n");
        } else {
            stroked();
        }
    }

    @Override
    public void oval(double centreX, double centreY, double ovalWidth, double height) {
        out.append("<ellipse cx=\"" + number(centreX) + "\" cy=\"" + number(centreY) + "\" rx=\""
                + number(ovalWidth / 2) + "\" ry=\"" + number(height / 2) + "\"");
        stroked();
    }

    private void stroked() {
        out.append(" fill=\"none\" stroke=\"currentColor\" stroke-width=\"" + number(width) + "\"" + dashes + "/>\n");
    }

    @Override
    public void text(boolean bold, double points, double x, double baseline, String text) {
        text("start", bold, points, x, baseline, text);
    }

    @Override
    public void centred(boolean bold, double points, double centre, double baseline, String text) {
        text("middle", bold, points, centre, baseline, text);
    }

    @Override
    public void right(boolean bold, double points, double right, double baseline, String text) {
        text("end", bold, points, right, baseline, text);
    }

    private void text(String anchor, boolean bold, double points, double x, double baseline, String text) {
        String size = number(points / Ink.POINTS_PER_MM);
        out.append("<text x=\"" + number(x) + "\" y=\"" + number(baseline) + "\" font-size=\"" + size
                + "\" text-anchor=\"" + anchor + "\" fill=\"currentColor\"" + (bold ? " font-weight=\"700\"" : "") + ">"
                + escaped(text) + "</text>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    static String number(double mm) {
        return LengthText.plain(BigDecimal.valueOf(mm), 3);
    }
}
