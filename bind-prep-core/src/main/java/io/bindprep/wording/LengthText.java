package io.bindprep.wording;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * Lengths as people read them, the same in every locale: millimetres first, the trade's inches beside them.
 */
public final class LengthText {
    private static final long PER_INCH = 914_400;
    private static final BigDecimal PER_MM = BigDecimal.valueOf(36_000);
    private static final int FINEST = 64;
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=(?:mm|in|um|g|kg|lb|ppi|pt|%)(?!\\w))");

    private LengthText() {}

    /** Measured millimetres to one decimal, "4.2 mm". */
    public static String mm(double mm) {
        return plain(BigDecimal.valueOf(mm), 1) + " mm";
    }

    /** A measured stretch to one decimal, "20 to 24.2 mm". */
    public static String mm(double startMm, double endMm) {
        return plain(BigDecimal.valueOf(startMm), 1) + " to " + mm(endMm);
    }

    /** Millimetres and inches, "9.53 mm (3/8 in)". */
    public static String both(Length length) {
        return length.inMm() + " (" + inches(length) + ")";
    }

    /** Two sides in millimetres, "210 x 297 mm". */
    public static String area(Length width, Length height) {
        return plain(BigDecimal.valueOf(width.mm()), 2) + " x " + height.inMm();
    }

    /** Inches as a fraction down to 1/64 ("1-1/4 in"), else to three decimals ("0.193 in"). */
    public static String inches(Length length) {
        long sixtyFourths = length.units() * FINEST;
        if (length.units() < 0 || sixtyFourths % PER_INCH != 0) {
            return plain(BigDecimal.valueOf(length.inches()), 3) + " in";
        }
        long count = sixtyFourths / PER_INCH;
        long whole = count / FINEST;
        long numerator = count % FINEST;
        if (numerator == 0) {
            return whole + " in";
        }
        long denominator = FINEST / Long.lowestOneBit(numerator);
        String fraction = numerator / Long.lowestOneBit(numerator) + "/" + denominator;
        return (whole == 0 ? fraction : whole + "-" + fraction) + " in";
    }

    /** Inches to the nearest 1/32, as a hand can set them: "7/32 in". */
    public static String thirtySeconds(Length length) {
        long parts = Math.round(length.inches() * 32);
        return inches(Length.ofInch(Math.toIntExact(parts), 32));
    }

    /** The length without any rounding, as {@link Length#parse} reads it, negative ones with a minus before: "5.08 mm", "5/32 in". */
    public static String exact(Length length) {
        if (length.units() < 0) {
            return "-" + exact(length.abs());
        }
        BigDecimal mm = BigDecimal.valueOf(length.units())
                .divide(PER_MM, MathContext.DECIMAL64)
                .stripTrailingZeros();
        boolean halves =
                mm.scaleByPowerOfTen(1).remainder(BigDecimal.valueOf(5)).signum() == 0;
        // the trade's fraction of an inch, unless it is half millimetres too
        if (!halves && length.units() * FINEST % PER_INCH == 0) {
            return inches(length);
        }
        if (mm.scale() <= 9 && mm.multiply(PER_MM).compareTo(BigDecimal.valueOf(length.units())) == 0) {
            return plain(mm, 9) + " mm";
        }
        long whole = length.units() / PER_INCH;
        long rest = length.units() % PER_INCH;
        long common = BigInteger.valueOf(rest).gcd(BigInteger.valueOf(PER_INCH)).longValue();
        return (whole == 0 ? "" : whole + "-") + rest / common + "/" + PER_INCH / common + " in";
    }

    /** A number rounded half up to so many decimals, without trailing zeros or exponent. */
    public static String plain(BigDecimal number, int decimals) {
        BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString();
    }

    /** Keeps each number and its unit on one line, by a space that does not break. */
    public static String glued(String text) {
        return BEFORE_UNIT.matcher(text).replaceAll("\u00a0");
    }
}
