package io.bindprep.job;

import io.bindprep.catalogue.Method;
import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The rules by which an element is taken wider than the stack. */
public final class Clearances {
    private static final Table TABLE = Table.beside(Clearances.class, "clearances.csv");
    private static final List<Clearance> ALL = TABLE.rows().stream()
            .map(row -> new Clearance(
                    row.get("name"),
                    Length.parse(row.get("allowance")),
                    List.of(
                            row.get("methods").isEmpty()
                                    ? new String[0]
                                    : row.get("methods").split(" ")),
                    row.get("source")))
            .toList();

    private Clearances() {}

    /**
     * One rule.
     *
     * @param name by which a job asks for it
     * @param allowance what an element's size is over the thickest likely stack
     * @param methods the methods whose built-in rule it is
     */
    public record Clearance(String name, Length allowance, List<String> methods, String source) {
        public Clearance {
            methods = List.copyOf(methods);
        }
    }

    /** Every rule, as the table has them. */
    public static List<Clearance> all() {
        return ALL;
    }

    /** Notes above the table. */
    public static List<String> notes() {
        return TABLE.notes();
    }

    /** The rule of this allowance; empty where the job made its own. */
    public static Optional<Clearance> of(Length allowance) {
        return ALL.stream().filter(c -> c.allowance().equals(allowance)).findFirst();
    }

    static Optional<Clearance> named(String name) {
        return ALL.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** The built-in rule of a method; that of wire where it has none, as a comb goes by its capacity. */
    static Clearance builtIn(Method method) {
        String word = method.name().toLowerCase(Locale.ROOT);
        return ALL.stream().filter(c -> c.methods().contains(word)).findFirst().orElseGet(() -> builtIn(Method.WIRE));
    }
}
