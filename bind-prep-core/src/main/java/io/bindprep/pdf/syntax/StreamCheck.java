package io.bindprep.pdf.syntax;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Tells whether a content stream that PDFBox unpacks is whole: of a broken one it hands on what it could inflate and only logs it.
 *
 * <p>The closing checksum is not asked for: some writers leave it out, and every reader prints such pages whole.
 */
final class StreamCheck {
    private static final long MOST_BYTES = 256L * 1024 * 1024;
    private static final int ZLIB_HEADER = 2;

    private StreamCheck() {}

    static boolean whole(COSStream stream) throws IOException {
        if (!flateFirst(stream.getFilters())) {
            return true;
        }
        Inflater inflater = new Inflater(true);
        try (InputStream in = stream.createRawInputStream()) {
            byte[] raw = new byte[8192];
            byte[] sink = new byte[32768];
            if (in.readNBytes(raw, 0, ZLIB_HEADER) < ZLIB_HEADER) {
                return stream.getLength() == 0;
            }
            long total = 0;
            while (!inflater.finished()) {
                if (inflater.needsInput()) {
                    int n = in.read(raw);
                    if (n <= 0) {
                        return false;
                    }
                    inflater.setInput(raw, 0, n);
                }
                total += inflater.inflate(sink);
                if (total > MOST_BYTES) {
                    throw new Budget.Spent("its drawing instructions unpack to more than 256 MiB");
                }
                if (inflater.needsDictionary()) {
                    return false;
                }
            }
            return true;
        } catch (DataFormatException e) {
            return false;
        } finally {
            inflater.end();
        }
    }

    private static boolean flateFirst(COSBase filters) {
        COSBase first = filters instanceof COSArray array && array.size() > 0 ? array.getObject(0) : filters;
        return COSName.FLATE_DECODE.equals(first) || COSName.FLATE_DECODE_ABBREVIATION.equals(first);
    }
}
