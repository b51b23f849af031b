package io.bindprep.job;

/** Pages first to last, both included, numbered from 1. */
public record PageRange(int first, int last) {
    /** How many pages. */
    public int count() {
        return last - first + 1;
    }

    /** Whether a page is among them. */
    public boolean holds(int page) {
        return page >= first && page <= last;
    }
}
