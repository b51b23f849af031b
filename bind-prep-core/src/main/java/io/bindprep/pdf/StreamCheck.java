package io.bindprep.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Whether a compressed content stream is whole: PDFBox hands on what it could inflate of a broken one and only logs it.
 *
 * <p>The closing checksum is not asked for: some writers leave it out, and every reader prints such pages whole.
 */
final class StreamCheck {
    private static final long MOST_BYTES = 256L * 1024 * 1024;
    private static final int ZLIB_HEADER = 2;
    private static final int TAIL = 128;
    private static final int CHUNK = 16 * 1024;
    private static final Pattern OPERATOR =
            Pattern.compile("(?<=^|[\\s\\])>}])([A-Za-z'\"][A-Za-z0-9*]*)(?=$|[\\s/\\[(<])");

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

    /** Whether every content stream of a page is whole. */
    static boolean wholePage(COSBase contents) throws IOException {
        if (contents instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                if (!(array.getObject(i) instanceof COSStream stream) || !whole(stream)) {
                    return false;
                }
            }
        }
        return !(contents instanceof COSStream stream) || whole(stream);
    }

    /**
     * Whether the last operator in a page's content is the one that was carried out last: an array or string never closed
     * swallows the rest of the page in silence. Stray operands after it do no harm.
     */
    static boolean endsWith(COSBase contents, String lastOperator) throws IOException {
        String tail = tail(contents);
        if (tail.isBlank()) {
            return true; // empty, or padded beyond what is kept
        }
        if (tail.indexOf('%') >= 0) {
            return true; // the last word may be in a comment
        }
        String last = "";
        for (Matcher m = OPERATOR.matcher(tail); m.find(); ) {
            last = m.group(1);
        }
        return last.equals(lastOperator) || last.equals("EI") && lastOperator.equals("BI");
    }

    private static String tail(COSBase contents) throws IOException {
        if (contents instanceof COSArray array) {
            for (int i = array.size() - 1; i >= 0; i--) {
                String tail = array.getObject(i) instanceof COSStream stream ? tail(stream) : "";
                if (!tail.isBlank()) {
                    return tail;
                }
            }
            return "";
        }
        if (!(contents instanceof COSStream stream)) {
            return "";
        }
        byte[] before = new byte[0];
        try (InputStream in = stream.createInputStream()) {
            for (byte[] now = in.readNBytes(CHUNK); ; now = in.readNBytes(CHUNK)) {
                if (now.length < CHUNK) {
                    return end(latin(before) + latin(now));
                }
                before = now;
            }
        }
    }

    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** The end of a text, whatever white space follows: some files pad their content with kilobytes of it. */
    private static String end(String text) {
        String trimmed = text.replace('\0', ' ').stripTrailing();
        return trimmed.substring(Math.max(0, trimmed.length() - TAIL));
    }

    private static boolean flateFirst(COSBase filters) {
        COSBase first = filters instanceof COSArray array && array.size() > 0 ? array.getObject(0) : filters;
        return COSName.FLATE_DECODE.equals(first) || COSName.FLATE_DECODE_ABBREVIATION.equals(first);
    }
}
