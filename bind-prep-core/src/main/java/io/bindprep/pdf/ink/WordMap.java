package io.bindprep.pdf.ink;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Map from a font's codes to words (ToUnicode, ISO 32000-1:2008, 9.10.3), read without PDFBox's, which first prepares a
 * table of 65,536 words, and which writes out every code of a range, thousands of millions of them where one line asks for
 * that. A map that is not of the plain kind which font makers write is left to PDFBox, unless it names too many codes.
 */
final class WordMap {
    private static final int MOST_BYTES = 4 * 1024 * 1024;

    /** Codes of two bytes, twice over. */
    private static final long MOST_CODES = 131_072;

    private static final byte[] NO_TOKEN = {};

    private final byte[] text;
    private int at;
    private long codes;
    private boolean plain = true;
    private final Map<Integer, String> oneByte = new HashMap<>();
    private final Map<Integer, String> twoBytes = new HashMap<>();

    private WordMap(byte[] text) {
        this.text = text;
    }

    /**
     * Reads the map of a font that the file holds, to be used where its dictionary has none; null where PDFBox must read it.
     * Takes a map out of its font where it names too many codes or cannot be read.
     */
    static @Nullable WordMap of(COSDictionary font) {
        if (!(font.getDictionaryObject(COSName.TO_UNICODE) instanceof COSStream stream)) {
            return null;
        }
        WordMap map;
        try (InputStream in = stream.createInputStream()) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            map = new WordMap(bytes);
            if (bytes.length <= MOST_BYTES) {
                map.read();
            }
            if (bytes.length > MOST_BYTES || map.codes > MOST_CODES) {
                font.removeItem(COSName.TO_UNICODE);
                return null;
            }
        } catch (IOException e) {
            font.removeItem(COSName.TO_UNICODE);
            return null;
        }
        boolean some = !map.oneByte.isEmpty() || !map.twoBytes.isEmpty();
        return map.plain && some && Embedding.holds(font) ? map : null;
    }

    /** A font's dictionary without its map. */
    static COSDictionary without(COSDictionary font) {
        COSDictionary bare = new COSDictionary(font);
        bare.removeItem(COSName.TO_UNICODE);
        return bare;
    }

    /** Words of a code; null where the map does not tell. */
    @Nullable
    String words(int code) {
        String words = code < 256 ? oneByte.get(code) : null;
        return words == null ? twoBytes.get(code) : words;
    }

    private void read() {
        for (byte[] token = next(); token.length > 0; token = next()) {
            if (is(token, "beginbfchar")) {
                pairs();
            } else if (is(token, "beginbfrange")) {
                ranges();
            } else if (is(token, "usecmap")) {
                plain = false;
            }
        }
    }

    private void pairs() {
        for (byte[] token = next(); !is(token, "endbfchar"); token = next()) {
            byte[] code = hex(token);
            byte[] words = hex(next());
            if (code == null || words == null) {
                plain = false;
                return;
            }
            codes++;
            put(code, words);
        }
    }

    private void ranges() {
        for (byte[] token = next(); !is(token, "endbfrange"); token = next()) {
            byte[] first = hex(token);
            byte[] last = hex(next());
            if (first == null || last == null) {
                plain = false;
                return;
            }
            long count = number(last) - number(first) + 1;
            codes += Math.max(0, count);
            if (codes > MOST_CODES) {
                return;
            }
            range(first, last, (int) count);
        }
    }

    private void range(byte[] first, byte[] last, int count) {
        byte[] token = next();
        boolean array = is(token, "[");
        byte[] words = array ? null : hex(token);
        boolean oneRow = first.length == last.length && (first[first.length - 1] & 0xff) + count <= 256 && count > 0;
        if (!oneRow || !array && words == null) {
            plain = false;
            return;
        }
        for (int i = 0; i < count; i++) {
            if (array) {
                words = hex(next());
            }
            if (words == null || !array && (words[words.length - 1] & 0xff) + (i == 0 ? 0 : 1) > 255) {
                plain = false;
                return;
            }
            if (!array && i > 0) {
                words = words.clone();
                words[words.length - 1]++;
            }
            byte[] code = first.clone();
            code[code.length - 1] += (byte) i;
            put(code, words);
        }
        if (array && !is(next(), "]")) {
            plain = false;
        }
    }

    private void put(byte[] code, byte[] words) {
        if (code.length > 2 || words.length == 0) {
            plain = false;
            return;
        }
        String said = new String(words, words.length == 1 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16BE);
        (code.length == 1 ? oneByte : twoBytes).put((int) number(code), said);
    }

    private static long number(byte[] bytes) {
        long number = 0;
        for (byte b : bytes) {
            number = number << 8 | b & 0xff;
        }
        return number & 0xffffffffL;
    }

    private static boolean is(byte[] token, String word) {
        return token.length == 0
                || token.length == word.length() && Arrays.equals(token, word.getBytes(StandardCharsets.US_ASCII));
    }

    /** Bytes of a hexadecimal string; null for another token, and for one that ends within a byte. */
    private static byte @Nullable [] hex(byte[] token) {
        if (token.length < 4 || token.length % 2 != 0 || token[0] != '<' || token[token.length - 1] != '>') {
            return null;
        }
        byte[] bytes = new byte[token.length / 2 - 1];
        for (int i = 0; i < bytes.length; i++) {
            int high = Character.digit(token[2 * i + 1], 16);
            int low = Character.digit(token[2 * i + 2], 16);
            if (high < 0 || low < 0) {
                return null;
            }
            bytes[i] = (byte) (high << 4 | low);
        }
        return bytes;
    }

    /** The next token, of a hexadecimal string without the white space in it; empty at the end. */
    private byte[] next() {
        while (at < text.length && (isSpace(text[at]) || text[at] == '%')) {
            if (text[at] == '%') {
                while (at < text.length && text[at] != '\n' && text[at] != '\r') {
                    at++;
                }
            } else {
                at++;
            }
        }
        if (at >= text.length) {
            return NO_TOKEN;
        }
        int from = at++;
        switch (text[from]) {
            case '[', ']', '>', '{', '}', ')' -> {}
            case '(' -> skipString();
            case '<' -> {
                if (at < text.length && text[at] == '<') {
                    at++;
                    break;
                }
                return hexToken(from);
            }
            default -> {
                while (at < text.length && !isSpace(text[at]) && "[]<>(){}/%".indexOf(text[at]) < 0) {
                    at++;
                }
            }
        }
        return Arrays.copyOfRange(text, from, at);
    }

    private byte[] hexToken(int from) {
        byte[] token = new byte[16];
        int length = 0;
        at = from;
        while (at < text.length) {
            byte b = text[at++];
            if (!isSpace(b)) {
                token = length == token.length ? Arrays.copyOf(token, 2 * length) : token;
                token[length++] = b;
            }
            if (b == '>') {
                break;
            }
        }
        return Arrays.copyOf(token, length);
    }

    private void skipString() {
        int depth = 1;
        while (at < text.length && depth > 0) {
            switch (text[at++]) {
                case '\\' -> at++;
                case '(' -> depth++;
                case ')' -> depth--;
                default -> {}
            }
        }
        at = Math.min(at, text.length);
    }

    private static boolean isSpace(byte b) {
        return b == ' ' || b == '\n' || b == '\r' || b == '\t' || b == '\f' || b == 0;
    }
}
