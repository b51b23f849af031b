package io.bindprep.gauge;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One reading: from one place to another ("3.1 to 7.1 mm"), or a single length.
 *
 * @param to null where one length was read
 */
record Reading(Length from, @Nullable Length to) {
    static final int LONGEST = 60;

    private static final Pattern TWO = Pattern.compile("(?i)\\s*(.+?)\\s+to\\s+(.+?)\\s*");
    private static final Pattern UNIT = Pattern.compile("[\\d./ -]+?\\s*([a-zA-Zµ\"]+)\\s*");
    private static final Pattern BARE = Pattern.compile("[\\d./ -]+");
    // beyond any sheet: a slip of the unit
    private static final Length MOST = Length.ofMm(2000);

    /**
     * Reads it; the unit may stand once, at the end.
     *
     * @throws SettingException where it is no length, or its far end does not lie beyond its near one
     */
    static Reading parse(String key, String text, String example) throws SettingException {
        if (text.length() > LONGEST) {
            throw Scalars.wrong(key, text, "is longer than a reading is", "Write it as \"" + example + "\".");
        }
        Matcher two = TWO.matcher(text);
        if (!two.matches()) {
            return new Reading(Scalars.length(key, text, MOST, example), null);
        }
        Matcher unit = UNIT.matcher(two.group(2));
        String near = two.group(1);
        if (BARE.matcher(near).matches() && unit.matches()) {
            near += " " + unit.group(1);
        }
        Reading reading =
                new Reading(Scalars.length(key, near, MOST, example), Scalars.length(key, two.group(2), MOST, example));
        if (reading.from.compareTo(reading.far()) >= 0) {
            throw Scalars.wrong(
                    key,
                    text,
                    "does not end beyond where it begins",
                    "Write the smaller number first, for example \"" + example + "\".");
        }
        return reading;
    }

    Length far() {
        return to == null ? from : to;
    }

    /** The middle between the two, or the one length. */
    double middleMm() {
        return (from.mm() + far().mm()) / 2;
    }

    /** From one to the other; null where one length was read. */
    @Nullable
    Double sizeMm() {
        return to == null ? null : to.mm() - from.mm();
    }
}
