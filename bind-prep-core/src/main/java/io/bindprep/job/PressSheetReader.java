package io.bindprep.job;

import io.bindprep.paper.SheetSize;
import io.bindprep.paper.SheetSizes;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the press sheet: "sra3", "sra3, bleed 3 mm, gripper 10 mm" or {size, bleed, gripper}. */
final class PressSheetReader {
    private static final String SIZE = "size";
    private static final String BLEED = "bleed";
    private static final String GRIPPER = "gripper";
    private static final String NONE = "none";
    // common practice, no source
    private static final Length BUILT_IN_BLEED = Length.ofMm(3);
    private static final Length BUILT_IN_GRIPPER = Length.ofMm(10);
    private static final Length MOST = Length.ofMm(50);
    private static final Pattern TEXT = Pattern.compile(
            "(.+?)(?:\\s*,\\s*bleed\\s+(.+?))?(?:\\s*,\\s*gripper\\s+(.+?))?", Pattern.CASE_INSENSITIVE);

    private PressSheetReader() {}

    /** The sheet, or null for "none". */
    static @Nullable PressSheet read(SheetSizes sheets, String key, Object value) throws SettingException {
        if (NONE.equals(value)) {
            return null;
        }
        Map<String, @Nullable Object> parts = new HashMap<>();
        boolean map = value instanceof Map;
        if (value instanceof Map<?, ?> given) {
            CoverReader.checkKeys(key, given.keySet(), List.of(SIZE, BLEED, GRIPPER));
            given.forEach((k, v) -> parts.put(String.valueOf(k), v));
        } else {
            Matcher m = TEXT.matcher(Scalars.text(key, value));
            if (m.matches()) {
                parts.put(SIZE, m.group(1));
                parts.put(BLEED, m.group(2));
                parts.put(GRIPPER, m.group(3));
            }
        }
        Object size = parts.get(SIZE);
        if (size == null) {
            throw Scalars.wrong(
                    key, value, "does not say the size", "Write it, for example \"sra3\" or \"320 x 450 mm\".");
        }
        String at = map ? key + "." : "";
        SheetSize sheet = sheets.parse(map ? at + SIZE : key, Scalars.text(map ? at + SIZE : key, size));
        return new PressSheet(
                sheet.name(),
                sheet.width(),
                sheet.height(),
                length(map ? at + BLEED : key, parts.get(BLEED), BUILT_IN_BLEED),
                length(map ? at + GRIPPER : key, parts.get(GRIPPER), BUILT_IN_GRIPPER));
    }

    private static Length length(String key, @Nullable Object value, Length builtIn) throws SettingException {
        if (value == null) {
            return builtIn;
        }
        return NONE.equals(value) ? Length.ZERO : Scalars.length(key, value, MOST, "3 mm", NONE);
    }
}
