package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.edit.ContentPieces.Piece;
import io.bindprep.pdf.edit.ContentPieces.Way;
import io.bindprep.pdf.ink.Clip;
import io.bindprep.pdf.ink.StripCollector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds broad fills, shadings and pictures that run through the binding edge, and such as begin where one ends and run as
 * far along: a picture in tiles.
 */
final class ArtThroughEdge {
    private static final double NEXT_TO_MM = 0.5;
    private static final int MOST_FILLS = 20_000;

    private ArtThroughEdge() {}

    /**
     * Finds it on one page.
     *
     * @param frame from user space to the frame of the edge
     * @param trim the trimmed page in that frame
     */
    static Set<Piece> of(ContentPieces found, AffineTransform frame, Rectangle2D trim) {
        List<Piece> fills = new ArrayList<>();
        Map<Piece, Rectangle2D> boxes = new IdentityHashMap<>();
        for (Piece piece : found.pieces()) {
            if (isFree(piece) && fills.size() < MOST_FILLS) {
                Rectangle2D box =
                        Clip.cut(frame.createTransformedShape(piece.box()).getBounds2D(), trim);
                if (box.getWidth() >= StripCollector.TINT_MM && box.getHeight() >= StripCollector.TINT_MM) {
                    fills.add(piece);
                    boxes.put(piece, box);
                }
            }
        }
        fills.sort(Comparator.comparingDouble(f -> boxes.getOrDefault(f, trim).getMinX()));
        Set<Piece> art = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Rectangle2D> places = new ArrayList<>();
        for (Piece fill : fills) {
            Rectangle2D box = boxes.getOrDefault(fill, trim);
            if (box.getMinX() <= StripCollector.BLEED_SLACK_MM || continues(box, places)) {
                places.add(box);
                art.add(fill);
            }
        }
        return art;
    }

    /** Returns true for a fill or a picture that nothing holds in its place. */
    private static boolean isFree(Piece piece) {
        return (piece.way() == Way.FILL || piece.way() == Way.OBJECT)
                && (piece.kind() == MarkKind.ART || piece.kind() == MarkKind.IMAGE)
                && !piece.clips()
                && !piece.masked()
                && !piece.in().isMasked();
    }

    private static boolean continues(Rectangle2D box, List<Rectangle2D> before) {
        return before.stream()
                .anyMatch(k -> Math.abs(k.getMaxX() - box.getMinX()) <= NEXT_TO_MM
                        && Math.abs(k.getMinY() - box.getMinY()) <= NEXT_TO_MM
                        && Math.abs(k.getMaxY() - box.getMaxY()) <= NEXT_TO_MM);
    }
}
