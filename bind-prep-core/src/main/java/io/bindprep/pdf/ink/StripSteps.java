package io.bindprep.pdf.ink;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Set;

/** The operators of a content, taken down as they are carried out, so that those away from the strip can go. */
final class StripSteps {
    /** Paints nothing and lets the path clip. */
    private static final byte[] END_PATH = {'\n', 'n'};

    private final byte[] content;
    private final BitSet near = new BitSet();
    private final BitSet dropped = new BitSet();
    private final BitSet onlyClips = new BitSet();
    private String[] names = new String[256];
    private int[] ends = new int[256];
    private int count;

    StripSteps(byte[] content) {
        this.content = content;
    }

    /**
     * Takes down the next operator.
     *
     * @param end offset behind it
     * @param paintsNear whether it may paint near the strip
     */
    void add(String name, int end, boolean paintsNear) {
        if (count == ends.length) {
            names = Arrays.copyOf(names, count * 2);
            ends = Arrays.copyOf(ends, count * 2);
        }
        names[count] = name;
        ends[count] = end;
        near.set(count++, paintsNear);
    }

    /** The content with what may paint near the strip, once all of it is taken down. */
    StripContent nearOnly() {
        new FarPaths(this).drop();
        new FarTexts(this).drop();
        new IdleSaves(this).drop();
        return kept();
    }

    int count() {
        return count;
    }

    String name(int step) {
        return names[step];
    }

    boolean isNear(int step) {
        return near.get(step);
    }

    void drop(int step) {
        dropped.set(step);
    }

    /** Drops all from one step to before another. */
    void drop(int from, int to) {
        dropped.set(from, to);
    }

    /** Drops those of these names from one step to before another. */
    void drop(Set<String> which, int from, int to) {
        for (int step = from; step < to; step++) {
            if (which.contains(names[step])) {
                dropped.set(step);
            }
        }
    }

    /** Leaves a path its clip alone. */
    void onlyClip(int step) {
        onlyClips.set(step);
    }

    private StripContent kept() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int[] numbers = new int[count - dropped.cardinality()];
        int kept = 0;
        for (int step = dropped.nextClearBit(0); step < count; step = dropped.nextClearBit(step + 1)) {
            if (onlyClips.get(step)) {
                out.writeBytes(END_PATH);
            } else {
                int start = step == 0 ? 0 : ends[step - 1];
                out.write(content, start, ends[step] - start);
            }
            numbers[kept++] = step + 1;
        }
        return new StripContent(out.toByteArray(), numbers);
    }
}
