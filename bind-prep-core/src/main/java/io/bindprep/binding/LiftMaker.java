package io.bindprep.binding;

import io.bindprep.block.Leaf;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Parts a copy into lifts: in order, covers by themselves, paper, board and film apart, each run in lifts of like thickness. */
final class LiftMaker {
    private LiftMaker() {}

    /** Leaves in each lift; a leaf thicker than the punch takes is a lift by itself. */
    static List<Integer> lifts(List<Leaf> leaves, BigDecimal capacityUm) {
        List<Integer> lifts = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= leaves.size(); i++) {
            if (i == leaves.size() || apart(leaves.get(i - 1), leaves.get(i))) {
                lifts.addAll(run(calipers(leaves.subList(start, i)), capacityUm));
                start = i;
            }
        }
        return lifts;
    }

    private static boolean apart(Leaf before, Leaf after) {
        return before.cover() != after.cover()
                || before.stock().kind() != after.stock().kind();
    }

    private static List<BigDecimal> calipers(List<Leaf> leaves) {
        return leaves.stream().map(Leaf::nominalUm).toList();
    }

    private static List<Integer> run(List<BigDecimal> calipers, BigDecimal capacity) {
        BigDecimal total = calipers.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        int count = 1;
        while (count < calipers.size() && total.compareTo(capacity.multiply(BigDecimal.valueOf(count))) > 0) {
            count++;
        }
        List<Integer> lifts = split(calipers, total, count);
        while (count < calipers.size() && !allWithin(calipers, lifts, capacity)) {
            lifts = split(calipers, total, ++count);
        }
        return lifts;
    }

    /** Cuts where the thickness so far reaches its share, so that lifts differ by a leaf at most on one stock. */
    private static List<Integer> split(List<BigDecimal> calipers, BigDecimal total, int count) {
        List<Integer> lifts = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        int inLift = 0;
        for (int i = 0; i < calipers.size(); i++) {
            sum = sum.add(calipers.get(i));
            inLift++;
            int left = calipers.size() - i - 1;
            BigDecimal share = total.multiply(BigDecimal.valueOf(lifts.size() + 1L));
            boolean full = sum.multiply(BigDecimal.valueOf(count)).compareTo(share) >= 0;
            // every later lift must get a leaf
            boolean due = left == count - lifts.size() - 1;
            if (left == 0 || (lifts.size() < count - 1 && (full || due))) {
                lifts.add(inLift);
                inLift = 0;
            }
        }
        return lifts;
    }

    private static boolean allWithin(List<BigDecimal> calipers, List<Integer> lifts, BigDecimal capacity) {
        int at = 0;
        for (int lift : lifts) {
            BigDecimal sum = BigDecimal.ZERO;
            for (BigDecimal caliper : calipers.subList(at, at + lift)) {
                sum = sum.add(caliper);
            }
            if (lift > 1 && sum.compareTo(capacity) > 0) {
                return false;
            }
            at += lift;
        }
        return true;
    }
}
