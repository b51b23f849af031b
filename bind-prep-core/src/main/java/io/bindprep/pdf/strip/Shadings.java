package io.bindprep.pdf.strip;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Tells whether a shading says what it must: PDFBox draws nothing of one that does not, without a word. */
final class Shadings {
    private Shadings() {}

    /** ISO 32000-1:2008, 8.7.4.5, tables 78 to 84. */
    static boolean complete(@Nullable COSDictionary shading) {
        if (shading == null || !shading.containsKey(COSName.COLORSPACE) && !shading.containsKey(COSName.CS)) {
            return false;
        }
        return switch (shading.getInt(COSName.SHADING_TYPE)) {
            case 1 -> shading.containsKey(COSName.FUNCTION);
            case 2 -> shading.containsKey(COSName.FUNCTION) && numbers(shading, 4);
            case 3 -> shading.containsKey(COSName.FUNCTION) && numbers(shading, 6);
            case 4, 5, 6, 7 -> shading instanceof COSStream;
            default -> false;
        };
    }

    private static boolean numbers(COSDictionary shading, int count) {
        var coords = shading.getCOSArray(COSName.COORDS);
        return coords != null && coords.size() >= count;
    }
}
