package io.bindprep.paper;

import io.bindprep.wording.Spelling;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what a ream's label says, "20 lb bond", "65# cover", "10pt c1s", as a name of the table. */
final class StockLabels {
    private static final String END = "(?=$|[\\s,;])";
    private static final Pattern WEIGHT =
            Pattern.compile("^(\\d{1,3}(?:\\.\\d)?) lb\\s+([a-z]+)(?:\\s+(?:paper|stock))?" + END);
    private static final Pattern POINTS = Pattern.compile("^(\\d{1,3})\\s*pt\\.?\\s*([a-z]\\d[a-z])" + END);
    private static final Pattern SPACED = Pattern.compile("^([a-z]\\w*)\\s+(\\d{1,3}(?:pt|mil|gsm)?)(?: lb\\b)?" + END);
    private static final Pattern NUMBER = Pattern.compile("(?<![\\d.])(\\d{1,3}(?:\\.\\d)?)\\s*(lb|pt|mil)\\b");

    /** Grades in which a weight alone is looked for, the commonest first (common practice, no source). */
    private static final List<String> GRADES =
            List.of("bond", "offset", "text", "cover", "index", "tag", "ledger", "recycled", "newsprint");

    /** Finishes that change the thickness at the same weight (paper of a gloss finish is the thinnest). */
    private static final Set<String> COATED =
            Set.of("gloss", "glossy", "silk", "satin", "matt", "matte", "dull", "coated", "velvet");

    /** Papers and boards as people call them, each with the stock of the table that is nearest by common practice. */
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("copy", "bond-20"),
            Map.entry("copier", "bond-20"),
            Map.entry("photocopy", "bond-20"),
            Map.entry("printer", "bond-20"),
            Map.entry("plain", "bond-20"),
            Map.entry("office", "bond-20"),
            Map.entry("bond", "bond-20"),
            Map.entry("ncr", "bond-20"),
            Map.entry("carbonless", "bond-20"),
            Map.entry("laid", "text-80"),
            Map.entry("linen", "text-80"),
            Map.entry("text", "text-80"),
            Map.entry("book", "text-70"),
            Map.entry("opaque", "offset-60"),
            Map.entry("offset", "offset-60"),
            Map.entry("cardstock", "cover-65"),
            Map.entry("card", "cover-65"),
            Map.entry("cover", "cover-65"),
            Map.entry("board", "coverboard-30"),
            Map.entry("chipboard", "coverboard-30"),
            Map.entry("greyboard", "coverboard-30"),
            Map.entry("grayboard", "coverboard-30"),
            Map.entry("grey", "coverboard-30"),
            Map.entry("gray", "coverboard-30"),
            Map.entry("cardboard", "coverboard-30"),
            Map.entry("leatherette", "coverboard-18"),
            Map.entry("film", "film-75"),
            Map.entry("acetate", "film-75"),
            Map.entry("pvc", "clear-7mil"),
            Map.entry("vinyl", "clear-7mil"),
            Map.entry("polypropylene", "clear-7mil"),
            Map.entry("clear", "clear-7mil"),
            Map.entry("foil", "film-75"),
            Map.entry("transparency", "film-75"));

    private StockLabels() {}

    /** The text with the name of the table where it begins with a label for one; else as it was. */
    static String named(String text, StockCatalog catalog) {
        Matcher weight = WEIGHT.matcher(text);
        if (weight.find()) {
            return replaced(text, weight, grade(weight.group(2)) + "-" + weight.group(1), catalog);
        }
        Matcher points = POINTS.matcher(text);
        if (points.find()) {
            return replaced(text, points, points.group(2) + "-" + points.group(1) + "pt", catalog);
        }
        // "bond 20" is the name without its hyphen
        Matcher spaced = SPACED.matcher(text);
        return spaced.find() ? replaced(text, spaced, spaced.group(1) + "-" + spaced.group(2), catalog) : text;
    }

    private static String replaced(String text, Matcher label, String id, StockCatalog catalog) {
        return catalog.byId(id).isPresent() ? id + text.substring(label.end()) : text;
    }

    /** Returns true if the text names a coated paper, whose thickness its weight does not tell. */
    static boolean coated(String text) {
        return Arrays.stream(words(StockWords.plain(text))).anyMatch(COATED::contains);
    }

    /** The name of the table with the same grade and the nearest weight, else the one most like the text; null for none. */
    static @Nullable String near(String text, List<String> ids) {
        String plain = StockWords.plain(text);
        String[] words = words(plain);
        Matcher number = NUMBER.matcher(plain);
        if (number.find()) {
            double wanted = Double.parseDouble(number.group(1));
            String unit = number.group(2);
            if (!unit.equals("lb")) {
                // most boards of bare points are coated on one side
                return nearest(unit.equals("pt") ? "c1s-" : "clear-", unit, wanted, ids);
            }
            String grade = Arrays.stream(words)
                    .map(StockLabels::grade)
                    .filter(g -> nearest(g + "-", "", wanted, ids) != null)
                    .reduce((first, last) -> last)
                    .orElse(null);
            return grade != null ? nearest(grade + "-", "", wanted, ids) : ofWeight(number.group(1), words, ids);
        }
        return Arrays.stream(words)
                .map(USUAL::get)
                .filter(id -> id != null && ids.contains(id))
                .findFirst()
                .orElseGet(() -> words.length == 0 ? null : Spelling.nearest(words[0], ids));
    }

    /** Stock of a weight whose grade is not said: card is cover or index, any other paper goes by the commonest. */
    private static @Nullable String ofWeight(String weight, String[] words, List<String> ids) {
        boolean card = Arrays.stream(words).anyMatch(w -> w.startsWith("card") || w.equals("bristol"));
        List<String> grades = card ? List.of("cover", "index") : GRADES;
        return grades.stream()
                .map(g -> g + "-" + weight)
                .filter(ids::contains)
                .findFirst()
                .orElseGet(() -> card ? nearest("cover-", "", Double.parseDouble(weight), ids) : null);
    }

    private static @Nullable String nearest(String prefix, String unit, double wanted, List<String> ids) {
        return ids.stream()
                .filter(id ->
                        id.startsWith(prefix) && id.substring(prefix.length()).matches("\\d{1,3}" + unit))
                .min(Comparator.comparingDouble(id -> Math.abs(
                        Double.parseDouble(id.substring(prefix.length()).replace(unit, "")) - wanted)))
                .orElse(null);
    }

    private static String[] words(String plain) {
        return Arrays.stream(plain.split("[^a-z]+")).filter(w -> !w.isEmpty()).toArray(String[]::new);
    }

    /** Copy and writing papers are bond, book paper is text: the basis sheets are the same. */
    private static String grade(String word) {
        return Objects.requireNonNullElse(
                Map.of("copy", "bond", "writing", "bond", "laser", "bond", "book", "text")
                        .get(word),
                word);
    }
}
