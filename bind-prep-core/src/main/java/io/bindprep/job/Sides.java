package io.bindprep.job;

/** Sides of a leaf that are printed. */
public enum Sides {
    /** One page a leaf, the back blank. */
    ONE,
    /** Two pages a leaf, head to head. */
    TWO,
    /** Two pages a leaf, the back printed head to foot. */
    TWO_HEAD_TO_FOOT
}
