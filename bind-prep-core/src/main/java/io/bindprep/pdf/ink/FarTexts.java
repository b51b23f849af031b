package io.bindprep.pdf.ink;

import java.util.Set;

/**
 * Drops text away from the strip: text shown moves what is shown behind it, up to where a place is set anew (ISO
 * 32000-1:2008, 9.4.2), so a line goes whole or not at all.
 */
final class FarTexts {
    private static final Set<String> SHOWS = Set.of("Tj", "TJ");

    private final StripSteps steps;
    private int begin;
    private boolean lineNear;

    FarTexts(StripSteps steps) {
        this.steps = steps;
    }

    void drop() {
        for (int step = 0; step < steps.count(); step++) {
            switch (steps.name(step)) {
                case "Tj", "TJ" -> lineNear |= steps.isNear(step);
                case "BT", "ET", "Td", "TD", "Tm", "T*", "'", "\"" -> {
                    endLine(step);
                    begin = step + 1;
                    lineNear = steps.isNear(step);
                }
                default -> {
                    // moves nothing
                }
            }
        }
        endLine(steps.count());
    }

    private void endLine(int step) {
        if (!lineNear) {
            steps.drop(SHOWS, begin, step);
        }
    }
}
