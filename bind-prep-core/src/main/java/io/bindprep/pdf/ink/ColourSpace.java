package io.bindprep.pdf.ink;

import io.bindprep.pdf.ink.InkState.Tone;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.jspecify.annotations.Nullable;

/**
 * Just enough of a colour space to tell white from ink: no profile is read and no colour is converted.
 *
 * <p>ISO 32000-1:2008, 8.6. What is not understood counts as ink.
 */
record ColourSpace(Family family, byte @Nullable [] palette, int paletteStep, Colorants colorants) {
    /** A hundredth of a tone is paper: no press and no reader shows it (three tried). */
    private static final double NEAR = 0.0101;
    /** CIE a and b of a white; what is lightest and has a hue still prints. */
    private static final double LEAST_CHROMA = 1;

    private static final int MOST_NESTED = 4;
    static final int MOST_COLORANTS = 32;
    private static final Set<String> PROCESS = Set.of("Cyan", "Magenta", "Yellow", "Black", "All");

    /**
     * Kinds of colorants of a Separation or DeviceN.
     *
     * @param none bit by bit, which are None and print nothing (8.6.6.4, 8.6.6.5)
     * @param spot whether one is neither None nor a process ink
     */
    record Colorants(long none, boolean spot) {
        static final Colorants USUAL = new Colorants(0, false);
    }

    enum Family {
        /** One or three components, 1 is white. */
        LIGHT,
        /** Ink amounts, 0 is white. */
        INKS,
        /** DeviceCMYK itself, to which overprint mode 1 applies (8.6.7). */
        DEVICE_INKS,
        /** Separation and DeviceN: amounts of named inks, 0 is white. */
        NAMED_INKS,
        LAB,
        /** The colorant None: no mark whatever the tint. */
        NONE,
        INDEXED_LIGHT,
        INDEXED_INKS,
        INDEXED_LAB,
        /** No mark until a pattern is named (8.6.6.2). */
        PATTERN,
        OTHER
    }

    static final ColourSpace GRAY = of(Family.LIGHT);
    static final ColourSpace CMYK = of(Family.DEVICE_INKS);
    private static final ColourSpace OTHER = of(Family.OTHER);

