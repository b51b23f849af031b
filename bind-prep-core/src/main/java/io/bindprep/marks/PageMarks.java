package io.bindprep.marks;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that prints in one page's strip along the binding edge.
 *
 * @param unchecked why the page could not be analysed whole; null where it was
 * @param basics what else was seen of the page
 */
public record PageMarks(
        int page, List<Mark> marks, @Nullable String unchecked, PageBasics basics) {
    /** The marks alone. */
    public PageMarks(int page, List<Mark> marks, @Nullable String unchecked) {
        this(page, marks, unchecked, PageBasics.NONE);
    }

    /** The same marks with what else was seen of the page. */
    public PageMarks with(PageBasics seen) {
        return new PageMarks(page, marks, unchecked, seen);
    }

    public PageMarks {
        marks = List.copyOf(marks);
    }
}
