package io.bindprep.paper;

import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import io.bindprep.wording.SizeErrors;
import io.bindprep.wording.Sources;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The sheet sizes known by name, ours and the shop's own, portrait, with the tolerance they are cut to. */
public final class SheetSizes {
    // an eighth of an inch to three metres: outside a unit was mistaken; common practice, no source
    private static final Length LEAST = Length.ofInch(1, 8);
    private static final double LEAST_MM = 50;
    private static final Length MOST = Length.ofMm(3000);
    private static final Table OURS = Table.beside(SheetSizes.class, "sizes.csv");
    private static final String ISO = "ISO 216";
    private static final Pattern NAME =
            Pattern.compile("(?!.*[ -](?:landscape|portrait)$)[a-z][a-z0-9 ._-]*", Pattern.CASE_INSENSITIVE);
    private static final Pattern BY_NUMBERS = Pattern.compile(
            "(\\d[\\d./ -]*?)\\s*(mm|cm|in|\")?\\s*(?:x|\u00d7|[*]|by)\\s*(\\d[\\d./ -]*?)\\s*(mm|cm|in|inch|inches|\")?");

    private final List<SheetSize> all;

    private SheetSizes(List<SheetSize> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Our sizes with those of the shop.
     *
     * @throws SettingException where a row of the shop's own is wrong
     */
    public static SheetSizes of(OwnTables own) throws SettingException {
        return new SheetSizes(own.over(TableKind.SIZES, OURS, SheetSizes::size));
    }

    /** Numbers as this reads them: two primes and curly quotes are inches, a comma behind the "x" too is a decimal one. */
    private static String numbers(String lower) {
        return Length.withPoint(lower.replaceAll("[\u2033\u201d\u201c]|\u2032\u2032|''", "\"")
                .replaceAll("(?<=[\\d\"mc\u00bd\u00bc\u00be])\\s*[x\u00d7*]\\s*(?=[\\d.])", " x "));
    }

    /** Every size, portrait, as the tables have them. */
    public List<SheetSize> all() {
        return all;
    }

    /** Notes above our table: where its numbers come from. */
    public static List<String> notes() {
        return OURS.notes();
    }

    /** The portrait size of this name, upper or lower case. */
    public Optional<SheetSize> byName(String name) {
        return all.stream().filter(s -> s.name().equalsIgnoreCase(name.strip())).findFirst();
    }

    /** The known size, upright or on its side, that is least off in its worse direction; whether it fits is for {@link SheetSize#matches}. */
    public SheetSize nearest(Length width, Length height) {
        return all.stream()
                .flatMap(s -> Stream.of(s, s.landscape()))
                .min(Comparator.comparing(s -> s.off(width, height)))
                .orElseThrow();
    }

    /**
     * Reads a size: "A4", "letter landscape", "demy 8vo", "210 x 297 mm", "8.5 x 11 in", "8-1/2 x 11 in".
     *
     * @param key the job key it was given under, for the message
     * @throws SettingException where it is neither a known name nor width x height with a unit
     */
    public SheetSize parse(String key, String text) throws SettingException {
        String given = text.strip();
        String lower = numbers(given.toLowerCase(Locale.ROOT));
        Matcher m = BY_NUMBERS.matcher(lower);
        if (m.matches()) {
            try {
                String unit = m.group(4) == null
                        ? unit(m.group(1), m.group(3))
                        : m.group(4).replaceFirst("inch.*|\"", "in");
                Length width = Length.parse(m.group(1) + " " + (m.group(2) == null ? unit : m.group(2)));
                return custom(key, given, width, Length.parse(m.group(3) + " " + unit));
            } catch (IllegalArgumentException e) {
                throw unknown(key, given, String.valueOf(e.getMessage()));
            }
        }
        SizeNames said = SizeNames.of(lower, all);
        SheetSize size = said.size();
        if (size == null) {
            throw unknown(key, given, said.reason(given));
        }
        return said.onItsSide() ? size.landscape() : size;
    }

    /** The unit of two bare numbers: nobody binds sheets of 50 in, or of less than 50 mm; mixed ones are refused, centimetres of a known size taken. */
    private String unit(String width, String height) {
        boolean inches = bare(width) < LEAST_MM;
        if (inches != bare(height) < LEAST_MM) {
            throw new IllegalArgumentException(SizeErrors.UNIT);
        }
        return !inches ? "mm" : known(width, height, "cm") && !known(width, height, "in") ? "cm" : "in";
    }

    /** "21 x 29.7" is A4 in centimetres, and nothing in inches. */
    private boolean known(String width, String height, String unit) {
        Length across = Length.parse(width.strip() + unit);
        Length up = Length.parse(height.strip() + unit);
        return nearest(across, up).off(across, up).equals(Length.ZERO);
    }

    private static double bare(String number) {
        return Length.parse(number.strip() + " mm").mm();
    }

    private SheetSize custom(String key, String given, Length width, Length height) throws SettingException {
        for (Length side : List.of(width, height)) {
            if (side.compareTo(LEAST) < 0 || side.compareTo(MOST) > 0) {
                throw unknown(key, given, SizeErrors.side(side, LEAST, MOST));
            }
        }
        SheetSize known = nearest(width, height);
        if (known.off(width, height).equals(Length.ZERO)) {
            return new SheetSize(given, width, height, known.toleranceWidth(), known.toleranceHeight(), known.source());
        }
        return new SheetSize(given, width, height, iso216(width), iso216(height), Sources.SIZE);
    }

    private static SheetSize size(Table.Row row) {
        if (!NAME.matcher(row.get("name")).matches()) {
            throw row.wrong("name", SizeErrors.NAME, List.of());
        }
        Length width = side(row, "width");
        Length height = side(row, "height");
        if (width.compareTo(height) > 0) {
            throw row.wrong("width", SizeErrors.WIDTH, List.of());
        }
        boolean iso = row.get("tolerance").equals(ISO);
        Length cut = iso ? null : row.read("tolerance", Length::parse);
        if (cut != null && cut.compareTo(width) >= 0) {
            throw row.wrong("tolerance", SizeErrors.TOLERANCE, List.of());
        }
        return new SheetSize(
                row.get("name"),
                width,
                height,
                cut == null ? iso216(width) : cut,
                cut == null ? iso216(height) : cut,
                Sources.size(row.source(), iso, row.file().isEmpty()));
    }

    private static Length side(Table.Row row, String column) {
        Length side = row.read(column, Length::parse);
        if (side.compareTo(LEAST) < 0 || side.compareTo(MOST) > 0) {
            throw row.wrong(column, SizeErrors.outside(LEAST, MOST), List.of());
        }
        return side;
    }

    // ISO 216:2007, 7.1
    private static Length iso216(Length side) {
        if (side.compareTo(Length.ofMm(150)) <= 0) {
            return Length.ofMm("1.5");
        }
        return Length.ofMm(side.compareTo(Length.ofMm(600)) <= 0 ? 2 : 3);
    }

    private SettingException unknown(String key, String given, String why) {
        return SizeErrors.unknown(
                key, given, why, all.stream().map(SheetSize::name).toList());
    }
}
