package io.bindprep.gauge;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Readings of a punched test sheet, before it is held against anything. */
public final class Readings {
    static final String EDGE_FIRST = "edge-first";
    static final String EDGE_LAST = "edge-last";
    static final String END_FIRST = "end-first";
    static final String ROW = "row";
    static final String BAR = "bar";
    static final String ERROR = "reading-error";

    private static final Length LEAST_BAR = Length.ofMm(100);
    private static final Pattern INCHES = Pattern.compile("(?i)(?:in|inch|inches|\"|\u2033)\\s*$");
    private static final Length MOST_BAR = Length.ofMm(1000);
    // a fine line by eye: nobody reads better; what is worse than 1 mm is no reading. Our own, no source
    private static final Length LEAST_ERROR = Length.ofMm("0.05");
    private static final Length MOST_ERROR = Length.ofMm(1);
    private static final Length USUAL_ERROR = Length.ofMm("0.2");
    private static final Pattern OF = Pattern.compile("(?i)(.+?)\\s+of\\s+(.+)");

    private final Reading edgeFirst;
    private final Reading edgeLast;
    private final Reading endFirst;
    private final Reading row;
    private final @Nullable Bar bar;
    private final Length error;

    /** Length that a rule showed for a stretch of the printed bar. */
    record Bar(Length read, Length printed) {}

    private Readings(
            Reading edgeFirst, Reading edgeLast, Reading endFirst, Reading row, @Nullable Bar bar, Length error) {
        this.edgeFirst = edgeFirst;
        this.edgeLast = edgeLast;
        this.endFirst = endFirst;
        this.row = row;
        this.bar = bar;
        this.error = error;
    }

    /**
     * Takes readings as they were written down, each a length, or a near and a far side ("3.1 to 7.1 mm").
     *
     * @param edgeFirst binding edge of the paper to the first hole: both sides of the hole, or its middle
     * @param edgeLast binding edge of the paper to the last hole, likewise
     * @param endFirst end of the paper at the side guide to the first hole, along the edge, likewise
     * @param row one side of the first hole and the same side of the last on the printed scale, or the length between
     *     as a rule measures it
     * @param bar what a rule shows for the printed bar of 100 mm (or of 4 in, where it is in inches), or "249.6 mm of 250 mm" for a longer stretch of it;
     *     null where all was measured with a rule
     * @param error how far a reading may lie off, either way; null for 0.2 mm
     * @throws SettingException where one is no length
     */
    public static Readings of(
            String edgeFirst,
            String edgeLast,
            String endFirst,
            String row,
            @Nullable String bar,
            @Nullable String error)
            throws SettingException {
        Length off = error == null ? USUAL_ERROR : Scalars.length(ERROR, error, MOST_ERROR, "0.2 mm");
        if (off.compareTo(LEAST_ERROR) < 0) {
            throw Scalars.wrong(
                    ERROR,
                    off.inMm(),
                    "is better than anyone reads",
                    "Write at least " + LEAST_ERROR.inMm() + ", as surely as you would bet on each number.");
        }
        return new Readings(
                Reading.parse(EDGE_FIRST, edgeFirst, "3.1 to 7.1 mm"),
                Reading.parse(EDGE_LAST, edgeLast, "3.1 to 7.1 mm"),
                Reading.parse(END_FIRST, endFirst, "6.8 to 10.8 mm"),
                Reading.parse(ROW, row, "6.8 to 286.2 mm"),
                bar == null ? null : bar(bar),
                off);
    }

    private static Bar bar(String text) throws SettingException {
        Matcher of = OF.matcher(text.length() > Reading.LONGEST ? "" : text);
        boolean longer = of.matches();
        Ruler ruler = INCHES.matcher(text).find() ? Ruler.INCH : Ruler.MM;
        Length printed = longer ? Scalars.length(BAR, of.group(2), MOST_BAR, "249.6 mm of 250 mm") : ruler.leastBar();
        Length read = Scalars.length(BAR, longer ? of.group(1) : text, MOST_BAR, "99.8 mm", "249.6 mm of 250 mm");
        if (printed.compareTo(LEAST_BAR) < 0) {
            throw Scalars.wrong(
                    BAR,
                    text,
                    "is a stretch too short to tell",
                    "Measure at least " + LEAST_BAR.inMm() + " of the bar.");
        }
        // 1 % is a page fitted to its paper, not one printed at full size; our own bound, no source
        if (read.minus(printed).abs().times(100).compareTo(printed) > 0) {
            throw new SettingException(
                    BAR,
                    text,
                    "the bar of " + printed.inMm() + " measures " + read.inMm()
                            + ": the sheet was not printed at full size",
                    "print it again at 100 %, without fitting it to the page, punch it and read again",
                    List.of());
        }
        return new Bar(read, printed);
    }

    Reading edgeFirst() {
        return edgeFirst;
    }

    Reading edgeLast() {
        return edgeLast;
    }

    Reading endFirst() {
        return endFirst;
    }

    Reading row() {
        return row;
    }

    /** First to last hole; what was read on the printed scale is scaled, what a rule measured is as it is. */
    double rowMm() {
        Double printed = row.sizeMm();
        return printed == null ? row.from().mm() : printed * scale();
    }

    /** Error of that: both ends by their error, and by that of the scale. */
    double rowErrorMm() {
        Double printed = row.sizeMm();
        return 2 * error.mm() + (printed == null ? 0 : printed * scaleError());
    }

    Length error() {
        return error;
    }

    /** Returns true if a rule measured everything. */
    boolean byRule() {
        return bar == null;
    }

    /** Scale of a printed millimetre. */
    double scale() {
        return bar == null ? 1 : bar.read().mm() / bar.printed().mm();
    }

    /** Error of that, the bar being read like everything else. */
    double scaleError() {
        return bar == null ? 0 : error.mm() / bar.printed().mm();
    }
}
