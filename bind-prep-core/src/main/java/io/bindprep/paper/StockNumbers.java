package io.bindprep.paper;

import io.bindprep.problem.SettingException;
import io.bindprep.wording.Sources;
import io.bindprep.wording.StockErrors;
import io.bindprep.wording.StockErrors.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Terms of one stock in a job, gathered term by term, then checked as a whole. */
final class StockNumbers {
    private static final BigDecimal SHARE = PaperLimits.of("tolerance");
    static final BigDecimal MEASURED_SHARE = PaperLimits.of("measured-tolerance");
    static final BigDecimal READING_UM = PaperLimits.of("measured-reading");
    private static final double[] GRAMMAGE = PaperLimits.range("grammage");
    private static final double[] BULK = PaperLimits.range("bulk");
    static final double[] CALIPER_UM = PaperLimits.range("caliper");

    private static final Pattern WEIGHT = Pattern.compile("\\b(\\d{2,4}(?:\\.\\d{1,2})?) ?gsm\\b");

    private final String key;
    private final String given;
    private final List<Stock> stocks;
    private final List<String> ids;
    private final Map<StockParser.Term, String> seen = new EnumMap<>(StockParser.Term.class);
    private @Nullable Stock base;
    private @Nullable BigDecimal grammage;
    private @Nullable BigDecimal bulk;
    private @Nullable BigDecimal caliper;
    private @Nullable BigDecimal measured;
    private @Nullable BigDecimal toleranceUm;
    private @Nullable BigDecimal toleranceShare;
    private BigDecimal readingUm = BigDecimal.ZERO;
    private Stock.@Nullable Kind kind;

    StockNumbers(String key, String given, List<Stock> stocks) {
        this.key = key;
        this.given = given;
        this.stocks = stocks;
        this.ids = stocks.stream().map(Stock::name).toList();
    }

    void base(Stock known) {
        base = known;
    }

    /** Takes one term of the text; the matcher's groups are those of the term's pattern. */
    void take(StockParser.Term term, Matcher m) throws SettingException {
        if (seen.put(term, m.group()) != null) {
            throw wrong(StockErrors.twice(term.name().toLowerCase(java.util.Locale.ROOT)));
        }
        switch (term) {
            case MEASURED -> pack(new BigDecimal(m.group(1)), thickness(m.group(2)));
            case TOLERANCE -> tolerance(m.group(1));
            case KIND -> kind = StockParser.kind(m.group(1));
            case BULK -> bulk = within(Quantity.BULK, new BigDecimal(m.group(1)), BULK);
            case GRAMMAGE -> grammage = within(Quantity.GRAMMAGE, new BigDecimal(m.group(1)), GRAMMAGE);
            case BASIS -> basis(new BigDecimal(m.group(1)), new BigDecimal(m.group(2)), new BigDecimal(m.group(3)));
            case CALIPER -> caliper = within(Quantity.CALIPER, thickness(m.group(1)), CALIPER_UM);
        }
    }

    private void pack(BigDecimal sheets, BigDecimal thick) throws SettingException {
        if (sheets.signum() == 0) {
            throw wrong(StockErrors.EMPTY_PACK);
        }
        measured = within(Quantity.SHEET_OF_PACK, thick.divide(sheets, MathContext.DECIMAL64), CALIPER_UM);
        readingUm = READING_UM.divide(sheets, MathContext.DECIMAL64);
    }

    private void tolerance(String text) throws SettingException {
        if (text.endsWith("%")) {
            toleranceShare = new BigDecimal(text.replace("%", "").strip()).movePointLeft(2);
            if (toleranceShare.compareTo(BigDecimal.ONE) >= 0) {
                throw wrong(StockErrors.WHOLE_TOLERANCE);
            }
        } else {
            toleranceUm = thickness(text);
        }
    }

    private void basis(BigDecimal pounds, BigDecimal width, BigDecimal height) throws SettingException {
        if (seen.containsKey(StockParser.Term.GRAMMAGE) || width.signum() == 0 || height.signum() == 0) {
            throw wrong(StockErrors.EITHER_WEIGHT);
        }
        grammage = within(Quantity.GRAMMAGE, Thickness.grammage(pounds, width, height), GRAMMAGE);
    }

