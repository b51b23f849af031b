package io.bindprep.marks;

import io.bindprep.page.PageEdge;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Basics of a whole page, seen on the way to its marks, without decoding anything.
 *
 * @param fontsMissing the fonts that its text uses and the file does not hold, by name, sorted, at most {@value #MOST_FONTS};
 *     the names are the document's own and hostile
 * @param coarsest the picture with the fewest dots an inch at its printed size; null where none is large enough to judge
 * @param bleed where art that reaches the trim goes least beyond it; null where none reaches it
 * @param withoutAppearance the kinds of annotations that print as the viewer likes, since the file does not say how; sorted
 * @param passedOver the faults in its content that every viewer passes over, at most {@value #MOST_FONTS}, sorted
 * @param edgePictures the pictures that run through the binding edge and were looked at, at most {@value #MOST_PICTURES}
 */
public record PageBasics(
        List<String> fontsMissing,
        @Nullable Picture coarsest,
        @Nullable Bleed bleed,
        List<String> withoutAppearance,
        List<String> passedOver,
        List<EdgePicture> edgePictures) {
    /** Those of a page whose annotations and content are whole. */
    public PageBasics(List<String> fontsMissing, @Nullable Picture coarsest, @Nullable Bleed bleed) {
        this(fontsMissing, coarsest, bleed, List.of(), List.of(), List.of());
    }

    /** Number of font names kept of a page. */
    public static final int MOST_FONTS = 8;

    /** Number of pictures kept of a page. */
    public static final int MOST_PICTURES = 8;

    /** A page of which nothing was seen. */
    public static final PageBasics NONE = new PageBasics(List.of(), null, null);

    /** A picture as printed: dots an inch in the direction that has fewer, and its size in millimetres. */
    public record Picture(double ppi, double widthMm, double heightMm) {}

    /** Bleed of art at an edge of the trim, as the reader sees the page, in millimetres. */
    public record Bleed(PageEdge edge, double mm) {}

    public PageBasics {
        fontsMissing = List.copyOf(fontsMissing);
        withoutAppearance = List.copyOf(withoutAppearance);
        passedOver = List.copyOf(passedOver);
        edgePictures = edgePictures.stream().limit(MOST_PICTURES).toList();
    }

    /** The same with the pictures that run through the binding edge. */
    PageBasics with(List<EdgePicture> pictures) {
        return new PageBasics(fontsMissing, coarsest, bleed, withoutAppearance, passedOver, pictures);
    }
}
