package io.bindprep.catalogue;

import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The punches known by name: a generic one for each pattern, a few by a published count of holes, and the shop's own.
 *
 * <p>A shop's rows of depth settings for a punch stand for all the settings that it has.
 */
public final class Punches {
    private static final Table OURS = Table.beside(Punches.class, "punches.csv");
    private static final Table DEPTHS = Table.beside(Punches.class, "depths.csv");
    private static final String GENERIC = "generic-";
    static final int MOST_PINS = 1000;
    private static final Length MOST = Length.ofMm(2000);

    private final List<Punch> all;

    private Punches(List<Punch> all) {
        this.all = List.copyOf(all);
    }

    static Punches of(OwnTables own, Patterns patterns) throws SettingException {
        Map<String, List<DepthSetting>> depths = depths(OwnTables.read(DEPTHS.rows(), Depth::of));
        depths.putAll(depths(OwnTables.read(own.rows(TableKind.DEPTHS), Depth::of)));
        List<Punch> all = new ArrayList<>(own.over(TableKind.PUNCHES, OURS, row -> punch(row, patterns, depths)));
        for (Pattern pattern : patterns.all()) {
            if (all.stream().noneMatch(p -> p.id().equalsIgnoreCase(GENERIC + pattern.id()))) {
                all.add(generic(pattern, depths));
            }
        }
        Punches punches = new Punches(all);
        OwnTables.read(own.rows(TableKind.DEPTHS), row -> {
            punches.checkDepth(row, patterns);
            return row;
        });
        return punches;
    }

    /** Every punch, as the tables have them. */
    public List<Punch> all() {
        return all;
    }

    /** Notes above our tables: where their numbers come from. */
    public static List<String> notes() {
        List<String> notes = new ArrayList<>(OURS.notes());
        notes.addAll(DEPTHS.notes());
        return notes;
    }

    /** The punch of this name, upper or lower case. */
    public Optional<Punch> byId(String id) {
        return all.stream().filter(p -> p.id().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** The generic punch of a pattern of the same catalogue. */
    public Punch generic(Pattern pattern) {
        return byId(GENERIC + pattern.id()).orElseThrow();
    }

    /** A row of depth settings. */
    private record Depth(String punch, DepthSetting setting) {
        static Depth of(Table.Row row) {
            Length centre = row.read("centre", Patterns::sum);
            if (centre.compareTo(Length.ZERO) <= 0 || centre.compareTo(Length.ofMm(50)) > 0) {
                throw row.wrong("centre", "is not more than nothing and at most 50 mm: mistaken unit?", List.of());
            }
            return new Depth(
                    id(row.get("punch")), new DepthSetting(row.get("name"), centre, fromStack(row), row.source()));
        }
    }

    private static @Nullable Length fromStack(Table.Row row) {
        return row.get("from_stack").isEmpty() ? null : row.read("from_stack", Length::parse);
    }

    private static Map<String, List<DepthSetting>> depths(List<Depth> rows) {
        Map<String, List<DepthSetting>> depths = new LinkedHashMap<>();
        rows.forEach(
                d -> depths.computeIfAbsent(d.punch(), k -> new ArrayList<>()).add(d.setting()));
        return depths;
    }

    private void checkDepth(Table.Row row, Patterns patterns) {
        Punch punch = byId(row.get("punch"))
                .orElseThrow(() -> row.wrong(
                        "punch",
                        "no punch of this name is in the tables",
                        all.stream().map(Punch::id).toList()));
        Pattern pattern = patterns.byId(punch.pattern()).orElseThrow();
        if (Patterns.sum(row.get("centre")).compareTo(pattern.holeAcross().half()) <= 0) {
            throw row.wrong("centre", "lies so near the binding edge that the hole would be cut open", List.of());
        }
    }

    /** These punches and one more, which replaces the one of its name. */
    Punches with(Punch punch) {
        List<Punch> more = new ArrayList<>(all);
        more.removeIf(p -> p.id().equalsIgnoreCase(punch.id()));
        more.add(punch);
        return new Punches(more);
    }

    private static String id(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static Punch punch(Table.Row row, Patterns patterns, Map<String, List<DepthSetting>> depths) {
        Pattern pattern = patterns.byId(row.get("pattern"))
                .orElseThrow(() -> row.wrong("pattern", "no such pattern is known", patterns.ids()));
        int pins = row.read("pins", text -> PinRanges.count(text, MOST_PINS));
        if (!pattern.repeating() && pins != pattern.spacings().size() + 1) {
            throw row.wrong("pins", pattern.id() + " has " + (pattern.spacings().size() + 1) + " holes", List.of());
        }
        boolean fixed = row.choice("guide", List.of("fixed", "movable")).equals("fixed");
        if (!fixed && !row.get("first_pin").isEmpty()) {
            throw row.wrong("first_pin", "is for a fixed guide; a movable one centres the row", List.of());
        }
        String id = Names.checked(row, "id");
        return new Punch(
                id,
                pattern.id(),
                pins,
                fixed ? length(row, "first_pin") : null,
                depths.getOrDefault(id(id), own(pattern)),
                length(row, "capacity"),
                Map.of(),
                row.read("pullable", text -> PinRanges.parse(text, pins)),
                length(row, "longest_edge"),
                length(row, "minimum_web"),
                null,
                null,
                null,
                row.source());
    }

    private static Length length(Table.Row row, String column) {
        Length length = row.read(column, Length::parse);
        if (length.compareTo(MOST) > 0) {
            throw row.wrong(column, "is more than " + MOST.inMm() + ": mistaken unit?", List.of());
        }
        return length;
    }

    // a punch of which no setting is known stands where its pattern has the holes
    static List<DepthSetting> own(Pattern pattern) {
        return List.of(new DepthSetting("fixed", pattern.centre(), "the centre of the pattern " + pattern.id()));
    }

    /** As the table has them for our patterns: what a 17 in edge takes, a lift of 1.9 mm. */
    private static Punch generic(Pattern pattern, Map<String, List<DepthSetting>> depths) {
        Length edge = Length.ofInch(17, 1);
        int pins = pattern.repeating()
                ? (int) Math.min(MOST_PINS, edge.units() / pattern.pitch().units() + 1)
                : pattern.spacings().size() + 1;
        String id = GENERIC + pattern.id();
        return new Punch(
                id,
                pattern.id(),
                pins,
                null,
                depths.getOrDefault(id(id), own(pattern)),
                Length.ofMm("1.9"),
                Map.of(),
                null,
                edge,
                Length.ofInch(1, 16),
                null,
                null,
                null,
                "made for the pattern: common practice, no source");
    }
}
