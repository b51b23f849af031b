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

    /** The same marks with the pictures that run through the binding edge. */
    public PageMarks withPictures(List<EdgePicture> pictures) {
        return new PageMarks(page, marks, unchecked, basics.with(pictures));
    }

    /** The same marks with what else was seen of the page; its pictures stay. */
    public PageMarks with(PageBasics seen) {
        return new PageMarks(page, marks, unchecked, seen.with(basics.edgePictures()));
    }

    /** The same marks, not analysed whole; a reason said before stays. */
    public PageMarks unchecked(String why) {
        return new PageMarks(page, marks, unchecked == null ? why : unchecked, basics);
    }

    public PageMarks {
        marks = List.copyOf(marks);
    }
}
