package io.bindprep.marks;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that prints in one page's strip along the bound edge.
 *
 * @param unread why the page could not be analysed whole; null where it was
 */
public record PageMarks(
        int page, List<Mark> marks, @Nullable String unread) {
    public PageMarks {
        marks = List.copyOf(marks);
    }
}
