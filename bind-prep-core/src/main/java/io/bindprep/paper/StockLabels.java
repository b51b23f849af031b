package io.bindprep.paper;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what a ream's label says, "20 lb bond", "65# cover", "10pt c1s", as a name of the table. */
final class StockLabels {
    private static final Pattern WEIGHT = Pattern.compile(
            "^(\\d{1,3}(?:\\.\\d)?)\\s*(?:lbs?\\.?|#)\\s*([a-z]+)(?:\\s+(?:paper|stock))?(?=$|[\\s,;])");
    private static final Pattern POINTS = Pattern.compile("^(\\d{1,3})\\s*pt\\.?\\s*([a-z]\\d[a-z])(?=$|[\\s,;])");

    private StockLabels() {}

    /** The text with the name of the table where it begins with a label for one; else as it was. */
    static String named(String text, StockCatalog catalog) {
        Matcher weight = WEIGHT.matcher(text);
        if (weight.find()) {
            String id = grade(weight.group(2)) + "-" + weight.group(1);
            return catalog.byId(id).isPresent() ? id + text.substring(weight.end()) : text;
        }
        Matcher points = POINTS.matcher(text);
        if (points.find()) {
            String id = points.group(2) + "-" + points.group(1) + "pt";
            return catalog.byId(id).isPresent() ? id + text.substring(points.end()) : text;
        }
        return text;
    }

    /** The name of the table with the same grade and the nearest weight, else the one most like the text; null for none. */
    static @Nullable String near(String text, List<String> ids) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        Matcher weight = WEIGHT.matcher(lower);
        if (weight.find()) {
            String grade = grade(weight.group(2)) + "-";
            double wanted = Double.parseDouble(weight.group(1));
            return ids.stream()
                    .filter(id ->
                            id.startsWith(grade) && id.substring(grade.length()).matches("\\d{1,3}"))
                    .min(Comparator.comparingDouble(
                            id -> Math.abs(Double.parseDouble(id.substring(grade.length())) - wanted)))
                    .orElse(null);
        }
        String first = lower.split("[\\s,;]", 2)[0];
        return io.bindprep.wording.Spelling.nearest(first, ids);
    }

    /** Copy and writing papers are bond, book paper is text: the basis sheets are the same. */
    private static String grade(String word) {
        return switch (word) {
            case "copy", "writing", "laser" -> "bond";
            case "book" -> "text";
            default -> word;
        };
    }
}
