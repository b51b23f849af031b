package io.bindprep.setting;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Printable;
import io.bindprep.wording.Spelling;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads single values: words, whole numbers, lengths. Each takes the key for the message and a value as a file holds it, and
 * fails with a {@link SettingException} that says what would do.
 */
public final class Scalars {
    private static final int LONGEST_TEXT = 500;
    private static final Pattern BARE_NUMBER =
            Pattern.compile("[-+]?(?:\\d+(?:[.,]\\d+)?|[.,]\\d+|(?:\\d+[ -])?\\d+/\\d+)");

    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}(?:[., '\u00a0\u2009\u202f]\\d{3})+");

    private Scalars() {}

    /** One value as text, without the blanks around it. */
    public static String text(String key, Object value) throws SettingException {
        if (value instanceof java.util.Map || value instanceof List) {
            throw wrong(key, value, "is a list or a map where one value belongs", "Write it as one value.");
        }
        // never toPlainString: 1e999999999 would be written out
        String text = String.valueOf(value);
        if (text.isBlank()) {
            throw wrong(key, value, "is empty", "Write a value, or leave the key out for the built-in one.");
        }
        if (text.length() > LONGEST_TEXT) {
            throw wrong(key, value, "is longer than " + LONGEST_TEXT + " characters", "Shorten it.");
        }
        return text.strip();
    }

    /** One line of free text; control and direction marks, which could rewrite a screen, are refused. */
    public static String line(String key, Object value, int longest) throws SettingException {
        String text = text(key, value);
        if (Printable.marked(text)) {
            throw wrong(key, Printable.of(text), "holds a control character", "Write it as one line of plain text.");
        }
        if (text.length() > longest) {
            throw wrong(key, value, "is longer than " + longest + " characters", "Shorten it.");
        }
        return text;
    }

    /** A whole number, both ends included. */
    public static int whole(String key, Object value, int least, int most) throws SettingException {
        String text = text(key, value);
        if (value instanceof String && THOUSANDS.matcher(text).matches()) {
            throw wrong(
                    key,
                    value,
                    "could be thousands or a fraction",
                    "Write the number in figures alone: " + text.replaceAll("\\D", "") + ".");
        }
        try {
            int number = new BigDecimal(text).intValueExact();
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw wrong(key, value, "is not a whole number", "Write a whole number, for example " + least + ".");
        } catch (ArithmeticException e) {
            // a fraction, or beyond any bound: said below
        }
        String bounds = "from " + least + " to " + most;
        throw wrong(key, value, "is not a whole number " + bounds, "Write a whole number " + bounds + ".");
    }

    /** One of the words for an enum's constants, as {@link #word} writes them. */
    public static <E extends Enum<E>> E choice(String key, Object value, Class<E> type) throws SettingException {
        String text = text(key, value);
        List<String> known = new ArrayList<>();
        for (E constant : type.getEnumConstants()) {
            if (word(constant).equalsIgnoreCase(text)) {
                return constant;
            }
            known.add(word(constant));
        }
        throw new SettingException(key, text, "\"" + text + "\" is not known", Spelling.remedy(text, known), known);
    }

    /** Form of a constant in a job: TWO_HEAD_TO_FOOT is two-head-to-foot. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A length with its unit, up to a bound; examples are for the message. */
    public static Length length(String key, Object value, Length most, String... examples) throws SettingException {
        String text = text(key, value);
        String example = "for example \"" + String.join("\" or \"", examples) + "\".";
        if (value instanceof Number || BARE_NUMBER.matcher(text).matches()) {
            throw wrong(key, value, "has no unit", "Write it with its unit, " + example);
        }
        Length length;
        try {
            length = Length.parse(text);
        } catch (IllegalArgumentException e) {
            throw wrong(key, value, "is not a length", "Write a length with its unit, " + example);
        }
        if (length.compareTo(most) > 0) {
            String bound = "0 to " + most.inMm();
            throw wrong(key, value, "is more than " + most.inMm(), "Write a length from " + bound + ", " + example);
        }
        return length;
    }

    /** A value that is wrong, quoted: what is wrong with it, and what to do. */
    public static SettingException wrong(String key, Object value, String what, String remedy) {
        String text = String.valueOf(value);
        String shown = text.length() > 80 ? text.substring(0, 80) + "..." : text;
        return new SettingException(key, shown, "\"" + shown + "\" " + what, remedy, List.of());
    }
}
