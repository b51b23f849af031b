package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a hanger: "90 mm", "gap = 90 mm, thumb-cut = 60 x 20 mm" or a map of these two. */
final class HangerReader {
    private static final String GAP = "gap";
    private static final String THUMB_CUT = "thumb-cut";
    // longer than any hanger sold, deeper than any notch a hand needs: what lies above is a slip of the unit
    private static final Length MOST_GAP = Length.ofMm(500);
    private static final Length MOST_DEPTH = Length.ofMm(50);

    private static final Pattern PARTS =
            Pattern.compile("(?:gap\\s*=\\s*)?([^,=]+?)(?:\\s*,\\s*thumb-cut\\s*=\\s*([^,=]+))?");
    private static final Pattern AREA = Pattern.compile("([^x]+?)\\s*x\\s*([^x]+)");
    private static final Pattern BARE = Pattern.compile("[\\d./ -]+");

    private HangerReader() {}

    /** The hanger; null for none. */
    static @Nullable Hanger hanger(String key, Object value) throws SettingException {
        if ("none".equals(value)) {
            return null;
        }
        if (value instanceof Map<?, ?> map) {
            CoverReader.checkKeys(key, map.keySet(), List.of(GAP, THUMB_CUT));
            Object gap = map.get(GAP);
            if (gap == null) {
                throw Scalars.wrong(key, value, "has no gap", "Add the free stretch, for example gap: 90 mm.");
            }
            return hanger(key, gap, map.get(THUMB_CUT));
        }
        Matcher m = PARTS.matcher(Length.withPoint(Scalars.text(key, value)));
        if (!m.matches()) {
            throw Scalars.wrong(
                    key,
                    value,
                    "is no hanger",
                    "Write the free stretch, for example \"90 mm\" or \"gap = 90 mm, thumb-cut = 60 x 20 mm\".");
        }
        String cut = m.group(2);
        return hanger(key, m.group(1), cut);
    }

    private static Hanger hanger(String key, Object gapValue, @Nullable Object cutValue) throws SettingException {
        Length gap = positive(key + "." + GAP, gapValue, MOST_GAP, "90 mm");
        if (cutValue == null || "none".equals(cutValue)) {
            return new Hanger(gap, null);
        }
        Hanger.ThumbCut cut = thumbCut(key + "." + THUMB_CUT, cutValue);
        if (cut.width().compareTo(gap) > 0) {
            throw Scalars.wrong(
                    key + "." + THUMB_CUT,
                    cutValue,
                    "is wider than the gap of " + gap.inMm() + " it lies in",
                    "Make the gap wider or the thumb cut narrower.");
        }
        return new Hanger(gap, cut);
    }

    // one length is a half round: as deep as half its width
    private static Hanger.ThumbCut thumbCut(String key, Object value) throws SettingException {
        Matcher m = AREA.matcher(Scalars.text(key, value));
        if (!m.matches()) {
            Length width = positive(key, value, MOST_DEPTH.times(2), "60 mm", "60 x 20 mm");
            return new Hanger.ThumbCut(width, width.half());
        }
        // "60 x 20 mm": a unit that stands once holds for both
        String second = m.group(2).strip();
        String first = BARE.matcher(m.group(1)).matches()
                ? m.group(1) + " " + second.replaceFirst("^[\\d./ -]+", "")
                : m.group(1);
        return new Hanger.ThumbCut(
                positive(key, first, MOST_GAP, "60 x 20 mm"), positive(key, second, MOST_DEPTH, "60 x 20 mm"));
    }

    private static Length positive(String key, Object value, Length most, String... examples) throws SettingException {
        Length length = Scalars.length(key, value, most, examples);
        if (length.equals(Length.ZERO)) {
            throw Scalars.wrong(
                    key, value, "is no length at all", "Write a length above 0, for example \"" + examples[0] + "\".");
        }
        return length;
    }
}
