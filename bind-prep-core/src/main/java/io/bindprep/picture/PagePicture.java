package io.bindprep.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page to look at: the trimmed page as the reader sees it, and pieces of its binding edge enlarged.
 *
 * @param whole the trimmed page; null where it could not be drawn
 * @param depthMm how far in from the binding edge the close-ups reach, millimetres
 * @param beyondMm how far beyond the binding edge the whole page is shown, millimetres
 * @param closeUps in order along the binding edge
 * @param problem why there is no picture, or what is missing in it; null where it is whole
 */
public record PagePicture(
        int page,
        @Nullable Picture whole,
        double depthMm,
        double beyondMm,
        List<CloseUp> closeUps,
        @Nullable String problem) {
    public PagePicture {
        closeUps = List.copyOf(closeUps);
    }

    /** A page that could not be drawn. */
    public static PagePicture none(int page, String problem) {
        return new PagePicture(page, null, 0, 0, List.of(), problem);
    }

    /** About how many characters its pictures take in a report. */
    public long size() {
        long size = whole == null ? 0 : whole.base64().length();
        for (CloseUp closeUp : closeUps) {
            size += closeUp.picture().base64().length();
        }
        return size;
    }
}
