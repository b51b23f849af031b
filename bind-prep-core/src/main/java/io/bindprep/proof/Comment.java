package io.bindprep.proof;

import io.bindprep.marks.Verdict;
import java.util.List;

/**
 * Something found on a page, in words that a reader lists; marks that stand close together share one.
 *
 * @param verdict PUNCHED, TIGHT or UNCHECKED
 * @param marks where each is, one at least; the whole strip for a page that was not read whole
 */
public record Comment(Verdict verdict, List<Outline> marks, String words) {
    public Comment {
        marks = List.copyOf(marks);
    }

    /** Rectangle around all of them. */
    public Outline place() {
        return new Outline(
                false,
                marks.stream().mapToDouble(Outline::nearMm).min().orElseThrow(),
                marks.stream().mapToDouble(Outline::farMm).max().orElseThrow(),
                marks.stream().mapToDouble(Outline::startMm).min().orElseThrow(),
                marks.stream().mapToDouble(Outline::endMm).max().orElseThrow());
    }
}
