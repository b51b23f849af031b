package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

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

    /** Text that is no size, with the nearest of the table, null for none. */
    public static String neither(String given, @Nullable String near) {
        return "\"" + given + "\" is neither a known size nor width x height"
                + (near == null ? "" : "; nearest in the table: \"" + near + "\"");
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
