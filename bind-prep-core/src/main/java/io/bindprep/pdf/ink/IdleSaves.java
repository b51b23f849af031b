package io.bindprep.pdf.ink;

import java.util.ArrayDeque;
import java.util.Deque;

/** Drops a q, its Q and all between where nothing there paints near the strip: what sets the state does so for nothing. */
final class IdleSaves {
    private final StripSteps steps;
    private final Deque<Saved> open = new ArrayDeque<>();

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

        void count(int moreTexts, int moreMarks) {
            texts += moreTexts;
            marks += moreMarks;
            ends |= texts < 0 || marks < 0;
        }

        void add(Saved inner) {
            paintsNear |= inner.paintsNear;
            ends |= inner.ends;
            count(inner.texts, inner.marks);
        }

        /** Returns true if it paints nothing and ends all that it begins, and only that. */
        boolean forNothing() {
            return !paintsNear && !ends && texts == 0 && marks == 0;
        }
    }

    IdleSaves(StripSteps steps) {
        this.steps = steps;
    }

    void drop() {
        for (int step = 0; step < steps.count(); step++) {
            if (steps.name(step).equals("q")) {
                open.push(new Saved(step));
            } else if (!open.isEmpty()) {
                within(open.peek(), step);
            }
        }
    }

    private void within(Saved saved, int step) {
        switch (steps.name(step)) {
            case "Q" -> close(step);
            case "BT" -> saved.count(1, 0);
            case "ET" -> saved.count(-1, 0);
            case "BMC", "BDC" -> saved.count(0, 1);
            case "EMC" -> saved.count(0, -1);
            default -> saved.paintsNear |= steps.isNear(step);
        }
    }

    private void close(int step) {
        Saved saved = open.pop();
        Saved outer = open.peek();
        if (saved.forNothing()) {
            steps.drop(saved.at, step + 1);
        } else if (outer != null) {
            outer.add(saved);
        }
    }
}
