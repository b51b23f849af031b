package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;

/** Sentences on sheet sizes that cannot be. */
public final class SizeErrors {
    /** One number in inches, the other in millimetres, to all appearance. */
    public static final String UNIT = "needs its unit, mm or in";

    /** A table's name that is none. */
    public static final String NAME = "is a name that begins with a letter, and is of the upright sheet";

    /** A table's size that lies on its side. */
    public static final String WIDTH = "is more than the height: sizes stand upright in the table";

    /** A table's tolerance as large as the sheet. */
    public static final String TOLERANCE = "is not less than the width: mistaken unit?";

    private SizeErrors() {}

    /** A size that cannot be read. */
    public static SettingException unknown(String key, String given, String why, List<String> known) {
        return new SettingException(
                key,
                given,
                why,
                "name a size (A4, letter landscape) or give width x height (210 x 297 mm, 8.5 x 11 in)",
                known);
    }

    /** Text that is no size, with the nearest of the table, if any. */
    public static String neither(String given, List<String> near) {
        return "\"" + given + "\" is neither a known size nor width x height"
                + (near.isEmpty() ? "" : "; nearest in the table: " + near.get(0));
    }

    /** Text that can be several sizes. */
    public static String several(String given, List<String> sizes) {
        return "\"" + given + "\" can be " + String.join(", ", sizes.subList(0, sizes.size() - 1)) + " or "
                + sizes.get(sizes.size() - 1) + ": say which";
    }

    /** A size of the table with its numbers: "demy-octavo" (138 x 216 mm). */
    public static String named(String name, Length width, Length height) {
        return "\"" + name + "\" (" + width.inMm().replace(" mm", "") + " x " + height.inMm() + ")";
    }

    /** A side out of range. */
    public static String side(Length side, Length least, Length most) {
        return "a side of " + side.inMm() + " " + outside(least, most);
    }

    /** A table's side out of range. */
    public static String outside(Length least, Length most) {
        return "is outside " + least.inMm() + " to " + most.inMm() + ": mistaken unit?";
    }
}
