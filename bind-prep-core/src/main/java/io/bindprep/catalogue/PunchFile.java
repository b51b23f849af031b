package io.bindprep.catalogue;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.RenamedKeys;
import io.bindprep.setting.Scalars;
import io.bindprep.setting.SettingFile;
import io.bindprep.table.NamedText;
import io.bindprep.unit.Length;
import io.bindprep.wording.Spelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the description of one punch, YAML or JSON. */
public final class PunchFile {
    private static final String KEY = "punch";
    private static final Pattern FILE = Pattern.compile("(?i).*\\.(?:yaml|yml|json)");
    private static final Pattern FROM_STACK = Pattern.compile("\\s*,\\s*stack from\\s+");
    private static final Pattern FOLDERS = Pattern.compile(".*[/\\\\]");
    // far beyond any punch: what lies above is a slip of the unit; common practice, no source
    private static final Length MOST = Length.ofMm(2000);
    private static final Length DEEPEST = Length.ofMm(50);
    private static final Length MOST_ERROR = Length.ofMm(20);
    private static final int MOST_SETTINGS = 100;
    // as the generic punches have it: common practice, no source
    private static final Length LIFT = Length.ofMm("1.9");
    private static final Length LONGEST = Length.ofInch(17, 1);

    private final SettingFile file;
    private final String name;
    private final Catalogue catalogue;

    private PunchFile(SettingFile file, String name, Catalogue catalogue) {
        this.file = file;
        this.name = name;
        this.catalogue = catalogue;
    }

    /** Returns true if what a job names as its punch is a file: its name ends in .yaml, .yml or .json. */
    public static boolean isNamed(String punch) {
        return FILE.matcher(punch.strip()).matches();
    }

    /** Descriptions of each key, in the order of the file. */
    public static List<KeyDescription> descriptions() {
        return PunchKeys.ALL;
    }

    /**
     * Reads a punch of one of the catalogue's patterns.
     *
     * @throws SettingException where a key or value is wrong, under the key {@code punch}; the message names key and line
     */
    public static Punch read(NamedText text, Catalogue catalogue) throws SettingException {
        SettingFile file = SettingFile.read(KEY, text.text(), text.name());
        try {
            return new PunchFile(file, text.name(), catalogue).punch();
        } catch (SettingException e) {
            String place = file.place(e.key()).orElse(text.name());
            throw new SettingException(
                    KEY, e.value(), e.key() + ": " + e.getMessage() + " (" + place + ")", e.remedy(), e.known());
        }
    }

    private Punch punch() throws SettingException {
        for (String key : file.values().keySet()) {
            checkKnown(key, key, PunchKeys.names());
        }
        io.bindprep.catalogue.Pattern pattern = pattern();
        int pins = Scalars.whole(PunchKeys.PINS, required(PunchKeys.PINS), 1, Punches.MOST_PINS);
        int holes = pattern.spacings().size() + 1;
        if (!pattern.repeating() && pins != holes) {
            throw Scalars.wrong(
                    PunchKeys.PINS, pins, "is not the " + holes + " holes of " + pattern.id(), "Write " + holes + ".");
        }
        PunchLift lift = PunchLift.read(file.values().get(PunchKeys.LIFT), LIFT);
        Object punchingTolerance = file.values().get(PunchKeys.PUNCHING_TOLERANCE);
        return new Punch(
                id(),
                pattern.id(),
                pins,
                firstPin(),
                depths(pattern),
                lift.thickness(),
                lift.limits(),
                pullable(pins),
                length(PunchKeys.LONGEST_EDGE, MOST, LONGEST),
                length(
                        PunchKeys.MINIMUM_WEB,
                        DEEPEST,
                        catalogue.punches().generic(pattern).minimumWeb()),
                elements(),
                punchingTolerance == null ? null : length(PunchKeys.PUNCHING_TOLERANCE, Length.ofMm(10), Length.ZERO),
                measured(),
                source());
    }

