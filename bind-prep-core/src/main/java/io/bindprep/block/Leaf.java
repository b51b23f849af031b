package io.bindprep.block;

import io.bindprep.paper.Stock;
import org.jspecify.annotations.Nullable;

/**
 * One sheet as bound.
 *
 * @param recto page number on the front, null for a blank side
 * @param verso page number on the back, null for a blank side
 */
public record Leaf(
        Role role,
        Stock stock,
        @Nullable Integer recto,
        @Nullable Integer verso) {
    /** What a leaf is in the book. */
    public enum Role {
        FRONT_COVER,
        TEXT,
        INSERT,
        BACK_COVER
    }

    /** Whether anything is printed on it. */
    public boolean printed() {
        return recto != null || verso != null;
    }

    /** Whether it is a cover. */
    public boolean cover() {
        return role == Role.FRONT_COVER || role == Role.BACK_COVER;
    }
}
