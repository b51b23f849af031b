package io.bindprep.paper;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.StockErrors;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a stock by name or by numbers.
 *
 * <p>A name of {@link StockCatalog}, or a thickness: grammage (or basis weight with its basis sheet) times bulk, a
 * caliper, or a measured pack, which overrides the caliper. A weight alone is no thickness and is refused; a weight
 * class alone ("20 lb") is no weight, for its basis sheet depends on the grade.
 */
public final class StockParser {
    private static final String NUMBER = "\\d{1,6}(?:\\.\\d{1,6})?";
    private static final Pattern SEPARATOR = Pattern.compile("[\\s,;]*");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9.-]*(?=$|[\\s,;])");
    private static final List<String> KEYS = List.of(
            "name", "grammage", "bulk", "caliper", "basis-weight", "basis-sheet", "measured", "tolerance", "kind");

    /** Terms of a stock, longest meaning first. */
    enum Term {
        MEASURED("(?:measured\\s+)?(\\d{1,5})\\s*(?:sheets?|leaves)\\s*=\\s*(" + Thickness.PATTERN + ")"),
        TOLERANCE("(?:tolerance\\s*|\\+-\\s*|±\\s*)(" + NUMBER + "\\s*%|" + Thickness.PATTERN + ")"),
        KIND("(?:kind\\s+)?(paper|board|film)"),
        BULK("(?:bulk|vol|volume)\\s*(" + NUMBER + ")(?:\\s*cm3/g)?"),
        GRAMMAGE("(" + NUMBER + ")\\s*(?:gsm|g/m2|g/m²|g/m\\^2|g/qm|g)"),
        BASIS("(" + NUMBER + ")\\s*(?:lbs?|#)\\s*(" + NUMBER + ")\\s*x\\s*(" + NUMBER + ")(?:\\s*in)?"),
        CALIPER("(?:caliper\\s+)?(" + Thickness.PATTERN + ")");

        final Pattern pattern;

        Term(String regex) {
            pattern = Pattern.compile(regex + "(?=$|[\\s,;])");
        }
    }

    private final StockCatalog catalog;

    /** Reads names by this catalogue. */
    public StockParser(StockCatalog catalog) {
        this.catalog = catalog;
    }

    /**
     * A stock from its text.
     *
     * @param key the job key it was given under, for the message
     * @throws SettingException where it is neither a known name nor a thickness
     */
    public Stock parse(String key, String text) throws SettingException {
        String given = text.strip();
        String lower = StockLabels.named(StockWords.plain(given), catalog);
        StockNumbers numbers = new StockNumbers(key, given, catalog.all());
        int at = 0;
        Matcher name = NAME.matcher(lower);
        if (name.lookingAt()) {
            Stock known = catalog.byId(name.group()).orElse(null);
            if (known != null) {
                numbers.base(known);
                at = name.end();
            }
        }
        while (true) {
            Matcher gap = SEPARATOR.matcher(lower).region(at, lower.length());
            at = gap.lookingAt() ? gap.end() : at;
            if (at == lower.length()) {
                return numbers.stock(given);
            }
            at = take(numbers, lower, at);
        }
    }

    /**
     * A stock from a job file's mapping: keys name, grammage (g/m2), bulk (cm3/g), caliper, basis-weight (lb),
     * basis-sheet ("17x22", in), measured ("25 sheets = 2.6 mm"), tolerance ("8 %" or a thickness), kind.
     *
     * @throws SettingException where a key is unknown or a value is wrong
     */
    public Stock parse(String key, Map<String, ?> map) throws SettingException {
        StockNumbers numbers = new StockNumbers(key, map.toString(), catalog.all());
        Map<String, String> values = new TreeMap<>();
        for (Map.Entry<String, ?> entry : map.entrySet()) {
            if (!KEYS.contains(entry.getKey())) {
                throw StockErrors.noKey(key, entry.getKey(), String.valueOf(entry.getValue()), KEYS);
            }
            if (entry.getValue() != null) {
                values.put(
                        entry.getKey(),
                        Length.withPoint(entry.getValue().toString().strip()));
            }
        }
        String name = values.get("name");
        boolean numbered = values.keySet().stream()
                .anyMatch(k -> List.of("grammage", "bulk", "caliper", "basis-weight", "basis-sheet", "kind")
                        .contains(k));
        if (name != null) {
            Stock known = catalog.byId(name).orElse(null);
            if (known == null && !numbered && !values.containsKey("measured")) {
                throw StockErrors.unknown(
                        key + ".name",
                        name,
                        StockErrors.notByName(name),
                        StockLabels.near(name, catalog.ids()),
                        catalog.ids());
            }
            if (known != null) {
                numbers.base(known);
            }
        }
        String pounds = values.get("basis-weight");
        String sheet = values.get("basis-sheet");
        if ((pounds == null) != (sheet == null)) {
            throw StockErrors.halfBasis(
                    key + (pounds == null ? ".basis-weight" : ".basis-sheet"), map.toString(), KEYS);
        }
        if (pounds != null && sheet != null) {
            String unit = pounds.matches(".*\\d") ? " lb " : " ";
            only(numbers, Term.BASIS, key + ".basis-weight", pounds + unit + sheet);
        }
        value(numbers, Term.GRAMMAGE, key, "grammage", values.get("grammage"), "", " gsm");
        value(numbers, Term.BULK, key, "bulk", values.get("bulk"), "bulk ", "");
        value(numbers, Term.CALIPER, key, "caliper", values.get("caliper"), "", "");
        value(numbers, Term.MEASURED, key, "measured", values.get("measured"), "", "");
        value(numbers, Term.TOLERANCE, key, "tolerance", values.get("tolerance"), "tolerance ", "");
        value(numbers, Term.KIND, key, "kind", values.get("kind"), "", "");
        return numbers.stock(name);
    }

    private static void value(
            StockNumbers numbers,
            Term term,
            String key,
            String sub,
            @Nullable String value,
            String before,
            String after)
            throws SettingException {
        if (value != null) {
            boolean bare = value.matches(NUMBER);
            only(
                    numbers,
                    term,
                    key + "." + sub,
                    (value.startsWith(before.strip()) ? "" : before) + value + (bare ? after : ""));
        }
    }

    private static void only(StockNumbers numbers, Term term, String key, String text) throws SettingException {
        Matcher m = term.pattern.matcher(text.toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            throw StockErrors.notOfTerm(key, text, term.name().toLowerCase(Locale.ROOT));
        }
        numbers.take(term, m);
    }

    private static int take(StockNumbers numbers, String text, int at) throws SettingException {
        for (Term term : Term.values()) {
            Matcher m = term.pattern.matcher(text).region(at, text.length());
            if (m.lookingAt()) {
                numbers.take(term, m);
                return m.end();
            }
        }
        String rest = text.substring(at);
        String why = at == 0 ? StockErrors.neither(numbers.given()) : StockErrors.neither(rest);
        if (rest.matches(NUMBER + "\\s*pt\\b.*")) {
            why = StockErrors.whichPoint(rest);
        } else if (rest.matches(NUMBER + "\\s*(lbs?|#).*")) {
            why = StockErrors.poundsAlone(rest);
        }
        if (StockLabels.coated(text)) {
            why = StockErrors.coated(numbers.given());
        }
        throw numbers.wrong(why);
    }

    /** The words for what a punch meets. */
    static Stock.Kind kind(String word) {
        return Arrays.stream(Stock.Kind.values())
                .filter(k -> k.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow();
    }
}
