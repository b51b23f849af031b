package io.bindprep.paper;

import io.bindprep.wording.Spelling;
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

    private static final Pattern SPACED = Pattern.compile("^([a-z]\\w*)\\s+(\\d{1,3}(?:pt|mil|gsm)?)(?=$|[\\s,;])");
    private static final Pattern ALONE = Pattern.compile("^(\\d{1,3})\\s*(lbs?\\.?|#|pt\\.?)(?=$|[\\s,;])");

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
        // "bond 20" is the name without its hyphen
        Matcher spaced = SPACED.matcher(text);
        if (spaced.find()
                && catalog.byId(spaced.group(1) + "-" + spaced.group(2)).isPresent()) {
            return spaced.group(1) + "-" + spaced.group(2) + text.substring(spaced.end());
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
        Matcher alone = ALONE.matcher(lower);
        if (alone.find()) {
            // most papers of a bare weight are bond, most boards of bare points are coated on one side
            String id = alone.group(2).startsWith("pt") ? "c1s-" + alone.group(1) + "pt" : "bond-" + alone.group(1);
            return ids.contains(id) ? id : null;
        }
        String first = lower.split("[\\s,;]", 2)[0];
        String usual = switch (first) {
            case "copy", "copier", "printer", "plain", "office" -> "bond-20";
            case "cardstock", "card", "cover" -> "cover-65";
            case "board", "chipboard", "cardboard" -> "coverboard-30";
            case "film", "acetate", "pvc", "foil", "transparency" -> "film-75";
            default -> null;
        };
        return usual != null && ids.contains(usual) ? usual : Spelling.nearest(first, ids);
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
