package io.bindprep.pdf.ink;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Map from a font's codes to words (ToUnicode, ISO 32000-1:2008, 9.10.3). PDFBox writes out every code of a range, so that
 * one line may ask for thousands of millions: a map with more codes than two bytes have is dropped before it is read.
 */
final class WordMap {
    private static final int MOST_BYTES = 4 * 1024 * 1024;

    /** Codes of two bytes, twice over. */
    private static final long MOST_CODES = 131_072;

    private static final Pattern RANGES = Pattern.compile("beginbfrange(.*?)(?:endbfrange|\\z)", Pattern.DOTALL);
    private static final Pattern RANGE = Pattern.compile("<([0-9A-Fa-f]{1,16})>\\s*<([0-9A-Fa-f]{1,16})>\\s*[<\\[]");

    private WordMap() {}

    /** Takes a map out of its font where it names too many codes or cannot be read. */
    static void bound(COSDictionary font) {
        if (font.getDictionaryObject(COSName.TO_UNICODE) instanceof COSStream map && tooMany(map)) {
            font.removeItem(COSName.TO_UNICODE);
        }
    }

    private static boolean tooMany(COSStream map) {
        String text;
        try (InputStream in = map.createInputStream()) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                return true;
            }
            text = new String(bytes, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            return true;
        }
        long codes = 0;
        Matcher ranges = RANGES.matcher(text);
        while (ranges.find()) {
            Matcher range = RANGE.matcher(ranges.group(1));
            while (range.find()) {
                long first = Long.parseUnsignedLong(range.group(1), 16) & 0xFFFFFFFFL;
                long last = Long.parseUnsignedLong(range.group(2), 16) & 0xFFFFFFFFL;
                codes += Math.max(0, last - first + 1);
                if (codes > MOST_CODES) {
                    return true;
                }
            }
        }
        return false;
    }
}
