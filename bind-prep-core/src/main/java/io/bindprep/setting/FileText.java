package io.bindprep.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Writes files of settings as people edit them: YAML, above each key what it means and how it may be written. */
public final class FileText {
    private static final int WIDTH = 100;
    // text of YAML 1.2 as it stands; anything else is quoted
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9µ/-][A-Za-z0-9 µ,;:=+%./_()-]*");
    // a colon before a blank, a hash after one, a word of YAML
    private static final Pattern SPECIAL = Pattern.compile("(?i).*:\\s.*|.*:|.* #.*|- .*|-|---.*|true|false|null");

    private static final Pattern NUMBER =
            Pattern.compile("(?i)[-+]?[0-9._]+(?:e[-+]?[0-9]+)?|0[xo].*|[-+]?\\.(?:inf|nan)");
    private static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,8}");

    private FileText() {}

    /**
     * A file with every key: those that have a value as settings, the others as comments with an example.
     *
     * @param introduction lines for the top
     * @param values by key: text, a list or a map of text
     */
    public static String of(String introduction, List<KeyDescription> keys, Map<String, ?> values) {
        StringBuilder out = new StringBuilder();
        introduction.lines().forEach(line -> comment(out, line));
        for (KeyDescription key : keys) {
            out.append('\n');
            Object value = values.get(key.key());
            describe(out, key, value != null);
            if (value == null) {
                out.append("# ")
                        .append(key.key())
                        .append(": ")
                        .append(key.examples().get(0))
                        .append('\n');
            } else {
                setting(out, key.key(), value);
            }
        }
        return out.toString();
    }

    private static void describe(StringBuilder out, KeyDescription key, boolean set) {
        String form = key.form();
        if (key.shape() instanceof ValueShape.Words words) {
            form = String.join(" | ", words.words());
        } else if (key.shape() instanceof ValueShape.Whole whole) {
            form = "a whole number from " + whole.least() + " to " + whole.most();
        } else if (form.isEmpty() && key.shape().equals(ValueShape.length())) {
            form = "a length";
        }
        comment(
                out,
                key.meaning() + (form.isEmpty() ? "" : "; " + form) + " (" + (key.required() ? "" : "left out: ")
                        + key.unsaid() + ")");
        if (!(key.shape() instanceof ValueShape.Words)) {
            // the first one stands below where nothing is set
            for (String example :
                    key.examples().subList(set ? 0 : 1, key.examples().size())) {
                out.append("#   ")
                        .append(key.key())
                        .append(": ")
                        .append(example)
                        .append('\n');
            }
        }
    }

    private static void comment(StringBuilder out, String text) {
        StringBuilder line = new StringBuilder("#");
        for (String word : text.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder("#");
            }
            line.append(' ').append(word);
        }
        out.append(line).append('\n');
    }

    private static void setting(StringBuilder out, String key, Object value) {
        if (value instanceof Map<?, ?> map) {
            out.append(key).append(":\n");
            map.forEach((k, v) -> out.append("  ")
                    .append(scalar(k))
                    .append(": ")
                    .append(scalar(v))
                    .append('\n'));
        } else if (value instanceof List<?> list) {
            List<String> items = new ArrayList<>();
            list.forEach(item ->
                    items.add(String.valueOf(item).contains(",") ? quoted(String.valueOf(item)) : scalar(item)));
            out.append(key).append(": [").append(String.join(", ", items)).append("]\n");
        } else {
            out.append(key).append(": ").append(scalar(value)).append('\n');
        }
    }

    private static String scalar(Object value) {
        String text = String.valueOf(value);
        boolean plain = PLAIN.matcher(text).matches() && !SPECIAL.matcher(text).matches() && text.equals(text.strip());
        // a number that would come back otherwise, such as 007, is text
        boolean changed = NUMBER.matcher(text).matches() && !WHOLE.matcher(text).matches();
        return plain && !changed ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (Character.isISOControl(c)) {
                quoted.append("\\x").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
