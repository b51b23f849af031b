package io.bindprep.block;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One sheet as bound.
 *
 * @param recto page number on the front, null for a blank side
 * @param verso page number on the back, null for a blank side
 * @param layers how many lie on each other once it is folded in; 1 where it is not folded
 * @param extension how far it stands out beyond the trim at the edge opposite the bound one, as a tab does
 */
public record Leaf(
        Role role,
        Stock stock,
        @Nullable Integer recto,
        @Nullable Integer verso,
        int layers,
        Length extension) {
    /** A leaf that is neither folded nor stands out. */
    public Leaf(Role role, Stock stock, @Nullable Integer recto, @Nullable Integer verso) {
        this(role, stock, recto, verso, 1, Length.ZERO);
    }

    /** Role of a leaf in the book. */
    public enum Role {
        FRONT_COVER,
        TEXT,
        INSERT,
        /** A divider, with or without a tab. */
        TAB,
        FOLD_OUT,
        BACK_COVER
    }

    /** Returns true if anything is printed on it. */
    public boolean printed() {
        return recto != null || verso != null;
    }

    /** Returns true if it is a cover. */
    public boolean cover() {
        return role == Role.FRONT_COVER || role == Role.BACK_COVER;
    }

    /** Nominal thickness, all layers, micrometres. */
    public BigDecimal nominalUm() {
        return stock.caliperUm().multiply(BigDecimal.valueOf(layers));
    }

    /** The thickest likely, all layers, micrometres. */
    public BigDecimal thickestUm() {
        return stock.caliperUm().add(stock.toleranceUm()).multiply(BigDecimal.valueOf(layers));
    }
}
