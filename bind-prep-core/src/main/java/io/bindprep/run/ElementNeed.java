package io.bindprep.run;

import io.bindprep.catalogue.Method;
import io.bindprep.unit.Length;

/**
 * Elements of one size.
 *
 * @param name its nominal size
 * @param loops loops (of a comb, rings) of one piece; 0 where pieces are not cut by loops
 * @param length least length of one piece: the hole row and half a pitch beyond at either end
 * @param pieces pieces in all copies
 * @param spares spare pieces on top, by the percentage of the overs
 */
public record ElementNeed(Method method, String name, int loops, Length length, long pieces, long spares) {
    /** Loops to cut in all, spares included; 0 where pieces are not cut by loops. */
    public long totalLoops() {
        return Math.multiplyExact((long) loops, pieces + spares);
    }
}
