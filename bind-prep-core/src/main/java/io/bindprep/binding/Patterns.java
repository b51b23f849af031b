package io.bindprep.binding;

import io.bindprep.job.Method;
import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The hole patterns: CIP4 XJDF 2.2 Appendix F and RFC 3806, and coil pitches that no standard has. */
public final class Patterns {
    private static final Table TABLE = Table.beside(Patterns.class, "patterns.csv");
    private static final List<Pattern> ALL =
            TABLE.rows().stream().map(Patterns::pattern).toList();

    private Patterns() {}

    /** Every pattern, as the table has them. */
    public static List<Pattern> all() {
        return ALL;
    }

    /** What stands above the table: copyright and sources; to be shown with it. */
    public static List<String> notes() {
        return TABLE.notes();
    }

    /** The pattern of this id, upper or lower case. */
    public static Optional<Pattern> byId(String id) {
        return ALL.stream().filter(p -> p.id().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** The pattern of a method by id or by pitch ("2:1" is the square one, which holds the round one's holes). */
    public static Optional<Pattern> find(Method method, String pitchOrId) {
        Optional<Pattern> exact = byId(pitchOrId).filter(p -> p.method() == method);
        String pitch = pitchOrId.replace(" ", "");
        return exact.isPresent()
                ? exact
                : ALL.stream()
                        .filter(p -> p.method() == method
                                && p.pitchName().replace(" ", "").equalsIgnoreCase(pitch))
                        .reduce((first, second) -> second.round() ? first : second);
    }

    /** What a job may write for the pitch of a method: pitches, then ids. */
    public static List<String> known(Method method) {
        Set<String> known = new LinkedHashSet<>();
        ALL.stream().filter(p -> p.method() == method).forEach(p -> known.add(p.pitchName()));
        ALL.stream().filter(p -> p.method() == method).forEach(p -> known.add(p.id()));
        return List.copyOf(known);
    }

    private static Pattern pattern(Table.Row row) {
        return new Pattern(
                row.get("id"),
                Method.valueOf(row.get("method").toUpperCase(Locale.ROOT)),
                row.get("pitch"),
                row.get("row").equals("repeat"),
                row.get("shape").equals("round"),
                Length.parse(row.get("hole_along")),
                Length.parse(row.get("hole_across")),
                row.get("hole_published"),
                spacings(row.get("spacing")),
                sum(row.get("axis")),
                row.get("axis_published"),
                row.get("reference_edge"),
                row.get("published_count"),
                row.get("elements"),
                row.get("source"));
    }

    // "1.375 4.25 1.375 in": the unit stands once, at the end
    private static List<Length> spacings(String text) {
        int unit = text.lastIndexOf(' ');
        List<Length> spacings = new ArrayList<>();
        for (String number : text.substring(0, unit).split(" ", -1)) {
            spacings.add(Length.parse(number + text.substring(unit)));
        }
        return spacings;
    }

    // "3 mm + 1/8 in"
    static Length sum(String text) {
        Length sum = Length.ZERO;
        for (String part : text.split("\\+", -1)) {
            sum = sum.plus(Length.parse(part));
        }
        return sum;
    }
}
