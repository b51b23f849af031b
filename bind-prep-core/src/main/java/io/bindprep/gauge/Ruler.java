package io.bindprep.gauge;

import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.math.BigDecimal;
import java.util.Locale;

/**
 * Divisions of the printed scales, as a rule of the paper's units has them: half millimetres, or fiftieths of an inch; read
 * beside a reading page to a tenth of a millimetre, or to five thousandths of an inch.
 */
enum Ruler {
    MM("mm", 0.5, 2, 10, 20, 1, 5, 0.1, 1),
    // an inch by tenths, as engineers' rules have it: readings are written as decimals
    INCH("in", 0.508, 5, 25, 25, 1.27, 4, 0.127, 3);

    private static final Length LEAST_MM = Length.ofMm(100);
    private static final Length LEAST_INCH = Length.ofInch(4, 1);

    /** Name of the unit. */
    final String unit;

    /** A division beside a hole, millimetres. */
    final double fine;

    /** Divisions from one line to the next away from holes, to the next longer one, and to the next with its figure. */
    final int line;

    final int longer;
    final int figure;

    /** From line to line of the reading page, millimetres, and every which line has its figure. */
    final double readingLine;

    final int readingFigure;

    /** Distance by which each column of the reading page stands further, millimetres. */
    final double column;

    private final int decimals;

    Ruler(
            String unit,
            double fine,
            int line,
            int longer,
            int figure,
            double readingLine,
            int readingFigure,
            double column,
            int decimals) {
        this.unit = unit;
        this.fine = fine;
        this.line = line;
        this.longer = longer;
        this.figure = figure;
        this.readingLine = readingLine;
        this.readingFigure = readingFigure;
        this.column = column;
        this.decimals = decimals;
    }

    /** Inches where the sheet's units are those alone. */
    static Ruler of(Measures measures) {
        return measures.units() == Units.INCH ? INCH : MM;
    }

    private double inUnit(double mm) {
        return this == MM ? mm : mm / 25.4;
    }

    /** Figure of a place on a scale: "10", "0.5". */
    String figure(double mm) {
        return LengthText.plain(BigDecimal.valueOf(inUnit(mm)), 2);
    }

    /** Amount that a column of the reading page adds: ".3", ".015". */
    String adds(int column) {
        return String.format(Locale.ROOT, "%." + decimals + "f", inUnit(column * this.column))
                .substring(1);
    }

    /** Least stretch of the bar that tells the scale of the print. */
    Length leastBar() {
        return this == MM ? LEAST_MM : LEAST_INCH;
    }

    /** From mark to mark of the bar, millimetres. */
    double barMark() {
        return this == MM ? 50 : 50.8;
    }

    /** Steps of reading a hole on the reading page. */
    String reading() {
        return this == MM
                ? "Read its millimetres, and the tenth above the column."
                : "Read its inches at 0.05 in a line, and add what stands above the column.";
    }
}
