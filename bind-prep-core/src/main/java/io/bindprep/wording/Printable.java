package io.bindprep.wording;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words from outside made safe to show: names of files and texts of documents may hold marks that rewrite a screen.
 *
 * <p>Control marks are U+0000 to U+001F and U+007F to U+009F (Unicode category Cc; U+009B begins an escape of its own);
 * format marks are those of category Cf, among them the ones that turn the direction of writing.
 */
public final class Printable {
    private static final Pattern MARKS = Pattern.compile("[\\p{Cc}\\p{Cf}]");
    private static final Pattern PAGE_MARKS =
            Pattern.compile("[\\p{Cc}&&[^\\n\\t]]|[\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");
    private static final Pattern GAPS = Pattern.compile("[\\p{Cc}\\p{Cf}\\s]+");

    private Printable() {}

    /** The text with a question mark for each control or format mark. */
    public static String of(String text) {
        return with("?", text);
    }

    /** A whole page with a question mark for each control mark but line feed and tab, and each that turns writing round. */
    public static String page(String text) {
        return PAGE_MARKS.matcher(text).replaceAll("?");
    }

    /** JSON with the same marks as escapes of its own, so that what it says stays exact. */
    public static String json(String text) {
        return PAGE_MARKS
                .matcher(text)
                .replaceAll(m ->
                        String.format(Locale.ROOT, "\\\\u%04x", (int) m.group().charAt(0)));
    }

    /** The text with other words for each control or format mark. */
    public static String with(String instead, String text) {
        return MARKS.matcher(text).replaceAll(Matcher.quoteReplacement(instead));
    }

    /** The text on one line: each run of blanks and such marks is one blank, none at the ends. */
    public static String line(String text) {
        return GAPS.matcher(text).replaceAll(" ").strip();
    }

    /** Returns true if the text holds a control or format mark. */
    public static boolean marked(String text) {
        return MARKS.matcher(text).find();
    }

    /** The text in double quotes on one line, shortened to so many characters. */
    public static String quoted(String text, int most) {
        String line = line(text);
        if (line.codePointCount(0, line.length()) > most) {
            line = line.substring(0, line.offsetByCodePoints(0, most - 3)).strip() + "...";
        }
        return '"' + line + '"';
    }
}
