package io.bindprep.check;

import java.util.List;

/**
 * Comparison with an earlier check of the same document or an older state of it. Each finding that there is says itself
 * what became of it.
 *
 * @param file the name of the earlier document
 * @param readable whether the earlier document could be read; else every finding is new
 * @param sameFile whether both documents are the same, byte for byte
 * @param sameJob whether both were held against the same job
 * @param onlyNewFails whether only what is new or worse fails the job
 * @param gone the findings that are not there any more, whole or on some of their pages, in the order of the earlier report
 */
public record Recheck(
        String file, boolean readable, boolean sameFile, boolean sameJob, boolean onlyNewFails, List<Gone> gone) {
    /**
     * An earlier finding that is not there any more.
     *
     * @param pages the pages of the earlier document where it was and is no more; empty for the whole document
     * @param whole whether nothing is left of it
     * @param known whether its pages could be looked at again; where they could not, nobody knows that it is fixed
     */
    public record Gone(
            String rule, Severity severity, List<Integer> pages, String message, boolean whole, boolean known) {
        public Gone {
            pages = List.copyOf(pages);
        }
    }

    public Recheck {
        gone = List.copyOf(gone);
    }

    /** Number of earlier findings of which nothing is left. */
    public long fixed() {
        return gone.stream().filter(g -> g.whole() && g.known()).count();
    }

    /** Number of earlier findings of which nobody knows, as their pages could not be looked at again. */
    public long unknown() {
        return gone.stream().filter(g -> !g.known()).count();
    }
}
