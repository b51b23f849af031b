package io.bindprep.check;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Pairs the seats of two reports, the surest likeness first. Takes time in proportion to their number. */
final class Pairing {
    /** Marks whose ends differ by less are in one place. */
    private static final double SAME_PLACE_MM = 1;

    private final List<Seat> before;
    private final List<Seat> after;
    private final int fewest;
    private final int most;

    /**
     * Seats of both.
     *
     * @param added by how many pages the document has grown; negative where it has shrunk
     */
    Pairing(List<Seat> before, List<Seat> after, int added) {
        this.before = before;
        this.after = after;
        this.fewest = Math.min(added, 0);
        this.most = Math.max(added, 0);
    }

    void pair() {
        if (fewest != most) {
            wordsThatStandOnce();
            whereTheShiftIsSure();
            allFurtherOn();
        }
        byKey(Pairing::words, 0, 0);
        wordsThatStandOnce();
        byKey(Pairing::words, fewest, most);
        byPlace(0, 0);
        byPlace(fewest, most);
        byKey(Pairing::sentence, fewest, most);
        byKey(Pairing::rule, 0, 0);
        byKey(Pairing::rule, fewest, most);
    }

    // page numbers in running heads count up
    private static @Nullable String words(Seat seat) {
        Finding.Place place = seat.place();
        return place == null || place.words().isBlank()
                ? null
                : seat.family() + "\n" + place.words().replaceAll("[0-9]+", "0");
    }

    private static @Nullable String sentence(Seat seat) {
        return seat.place() == null ? seat.family() + "\n" + seat.message() : null;
    }

    private static @Nullable String rule(Seat seat) {
        return seat.place() == null ? seat.family() : null;
    }

    private static String place(Seat seat, Finding.Place place, int start, int end) {
        return seat.family() + "\n" + (Math.round(place.startMm() / SAME_PLACE_MM) + start) + " "
                + (Math.round(place.endMm() / SAME_PLACE_MM) + end);
    }

    private void wordsThatStandOnce() {
        Map<String, Deque<Seat>> old = new HashMap<>();
        Map<String, Deque<Seat>> fresh = new HashMap<>();
        gather(before, old);
        gather(after, fresh);
        fresh.forEach((key, seats) -> {
            Deque<Seat> same = old.get(key);
            if (seats.size() == 1 && same != null && same.size() == 1 && free(seats.peek()) && free(same.peek())) {
                seats.remove().pairWith(same.remove());
            }
        });
    }

    /** Running heads, which stand on many pages, meet with the pages that moved alike. */
    private void whereTheShiftIsSure() {
        PageShift shift = new PageShift(after, fewest + most);
        Map<String, TreeMap<Integer, Deque<Seat>>> byWords = index(Pairing::words);
        for (Seat seat : after) {
            Integer by = shift.of(seat.page());
            String wanted = seat.partner() == null ? words(seat) : null;
            if (by != null && wanted != null) {
                meet(seat, byWords.get(wanted), by, by);
            }
        }
        Map<String, TreeMap<Integer, Deque<Seat>>> byPlace = places();
        for (Seat seat : after) {
            Integer by = shift.of(seat.page());
            if (by != null) {
                meetByPlace(seat, byPlace, by, by);
            }
        }
    }

    /** Words that are on as many pages as before, each as much further on as the document has grown. */
    private void allFurtherOn() {
        Map<String, Deque<Seat>> old = new HashMap<>();
        Map<String, Deque<Seat>> fresh = new HashMap<>();
        gather(before, old);
        gather(after, fresh);
        fresh.forEach((key, seats) -> {
            List<Seat> is = byPage(seats);
            List<Seat> was = byPage(old.getOrDefault(key, new ArrayDeque<>()));
            boolean alike = is.size() == was.size();
            for (int i = 0; alike && i < is.size(); i++) {
                alike = free(is.get(i))
                        && free(was.get(i))
                        && is.get(i).page() - was.get(i).page() == fewest + most;
            }
            for (int i = 0; alike && i < is.size(); i++) {
                is.get(i).pairWith(was.get(i));
            }
        });
    }

    private static List<Seat> byPage(Deque<Seat> seats) {
        return seats.stream().sorted(Comparator.comparingInt(Seat::page)).toList();
    }

    private static boolean free(@Nullable Seat seat) {
        return seat != null && seat.partner() == null;
    }

    // all of them, those that have met too: a running head does not stand once
    private static void gather(List<Seat> seats, Map<String, Deque<Seat>> byWords) {
        for (Seat seat : seats) {
            String key = words(seat);
            if (key != null) {
                byWords.computeIfAbsent(key, k -> new ArrayDeque<>()).add(seat);
            }
        }
    }

    private void byKey(Function<Seat, @Nullable String> key, int from, int to) {
        Map<String, TreeMap<Integer, Deque<Seat>>> old = index(key);
        for (Seat seat : after) {
            String wanted = seat.partner() == null ? key.apply(seat) : null;
            if (wanted != null) {
                meet(seat, old.get(wanted), from, to);
            }
        }
    }

    private void byPlace(int from, int to) {
        Map<String, TreeMap<Integer, Deque<Seat>>> old = places();
        after.forEach(seat -> meetByPlace(seat, old, from, to));
    }

    private Map<String, TreeMap<Integer, Deque<Seat>>> places() {
        return index(seat -> seat.place() == null ? null : place(seat, seat.place(), 0, 0));
    }

    private static void meetByPlace(Seat seat, Map<String, TreeMap<Integer, Deque<Seat>>> old, int from, int to) {
        Finding.Place place = seat.place();
        for (int i = 0; place != null && i < 9 && seat.partner() == null; i++) {
            // the middle of the nine neighbours first
            int turn = (i + 4) % 9;
            meet(seat, old.get(place(seat, place, turn / 3 - 1, turn % 3 - 1)), from, to);
        }
    }

    private Map<String, TreeMap<Integer, Deque<Seat>>> index(Function<Seat, @Nullable String> key) {
        Map<String, TreeMap<Integer, Deque<Seat>>> index = new HashMap<>();
        for (Seat seat : before) {
            String itsKey = seat.partner() == null ? key.apply(seat) : null;
            if (itsKey != null) {
                index.computeIfAbsent(itsKey, k -> new TreeMap<>())
                        .computeIfAbsent(seat.page(), k -> new ArrayDeque<>())
                        .add(seat);
            }
        }
        return index;
    }

    // page p of this document was one of p - to .. p - from of the earlier one; 0 is the whole document in both
    private static void meet(Seat seat, @Nullable TreeMap<Integer, Deque<Seat>> byPage, int from, int to) {
        if (byPage == null) {
            return;
        }
        int page = seat.page();
        Map.Entry<Integer, Deque<Seat>> first =
                page == 0 ? byPage.ceilingEntry(0) : byPage.ceilingEntry(Math.max(1, page - to));
        if (first == null || first.getKey() > (page == 0 ? 0 : page - from)) {
            return;
        }
        seat.pairWith(first.getValue().remove());
        if (first.getValue().isEmpty()) {
            byPage.remove(first.getKey());
        }
    }
}
