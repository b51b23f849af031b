package io.bindprep.pdf.ink;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The pieces of a painted outline that do not hang together, as lettering in one path with the tint around it. */
final class Parts {
    /** Of more pieces each contour counts by itself, a hole too: to hold every one against every other takes too long. */
    private static final int MOST_PIECES = 2_000;

    private Parts() {}

    /** Returns true if an outline may be in pieces at all. */
    static boolean mayBeSeveral(Shape shape) {
        int moves = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone() && moves < 2; it.next()) {
            moves += it.currentSegment(new double[6]) == PathIterator.SEG_MOVETO ? 1 : 0;
        }
        return moves > 1;
    }

    /**
     * Parts an outline in two: the pieces that fulfil a condition, then the others, either of them null where there is none.
     *
     * @param first asked of each piece
     */
    static Path2D.Double[] split(Shape shape, Predicate<Rectangle2D> first) {
        Path2D.Double[] both = new Path2D.Double[2];
        for (Path2D.Double piece : of(shape)) {
            int which = first.test(piece.getBounds2D()) ? 0 : 1;
            if (both[which] == null) {
                both[which] = new Path2D.Double(piece.getWindingRule());
            }
            both[which].append(piece, false);
        }
        return both;
    }

    /** The pieces, each with the holes in it; exact unless the outline is too long for that. */
    static List<Path2D.Double> of(Shape shape) {
        boolean exact = Outlines.segments(shape) <= Outlines.MOST_EXACT_SEGMENTS;
        List<Path2D.Double> contours = contours(exact && !(shape instanceof Area) ? new Area(shape) : shape);
        if (contours.size() < 2) {
            return List.of(new Path2D.Double(shape));
        }
        if (contours.size() > MOST_PIECES) {
            return contours;
        }
        return exact ? nested(contours) : overlapping(contours, windingRule(shape));
    }

    private static int windingRule(Shape shape) {
        return shape.getPathIterator(null).getWindingRule();
    }

    private static List<Path2D.Double> contours(Shape shape) {
        List<Path2D.Double> contours = new ArrayList<>();
        Path2D.Double contour = new Path2D.Double(windingRule(shape));
        double[] p = new double[6];
        int pieces = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            if (kind == PathIterator.SEG_MOVETO) {
                if (pieces > 0) {
                    contours.add(contour);
                }
                contour = new Path2D.Double(windingRule(shape));
                contour.moveTo(p[0], p[1]);
                pieces = 0;
                continue;
            }
            pieces++;
            switch (kind) {
                case PathIterator.SEG_LINETO -> contour.lineTo(p[0], p[1]);
                case PathIterator.SEG_QUADTO -> contour.quadTo(p[0], p[1], p[2], p[3]);
                case PathIterator.SEG_CUBICTO -> contour.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> contour.closePath();
            }
        }
        if (pieces > 0) {
            contours.add(contour);
        }
        return contours;
    }

    /** Contours of an area, which never cross: of one inside an even number of others the outside of a piece, else a hole. */
    private static List<Path2D.Double> nested(List<Path2D.Double> contours) {
        int n = contours.size();
        Rectangle2D[] boxes = new Rectangle2D[n];
        double[][] within = new double[n][];
        for (int i = 0; i < n; i++) {
            boxes[i] = contours.get(i).getBounds2D();
            within[i] = midpoint(contours.get(i));
        }
        int[] depth = new int[n];
        int[] holder = new int[n];
        for (int i = 0; i < n; i++) {
            holder[i] = -1;
            for (int j = 0; j < n; j++) {
                if (i != j && boxes[j].contains(boxes[i]) && contours.get(j).contains(within[i][0], within[i][1])) {
                    depth[i]++;
                    holder[i] = holder[i] < 0 || boxes[holder[i]].contains(boxes[j]) ? j : holder[i];
                }
            }
        }
        List<Path2D.Double> pieces = new ArrayList<>();
        Path2D.Double[] of = new Path2D.Double[n];
        for (int i = 0; i < n; i++) {
            if (depth[i] % 2 == 0) {
                of[i] = new Path2D.Double(Path2D.WIND_EVEN_ODD);
                of[i].append(contours.get(i), false);
                pieces.add(of[i]);
            }
        }
        for (int i = 0; i < n; i++) {
            if (depth[i] % 2 == 1 && holder[i] >= 0 && of[holder[i]] != null) {
                of[holder[i]].append(contours.get(i), false);
            }
        }
        return pieces;
    }

    /** A point in the middle of the first stretch: contours of an area touch in corners only. */
    private static double[] midpoint(Path2D contour) {
        double[] p = new double[6];
        PathIterator it = contour.getPathIterator(null);
        it.currentSegment(p);
        double x = p[0];
        double y = p[1];
        it.next();
        return switch (it.currentSegment(p)) {
            case PathIterator.SEG_QUADTO -> new double[] {(x + 2 * p[0] + p[2]) / 4, (y + 2 * p[1] + p[3]) / 4};
            case PathIterator.SEG_CUBICTO ->
                new double[] {(x + 3 * p[0] + 3 * p[2] + p[4]) / 8, (y + 3 * p[1] + 3 * p[3] + p[5]) / 8};
            default -> new double[] {(x + p[0]) / 2, (y + p[1]) / 2};
        };
    }

    /** Contours whose boxes overlap go together. */
    private static List<Path2D.Double> overlapping(List<Path2D.Double> contours, int rule) {
        List<Path2D.Double> pieces = new ArrayList<>();
        List<Rectangle2D> boxes = new ArrayList<>();
        for (Path2D.Double contour : contours) {
            Path2D.Double piece = new Path2D.Double(rule);
            piece.append(contour, false);
            Rectangle2D box = contour.getBounds2D();
            for (int i = 0; i < pieces.size(); i++) {
                if (boxes.get(i).intersects(box)) {
                    piece.append(pieces.remove(i), false);
                    box = box.createUnion(boxes.remove(i));
                    i = -1; // the larger box may reach others now
                }
            }
            pieces.add(piece);
            boxes.add(box);
        }
        return pieces;
    }
}
