package io.bindprep.pdf.jpx;

import java.io.IOException;

/**
 * Steps by which a component's coefficients are quantised (markers QCD and QCC, ISO/IEC 15444-1 A.6.4).
 *
 * @param derived true if all follow from the first
 * @param guard guard bits
 */
record Quantising(boolean derived, int guard, int[] exponents, int[] mantissas) {
    static Quantising read(ByteReader in) throws IOException {
        int style = in.u8();
        int form = style & 31;
        int n = form == 0 ? in.left() : in.left() / 2;
        if (form > 2 || n == 0) {
            throw new IOException("its quantisation makes no sense");
        }
        int[] exponents = new int[n];
        int[] mantissas = new int[n];
        for (int b = 0; b < n; b++) {
            if (form == 0) {
                exponents[b] = in.u8() >> 3;
            } else {
                int v = in.u16();
                exponents[b] = v >> 11;
                mantissas[b] = v & 0x7ff;
            }
        }
        return new Quantising(form == 1, style >> 5, exponents, mantissas);
    }

    /**
     * The exponent of a subband.
     *
     * @param band 0 for the lowest, then three a resolution
     */
    int exponent(int band) throws IOException {
        if (derived) {
            return Math.max(0, exponents[0] - Math.max(0, band - 1) / 3);
        }
        if (band >= exponents.length) {
            throw new IOException("a quantisation step is missing");
        }
        return exponents[band];
    }

    int mantissa(int band) {
        return mantissas[derived ? 0 : band];
    }
}
