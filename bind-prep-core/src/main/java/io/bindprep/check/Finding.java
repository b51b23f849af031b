package io.bindprep.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing to know, repeats folded.
 *
 * @param rule stable id, "text-punched"
 * @param pages the pages it holds for, ascending; empty for the whole document
 * @param message what is so, where, with the measured value and the limit
 * @param remedy what to do
 * @param measuredMm the worst measured value in millimetres; null where the rule measures none
 * @param limitMm the limit it was held against, in millimetres; null where the rule has none
 * @param alongMm where the worst one begins and ends along the bound edge, in millimetres; null where that means nothing
 */
public record Finding(
        String rule,
        Severity severity,
        List<Integer> pages,
        String message,
        String remedy,
        @Nullable Double measuredMm,
        @Nullable Double limitMm,
        @Nullable Span alongMm) {
    /** Where something lies along the bound edge, in millimetres. */
    public record Span(double startMm, double endMm) {}

    public Finding {
        pages = List.copyOf(pages);
    }
}
