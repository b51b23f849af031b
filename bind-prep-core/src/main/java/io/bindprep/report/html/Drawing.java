package io.bindprep.report.html;

import io.bindprep.picture.Picture;
import java.util.List;

/**
 * A picture with shapes drawn over it in true scale.
 *
 * @param box the part of the page it shows: "x y width height" in millimetres as the reader sees the page
 * @param tagScale how much larger than in a close-up its tags are
 * @param alt what it shows, in words
 */
public record Drawing(
        Picture picture, String box, Shape frame, List<Shape> shapes, List<Tag> tags, String tagScale, String alt) {
    /**
     * A rectangle or the ellipse in it, millimetres.
     *
     * @param css the class that says what it stands for
     * @param radiusX corner radius along x, "0" for a rectangle
     */
    public record Shape(String css, String x, String y, String width, String height, String radiusX, String radiusY) {
        static Shape of(String css, boolean round, EdgeFrame.Rect r) {
            return new Shape(
                    css,
                    Texts.number(r.x()),
                    Texts.number(r.y()),
                    Texts.number(r.width()),
                    Texts.number(r.height()),
                    round ? Texts.number(r.width() / 2) : "0",
                    round ? Texts.number(r.height() / 2) : "0");
        }
    }

    /** A number or letter that ties a shape to the text. */
    public record Tag(String text, String x, String y) {}

    public Drawing {
        shapes = List.copyOf(shapes);
        tags = List.copyOf(tags);
    }
}
