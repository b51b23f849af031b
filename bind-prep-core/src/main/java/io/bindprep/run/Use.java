package io.bindprep.run;

import io.bindprep.block.Leaf;

/** Use of a stock's sheets. */
public enum Use {
    FRONT_COVER,
    TEXT,
    INSERT,
    TAB,
    FOLD_OUT,
    BACK_COVER;

    static Use of(Leaf leaf) {
        return switch (leaf.role()) {
            case FRONT_COVER -> FRONT_COVER;
            case TEXT -> TEXT;
            case INSERT -> INSERT;
            case TAB -> TAB;
            case FOLD_OUT -> FOLD_OUT;
            case BACK_COVER -> BACK_COVER;
        };
    }
}
