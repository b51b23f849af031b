package io.bindprep.wording;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/**
 * Lengths for people, in the units they use and as fine as a hand can use them; the exact ones are in the JSON report.
 *
 * <p>Settings go to 0.5 mm or 1/32 in, the divisions of a ruler; thicknesses and places of marks to 0.1 mm or 0.01 in.
 *
 * @param units the units shown
 * @param whole whether millimetres keep their hundredths, for programs
 */
public record Measures(Units units, boolean whole) {
    private static final BigDecimal HALF_MM = new BigDecimal("0.5");
    private static final int NOISE = 6;
    private static final double NEAR = 1e-6;
    private static final BigDecimal KILOGRAM = BigDecimal.valueOf(1000);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Grams of an avoirdupois ounce, a sixteenth of 453.59237 g (NIST SP 811, appendix B.8). */
    private static final BigDecimal OUNCE = new BigDecimal("28.349523125");

    private static final BigDecimal OUNCES = BigDecimal.valueOf(16);

    /** Micrometres of a thousandth of an inch. */
    private static final BigDecimal MIL = new BigDecimal("25.4");

    private static final long PER_INCH = Length.ofInch(1, 1).units();
    private static final Length SIZE_STEP = Length.ofInch(1, 8);

    /** Millimetres only. */
    public static final Measures METRIC = new Measures(Units.METRIC);

    /** Millimetres with their hundredths, for reports that programs read. */
    public static final Measures EXACT = new Measures(Units.METRIC, true);

    /** Lengths as fine as a hand can use them. */
    public Measures(Units units) {
        this(units, false);
    }

    /** Inches where both sides of the paper are whole eighths of an inch (8.5 x 11 in, 6 x 9 in), else millimetres. */
    public static Measures ofPaper(Length width, Length height) {
        boolean inch = width.units() % SIZE_STEP.units() == 0 && height.units() % SIZE_STEP.units() == 0;
        return new Measures(inch ? Units.INCH : Units.METRIC);
    }

    /** A distance to set or measure by hand: "5 mm", "7/32 in". */
    public String set(Length length) {
        return shown(length, Measures::setMm, l -> LengthText.inches(thirtySeconds(l)));
    }

    /** A distance to set by hand, shown finer where it would read as one of the others that it is not. */
    public String set(Length length, Collection<Length> others) {
        return apart(length, others, List.of(this::set, this::mark, this::exact));
    }

    /** Returns true if a distance as it is set by hand is no rounder than on a finer scale. */
    public boolean setExactly(Length length) {
        boolean mm = Math.abs(length.mm() * 2 - Math.rint(length.mm() * 2)) < NEAR;
        boolean inches = thirtySeconds(length).equals(length);
        return switch (units) {
            case METRIC -> mm;
            case INCH -> inches;
            case BOTH -> mm && inches;
        };
    }

    /** A weight: "56 g", "2.3 kg", "826 kg"; "2.0 oz", "5.1 lb" in inches. */
    public String weight(BigDecimal grams) {
        return switch (units) {
            case METRIC -> mass(grams, KILOGRAM, "g", "kg");
            case INCH -> mass(grams.divide(OUNCE, NOISE, RoundingMode.HALF_UP), OUNCES, "oz", "lb");
            case BOTH -> METRIC.weight(grams) + " (" + new Measures(Units.INCH).weight(grams) + ")";
        };
    }

    private static String mass(BigDecimal small, BigDecimal perLarge, String unit, String largeUnit) {
        if (small.compareTo(perLarge) < 0) {
            return LengthText.plain(small, unit.equals("oz") ? 1 : 0) + " " + unit;
        }
        BigDecimal large = small.divide(perLarge, NOISE, RoundingMode.HALF_UP);
        return LengthText.plain(large, large.compareTo(HUNDRED) < 0 ? 1 : 0) + " " + largeUnit;
    }

    /** Thickness of one sheet: "94 um", "3.7 mil". */
    public String caliper(BigDecimal um) {
        return switch (units) {
            case METRIC -> LengthText.plain(um, 1) + " um";
            case INCH -> LengthText.plain(um.divide(MIL, NOISE, RoundingMode.HALF_UP), 1) + " mil";
            case BOTH -> METRIC.caliper(um) + " (" + new Measures(Units.INCH).caliper(um) + ")";
        };
    }

    /** A place on a page: "3.0 mm", "0.12 in". */
    public String mark(Length length) {
        return tenths(length, RoundingMode.HALF_UP);
    }

    /** A place, shown finer where it would read as one of the others that it is not. */
    public String mark(Length length, Collection<Length> others) {
        return apart(length, others, List.of(this::mark, this::exact));
    }

    /** A distance to move or to keep free, rounded up, so that what is said is enough: "6.6 mm". */
    public String up(Length length) {
        return tenths(length, RoundingMode.CEILING);
    }

