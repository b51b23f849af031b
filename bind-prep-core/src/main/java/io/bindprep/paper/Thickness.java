package io.bindprep.paper;

import io.bindprep.wording.StockErrors;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The trade's figures of paper made into micrometres and grams, exact but for a division (16 digits). */
final class Thickness {
    // 1 lb = 453.59237 g (international pound, 1959), a ream of 500 sheets, 1 in = 0.0254 m
    private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");
    private static final BigDecimal REAM_SQUARE_METRES_PER_SQUARE_INCH =
            new BigDecimal("500").multiply(new BigDecimal("0.0254").pow(2));

    /** A thickness with its unit; "pt-caliper" (1/1000 in) is not the 1/72 in point of a PDF. */
    static final String PATTERN =
            "(?:\\d{1,6}(?:\\.\\d{1,9})?|(?:\\d{1,3}[ -])?\\d{1,4}/\\d{1,4})\\s*(?:um|µm|μm|mm|cm|mils?|pt[- ]caliper|in\\b|\")";

    private static final Pattern TEXT = Pattern.compile(
            "(?:(\\d+(?:\\.\\d+)?)|(?:(\\d+)[ -])?(\\d+)/(\\d+))\\s*(um|µm|μm|mm|cm|mils?|pt[- ]caliper|in|\")");

    private Thickness() {}

    /**
     * Micrometres of a thickness with its unit.
     *
     * @throws IllegalArgumentException where the text is none
     */
    static BigDecimal micrometres(String text) {
        Matcher m = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            throw new IllegalArgumentException(StockErrors.notThickness(text));
        }
        BigDecimal unit = switch (m.group(5).charAt(0)) {
            case 'u', 'µ', 'μ' -> BigDecimal.ONE;
            case 'c' -> new BigDecimal(10_000);
            case 'i', '"' -> new BigDecimal(25_400);
            case 'p' -> new BigDecimal("25.4");
            default -> m.group(5).equals("mm") ? new BigDecimal(1000) : new BigDecimal("25.4");
        };
        if (m.group(1) != null) {
            return new BigDecimal(m.group(1)).multiply(unit);
        }
        BigDecimal under = new BigDecimal(m.group(4));
        if (under.signum() == 0) {
            throw new IllegalArgumentException(StockErrors.overZero(text));
        }
        BigDecimal whole = m.group(2) == null ? BigDecimal.ZERO : new BigDecimal(m.group(2));
        return whole.multiply(under)
                .add(new BigDecimal(m.group(3)))
                .multiply(unit)
                .divide(under, MathContext.DECIMAL64);
    }

    /** g/m2 of a basis weight in pounds on its basis sheet in inches: 453.59237 lb / (500 w h 0.0254^2). */
    static BigDecimal grammage(BigDecimal pounds, BigDecimal widthIn, BigDecimal heightIn) {
        BigDecimal area = widthIn.multiply(heightIn).multiply(REAM_SQUARE_METRES_PER_SQUARE_INCH);
        return pounds.multiply(GRAMS_PER_POUND).divide(area, MathContext.DECIMAL64);
    }
}
