package io.bindprep.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DayOrderTest {
    private static final int CASES = 400;

    /** A state whose settings read as these numbers; pin number 0 is all pins in. */
    private static PunchState state(int die, int depth, int pins, int closer, int guide) {
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        values.put(Setting.DIE, "die " + die);
        values.put(Setting.DEPTH, "depth " + depth);
        values.put(Setting.PINS, pins == 0 ? PunchState.ALL_IN : "pull " + pins);
        values.put(Setting.CLOSER, "closer " + closer);
        values.put(Setting.SIDE_GUIDE, "guide " + guide);
        return new PunchState(values, values);
    }

    private static Changes cost(List<DayOrder.Ends> jobs, List<Integer> order) {
        Changes sum = Changes.NONE;
        for (int i = 1; i < order.size(); i++) {
            sum = sum.plus(Changes.between(
                    jobs.get(order.get(i - 1)).last(), jobs.get(order.get(i)).first()));
        }
        return sum;
    }

    private static List<List<Integer>> permutations(List<Integer> items) {
        if (items.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Integer>> all = new ArrayList<>();
        for (Integer first : items) {
            List<Integer> rest = new ArrayList<>(items);
            rest.remove(first);
            for (List<Integer> tail : permutations(rest)) {
                List<Integer> one = new ArrayList<>(List.of(first));
                one.addAll(tail);
                all.add(one);
            }
        }
        return all;
    }

    private static DayOrder.Ends random(Random random) {
        PunchState first =
                state(random.nextInt(3), random.nextInt(3), random.nextInt(2), random.nextInt(3), random.nextInt(2));
        return new DayOrder.Ends(
                first,
                random.nextInt(4) > 0
                        ? first
                        : state(random.nextInt(3), random.nextInt(3), random.nextInt(2), random.nextInt(3), 0));
    }

    @Test
    void noOrderOfAllPossibleOnesChangesLess() {
        Random random = new Random(15);
        for (int i = 0; i < CASES; i++) {
            List<DayOrder.Ends> jobs = new ArrayList<>();
            int count = 1 + random.nextInt(6);
            for (int j = 0; j < count; j++) {
                jobs.add(random(random));
            }
            List<Integer> order = DayOrder.of(jobs);
            List<Integer> all = IntStream.range(0, count).boxed().toList();
            assertThat(order).containsExactlyInAnyOrderElementsOf(all);
            Changes least = permutations(all).stream()
                    .map(p -> cost(jobs, p))
                    .min(Changes::compareTo)
                    .orElseThrow();
            assertThat(cost(jobs, order)).as(jobs.toString()).isEqualTo(least);
        }
    }

    /**
     * Dies 1 2 1 2 given: three changes of the die. By hand: 1 1 2 2, one; the depth changes twice either way; the die is best
     * changed where no pin is pulled, for a new one comes with all pins in.
     */
    @Test
    void theDieWeighsMoreThanAllElse() {
        List<DayOrder.Ends> jobs = new ArrayList<>();
        for (PunchState s :
                List.of(state(1, 1, 0, 1, 0), state(2, 1, 0, 1, 0), state(1, 2, 1, 2, 1), state(2, 2, 1, 2, 1))) {
            jobs.add(new DayOrder.Ends(s, s));
        }
        assertThat(cost(jobs, List.of(0, 1, 2, 3)).of(Setting.DIE)).isEqualTo(3);
        List<Integer> order = DayOrder.of(jobs);
        assertThat(order).containsExactly(2, 0, 1, 3);
        assertThat(cost(jobs, order).counts()).containsExactly(1, 2, 2, 2, 2);
    }

    @Test
    void manyDifferentJobsAreNeverPutWorseThanGroupedByDie() {
        List<DayOrder.Ends> jobs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            PunchState s = state(i % 2, i % 3, 0, i, 0);
            jobs.add(new DayOrder.Ends(s, s));
        }
        List<Integer> order = DayOrder.of(jobs);
        assertThat(order)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 40).boxed().toList());
        assertThat(cost(jobs, order).of(Setting.DIE)).isEqualTo(1);
        assertThat(cost(jobs, IntStream.range(0, 40).boxed().toList()).of(Setting.DIE))
                .isEqualTo(39);
    }
}
