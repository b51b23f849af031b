package io.bindprep.pdf.ink;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.jspecify.annotations.Nullable;

/** The widths that a font's dictionary states (ISO 32000-1:2008, 9.2.4, 9.7.4.3), in thousandths of the font size. */
final class DeclaredWidths {
    /** Of 65,536 codes that two bytes can say; more are of no use to anyone. */
    private static final int MOST = 65536;

    private final @Nullable COSDictionary simple;
    private final @Nullable COSArray widths;
    private final Map<Integer, Float> byCode;
    private final float other;
    private final boolean complete;

    private DeclaredWidths(
            @Nullable COSDictionary simple,
            @Nullable COSArray widths,
            Map<Integer, Float> byCode,
            float other,
            boolean complete) {
        this.simple = simple;
        this.widths = widths;
        this.byCode = byCode;
        this.other = other;
        this.complete = complete;
    }

    static DeclaredWidths of(COSDictionary font) {
        String kind = font.getNameAsString(COSName.SUBTYPE, "");
        if (kind.equals("Type0")) {
            DeclaredWidths composite = composite(font);
            if (composite != null) {
                return composite;
            }
        }
        COSArray widths = font.getCOSArray(COSName.WIDTHS);
        boolean simple = kind.equals("Type1") || kind.equals("TrueType") || kind.equals("MMType1");
        if (!simple || widths == null || widths.size() == 0) {
            return new DeclaredWidths(null, null, Map.of(), Float.NaN, false);
        }
        COSDictionary descriptor = font.getCOSDictionary(COSName.FONT_DESC);
        float missing = descriptor == null ? Float.NaN : descriptor.getFloat(COSName.MISSING_WIDTH, 0);
        return new DeclaredWidths(font, widths, Map.of(), missing, true);
    }

    private static @Nullable DeclaredWidths composite(COSDictionary font) {
        COSArray descendants = font.getCOSArray(COSName.DESCENDANT_FONTS);
        if (!COSName.IDENTITY_H.equals(font.getDictionaryObject(COSName.ENCODING))
                || descendants == null
                || !(descendants.getObject(0) instanceof COSDictionary descendant)
                || !COSName.FONT.equals(descendant.getCOSName(COSName.TYPE, COSName.FONT))) {
            return null;
        }
        Map<Integer, Float> widths = new HashMap<>();
        COSArray all = descendant.getCOSArray(COSName.W);
        int at = 0;
        while (all != null && at < all.size() - 1) {
            if (!(all.getObject(at++) instanceof COSNumber first)) {
                continue;
            }
            COSBase next = all.getObject(at++);
            if (next instanceof COSArray run) {
                for (int i = 0; i < Math.min(run.size(), MOST); i++) {
                    if (run.getObject(i) instanceof COSNumber width) {
                        widths.put(first.intValue() + i, width.floatValue());
                    }
                }
            } else if (at < all.size()
                    && all.getObject(at++) instanceof COSNumber width
                    && next instanceof COSNumber last) {
                for (int code = Math.max(0, first.intValue()); code <= Math.min(last.intValue(), MOST - 1); code++) {
                    widths.put(code, width.floatValue());
                }
            }
        }
        float usual = descendant.getDictionaryObject(COSName.DW) instanceof COSNumber dw ? dw.floatValue() : 1000;
        return new DeclaredWidths(null, null, widths, usual, true);
    }

    /** Returns true if codes and most widths are told without the font's program. */
    boolean isComplete() {
        return complete;
    }

    /** Returns true if codes are of two bytes. */
    boolean isDouble() {
        return complete && simple == null;
    }

    /** The width of a code; not a number where only the font's program knows it. */
    float width(int code) {
        if (simple == null || widths == null) {
            Float stated = byCode.get(code);
            return stated == null ? other : stated;
        }
        int first = simple.getInt(COSName.FIRST_CHAR, -1);
        int last = simple.getInt(COSName.LAST_CHAR, -1);
        int index = code - first;
        if (code < first || code > last || index >= widths.size()) {
            return other;
        }
        return widths.getObject(index) instanceof COSNumber width ? width.floatValue() : 0;
    }
}
