package io.bindprep.run;

import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Folds of leaves that fold out: the first fold short of the trim, then to and fro between there and the hole
 * zone.
 *
 * @param pages the pages they carry, ascending
 * @param flat how far the unfolded leaf reaches from the binding edge
 * @param panels how many panels, the bound one included
 * @param most how far it may reach at most, so that its folds keep clear of the holes and the trim
 * @param fewest panels that would do; {@code Integer.MAX_VALUE} where none do
 * @param folds where it is folded, from the binding edge along the unfolded leaf; empty where it does not fit or needs none
 */
public record Fold(List<Integer> pages, Length flat, int panels, Length most, int fewest, List<Length> folds) {
    public Fold {
        pages = List.copyOf(pages);
        folds = List.copyOf(folds);
    }

    /** Returns true if its panels take it. */
    public boolean fits() {
        return flat.compareTo(most) <= 0;
    }

    /** Returns true if it reaches beyond the trim at all, so that there is something to fold. */
    public boolean wide() {
        return !(fewest < 2);
    }

    static Fold of(List<Integer> pages, Length flat, int panels, Length book, Length allowance, Length zone) {
        Length first = book.minus(allowance);
        Length panel = first.minus(zone.plus(allowance));
        Length most = first.plus(panel.times(panels - 1L));
        int fewest = fewest(flat, book, allowance, zone);
        List<Length> folds = new ArrayList<>();
        if (fewest >= 2 && flat.compareTo(most) <= 0) {
            Length rest = flat.minus(first);
            for (int i = 0; i < panels - 1; i++) {
                folds.add(first.plus(new Length(Math.floorDiv(rest.units() * i, panels - 1L))));
            }
        }
        return new Fold(pages, flat, panels, most, fewest, folds);
    }

    /**
     * The fewest panels that take a leaf.
     *
     * @param flat how far it reaches from the binding edge, unfolded
     * @param book how far the book's leaf reaches
     * @param allowance what folds keep from the trim and from the holes
     * @param zone binding edge to the far side of the holes, tolerance included
     */
    public static int fewest(Length flat, Length book, Length allowance, Length zone) {
        if (flat.compareTo(book) <= 0) {
            return 1;
        }
        Length first = book.minus(allowance);
        Length panel = first.minus(zone.plus(allowance));
        if (panel.units() <= 0) {
            return Integer.MAX_VALUE;
        }
        long rest = flat.minus(first).units();
        return (int) Math.min(Integer.MAX_VALUE, 1 + (rest + panel.units() - 1) / panel.units());
    }
}