    /** A distance that there is, or the most that may be, rounded down: "6.5 mm". */
    public String down(Length length) {
        return tenths(length, RoundingMode.FLOOR);
    }

    /** A deviation or tolerance of a machine, which is measured finer than a hand can set: "0.13 mm", "0.005 in". */
    public String fine(Length length) {
        return shown(length, Length::inMm, l -> LengthText.plain(BigDecimal.valueOf(l.inches()), 3) + " in");
    }

    private String tenths(Length length, RoundingMode rounding) {
        return shown(length, l -> fixed(l.mm(), 1, rounding) + " mm", l -> fixed(l.inches(), 2, rounding) + " in");
    }

    private static String apart(Length length, Collection<Length> others, List<Function<Length, String>> finer) {
        for (Function<Length, String> way : finer) {
            String said = way.apply(length);
            if (others.stream().allMatch(o -> o.equals(length) || !way.apply(o).equals(said))) {
                return said;
            }
        }
        return LengthText.exact(length);
    }

    /** A place beside its limit, shown finer where both would look alike. */
    public String beside(Length length, Length limit) {
        return mark(length).equals(mark(limit)) ? exact(length) : mark(length);
    }

    /** A measured place on a page, in millimetres. */
    public String mark(double mm) {
        return mark(Length.ofMeasuredMm(mm));
    }

    /** A stretch on a page: "15.5 to 18.5 mm". */
    public String marks(double startMm, double endMm) {
        return switch (units) {
            case METRIC -> mark(startMm).replace(" mm", "") + " to " + mark(endMm);
            case INCH -> mark(startMm).replace(" in", "") + " to " + mark(endMm);
            case BOTH -> METRIC.marks(startMm, endMm) + " (" + new Measures(Units.INCH).marks(startMm, endMm) + ")";
        };
    }

    /** A thickness: "4.7 mm", "0.19 in". */
    public String thickness(Length length) {
        return mark(length);
    }

    /** A range of thicknesses: "4.3 to 5.1 mm". */
    public String thicknesses(Length least, Length most) {
        return marks(least.mm(), most.mm());
    }

    /** A length as it was given or sold, not rounded to a ruler: "9.53 mm", "3/8 in". */
    public String exact(Length length) {
        return shown(length, Length::inMm, LengthText::inches);
    }

    /** Two sides: "210 x 297 mm", "8-1/2 x 11 in". */
    public String area(Length width, Length height) {
        return switch (units) {
            case METRIC -> LengthText.plain(BigDecimal.valueOf(width.mm()), 1) + " x " + LengthText.mm(height.mm());
            case INCH -> LengthText.inches(width).replace(" in", "") + " x " + LengthText.inches(height);
            case BOTH -> METRIC.area(width, height) + " (" + new Measures(Units.INCH).area(width, height) + ")";
        };
    }

    /** A hole by its shape: "round, 4.4 mm", "square, 4 mm", "rectangular, 7 x 3 mm"; sizes to 0.1 mm or as inches are sold. */
    public String hole(boolean round, Length along, Length across) {
        if (round) {
            return "round, " + size(along);
        }
        return along.equals(across)
                ? "square, " + size(along)
                : "rectangular, " + (units == Units.METRIC ? size(along).replace(" mm", "") : size(along)) + " x "
                        + size(across);
    }

    /** The size of an element or closer, which is sold in inches: "9.5 mm (3/8 in)", "3/8 in". */
    public String sold(Length length) {
        return whole
                ? LengthText.both(length)
                : units == Units.INCH ? size(length) : new Measures(Units.BOTH).size(length);
    }

    /** A size as it is sold: "4.8 mm", "3/16 in". */
    public String size(Length length) {
        return shown(length, l -> LengthText.mm(l.mm()), LengthText::inches);
    }

    private String shown(Length length, Function<Length, String> mm, Function<Length, String> inches) {
        if (whole) {
            return length.inMm();
        }
        return switch (units) {
            case METRIC -> mm.apply(length);
            case INCH -> inches.apply(length);
            case BOTH -> mm.apply(length) + " (" + inches.apply(length) + ")";
        };
    }

    private static String setMm(Length length) {
        BigDecimal halves = BigDecimal.valueOf(length.mm()).divide(HALF_MM, 0, RoundingMode.HALF_UP);
        return LengthText.plain(halves.multiply(HALF_MM), 1) + " mm";
    }

    private static Length thirtySeconds(Length length) {
        long step = PER_INCH / 32;
        return new Length(Math.floorDiv(length.units() + step / 2, step) * step);
    }

    // beyond a millionth of a millimetre there is only the noise of binary fractions
    private static String fixed(double number, int decimals, RoundingMode rounding) {
        return BigDecimal.valueOf(number)
                .setScale(NOISE, RoundingMode.HALF_UP)
                .setScale(decimals, rounding)
                .toPlainString();
    }
}
