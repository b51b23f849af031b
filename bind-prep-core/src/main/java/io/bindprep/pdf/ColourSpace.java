package io.bindprep.pdf;

import io.bindprep.pdf.InkState.Tone;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDResources;
import org.jspecify.annotations.Nullable;

/**
 * Just enough of a colour space to tell white from ink: no profile is read and no colour is converted.
 *
 * <p>ISO 32000-1:2008, 8.6. What is not understood counts as ink.
 */
record ColourSpace(Family family, byte @Nullable [] palette, int paletteStep) {
    private static final double NEAR = 0.002;
    private static final int MOST_NESTED = 4;

    enum Family {
        /** One or three components, 1 is white. */
        LIGHT,
        /** Ink amounts, 0 is white. */
        INKS,
        LAB,
        /** The colorant None: no mark whatever the tint. */
        NONE,
        INDEXED_LIGHT,
        INDEXED_INKS,
        OTHER
    }

    static final ColourSpace GRAY = new ColourSpace(Family.LIGHT, null, 0);
    static final ColourSpace CMYK = new ColourSpace(Family.INKS, null, 0);
    private static final ColourSpace OTHER = new ColourSpace(Family.OTHER, null, 0);

    static ColourSpace of(@Nullable COSBase base, @Nullable PDResources resources) {
        return of(base, resources, 0);
    }

    private static ColourSpace of(@Nullable COSBase base, @Nullable PDResources resources, int depth) {
        if (depth > MOST_NESTED) {
            return OTHER;
        }
        if (base instanceof COSName name) {
            return named(name, resources, depth);
        }
        if (!(base instanceof COSArray array) || array.size() == 0) {
            return OTHER;
        }
        String family = array.getName(0, "");
        return switch (family) {
            case "CalGray", "CalRGB", "DeviceGray", "DeviceRGB", "G", "RGB" -> GRAY;
            case "DeviceCMYK", "CMYK" -> CMYK;
            case "Lab" -> new ColourSpace(Family.LAB, null, 0);
            case "ICCBased" -> icc(array.getObject(1));
            case "Separation" -> separation(array.getObject(1));
            case "DeviceN" -> CMYK;
            case "Indexed", "I" -> indexed(array, resources, depth);
            default -> OTHER;
        };
    }

    private static ColourSpace named(COSName name, @Nullable PDResources resources, int depth) {
        switch (name.getName()) {
            case "DeviceGray", "DeviceRGB", "G", "RGB", "CalGray", "CalRGB":
                return GRAY;
            case "DeviceCMYK", "CMYK":
                return CMYK;
            default:
        }
        if (resources == null) {
            return OTHER;
        }
        COSDictionary spaces = resources.getCOSObject().getCOSDictionary(COSName.COLORSPACE);
        COSBase found = spaces == null ? null : spaces.getDictionaryObject(name);
        return found == null ? OTHER : of(found, null, depth + 1);
    }

    private static ColourSpace icc(@Nullable COSBase base) {
        int n = base instanceof COSStream stream ? stream.getInt(COSName.N, 0) : 0;
        return n == 4 ? CMYK : n == 1 || n == 3 ? GRAY : OTHER;
    }

    private static ColourSpace separation(@Nullable COSBase colorant) {
        return colorant instanceof COSName name && "None".equals(name.getName())
                ? new ColourSpace(Family.NONE, null, 0)
                : CMYK;
    }

    private static ColourSpace indexed(COSArray array, @Nullable PDResources resources, int depth) {
        ColourSpace base = of(array.getObject(1), resources, depth + 1);
        COSBase table = array.getObject(3);
        if (!(table instanceof COSString string)) {
            return OTHER;
        }
        byte[] bytes = string.getBytes();
        int high = array.getInt(2, -1);
        if (high < 0 || high > 255 || bytes.length == 0 || bytes.length % (high + 1) != 0) {
            return OTHER;
        }
        int step = bytes.length / (high + 1);
        return switch (base.family) {
            case LIGHT -> new ColourSpace(Family.INDEXED_LIGHT, bytes, step);
            case INKS -> new ColourSpace(Family.INDEXED_INKS, bytes, step);
            default -> OTHER;
        };
    }

    /** The tone that a space starts with (8.6.5 and on: all but Indexed start as ink or cannot be white). */
    Tone initial() {
        return family == Family.NONE ? Tone.NOTHING : Tone.INK;
    }

    /** The tone of the operands of a colour operator. */
    Tone tone(List<COSBase> operands) {
        double[] v = new double[operands.size()];
        for (int i = 0; i < v.length; i++) {
            if (!(operands.get(i) instanceof COSNumber number)) {
                return family == Family.NONE ? Tone.NOTHING : Tone.INK; // a pattern, or broken
            }
            v[i] = number.floatValue();
        }
        if (v.length == 0) {
            return Tone.INK;
        }
        return switch (family) {
            case LIGHT -> white(all(v, 1 - NEAR, true));
            case INKS -> white(all(v, NEAR, false));
            case LAB -> white(v[0] >= 99.8);
            case NONE -> Tone.NOTHING;
            case INDEXED_LIGHT, INDEXED_INKS -> palette((int) v[0]);
            case OTHER -> Tone.INK;
        };
    }

    private Tone palette(int index) {
        if (palette == null || index < 0 || (index + 1) * paletteStep > palette.length) {
            return Tone.INK;
        }
        int wanted = family == Family.INDEXED_LIGHT ? 255 : 0;
        for (int i = 0; i < paletteStep; i++) {
            if ((palette[index * paletteStep + i] & 0xff) != wanted) {
                return Tone.INK;
            }
        }
        return Tone.WHITE;
    }

    private static boolean all(double[] v, double limit, boolean atLeast) {
        for (double x : v) {
            if (atLeast ? x < limit : x > limit) {
                return false;
            }
        }
        return true;
    }

    private static Tone white(boolean is) {
        return is ? Tone.WHITE : Tone.INK;
    }
}
