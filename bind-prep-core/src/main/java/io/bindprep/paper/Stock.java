package io.bindprep.paper;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A paper, board or film by what matters to a stack.
 *
 * @param name its id in the catalogue or how the job describes it
 * @param kind what a punch meets
 * @param grammage g/m2; null where the stock is known by caliper alone, so that no weight can be given
 * @param caliperUm thickness of one sheet, micrometres
 * @param toleranceUm how far one lot may lie off, micrometres either way; one lot drifts one way
 * @param source where the numbers come from
 * @param measured whether the caliper is that of a pack of the very paper, measured together
 */
public record Stock(
        String name,
        Kind kind,
        @Nullable BigDecimal grammage,
        BigDecimal caliperUm,
        BigDecimal toleranceUm,
        String source,
        boolean measured) {
    /** Material that a punch meets. */
    public enum Kind {
        PAPER,
        BOARD,
        FILM
    }

    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Stock other
                && name.equals(other.name)
                && kind == other.kind
                && Objects.equals(grammage, other.grammage)
                && caliperUm.equals(other.caliperUm)
                && toleranceUm.equals(other.toleranceUm)
                && source.equals(other.source)
                && measured == other.measured;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, kind, grammage, caliperUm, toleranceUm, source, measured);
    }
}
