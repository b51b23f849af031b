package io.bindprep.pdf.ink;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Tells whether a shading says what it must: no reader draws anything of one that does not (three tried). */
public final class Shadings {
    /** ISO 32000-1:2008, Table 76. */
    private static final int SHADING_PATTERN = 2;

    private Shadings() {}

    /** ISO 32000-1:2008, 8.7.4.5, tables 78 to 84. */
    public static boolean complete(@Nullable COSDictionary shading) {
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

    /** Returns true for a pattern that readers draw: a tiling with steps, or a shading that is complete (three tried). */
    public static boolean drawn(@Nullable COSDictionary pattern) {
        if (pattern == null) {
            return false;
        }
        return pattern.getInt(COSName.PATTERN_TYPE) == SHADING_PATTERN
                ? complete(pattern.getCOSDictionary(COSName.SHADING))
                : pattern.getFloat(COSName.X_STEP) != 0 && pattern.getFloat(COSName.Y_STEP) != 0;
    }

    private static boolean numbers(COSDictionary shading, int count) {
        var coords = shading.getCOSArray(COSName.COORDS);
        return coords != null && coords.size() >= count;
    }
}
