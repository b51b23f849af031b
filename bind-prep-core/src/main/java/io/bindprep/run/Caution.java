package io.bindprep.run;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Caution: a thing that can hurt someone or spoil the run.
 *
 * @param load the load of {@link Kind#LIFTING}; null for the others
 */
public record Caution(Kind kind, @Nullable Load load) {
    static final Caution MANUAL = new Caution(Kind.MANUAL, null);
    static final Caution GUARDS = new Caution(Kind.GUARDS, null);
    static final Caution GUILLOTINE = new Caution(Kind.GUILLOTINE, null);
    static final Caution ISOLATE = new Caution(Kind.ISOLATE, null);
    static final Caution WASTE_FIRST = new Caution(Kind.WASTE_FIRST, null);
    static final Caution ENDS = new Caution(Kind.ENDS, null);
    static final Caution CLOSER = new Caution(Kind.CLOSER, null);
    static final Caution RINGS = new Caution(Kind.RINGS, null);

    /** Kinds of caution. */
    public enum Kind {
        /** The manual, site rules and local law come first. */
        MANUAL,
        /** Guards of the machine. */
        GUARDS,
        /** Use of a guillotine. */
        GUILLOTINE,
        /** A powered punch while pins are changed. */
        ISOLATE,
        /** A waste sheet before the stock. */
        WASTE_FIRST,
        /** Sharp cut ends. */
        ENDS,
        /** Fingers in the closer. */
        CLOSER,
        /** Fingers between rings. */
        RINGS,
        /** A load to lift. */
        LIFTING
    }

    /**
     * A load.
     *
     * @param grams weight of the run
     * @param atLeast whether it weighs more, by stocks whose grammage is not known
     */
    public record Load(BigDecimal grams, boolean atLeast) {}

    static Caution lifting(Load load) {
        return new Caution(Kind.LIFTING, load);
    }
}
