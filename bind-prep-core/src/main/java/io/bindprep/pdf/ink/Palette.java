package io.bindprep.pdf.ink;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.jspecify.annotations.Nullable;

/** Tables of Indexed colour spaces (ISO 32000-1:2008, 8.6.6.3). */
final class Palette {
    private static final int MOST_BYTES = 256 * ColourSpace.MOST_COLORANTS;

    private Palette() {}

    /** Returns true if the middle of the range of CIE a and b has no hue. */
    static boolean isEvenLab(@Nullable COSBase lab) {
        if (!(lab instanceof COSArray array) || !(array.getObject(1) instanceof COSDictionary values)) {
            return false;
        }
        COSArray range = values.getCOSArray(COSName.RANGE);
        float[] r = range == null ? new float[] {-100, 100, -100, 100} : range.toFloatArray();
        return r.length == 4 && r[0] == -r[1] && r[2] == -r[3];
    }

    /** The bytes of a table; none where they cannot be read. */
    static byte[] bytes(@Nullable COSBase table) {
        if (table instanceof COSString string) {
            return string.getBytes();
        }
        if (table instanceof COSStream stream) {
            try (InputStream in = stream.createInputStream()) {
                return in.readNBytes(MOST_BYTES);
            } catch (IOException e) {
                return new byte[0]; // counts as ink
            }
        }
        return new byte[0];
    }

    /** Returns true if bytes for CIE a and b stand for no hue. */
    static boolean isMiddle(byte[] bytes, int from, int count) {
        for (int i = from; i < from + count; i++) {
            int v = bytes[i] & 0xff;
            if (v != 127 && v != 128) {
                return false;
            }
        }
        return true;
    }
}
