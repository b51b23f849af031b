package io.bindprep.pdf.edit;

import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/** Eight crop marks at the corners of the trim, outside the bleed, in the colour that prints on every plate. */
final class CropMarks {
    static final String COLOUR_SPACE = "BindPrepAllInks";

    /** Clear of the bleed, and as long as is common; common practice, no source. */
    private static final double GAP_MM = 0.5;

    private static final double LENGTH_MM = 5;
    private static final double SHORTEST_MM = 1.5;
    private static final double WIDTH_POINTS = 0.25;

    private CropMarks() {}

    /** Operators that draw them in the user space of a page; null where there is no room on one of its sides. */
    static @Nullable String of(PageFacts f) {
        Box trim = f.trim();
        Box bleed = ContentWrap.bleed(f);
        Box media = f.media();
        double mm = 1 / f.mmPerUnit();
        double left = Math.min(LENGTH_MM * mm, bleed.x0() - GAP_MM * mm - media.x0());
        double right = Math.min(LENGTH_MM * mm, media.x1() - bleed.x1() - GAP_MM * mm);
        double below = Math.min(LENGTH_MM * mm, bleed.y0() - GAP_MM * mm - media.y0());
        double above = Math.min(LENGTH_MM * mm, media.y1() - bleed.y1() - GAP_MM * mm);
        if (Math.min(Math.min(left, right), Math.min(below, above)) < SHORTEST_MM * mm) {
            return null;
        }
        StringBuilder out = new StringBuilder("q /" + COLOUR_SPACE + " CS 1 SCN ");
        out.append(ContentWrap.number(WIDTH_POINTS / f.userUnit())).append(" w 0 J [] 0 d\n");
        double gap = GAP_MM * mm;
        for (double y : new double[] {trim.y0(), trim.y1()}) {
            line(out, bleed.x0() - gap - left, y, bleed.x0() - gap, y);
            line(out, bleed.x1() + gap, y, bleed.x1() + gap + right, y);
        }
        for (double x : new double[] {trim.x0(), trim.x1()}) {
            line(out, x, bleed.y0() - gap - below, x, bleed.y0() - gap);
            line(out, x, bleed.y1() + gap, x, bleed.y1() + gap + above);
        }
        return out.append("Q\n").toString();
    }

    private static void line(StringBuilder out, double x0, double y0, double x1, double y1) {
        out.append(ContentWrap.number(x0))
                .append(' ')
                .append(ContentWrap.number(y0))
                .append(" m ");
        out.append(ContentWrap.number(x1))
                .append(' ')
                .append(ContentWrap.number(y1))
                .append(" l S\n");
    }

    /** ISO 32000-1:2008, 8.6.6.4: the colorant All applies to every plate; on a screen it is shown as grey. */
    static COSArray colourSpace() {
        COSDictionary tint = new COSDictionary();
        tint.setItem(COSName.FUNCTION_TYPE, COSInteger.TWO);
        tint.setItem(COSName.DOMAIN, numbers(0, 1));
        tint.setItem(COSName.N, COSInteger.ONE);
        tint.setItem(COSName.C0, numbers(1));
        tint.setItem(COSName.C1, numbers(0));
        return new COSArray(List.of(COSName.SEPARATION, COSName.getPDFName("All"), COSName.DEVICEGRAY, tint));
    }

    private static COSArray numbers(int... values) {
        COSArray numbers = new COSArray();
        for (int v : values) {
            numbers.add(COSInteger.get(v));
        }
        return numbers;
    }
}
