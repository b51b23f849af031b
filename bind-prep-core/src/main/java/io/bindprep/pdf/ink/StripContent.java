package io.bindprep.pdf.ink;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A page's own content without what paints away from the strip: a strip is drawn several times over, and PDFBox goes
 * through all of the content each time.
 *
 * @param bytes what stays; whatever sets the state, clips or moves what follows does
 * @param numbers for each operator that stays, which of the whole content it is, from 1
 */
public record StripContent(byte[] bytes, int[] numbers) {
    /** Paints nothing and lets the path clip. */
    private static final byte[] END_PATH = {'\n', 'n'};

    private static final Set<String> PATH = Set.of("m", "l", "c", "v", "y", "h", "re");
    private static final Set<String> SHOWS = Set.of("Tj", "TJ");

    /** Content between a q and its Q. */
    private static final class Saved {
        private final int at;
        private boolean paintsNear;
        private int texts;
        private int marks;
        private boolean ends;

        Saved(int at) {
            this.at = at;
        }

        static void count(@Nullable Saved saved, int texts, int marks) {
            if (saved != null) {
                saved.texts += texts;
                saved.marks += marks;
                saved.ends |= saved.texts < 0 || saved.marks < 0;
            }
        }

        void add(Saved inner) {
            paintsNear |= inner.paintsNear;
            ends |= inner.ends;
            count(this, inner.texts, inner.marks);
        }

        /** Returns true if it paints nothing and ends all that it begins, and only that. */
        boolean forNothing() {
            return !paintsNear && !ends && texts == 0 && marks == 0;
        }
    }

    /** The operators of a content, taken down as they are carried out. */
    static final class Steps {
        private final byte[] content;
        private final BitSet near = new BitSet();
        private String[] names = new String[256];
        private int[] ends = new int[256];
        private int count;

        Steps(byte[] content) {
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

        StripContent nearOnly() {
            BitSet dropped = new BitSet();
            BitSet onlyClips = new BitSet();
            dropPaths(dropped, onlyClips);
            dropTexts(dropped);
            dropRestored(dropped);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            int[] numbers = new int[count - dropped.cardinality()];
            int kept = 0;
            for (int i = dropped.nextClearBit(0); i < count; i = dropped.nextClearBit(i + 1)) {
                if (onlyClips.get(i)) {
                    out.writeBytes(END_PATH);
                } else {
                    int start = i == 0 ? 0 : ends[i - 1];
                    out.write(content, start, ends[i] - start);
                }
                numbers[kept++] = i + 1;
            }
            return new StripContent(out.toByteArray(), numbers);
        }

        private void dropPaths(BitSet dropped, BitSet onlyClips) {
            int begin = 0;
            boolean clips = false;
            for (int i = 0; i < count; i++) {
                switch (names[i]) {
                    case "W", "W*" -> clips = true;
                    case "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "n" -> {
                        if (!near.get(i) && clips) {
                            onlyClips.set(i);
                        } else if (!near.get(i)) {
                            drop(dropped, PATH, begin, i);
                            dropped.set(i);
                        }
                        begin = i + 1;
                        clips = false;
                    }
                    case "Do", "sh", "BI" -> dropped.set(i, !near.get(i));
                    default -> {
                        // part of a path, sets the state, or is text
                    }
                }
            }
        }

        /** Text shown moves what is shown behind it, up to where a place is set anew (ISO 32000-1:2008, 9.4.2). */
        private void dropTexts(BitSet dropped) {
            int begin = 0;
            boolean lineNear = false;
            for (int i = 0; i < count; i++) {
                switch (names[i]) {
                    case "Tj", "TJ" -> lineNear |= near.get(i);
                    case "BT", "ET", "Td", "TD", "Tm", "T*", "'", "\"" -> {
                        if (!lineNear) {
                            drop(dropped, SHOWS, begin, i);
                        }
                        begin = i + 1;
                        lineNear = near.get(i);
                    }
                    default -> {
                        // moves nothing
                    }
                }
            }
            if (!lineNear) {
                drop(dropped, SHOWS, begin, count);
            }
        }

        private void drop(BitSet dropped, Set<String> which, int from, int to) {
            for (int i = from; i < to; i++) {
                if (which.contains(names[i])) {
                    dropped.set(i);
                }
            }
        }

        /** Between q and its Q, where nothing paints near, whatever sets the state does so for nothing. */
        private void dropRestored(BitSet dropped) {
            Deque<Saved> open = new ArrayDeque<>();
            for (int i = 0; i < count; i++) {
                Saved saved = open.peek();
                switch (names[i]) {
                    case "q" -> open.push(new Saved(i));
                    case "Q" -> {
                        if (saved != null) {
                            open.pop();
                            Saved outer = open.peek();
                            if (saved.forNothing()) {
                                dropped.set(saved.at, i + 1);
                            } else if (outer != null) {
                                outer.add(saved);
                            }
                        }
                    }
                    case "BT" -> Saved.count(saved, 1, 0);
                    case "ET" -> Saved.count(saved, -1, 0);
                    case "BMC", "BDC" -> Saved.count(saved, 0, 1);
                    case "EMC" -> Saved.count(saved, 0, -1);
                    default -> {
                        if (saved != null) {
                            saved.paintsNear |= near.get(i);
                        }
                    }
                }
            }
        }
    }
}