    private static ColourSpace of(Family family) {
        return new ColourSpace(family, null, 0, Colorants.USUAL);
    }

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
            case "Lab" -> of(Family.LAB);
            case "ICCBased" -> icc(array.getObject(1));
            case "Separation" -> named(new COSArray(Collections.singletonList(array.getObject(1))));
            case "DeviceN" -> array.getObject(1) instanceof COSArray names ? deviceN(names) : OTHER;
            case "Pattern" -> of(Family.PATTERN);
            case "Indexed", "I" -> indexed(array, resources, depth);
            default -> OTHER;
        };
    }

    /** Returns true for a name that needs no resource. */
    static boolean isBuiltIn(COSName name) {
        return named(name, null, 0).family != Family.OTHER;
    }

    private static ColourSpace named(COSName name, @Nullable PDResources resources, int depth) {
        switch (name.getName()) {
            case "DeviceGray", "DeviceRGB", "G", "RGB", "CalGray", "CalRGB":
                return GRAY;
            case "DeviceCMYK", "CMYK":
                return CMYK;
            case "Pattern":
                return of(Family.PATTERN);
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
        return n == 4 ? of(Family.INKS) : n == 1 || n == 3 ? GRAY : OTHER;
    }

    private static ColourSpace named(COSArray colorants) {
        int n = colorants.size();
        long none = 0;
        boolean spot = false;
        for (int i = 0; i < n; i++) {
            String name = colorants.getName(i, "");
            if (name.equals("None") && i < MOST_COLORANTS) {
                none |= 1L << i;
            } else {
                spot |= !PROCESS.contains(name);
            }
        }
        return n > 0 && n <= MOST_COLORANTS && none == (1L << n) - 1
                ? of(Family.NONE)
                : new ColourSpace(Family.NAMED_INKS, null, 0, new Colorants(none, spot));
    }

    /** As {@link #named}, but readers draw the stand-in colour where every ink is None (two of three tried). */
    private static ColourSpace deviceN(COSArray colorants) {
        ColourSpace space = named(colorants);
        return space.family == Family.NONE
                ? new ColourSpace(Family.NAMED_INKS, null, 0, new Colorants(0, true))
                : space;
    }

    private static ColourSpace indexed(COSArray array, @Nullable PDResources resources, int depth) {
        ColourSpace base = of(array.getObject(1), resources, depth + 1);
        COSBase table = array.getObject(3);
        byte[] bytes = Palette.bytes(table);
        int high = array.getInt(2, -1);
        if (high < 0 || high > 255 || bytes.length <= high) {
            return OTHER;
        }
        int step = bytes.length / (high + 1);
        boolean whole = bytes.length % (high + 1) == 0;
        boolean more = step == 3 && (base.family == Family.LIGHT || base.family == Family.LAB)
                || step == 4 && base.family == Family.DEVICE_INKS;
        if (!whole && !more) {
            return OTHER;
        }
        return switch (base.family) {
            case LIGHT -> new ColourSpace(Family.INDEXED_LIGHT, bytes, step, Colorants.USUAL);
            case INKS, DEVICE_INKS, NAMED_INKS -> new ColourSpace(Family.INDEXED_INKS, bytes, step, base.colorants);
            case LAB ->
                Palette.isEvenLab(array.getObject(1))
                        ? new ColourSpace(Family.INDEXED_LAB, bytes, step, Colorants.USUAL)
                        : OTHER;
            case NONE -> base;
            default -> OTHER;
        };
    }

    /** Ink of a picture in this space: only None leaves nothing for sure. */
    Tone tone() {
        return family == Family.NONE ? Tone.NOTHING : Tone.INK;
    }

    /** Returns true if white in this space, overprinted, leaves what lies below: ISO 32000-1:2008, 8.6.7 and Table 149. */
    boolean leavesOthers(boolean overprintMode1) {
        return family == Family.NAMED_INKS || family == Family.DEVICE_INKS && overprintMode1;
    }

    private Tone ink() {
        return colorants.spot ? Tone.SPOT : Tone.INK;
    }

    /** The tone that a space starts with (8.6.5 and on: ink, or the first colour of a palette). */
    Tone initial() {
        return switch (family) {
            case NONE, PATTERN -> Tone.NOTHING;
            case INDEXED_LIGHT, INDEXED_INKS, INDEXED_LAB -> palette(0);
            default -> ink();
        };
    }

    /** The tone of the operands of a colour operator. */
    Tone tone(List<COSBase> operands) {
        double[] v = new double[operands.size()];
        for (int i = 0; i < v.length; i++) {
            if (!(operands.get(i) instanceof COSNumber number)) {
                return family == Family.NONE ? Tone.NOTHING : Tone.PATTERN; // or broken
            }
            v[i] = number.floatValue();
        }
        if (v.length == 0) {
            return Tone.INK;
        }
        return switch (family) {
            case LIGHT -> white(all(v, 1 - NEAR, true));
            case INKS, DEVICE_INKS -> white(all(v, NEAR, false));
            case NAMED_INKS -> {
                for (int i = 0; i < Math.min(v.length, MOST_COLORANTS); i++) {
                    v[i] = (colorants.none >> i & 1) == 1 ? 0 : v[i];
                }
                yield all(v, NEAR, false) ? Tone.WHITE : ink();
            }
            case LAB -> white(v[0] >= 99.8 && chroma(v) <= LEAST_CHROMA);
            case NONE -> Tone.NOTHING;
            case INDEXED_LIGHT, INDEXED_INKS, INDEXED_LAB -> palette((int) v[0]);
            case PATTERN, OTHER -> Tone.INK;
        };
    }

    /** Key of a colour: equal ones have equal keys; 0 for a pattern. */
    int key(List<COSBase> operands) {
        int key = family.ordinal() + 1;
        int n = operands.size();
        for (int i = 0; i < Math.max(n, family == Family.LIGHT ? 3 : n); i++) {
            // grey is what three equal parts are
            if (n == 0 || !(operands.get(Math.min(i, n - 1)) instanceof COSNumber number)) {
                return 0;
            }
            key = 31 * key + Float.hashCode(number.floatValue());
        }
        return key;
    }

    private Tone palette(int index) {
        if (palette == null || index < 0 || (index + 1) * paletteStep > palette.length) {
            return ink();
        }
        if (family == Family.INDEXED_LAB) {
            boolean lightest = (palette[index * paletteStep] & 0xff) == 255;
            return white(lightest && Palette.isMiddle(palette, index * paletteStep + 1, paletteStep - 1));
        }
        int wanted = family == Family.INDEXED_LIGHT ? 255 : 0;
        for (int i = 0; i < paletteStep; i++) {
            boolean prints = i >= MOST_COLORANTS || (colorants.none >> i & 1) == 0;
            if (prints && (palette[index * paletteStep + i] & 0xff) != wanted) {
                return ink();
            }
        }
        return Tone.WHITE;
    }

    private static double chroma(double[] lab) {
        return lab.length < 3 ? 0 : Math.hypot(lab[1], lab[2]);
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
