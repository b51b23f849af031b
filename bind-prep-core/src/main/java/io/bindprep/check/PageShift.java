package io.bindprep.check;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Number of pages that came in before a page, as far as seats that have met surely tell: between two by the same number it is
 * that, and so it is before the first where none came in, and behind the last where all did.
 */
final class PageShift {
    private final TreeMap<Integer, Integer> byPage = new TreeMap<>();
    private final int added;

    /**
     * Takes in seats.
     *
     * @param met those of the later document that have met
     * @param added by how many pages the document has grown; negative where it has shrunk
     */
    PageShift(List<Seat> met, int added) {
        this.added = added;
        int last = 0;
        for (Seat seat :
                met.stream().sorted(Comparator.comparingInt(Seat::page)).toList()) {
            Seat old = seat.partner();
            if (old == null || seat.page() == 0 || old.page() == 0) {
                continue;
            }
            int by = seat.page() - old.page();
            if (by < Math.min(added, 0) || by > Math.max(added, 0) || old.page() < last) {
                byPage.clear(); // pages changed their order: nothing is sure
                return;
            }
            last = old.page();
            byPage.put(seat.page(), by);
        }
    }

    /** Shift of a page of the later document; null where it is not sure. */
    @Nullable
    Integer of(int page) {
        Map.Entry<Integer, Integer> before = byPage.floorEntry(page);
        Map.Entry<Integer, Integer> behind = byPage.ceilingEntry(page);
        if (before == null) {
            return behind != null && behind.getValue() == 0 ? behind.getValue() : null;
        }
        boolean same =
                behind == null ? before.getValue() == added : before.getValue().equals(behind.getValue());
        return same ? before.getValue() : null;
    }
}
