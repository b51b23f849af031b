package io.bindprep.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds the order that changes least, setting by setting, the dearest first.
 *
 * <p>Jobs that need the same settings stand together, which costs nothing. Up to {@value #EXACT} different ones the order is
 * the best there is, by dynamic programming over sets (Held and Karp, 1962: the shortest path through all of them); beyond
 * that jobs are put one by one where they cost least. Of equally good orders the one stands that begins as the given one.
 */
final class DayOrder {
    static final int EXACT = 12;

    /** More of one setting than any day has jobs, so that a dearer setting always outweighs the cheaper ones. */
    private static final long WEIGHT = 4096;

    private DayOrder() {}

    /** Settings when a job begins and when it ends; they differ where its volumes do. */
    record Ends(PunchState first, PunchState last) {}

    /** The order: places in the list given. */
    static List<Integer> of(List<Ends> jobs) {
        Map<Ends, List<Integer>> alike = new LinkedHashMap<>();
        for (int i = 0; i < jobs.size(); i++) {
            alike.computeIfAbsent(jobs.get(i), k -> new ArrayList<>()).add(i);
        }
        List<Ends> kinds = List.copyOf(alike.keySet());
        long[][] cost = costs(kinds);
        List<Integer> order = kinds.size() <= EXACT ? exact(cost) : inserted(cost);
        List<Integer> places = new ArrayList<>();
        for (int kind : order) {
            places.addAll(alike.getOrDefault(kinds.get(kind), List.of()));
        }
        return places;
    }

    private static long[][] costs(List<Ends> kinds) {
        long[][] cost = new long[kinds.size()][kinds.size()];
        for (int from = 0; from < kinds.size(); from++) {
            for (int to = 0; to < kinds.size(); to++) {
                for (int count : Changes.between(
                                kinds.get(from).last(), kinds.get(to).first())
                        .counts()) {
                    cost[from][to] = cost[from][to] * WEIGHT + count;
                }
            }
        }
        return cost;
    }

    private static List<Integer> exact(long[][] cost) {
        int count = cost.length;
        long[][] rest = new long[1 << count][count];
        // rest[done][at]: the least that the jobs not yet done cost, after this one
        for (int done = (1 << count) - 2; done > 0; done--) {
            Arrays.fill(rest[done], Long.MAX_VALUE);
            for (int at = 0; at < count; at++) {
                for (int next = 0; (done >> at & 1) == 1 && next < count; next++) {
                    if ((done >> next & 1) == 0) {
                        rest[done][at] = Math.min(rest[done][at], cost[at][next] + rest[done | 1 << next][next]);
                    }
                }
            }
        }
        List<Integer> order = new ArrayList<>();
        int done = 0;
        while (order.size() < count) {
            int best = -1;
            long least = Long.MAX_VALUE;
            for (int next = 0; next < count; next++) {
                if ((done >> next & 1) == 0) {
                    long all = (order.isEmpty() ? 0 : cost[order.get(order.size() - 1)][next])
                            + rest[done | 1 << next][next];
                    if (best < 0 || all < least) {
                        best = next;
                        least = all;
                    }
                }
            }
            order.add(best);
            done |= 1 << best;
        }
        return order;
    }

    /** Each in turn where it costs least, then moved as long as that saves anything. */
    private static List<Integer> inserted(long[][] cost) {
        List<Integer> order = new ArrayList<>();
        for (int kind = 0; kind < cost.length; kind++) {
            order.add(cheapest(order, kind, cost), kind);
        }
        for (int round = 0; round < cost.length; round++) {
            long before = length(order, cost);
            for (int kind = 0; kind < cost.length; kind++) {
                List<Integer> without = new ArrayList<>(order);
                without.remove((Integer) kind);
                without.add(cheapest(without, kind, cost), kind);
                order = length(without, cost) < length(order, cost) ? without : order;
            }
            if (length(order, cost) == before) {
                break;
            }
        }
        return order;
    }

    private static int cheapest(List<Integer> order, int kind, long[][] cost) {
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int at = 0; at <= order.size(); at++) {
            Integer before = at == 0 ? null : order.get(at - 1);
            Integer after = at == order.size() ? null : order.get(at);
            long more = step(before, kind, cost) + step(kind, after, cost) - step(before, after, cost);
            if (more < least) {
                best = at;
                least = more;
            }
        }
        return best;
    }

    private static long step(@Nullable Integer from, @Nullable Integer to, long[][] cost) {
        return from == null || to == null ? 0 : cost[from][to];
    }

    private static long length(List<Integer> order, long[][] cost) {
        long sum = 0;
        for (int i = 1; i < order.size(); i++) {
            sum += cost[order.get(i - 1)][order.get(i)];
        }
        return sum;
    }
}
