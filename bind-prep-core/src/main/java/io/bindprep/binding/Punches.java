package io.bindprep.binding;

import io.bindprep.problem.SettingException;
import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The punches known by name: a generic one for each pattern, and a few by a published count of holes. */
public final class Punches {
    private static final Table TABLE = Table.beside(Punches.class, "punches.csv");
    private static final List<Table.Row> DEPTHS =
            Table.beside(Punches.class, "depths.csv").rows();
    private static final List<Punch> ALL =
            TABLE.rows().stream().map(Punches::punch).toList();

    private Punches() {}

    /** Every punch, as the table has them. */
    public static List<Punch> all() {
        return ALL;
    }

    /** What stands above the table: where its numbers come from. */
    public static List<String> notes() {
        return TABLE.notes();
    }

    /** The punch of this name, upper or lower case. */
    public static Optional<Punch> byId(String id) {
        return ALL.stream().filter(p -> p.id().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** The generic punch of a pattern. */
    public static Punch generic(Pattern pattern) {
        return byId("generic-" + pattern.id()).orElseThrow();
    }

    /**
     * Reads punches from a table of the shop's own, with the columns of the built-in one: id, pattern, pins, guide
     * (movable or fixed), first_pin (guide to axis of pin 1, for a fixed guide), capacity, pullable ("all", "none" or
     * "1-2 35"), longest_edge, least_web, source.
     *
     * @param key the job key it was given under, for the message
     * @throws SettingException where the table cannot be read; the message names the line
     */
    public static List<Punch> parse(String key, String text) throws SettingException {
        List<Punch> punches = new ArrayList<>();
        try {
            for (Table.Row row : Table.parse(text).rows()) {
                punches.add(punch(row));
            }
        } catch (IllegalArgumentException e) {
            throw new SettingException(
                    key,
                    text.lines().findFirst().orElse(""),
                    "the table of punches cannot be read: " + e.getMessage(),
                    "compare it with the built-in punches",
                    Patterns.all().stream().map(Pattern::id).toList());
        }
        return punches;
    }

    private static Punch punch(Table.Row row) {
        String at = "line " + row.line() + ": ";
        try {
            String guide = row.get("guide");
            int pins = Integer.parseInt(row.get("pins"));
            if (pins < 1 || pins > 1000 || !(guide.equals("fixed") || guide.equals("movable"))) {
                throw new IllegalArgumentException("pins must be 1 to 1000, guide fixed or movable");
            }
            Pattern pattern = Patterns.byId(row.get("pattern"))
                    .orElseThrow(() -> new IllegalArgumentException("no pattern \"" + row.get("pattern") + "\""));
            if (!pattern.repeating() && pins != pattern.spacings().size() + 1) {
                throw new IllegalArgumentException(
                        pattern.id() + " has " + (pattern.spacings().size() + 1) + " holes, not " + pins);
            }
            String pullable = row.get("pullable");
            return new Punch(
                    row.get("id"),
                    pattern.id(),
                    pins,
                    guide.equals("fixed") ? Length.parse(row.get("first_pin")) : null,
                    depths(row.get("id"), pattern),
                    Length.parse(row.get("capacity")),
                    Map.of(),
                    pullable.equals("all") ? null : pins(pullable, pins),
                    Length.parse(row.get("longest_edge")),
                    Length.parse(row.get("least_web")),
                    null,
                    null,
                    null,
                    row.get("source"));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(at + e.getMessage(), e);
        }
    }

    // a punch of which no setting is known stands where its pattern has the holes
    private static List<DepthSetting> depths(String punch, Pattern pattern) {
        List<DepthSetting> depths = DEPTHS.stream()
                .filter(row -> row.get("punch").equals(punch))
                .map(row -> new DepthSetting(row.get("name"), Patterns.sum(row.get("axis")), row.get("source")))
                .toList();
        return depths.isEmpty()
                ? List.of(new DepthSetting("fixed", pattern.axis(), "the axis of the pattern " + pattern.id()))
                : depths;
    }

    // "none", or numbers and ranges: "1-2 35"
    private static List<Integer> pins(String text, int most) {
        List<Integer> pins = new ArrayList<>();
        if (text.equals("none")) {
            return pins;
        }
        for (String part : text.split(" ", -1)) {
            String[] ends = part.split("-", 2);
            int last = Integer.parseInt(ends[ends.length - 1]);
            if (last > most) {
                throw new IllegalArgumentException("pin " + last + " of " + most);
            }
            for (int pin = Integer.parseInt(ends[0]); pin <= last; pin++) {
                pins.add(pin);
            }
        }
        return pins;
    }
}
