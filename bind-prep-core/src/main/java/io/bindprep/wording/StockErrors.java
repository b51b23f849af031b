package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Sentences on stocks that cannot be. */
public final class StockErrors {
    private static final String FORMS =
            "name one, or give its thickness: \"20 lb bond\", \"80 gsm 104 um\", \"80 gsm bulk 1.3\","
                    + " \"14 pt-caliper\", \"25 sheets = 2.6 mm\"";

    /** Two weights, or a basis weight on no sheet. */
    public static final String EITHER_WEIGHT = "give either a grammage or a basis weight with its basis sheet";

    /** Two thicknesses. */
    public static final String EITHER_THICKNESS = "give either bulk or a caliper";

    /** Bulk without a weight. */
    public static final String BULK_ALONE = "bulk needs a grammage";

    /** A weight without a thickness. */
    public static final String WEIGHT_ALONE =
            "a weight alone is not a thickness: bulk, a caliper or a measured pack is missing";

    /** Neither name nor thickness. */
    public static final String NOTHING = "no stock known by name, no thickness";

    /** A pack of no sheet. */
    public static final String EMPTY_PACK = "a measured pack needs at least one sheet";

    /** A tolerance as large as the thing. */
    public static final String WHOLE_TOLERANCE = "a tolerance of 100 % or more says nothing";

    /** A table's id that is none. */
    public static final String ID = "is a name of letters, digits, dots and hyphens that begins with a letter";

    /** A table's caliper out of range. */
    public static final String CALIPER = "is outside 5 um to 10 mm: mistaken unit?";

    /** A table's tolerance out of range. */
    public static final String TOLERANCE = "is not less than the caliper: mistaken unit?";

    /** A table's basis sheet that is none. */
    public static final String BASIS_SHEET = "is not a basis sheet in inches such as 17x22";

    private StockErrors() {}

    /** A stock that cannot be read, with the nearest of the table, null for none. */
    public static SettingException unknown(
            String key, String value, String why, @Nullable String near, List<String> known) {
        return new SettingException(
                key, value, near == null ? why : why + "; nearest in the table: \"" + near + "\"", FORMS, known);
    }

    /** A key that stocks do not have. */
    public static SettingException noKey(String key, String name, String value, List<String> known) {
        return new SettingException(
                key + "." + name, value, "a stock has no \"" + name + "\"", "use one of its keys", known);
    }

    /** Half a basis weight. */
    public static SettingException halfBasis(String key, String value, List<String> known) {
        return new SettingException(
                key,
                value,
                "a basis weight needs its basis sheet, and the other way round",
                "give both, as in basis-weight: 20, basis-sheet: 17x22",
                known);
    }

    /** A value that is not of its term. */
    public static SettingException notOfTerm(String key, String value, String term) {
        return new SettingException(
                key, value, "\"" + value + "\" does not say " + term, "a stock reads: " + FORMS, List.of());
    }

    /** A term that comes again. */
    public static String twice(String term) {
        return term + " is given twice";
    }

    /** A known stock with numbers of its own. */
    public static String numbersAlready(String name) {
        return "\"" + name + "\" has its numbers already: only a measured pack or a tolerance may be added";
    }

    /** A tolerance above the caliper, micrometres. */
    public static String toleranceTooLarge(BigDecimal caliperUm) {
        return "the tolerance is not less than the caliper of " + LengthText.plain(caliperUm, 2) + " um";
    }

    /** A value out of its range, in the unit's numbers. */
    public static String outside(Quantity what, BigDecimal value, BigDecimal least, BigDecimal most) {
        return what.words + " " + LengthText.plain(value, 2) + " " + what.unit + " is outside "
                + LengthText.plain(least, 2) + " to " + LengthText.plain(most, 2) + ": mistaken unit?";
    }

    /** Numbers of a stock that have a range. */
    public enum Quantity {
        /** Bulk that is given. */
        BULK("bulk", "cm3/g"),
        /** Bulk that follows from a measured pack. */
        BULK_OF_PACK("the pack's bulk", "cm3/g"),
        /** Weight of an area. */
        GRAMMAGE("grammage", "g/m2"),
        /** Thickness of a sheet. */
        CALIPER("caliper", "um"),
        /** Thickness of a sheet that was measured with others. */
        SHEET_OF_PACK("a sheet of the pack", "um");

        private final String words;
        private final String unit;

        Quantity(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }
    }

    /** A name that is not in the table. */
    public static String notByName(String name) {
        return "\"" + name + "\" is no stock known by name";
    }

    /** Text that is nothing of a stock. */
    public static String neither(String text) {
        return "\"" + text + "\" is neither a stock known by name nor a number with its unit";
    }

    /** A coated paper, of which the table has none. */
    public static String coated(String text) {
        return "\"" + text + "\" is no stock known by name; coated papers differ in thickness at the same weight";
    }

    /** Points, of which there are two kinds. */
    public static String whichPoint(String text) {
        return "\"" + text + "\" could be 1/1000 in or the 1/72 in point of a PDF: write \"pt-caliper\" or \"mil\"";
    }

    /** Pounds without their sheet. */
    public static String poundsAlone(String text) {
        return "\"" + text + "\" needs its basis sheet, which differs by grade: \"20 lb 17x22 in\"";
    }

    /** A table's weight that is none. */
    public static String notWeight(boolean metric) {
        return "is not a weight in " + (metric ? "g/m2" : "pounds") + ", a number above zero without its unit";
    }

    /** Text that is no thickness. */
    public static String notThickness(String text) {
        return "not a thickness with a unit: \"" + text + "\"";
    }

    /** A fraction that is none. */
    public static String overZero(String text) {
        return "a fraction over zero: \"" + text + "\"";
    }
}