    private Object required(String key) throws SettingException {
        Object value = file.values().get(key);
        if (value == null) {
            throw new SettingException(
                    key, "", "is not given", "Write " + key + ", which no punch can be without.", PunchKeys.names());
        }
        return value;
    }

    static void checkKnown(String place, String key, List<String> known) throws SettingException {
        if (!known.contains(key)) {
            String renamed = RenamedKeys.sentence("", key).orElse(null);
            throw renamed == null
                    ? new SettingException(place, key, "there is no such setting", Spelling.remedy(key, known), known)
                    : new SettingException(place, key, renamed, "Write the new name.", List.of());
        }
    }

    private io.bindprep.catalogue.Pattern pattern() throws SettingException {
        String id = Scalars.text(PunchKeys.PATTERN, required(PunchKeys.PATTERN));
        return catalogue
                .patterns()
                .byId(id)
                .orElseThrow(() -> new SettingException(
                        PunchKeys.PATTERN,
                        id,
                        "\"" + id + "\" is no pattern that is known",
                        Spelling.remedy(id, catalogue.patterns().ids()),
                        catalogue.patterns().ids()));
    }

    private String id() throws SettingException {
        Object given = file.values().get(PunchKeys.ID);
        String plain = FOLDERS.matcher(name).replaceFirst("");
        String id = given == null ? plain.substring(0, plain.lastIndexOf('.')) : Scalars.text(PunchKeys.ID, given);
        if (given != null && isNamed(id)) {
            throw Scalars.wrong(PunchKeys.ID, id, "reads like a file", "Leave out what follows the last dot.");
        }
        return id;
    }

    private @Nullable Length firstPin() throws SettingException {
        Object value = file.values().get(PunchKeys.FIRST_PIN);
        return value == null || "movable".equals(value)
                ? null
                : Scalars.length(PunchKeys.FIRST_PIN, value, Length.ofMm(1000), "5 mm", "movable");
    }

    private Length length(String key, Length most, Length builtIn) throws SettingException {
        Object value = file.values().get(key);
        return value == null ? builtIn : Scalars.length(key, value, most, "3 mm", "1/8 in");
    }

    private @Nullable List<Integer> pullable(int pins) throws SettingException {
        Object value = file.values().get(PunchKeys.PULLABLE);
        String text = value instanceof List<?> list
                ? String.join(" ", list.stream().map(String::valueOf).toList())
                : value == null ? "all" : Scalars.text(PunchKeys.PULLABLE, value);
        try {
            return PinRanges.parse(text, pins);
        } catch (IllegalArgumentException e) {
            throw Scalars.wrong(
                    PunchKeys.PULLABLE,
                    text,
                    String.valueOf(e.getMessage()),
                    "Write all, none, or pins and ranges of pins, for example \"1-2 33-34\".");
        }
    }

    private List<DepthSetting> depths(io.bindprep.catalogue.Pattern pattern) throws SettingException {
        Object value = file.values().get(PunchKeys.DEPTHS);
        if (value == null) {
            return Punches.own(pattern);
        }
        if (!(value instanceof Map<?, ?> map) || map.isEmpty() || map.size() > MOST_SETTINGS) {
            throw Scalars.wrong(
                    PunchKeys.DEPTHS,
                    value,
                    "is not 1 to " + MOST_SETTINGS + " settings by name",
                    "Write one setting a line: its name, and the length from the binding edge to the middle of the holes.");
        }
        List<DepthSetting> depths = new ArrayList<>();
        for (Map.Entry<?, ?> e : map.entrySet()) {
            String key = PunchKeys.DEPTHS + "." + e.getKey();
            String[] parts = FROM_STACK.split(String.valueOf(e.getValue()), 2);
            Length centre = Scalars.length(key, parts[0], DEEPEST, "5 mm", "5 mm, stack from 5/16 in");
            Length stack = parts.length == 1 ? null : Scalars.length(key, parts[1], MOST, "5 mm, stack from 5/16 in");
            if (centre.compareTo(pattern.holeAcross().half()) <= 0) {
                throw Scalars.wrong(
                        key,
                        String.valueOf(e.getValue()),
                        "lies so near the binding edge that the hole would be cut open",
                        "Measure from the binding edge to the middle of the hole, not to its near side.");
            }
            depths.add(new DepthSetting(String.valueOf(e.getKey()), centre, stack, source()));
        }
        return depths;
    }

