package io.bindprep.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An exact length in units of 1/914400 inch.
 *
 * <p>In that unit an inch (914400), a millimetre (36000), a PDF point of 1/72 in (12700), and the trade's 1/3, 9/16,
 * 5/32 and 1/5 in are whole numbers, so that "33 pitches on an 11 in edge" or "the hole touches the end" is decided
 * without rounding. Source of the inch: 25.4 mm exactly (international yard and pound agreement, 1959).
 *
 * @param units the length in 1/914400 in; negative where a position lies outside the sheet
 */
public record Length(long units) implements Comparable<Length> {
    private static final long PER_INCH = 914_400;
    private static final long PER_MM = 36_000;
    private static final long PER_POINT = 12_700;

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    // whole or decimal, fraction, or whole and fraction ("1-1/4", "1 1/4"), then the unit
    private static final Pattern TEXT =
            Pattern.compile("(?:((?:\\d{1,6})?\\.\\d{1,9}|\\d{1,6})|(?:(\\d{1,6})[ -])?(\\d{1,6})/(\\d{1,6}))\\s*"
                    + "(mm|millimet(?:er|re)s?|cm|centimet(?:er|re)s?|um|µm|in\\.?|inch(?:es)?|\"|\u2033|mil|pt)");

    private static final Pattern COMMA = Pattern.compile(
            "(?<![\\w.,-])((?:0|(?<!\\S))(?=,\\d)|\\d{1,6}(?=,(?!\\d{3}(?!\\d))))(?:,)(\\d{1,9})(?![\\d.,])");

    private static final Map<String, String> FRACTIONS = Map.of(
            "\u00bc", "1/4", "\u00bd", "1/2", "\u00be", "3/4", "\u215b", "1/8", "\u215c", "3/8", "\u215d", "5/8",
            "\u215e", "7/8", "\u2153", "1/3", "\u2154", "2/3");

    private static final Pattern ONE_SIGN = Pattern.compile("[\u00bc-\u00be\u2153\u2154\u215b-\u215e]");

    /** Whole millimetres. */
    public static Length ofMm(long mm) {
        return new Length(Math.multiplyExact(mm, PER_MM));
    }

    /** Millimetres as written, rounded half up to 1/914400 in. */
    public static Length ofMm(String mm) {
        return scaled(new BigDecimal(mm), PER_MM);
    }

    /** Measured millimetres, rounded to 1/914400 in. */
    public static Length ofMeasuredMm(double mm) {
        return new Length(Math.round(mm * PER_MM));
    }

    /** Micrometres, rounded half up to 1/914400 in (1 um is 36 units). */
    public static Length ofMicrometres(BigDecimal um) {
        return scaled(um, PER_MM / 1000);
    }

    /** A fraction of an inch. */
    public static Length ofInch(long numerator, long denominator) {
        return scaled(
                new BigDecimal(BigInteger.valueOf(Math.multiplyExact(numerator, PER_INCH)))
                        .divide(BigDecimal.valueOf(denominator), MathContext.DECIMAL64),
                1);
    }

    /** PDF user space points of 1/72 in, rounded to 1/914400 in (the 12700th of a point). */
    public static Length ofPoints(double points) {
        return new Length(Math.round(points * PER_POINT));
    }

    /**
     * Reads a length with its unit: {@code 9.5 mm}, {@code 0.95cm}, {@code 3/8 in}, {@code 1-1/4 in}, {@code 110 um},
     * {@code 14 mil} (1/1000 in), {@code 36 pt} (1/72 in); a decimal comma counts as a point.
     *
     * @throws IllegalArgumentException where the text is not a length with a unit
     */
    public static Length parse(String text) {
        Matcher m = TEXT.matcher(withPoint(text.toLowerCase(Locale.ROOT)).strip());
        if (!m.matches()) {
            throw new IllegalArgumentException("not a length with a unit: \"" + text + "\"");
        }
        BigDecimal perUnit = perUnit(m.group(5));
        if (m.group(1) != null) {
            return of(new BigDecimal(m.group(1)).multiply(perUnit));
        }
        BigDecimal denominator = new BigDecimal(m.group(4));
        if (denominator.signum() == 0) {
            throw new IllegalArgumentException("a fraction over zero: \"" + text + "\"");
        }
        BigDecimal whole = m.group(2) == null ? BigDecimal.ZERO : new BigDecimal(m.group(2));
        BigDecimal numerator = whole.multiply(denominator).add(new BigDecimal(m.group(3)));
        return of(numerator.multiply(perUnit).divide(denominator, MathContext.DECIMAL64));
    }

    /**
     * A text with points for the decimal commas of its numbers: "2,6 mm" is "2.6 mm". A comma before three digits stays
     * unless a zero stands before it, as "1,250" may be a thousand. A fraction of one sign is written out: "8\u00bd" is
     * "8 1/2". Double primes and curly quotes are straight ones.
     */
    public static String withPoint(String text) {
        if (plain(text)) {
            return text;
        }
        String written = ONE_SIGN.matcher(text).replaceAll(m -> " " + FRACTIONS.get(m.group()));
        return COMMA.matcher(written.replace('\u2044', '/').replaceAll("[\u2033\u201d\u201c]|\u2032\u2032|''", "\""))
                .replaceAll("$1.$2");
    }

    // every length of our tables, of which each run reads hundreds: three searches are saved for each
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '\'' || c > '~') {
                return false;
            }
        }
        return true;
    }

    private static BigDecimal perUnit(String unit) {
        return switch (unit.startsWith("millimet") ? "mm" : unit.startsWith("centimet") ? "cm" : unit) {
            case "mm" -> BigDecimal.valueOf(PER_MM);
            case "cm" -> BigDecimal.valueOf(10 * PER_MM);
            case "um", "µm" -> BigDecimal.valueOf(PER_MM / 1000);
            case "mil" -> new BigDecimal("914.4");
            case "pt" -> BigDecimal.valueOf(PER_POINT);
            default -> BigDecimal.valueOf(PER_INCH);
        };
    }

    private static Length scaled(BigDecimal value, long perUnit) {
        return of(value.multiply(BigDecimal.valueOf(perUnit)));
    }

    private static Length of(BigDecimal units) {
        return new Length(units.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** The length in millimetres. */
    public double mm() {
        return units / (double) PER_MM;
    }

    /** The length in inches. */
    public double inches() {
        return units / (double) PER_INCH;
    }

    /** The length in micrometres, exactly. */
    public BigDecimal micrometres() {
        return BigDecimal.valueOf(units).divide(BigDecimal.valueOf(PER_MM / 1000), MathContext.DECIMAL64);
    }

    /** This length and another. */
    public Length plus(Length other) {
        return new Length(Math.addExact(units, other.units));
    }

    /** This length less another. */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(units, other.units));
    }

    /** This length so many times. */
    public Length times(long factor) {
        return new Length(Math.multiplyExact(units, factor));
    }

    /** Half of this length, rounded down to 1/914400 in. */
    public Length half() {
        return new Length(Math.floorDiv(units, 2));
    }

    /** The absolute value. */
    public Length abs() {
        return new Length(Math.absExact(units));
    }

    /** The longer of two. */
    public Length max(Length other) {
        return new Length(Math.max(units, other.units));
    }

    /** The shorter of two. */
    public Length min(Length other) {
        return new Length(Math.min(units, other.units));
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(units, other.units);
    }

    /** Millimetres with at most two decimals, as people write them: {@code 9.53 mm}. */
    public String inMm() {
        return new BigDecimal(units)
                        .divide(BigDecimal.valueOf(PER_MM), 2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }

    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Length other && units == other.units;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(units);
    }
}
