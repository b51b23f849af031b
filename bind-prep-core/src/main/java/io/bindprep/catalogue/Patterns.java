package io.bindprep.catalogue;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;

/** The hole patterns, ours and the shop's own. Ours: CIP4 XJDF 2.2 Appendix F and RFC 3806, and coil pitches that no standard has. */
public final class Patterns {
    private static final Table OURS = Table.beside(Patterns.class, "patterns.csv");
    private static final int MOST_HOLES = 200;
    // wider than any sheet that is punched: what lies above is a slip of the unit; common practice, no source
    private static final Length MOST = Length.ofMm(1000);
    private static final java.util.regex.Pattern HOLES =
            java.util.regex.Pattern.compile("(\\d{1,2}|two|three|four|five|six|seven)[ -]*(?:hole|ring)s?");
    private static final List<String> NUMBERS = List.of("", "", "two", "three", "four", "five", "six", "seven");
    private static final List<String> METHODS =
            Arrays.stream(Method.values()).map(Scalars::word).toList();

    private final List<Pattern> all;

    private Patterns(List<Pattern> all) {
        this.all = List.copyOf(all);
    }

    static Patterns of(OwnTables own) throws SettingException {
        return new Patterns(own.over(TableKind.PATTERNS, OURS, Patterns::pattern));
    }

    /** Every pattern, as the tables have them. */
    public List<Pattern> all() {
        return all;
    }

    /** Every id. */
    public List<String> ids() {
        return all.stream().map(Pattern::id).toList();
    }

    /** Notes above our table: copyright and sources; to be shown with it. */
    public static List<String> notes() {
        return OURS.notes();
    }

    /** The pattern of this id, upper or lower case. */
    public Optional<Pattern> byId(String id) {
        return all.stream().filter(p -> p.id().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** The pattern of a method by id or by pitch ("2:1" is the square one, which holds the round one's holes). */
    public Optional<Pattern> find(Method method, String pitchOrId) {
        Optional<Pattern> exact = byId(pitchOrId).filter(p -> p.method() == method);
        String pitch = pitchOrId.replace(" ", "");
        if (exact.isPresent()) {
            return exact;
        }
        Optional<Pattern> byPitch = all.stream()
                .filter(p ->
                        p.method() == method && p.pitchName().replace(" ", "").equalsIgnoreCase(pitch))
                .reduce((first, second) -> second.round() ? first : second);
        if (byPitch.isPresent()) {
            return byPitch;
        }
        List<Pattern> told = told(method, pitchOrId);
        return told.size() == 1 ? Optional.of(told.get(0)) : Optional.empty();
    }

    /** The fixed rows that a text tells by their holes or by a distance between two: "3 holes", "80 mm". */
    public List<Pattern> told(Method method, String text) {
        Predicate<Pattern> row = row(text.toLowerCase(Locale.ROOT).strip());
        return all.stream()
                .filter(p -> p.method() == method && !p.repeating() && row.test(p))
                .toList();
    }

    private static Predicate<Pattern> row(String text) {
        Matcher holes = HOLES.matcher(text);
        if (holes.matches()) {
            int count = NUMBERS.contains(holes.group(1))
                    ? NUMBERS.indexOf(holes.group(1))
                    : Integer.parseInt(holes.group(1));
            return p -> p.spacings().size() + 1 == count;
        }
        try {
            Length spacing = Length.parse(text);
            return p -> p.spacings().contains(spacing);
        } catch (IllegalArgumentException e) {
            return p -> false;
        }
    }

    /** Words for the pitch of a method: pitches, then ids. */
    public List<String> known(Method method) {
        Set<String> known = new LinkedHashSet<>();
        all.stream().filter(p -> p.method() == method).forEach(p -> known.add(p.pitchName()));
        all.stream().filter(p -> p.method() == method).forEach(p -> known.add(p.id()));
        return List.copyOf(known);
    }

    private static Pattern pattern(Table.Row row) {
        boolean repeating = row.choice("row", List.of("repeat", "fixed")).equals("repeat");
        List<Length> spacings = row.read("spacing", Patterns::spacings);
        if (repeating && spacings.size() > 1) {
            throw row.wrong("spacing", "is more than the one spacing of a row that repeats", List.of());
        }
        String pitch = row.get("pitch");
        return new Pattern(
                Names.checked(row, "id"),
                Method.valueOf(row.choice("method", METHODS).toUpperCase(Locale.ROOT)),
                pitch.isEmpty() ? row.get("id") : pitch,
                repeating,
                row.choice("shape", List.of("round", "rect")).equals("round"),
                length(row, "hole_along"),
                length(row, "hole_across"),
                row.get("hole_published"),
                spacings,
                length(row, "centre"),
                row.get("centre_published"),
                row.get("reference_edge"),
                row.get("published_count"),
                row.get("elements"),
                row.source());
    }

    private static Length length(Table.Row row, String column) {
        return row.read(column, text -> positive(sum(text)));
    }

    private static Length positive(Length length) {
        if (length.compareTo(Length.ZERO) <= 0 || length.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("is not more than nothing and at most " + MOST.inMm());
        }
        return length;
    }

    // "1.375 4.25 1.375 in": the unit stands once, at the end
    private static List<Length> spacings(String text) {
        int unit = text.lastIndexOf(' ');
        if (unit < 0) {
            return List.of(positive(Length.parse(text)));
        }
        List<Length> spacings = new ArrayList<>();
        for (String number : text.substring(0, unit).split(" ", -1)) {
            spacings.add(positive(Length.parse(number + text.substring(unit))));
        }
        if (spacings.size() >= MOST_HOLES) {
            throw new IllegalArgumentException("is more than " + MOST_HOLES + " holes");
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
