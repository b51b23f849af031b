package io.bindprep.pdf.strip;

import io.bindprep.pdf.strip.Letters.Sign;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Letters in rows, as words have them: of one height and contrast, one beside the other. A row of many equal pieces may be a
 * pattern and proves no page.
 *
 * @param letters how many letters stand in words, those that run together counted by their length
 * @param inRows the same of rows of three pieces or more
 */
record WordRows(int letters, int inRows) {
    /** Likeness of two letters beside each other, the smaller by the larger; measured. */
    private static final double SAME_HEIGHT = 0.55;

    private static final double SAME_CONTRAST = 0.65;
    /** Space between two letters, how far one may lie in the other's box and out of its row, in heights; measured. */
    private static final double SPACE = 1;

    private static final double OVERLAP = 0.3;
    private static final double OUT_OF_ROW = 0.4;
    /** Letters a piece counts for at most, so many to a length of its height. */
    private static final double MOST_A_PIECE = 3;

    private static final double TO_A_HEIGHT = 1.2;
    private static final int WORD = 3;
    /** Pieces of a row that can be a pattern, and the deviation of their sizes, of the mean, that it stays below; our choice. */
    private static final int PATTERN = 5;

    private static final double EQUAL = 0.12;

    /** Rows of letters that run across the edge, or else along it. */
    private record Direction(boolean across) {
        int height(Rectangle box) {
            return across ? box.height : box.width;
        }

        int length(Rectangle box) {
            return across ? box.width : box.height;
        }

        private int from(Rectangle box) {
            return across ? box.x : box.y;
        }

        private double middle(Rectangle box) {
            return across ? box.getCenterY() : box.getCenterX();
        }

        boolean isBeside(Sign one, Sign other) {
            Rectangle a = one.box();
            Rectangle b = other.box();
            double height = Math.max(height(a), height(b));
            double gap = Math.max(from(a), from(b)) - Math.min(from(a) + length(a), from(b) + length(b));
            return Math.min(height(a), height(b)) >= Math.max(Letters.LOWEST, SAME_HEIGHT * height)
                    && height <= Letters.HIGHEST
                    && Math.abs(middle(a) - middle(b)) <= OUT_OF_ROW * height
                    && gap <= SPACE * height
                    && gap >= -OVERLAP * height
                    && Math.min(one.contrast(), other.contrast())
                            >= SAME_CONTRAST * Math.max(one.contrast(), other.contrast());
        }

        double letters(Sign sign) {
            double long_ = TO_A_HEIGHT * length(sign.box()) / height(sign.box());
            return Math.max(1, Math.min(MOST_A_PIECE, long_));
        }
    }

    /** The words of letters that are given from the head of the strip on. */
    static WordRows of(List<Sign> letters) {
        int all = 0;
        int inRows = 0;
        for (boolean across : new boolean[] {true, false}) {
            Direction direction = new Direction(across);
            for (List<Sign> row : rows(letters, direction)) {
                double count = row.stream().mapToDouble(direction::letters).sum();
                if (row.size() > 1 && count >= WORD) {
                    all += (int) count;
                    inRows += row.size() >= WORD && !isPattern(row) ? (int) count : 0;
                }
            }
        }
        return new WordRows(all, inRows);
    }

    private static Iterable<List<Sign>> rows(List<Sign> letters, Direction direction) {
        int[] first = new int[letters.size()];
        for (int i = 0; i < first.length; i++) {
            first[i] = i;
        }
        for (int i = 0; i < first.length; i++) {
            Rectangle box = letters.get(i).box();
            for (int j = i + 1;
                    j < first.length && letters.get(j).box().y <= box.y + box.height + Letters.HIGHEST;
                    j++) {
                if (direction.isBeside(letters.get(i), letters.get(j))) {
                    first[root(first, j)] = root(first, i);
                }
            }
        }
        Map<Integer, List<Sign>> rows = new TreeMap<>();
        for (int i = 0; i < first.length; i++) {
            rows.computeIfAbsent(root(first, i), k -> new ArrayList<>()).add(letters.get(i));
        }
        return rows.values();
    }

    private static int root(int[] first, int i) {
        int at = i;
        while (first[at] != at) {
            first[at] = first[first[at]];
            at = first[at];
        }
        return at;
    }

    private static boolean isPattern(List<Sign> row) {
        double mean = row.stream().mapToInt(Sign::dots).average().orElse(0);
        double squares = row.stream()
                .mapToDouble(s -> (s.dots() - mean) * (s.dots() - mean))
                .average()
                .orElse(0);
        return row.size() >= PATTERN && Math.sqrt(squares) < EQUAL * mean;
    }
}
