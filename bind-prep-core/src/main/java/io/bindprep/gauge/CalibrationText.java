package io.bindprep.gauge;

import io.bindprep.catalogue.Deviation;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Terms;

/** Tells people what a calibration found: to a hundredth of a millimetre or a thousandth of an inch, as plans add these errors up. */
public final class CalibrationText {
    private static final int NAME = 15;
    private static final int VALUE = 24;

    private CalibrationText() {}

    /** Some lines, ending in a line feed: each error with its tolerance and what it means, then how it was come by. */
    public static String write(Calibration found) {
        Measures measures = found.measures();
        StringBuilder out = new StringBuilder();
        String setting = "depth \"" + found.setting().name() + "\"";
        out.append("Punch ")
                .append(found.punch().id())
                .append(", ")
                .append(setting)
                .append(":\n");
        line(
                out,
                measures,
                "edge distance",
                found.edge(),
                "binding edge to the middle of the holes, in the middle of the row; was described as "
                        + measures.fine(found.setting().centre()));
        line(
                out,
                measures,
                "side offset",
                found.side(),
                sign(found.side(), "too far from the side guide", "too near to the side guide"));
        line(
                out,
                measures,
                "skew",
                found.skew(),
                sign(found.skew(), "the last hole deeper than the first", "the last hole shallower than the first"));
        line(
                out,
                measures,
                "pitch error",
                found.pitch(),
                sign(found.pitch(), "longer", "shorter") + " than the " + measures.fine(found.row())
                        + " of the pattern, first to last hole");
        out.append("Each tolerance is the worst case of readings that are up to ")
                .append(measures.fine(found.readingError()))
                .append(" off")
                .append(found.byRule() ? ", all taken with a steel rule" : ", the bar's too")
                .append(
                        ".\nPlans take the holes where they were found. What stays open, the slant of the row included, is up to ")
                .append(measures.fine(found.open()))
                .append(", and " + Terms.PUNCHING_TOLERANCE + " is never less.\n");
        String off = measures.fine(found.side().value().abs());
        if (found.punch().firstPin() == null && !off.startsWith("0 ")) {
            out.append("Set the side guide by ")
                    .append(off)
                    .append(found.side().value().compareTo(Length.ZERO) > 0 ? " less" : " more")
                    .append(" than its scale says.\n");
        }
        return out.toString();
    }

    private static void line(StringBuilder out, Measures measures, String name, Deviation value, String meaning) {
        String text = measures.fine(value.value()) + " +- " + measures.fine(value.tolerance());
        out.append("  ")
                .append(name)
                .append(" ".repeat(NAME - name.length()))
                .append(text)
                .append(" ".repeat(Math.max(2, VALUE - text.length())))
                .append(meaning)
                .append('\n');
    }

    private static String sign(Deviation value, String more, String less) {
        return value.value().compareTo(Length.ZERO) >= 0 ? more : less;
    }
}