    /** The stock, under its given name or else its own. */
    Stock stock(@Nullable String name) throws SettingException {
        Stock known = base;
        if (known != null) {
            if (grammage != null || bulk != null || caliper != null || kind != null) {
                throw wrong(StockErrors.numbersAlready(known.name()));
            }
            if (measured == null && toleranceUm == null && toleranceShare == null) {
                return known;
            }
        }
        if (seen.containsKey(StockParser.Term.GRAMMAGE) && seen.containsKey(StockParser.Term.BASIS)) {
            throw wrong(StockErrors.EITHER_WEIGHT);
        }
        BigDecimal weight = known != null ? known.grammage() : grammage;
        List<String> sources = new ArrayList<>();
        BigDecimal sheet = sheet(known, sources);
        if (measured != null && weight != null) {
            within(Quantity.BULK_OF_PACK, measured.divide(weight, MathContext.DECIMAL64), BULK);
        }
        BigDecimal tolerance = tolerance(known, sheet, sources);
        if (tolerance.compareTo(sheet) >= 0) {
            throw wrong(StockErrors.toleranceTooLarge(sheet));
        }
        Stock.Kind what = known != null ? known.kind() : kind == null ? Stock.Kind.PAPER : kind;
        return new Stock(
                name == null ? String.join("; ", seen.values()) : name,
                what,
                weight,
                sheet,
                tolerance,
                String.join("; ", sources),
                measured != null);
    }

    private BigDecimal sheet(@Nullable Stock known, List<String> sources) throws SettingException {
        if (bulk != null && caliper != null) {
            throw wrong(StockErrors.EITHER_THICKNESS);
        }
        if (bulk != null && grammage == null) {
            throw wrong(StockErrors.BULK_ALONE);
        }
        if (measured != null) {
            sources.add(Sources.caliperOfPack(String.valueOf(seen.get(StockParser.Term.MEASURED))));
            return measured;
        }
        if (known != null) {
            sources.add(known.source());
            return known.caliperUm();
        }
        if (caliper != null) {
            sources.add(Sources.CALIPER);
            return caliper;
        }
        if (bulk != null && grammage != null) {
            sources.add(Sources.CALIPER_BY_BULK);
            return within(Quantity.CALIPER, grammage.multiply(bulk, MathContext.DECIMAL64), CALIPER_UM);
        }
        if (grammage != null) {
            throw wrong(StockErrors.WEIGHT_ALONE);
        }
        throw wrong(StockErrors.NOTHING);
    }

    private BigDecimal tolerance(@Nullable Stock known, BigDecimal sheet, List<String> sources) {
        if (toleranceUm != null || toleranceShare != null) {
            sources.add(Sources.TOLERANCE);
            return toleranceUm != null ? toleranceUm : sheet.multiply(toleranceShare, MathContext.DECIMAL64);
        }
        if (measured != null) {
            sources.add(Sources.TOLERANCE_OF_PACK);
            return sheet.multiply(MEASURED_SHARE, MathContext.DECIMAL64).max(readingUm);
        }
        if (known != null) {
            return known.toleranceUm();
        }
        sources.add(Sources.TOLERANCE_USUAL);
        return sheet.multiply(SHARE, MathContext.DECIMAL64);
    }

    private BigDecimal thickness(String text) throws SettingException {
        try {
            return Thickness.micrometres(text);
        } catch (IllegalArgumentException e) {
            throw wrong(String.valueOf(e.getMessage()));
        }
    }

    private BigDecimal within(Quantity what, BigDecimal value, double[] range) throws SettingException {
        if (value.doubleValue() < range[0] || value.doubleValue() > range[1]) {
            throw wrong(StockErrors.outside(what, value, BigDecimal.valueOf(range[0]), BigDecimal.valueOf(range[1])));
        }
        return value;
    }

    /** The text as it was given. */
    String given() {
        return given;
    }

    /** The stock of the table that is nearest to what was given; null where nothing is near. */
    private @Nullable String near() {
        Matcher m = WEIGHT.matcher(StockWords.plain(given));
        BigDecimal weight = grammage != null ? grammage : m.find() ? new BigDecimal(m.group(1)) : null;
        if (weight == null) {
            return StockLabels.near(given, ids);
        }
        return stocks.stream()
                .filter(s -> s.grammage() != null && s.kind() == Stock.Kind.PAPER)
                .min(Comparator.comparing(s ->
                        Objects.requireNonNull(s.grammage()).subtract(weight).abs()))
                .map(Stock::name)
                .orElse(null);
    }

    /** Sentence on terms that make no stock. */
    SettingException wrong(String why) {
        return StockErrors.unknown(key, given, why, near(), ids);
    }
}
