package io.bindprep.binding;

import io.bindprep.block.Leaf;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.paper.Stock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Parts a copy into lifts: in order, covers by themselves, paper, board and film apart, each run in lifts of like thickness. */
final class LiftMaker {
    private LiftMaker() {}

    /** Leaves in each lift, within what the punch takes of their kind; a leaf that is more by itself is a lift by itself. */
    static List<Integer> lifts(List<Leaf> leaves, Function<Stock.Kind, LiftLimit> limits) {
        List<Integer> lifts = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= leaves.size(); i++) {
            if (i == leaves.size() || apart(leaves.get(i - 1), leaves.get(i))) {
                List<Leaf> run = leaves.subList(start, i);
                lifts.addAll(run(run, limits.apply(run.get(0).stock().kind())));
                start = i;
            }
        }
        return lifts;
    }

    /** Limits of the kinds of stock that there are. */
    static List<Reason.KindLimit> limits(List<Leaf> leaves, Function<Stock.Kind, LiftLimit> limits) {
        return leaves.stream()
                .map(l -> l.stock().kind())
                .distinct()
                .sorted()
                .map(kind -> new Reason.KindLimit(kind, limits.apply(kind)))
                .toList();
    }

    private static boolean apart(Leaf before, Leaf after) {
        return before.cover() != after.cover()
                || before.stock().kind() != after.stock().kind();
    }

    private static List<Integer> run(List<Leaf> leaves, LiftLimit limit) {
        // lifts of like thickness may be more than filled ones, never fewer
        int count = filled(leaves, limit);
        List<Integer> lifts = split(leaves, count);
        while (!allWithin(leaves, lifts, limit)) {
            lifts = split(leaves, ++count);
        }
        return lifts;
    }

    /** Number of lifts where each is filled before the next is begun. */
    private static int filled(List<Leaf> leaves, LiftLimit limit) {
        BigDecimal capacity = limit.thickness().micrometres();
        BigDecimal sum = BigDecimal.ZERO;
        int layers = 0;
        int lifts = 1;
        for (Leaf leaf : leaves) {
            sum = sum.add(leaf.nominalUm());
            layers += leaf.layers();
            boolean first = layers == leaf.layers();
            if (!first && over(sum, layers, capacity, limit.sheets())) {
                sum = leaf.nominalUm();
                layers = leaf.layers();
                lifts++;
            }
        }
        return lifts;
    }

    private static boolean over(BigDecimal thickness, int layers, BigDecimal capacity, @Nullable Integer most) {
        return thickness.compareTo(capacity) > 0 || (most != null && layers > most);
    }

    /** Cuts where the thickness so far reaches its share, so that lifts differ by a leaf at most on one stock. */
    private static List<Integer> split(List<Leaf> leaves, int count) {
        BigDecimal total = leaves.stream().map(Leaf::nominalUm).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<Integer> lifts = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        int inLift = 0;
        for (int i = 0; i < leaves.size(); i++) {
            sum = sum.add(leaves.get(i).nominalUm());
            inLift++;
            int left = leaves.size() - i - 1;
            BigDecimal share = total.multiply(BigDecimal.valueOf(lifts.size() + 1L));
            boolean full = sum.multiply(BigDecimal.valueOf(count)).compareTo(share) >= 0;
            // every later lift must get a leaf; the last is full with the last leaf alone
            boolean due = left == count - lifts.size() - 1;
            if (full || due) {
                lifts.add(inLift);
                inLift = 0;
            }
        }
        return lifts;
    }

    private static boolean allWithin(List<Leaf> leaves, List<Integer> lifts, LiftLimit limit) {
        BigDecimal capacity = limit.thickness().micrometres();
        int at = 0;
        for (int lift : lifts) {
            BigDecimal sum = BigDecimal.ZERO;
            int layers = 0;
            for (Leaf leaf : leaves.subList(at, at + lift)) {
                sum = sum.add(leaf.nominalUm());
                layers += leaf.layers();
            }
            if (lift > 1 && over(sum, layers, capacity, limit.sheets())) {
                return false;
            }
            at += lift;
        }
        return true;
    }
}
