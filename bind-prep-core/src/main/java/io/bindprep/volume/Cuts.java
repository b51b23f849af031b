package io.bindprep.volume;

import org.jspecify.annotations.Nullable;

/**
 * Cuts of a block into volumes.
 *
 * <p>Each cut is the best place within reach: the chapter's beginning nearest to an even share, else the plain place
 * nearest to it, else a place that is better not cut (behind a divider).
 */
final class Cuts {
    /** Distance of a chapter's beginning from an even share, in shares; our own, no source. */
    private static final double REACH = 0.25;

    private static final int NONE = -1;

    /** Kind of a cut before a leaf. */
    enum Place {
        CHAPTER,
        PLAIN,
        AVOIDED
    }

    private final double[] upTo;
    private final Place[] places;
    private final double most;

    /**
     * A block to cut.
     *
     * @param thickness of each leaf, micrometres
     * @param places what a cut before each leaf would be
     * @param most what the leaves of a volume may measure, micrometres
     */
    Cuts(double[] thickness, Place[] places, double most) {
        this.upTo = new double[thickness.length + 1];
        for (int i = 0; i < thickness.length; i++) {
            upTo[i + 1] = upTo[i] + thickness[i];
        }
        this.places = places.clone();
        this.most = most;
    }

    /** The fewest volumes that could do, were leaves as thin as wanted. */
    int fewest() {
        return (int) Math.ceil(upTo[upTo.length - 1] / most);
    }

    /** The first leaf of each volume and the number of leaves at the end; null where so many do not do. */
    int @Nullable [] into(int volumes) {
        int[] cuts = new int[volumes + 1];
        int leaves = upTo.length - 1;
        for (int v = 1; v <= volumes; v++) {
            cuts[v] = cut(cuts[v - 1], volumes - v, leaves);
            if (cuts[v] == NONE) {
                return null;
            }
        }
        return cuts;
    }

    /** The best first leaf of the next volume, behind the last leaf for the last volume; or none. */
    private int cut(int start, int volumesAfter, int leaves) {
        double share = (upTo[leaves] - upTo[start]) / (volumesAfter + 1);
        double even = upTo[start] + share;
        int best = NONE;
        for (int at = start + 1; at <= leaves - volumesAfter; at++) {
            if (upTo[at] - upTo[start] > most) {
                break;
            }
            boolean restFits = upTo[leaves] - upTo[at] <= most * volumesAfter;
            if (restFits && (best == NONE || rank(at, even, share) < rank(best, even, share))) {
                best = at;
            }
        }
        return best;
    }

    private double rank(int at, double even, double share) {
        double off = Math.abs(upTo[at] - even) / share;
        return switch (places[at]) {
            case CHAPTER -> off <= REACH ? off : 10 + off;
            case PLAIN -> 10 + off;
            case AVOIDED -> 1000 + off;
        };
    }
}
