package io.bindprep.pdf.ink;

import java.util.Set;

/** Drops paths and pictures that paint away from the strip; a path that clips stays, and clips only. */
final class FarPaths {
    private static final Set<String> PATH = Set.of("m", "l", "c", "v", "y", "h", "re");

    private final StripSteps steps;
    private int begin;
    private boolean clips;

    FarPaths(StripSteps steps) {
        this.steps = steps;
    }

    void drop() {
        for (int step = 0; step < steps.count(); step++) {
            switch (steps.name(step)) {
                case "W", "W*" -> clips = true;
                case "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "n" -> endPath(step);
                case "Do", "sh", "BI" -> dropFar(step);
                default -> {
                    // part of a path, sets the state, or is text
                }
            }
        }
    }

    private void endPath(int step) {
        if (clips && !steps.isNear(step)) {
            steps.onlyClip(step);
        } else if (!steps.isNear(step)) {
            steps.drop(PATH, begin, step);
            steps.drop(step);
        }
        begin = step + 1;
        clips = false;
    }

    private void dropFar(int step) {
        if (!steps.isNear(step)) {
            steps.drop(step);
        }
    }
}
