package io.bindprep.wording;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Words from outside made plain text in Markdown (CommonMark, with the tables and links of its usual extensions). */
public final class Markdown {
    // marks of its own; what a bare address begins with; what begins a list at the start
    private static final Pattern MARKUP =
            Pattern.compile("([\\\\`*_\\[\\]<>#|&~!$]|(?<=\\b(?i:www))\\.|:(?=/)|^[-+]|(?<=^\\d{1,9})[.)])");

    // unreserved characters and the slash (RFC 3986, 2.3 and 3.3); the rest could end a link or a cell
    private static final String PLAIN = "-._~/";

    private Markdown() {}

    /** The text on one line that shows as it is, in a paragraph, a list or a cell of a table. */
    public static String plain(String text) {
        return MARKUP.matcher(Printable.line(text)).replaceAll("\\\\$1");
    }

    /**
     * A link.
     *
     * @param path of a file, relative to the file that holds the link, with slashes
     */
    public static String link(String words, String path) {
        StringBuilder target = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean word = c < 0x80 && Character.isLetterOrDigit(c);
            target.append(word || PLAIN.indexOf(c) >= 0 ? String.valueOf(c) : escaped(b));
        }
        return "[" + plain(words) + "](" + target + ")";
    }

    private static String escaped(byte b) {
        String digits = "0123456789ABCDEF";
        return "%" + digits.charAt((b >> 4) & 15) + digits.charAt(b & 15);
    }
}
