package io.bindprep.catalogue;

import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Numbers, ours and the shop's own, that decide where neither the job nor the punch says its own, each with its source. */
public final class Limits {
    private static final Table OURS = Table.beside(Limits.class, "limits.csv");
    private static final String MARGIN = "margin-";
    private static final String US_EDGE = "us-edge-";
    private static final String SHARE = "depth-share";
    private static final String RUN = "hanger-run";
    private static final int MOST_RUN = 100;
    // longer than any edge that is punched: what lies above is a slip of the unit
    private static final Length MOST = Length.ofMm(2000);

    private final List<Limit> all;

    private Limits(List<Limit> all) {
        this.all = List.copyOf(all);
    }

    /**
     * A number that decides.
     *
     * @param value as its table has it: a length with its unit, or a plain number
     * @param source where it comes from
     */
    public record Limit(String name, String value, String source) {
        /** Its value, where it is a length. */
        public Length length() {
            return Length.parse(value);
        }
    }

    static Limits of(OwnTables own) throws SettingException {
        return new Limits(own.over(TableKind.LIMITS, OURS, Limits::limit));
    }

    private static Limit limit(Table.Row row) {
        String name = row.get("name");
        List<String> known = OURS.rows().stream().map(r -> r.get("name")).toList();
        if (!known.contains(name) && !name.startsWith(MARGIN) && !name.startsWith(US_EDGE)) {
            throw row.wrong("name", "no limit of this name is known", known);
        }
        String value = row.get("value");
        if (name.equals(SHARE) && !value.matches("0\\.\\d{1,4}|1")) {
            throw row.wrong("value", "is no share of 0 to 1, as 0.3", List.of());
        }
        if (name.equals(RUN) && (!value.matches("[1-9]\\d{0,2}") || Integer.parseInt(value) > MOST_RUN)) {
            throw row.wrong("value", "is no number of holes from 1 to " + MOST_RUN, List.of());
        }
        if (!name.equals(SHARE) && !name.equals(RUN)) {
            Length length = row.read("value", Length::parse);
            if (length.compareTo(Length.ZERO) < 0 || length.compareTo(MOST) > 0) {
                throw row.wrong("value", "is outside 0 to " + MOST.inMm() + ": mistaken unit?", List.of());
            }
        }
        return new Limit(name, value, row.source());
    }

    /** Every limit, as the tables have them. */
    public List<Limit> all() {
        return all;
    }

    /** Notes above our table. */
    public static List<String> notes() {
        return OURS.notes();
    }

    /** The margin of wire of a pitch; that of 2:1 where it has none of its own. */
    public Limit wireMargin(String pitchName) {
        return find(MARGIN + pitchName).orElseGet(() -> row("margin-2:1"));
    }

    /** Distance beyond the holes that other elements' margins keep. */
    public Limit marginBeyondHoles() {
        return row("margin-beyond-holes");
    }

    /** Less paper than this between the binding edge and the holes does not hold. */
    public Limit paperOutsideError() {
        return row("paper-outside-error");
    }

    /** Less paper than this between the binding edge and the holes tears easily. */
    public Limit paperOutsideWarning() {
        return row("paper-outside-warning");
    }

    /** Greatest distance of a hole's centre from the binding edge. */
    public Limit deepest() {
        return row("depth-deepest");
    }

    /** Thickness of a pack that is worth measuring. */
    public Limit pack() {
        return row("pack");
    }

    /** Tolerance within which two edges are of one length. */
    public Limit cut() {
        return row("cut");
    }

    /** Tolerance, either way, of a punch that nobody measured. */
    public Limit punchingTolerance() {
        return row("punching-tolerance");
    }

    /** Binding edges of US sheets, which take rings of US patterns. */
    public List<Length> usEdges() {
        return all.stream()
                .filter(l -> l.name().startsWith(US_EDGE))
                .map(Limit::length)
                .toList();
    }

    /** Fewest holes on either side of a hanger's gap. */
    public int hangerRun() {
        return Integer.parseInt(row(RUN).value());
    }

    /** Paper outside the holes, as a share of the element's size, up to which a deeper setting is taken. */
    public BigDecimal depthShare() {
        return new BigDecimal(row(SHARE).value());
    }

    /** Source of {@link #depthShare}. */
    public String depthShareSource() {
        return row(SHARE).source();
    }

    private Optional<Limit> find(String name) {
        return all.stream().filter(l -> l.name().equalsIgnoreCase(name)).findFirst();
    }

    private Limit row(String name) {
        return find(name).orElseThrow(() -> new IllegalStateException("limits.csv has no row " + name));
    }
}