    private @Nullable ElementSizes elements() throws SettingException {
        Object value = file.values().get(PunchKeys.ELEMENTS);
        if (value == null) {
            return null;
        }
        if (value instanceof List<?> list) {
            List<Length> sizes = new ArrayList<>();
            for (Object item : list) {
                sizes.add(Scalars.length(
                        PunchKeys.ELEMENTS + "[" + (sizes.size() + 1) + "]", item, Length.ofMm(200), "3/8 in"));
            }
            if (sizes.isEmpty() || sizes.size() > MOST_SETTINGS) {
                throw Scalars.wrong(
                        PunchKeys.ELEMENTS, value, "is no list of sizes", "Write a size or a range of sizes.");
            }
            return ElementSizes.only(sizes);
        }
        String[] ends = Scalars.text(PunchKeys.ELEMENTS, value).split("\\s+to\\s+", 2);
        Length smallest = Scalars.length(PunchKeys.ELEMENTS, ends[0], Length.ofMm(200), "3/16 in to 9/16 in");
        if (ends.length == 1) {
            return ElementSizes.only(List.of(smallest));
        }
        Length largest = Scalars.length(PunchKeys.ELEMENTS, ends[1], Length.ofMm(200), "3/16 in to 9/16 in");
        if (smallest.compareTo(largest) > 0) {
            throw Scalars.wrong(PunchKeys.ELEMENTS, value, "has its larger end first", "Write the smaller size first.");
        }
        return ElementSizes.range(smallest, largest);
    }

    private @Nullable MeasuredErrors measured() throws SettingException {
        Object value = file.values().get(PunchKeys.MEASURED);
        if (value == null) {
            return null;
        }
        if (!(value instanceof Map<?, ?> map)) {
            throw Scalars.wrong(
                    PunchKeys.MEASURED, value, "is no map of errors", "Write depth, side, skew or pitch, one a line.");
        }
        for (Object key : map.keySet()) {
            checkKnown(PunchKeys.MEASURED + "." + key, String.valueOf(key), PunchKeys.ERRORS);
        }
        return new MeasuredErrors(
                deviation(map, PunchKeys.ERRORS.get(0)),
                deviation(map, PunchKeys.ERRORS.get(1)),
                deviation(map, PunchKeys.ERRORS.get(2)),
                deviation(map, PunchKeys.ERRORS.get(3)));
    }

    private static @Nullable Deviation deviation(Map<?, ?> map, String part) throws SettingException {
        Object value = map.get(part);
        if (value == null) {
            return null;
        }
        String key = PunchKeys.MEASURED + "." + part;
        String example = "0.3 mm +- 0.1 mm";
        Matcher m = DEVIATION.matcher(Scalars.text(key, value));
        if (!m.matches()) {
            throw Scalars.wrong(
                    key, value, "is no error with its tolerance", "Write both, for example \"" + example + "\".");
        }
        Length error = Scalars.length(key, m.group(2), MOST_ERROR, example);
        return new Deviation(
                m.group(1).isEmpty() ? error : Length.ZERO.minus(error),
                Scalars.length(key, m.group(3), MOST_ERROR, example));
    }

    private static final Pattern DEVIATION = Pattern.compile("\\s*(-?)\\s*(.+?)\\s*(?:\\+-|\u00b1)\\s*(.+)");

    private String source() throws SettingException {
        Object given = file.values().get(PunchKeys.SOURCE);
        String own = "punch file " + name;
        String source = given == null ? own : Scalars.text(PunchKeys.SOURCE, given);
        return source.contains(own) ? source : source + "; " + own;
    }
}
