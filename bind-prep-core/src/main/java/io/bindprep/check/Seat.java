package io.bindprep.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One page of a finding, of an earlier report or of this one, which may meet its like in the other. */
final class Seat {
    private final String family;
    private final int page;
    private final Finding.@Nullable Place place;
    private final Earlier.@Nullable Item earlier;
    private final String message;
    private @Nullable Seat partner;

    private Seat(String rule, int page, Finding.@Nullable Place place, Earlier.@Nullable Item earlier, String message) {
        // a text that was hit and now is tight is the same text
        this.family = place == null ? rule : rule.replaceFirst("-(?:hit|tight)$", "");
        this.page = page;
        this.place = place;
        this.earlier = earlier;
        this.message = message;
    }

    static List<Seat> of(Finding f) {
        return of(f.rule(), f.pages(), f.seen() == null ? List.of() : f.seen().places(), null, f.message());
    }

    static List<Seat> of(Earlier.Item f) {
        return of(f.rule(), f.pages(), f.places(), f, f.message());
    }

    static int count(Earlier.Item f) {
        return f.places().isEmpty() ? Math.max(1, f.pages().size()) : f.places().size();
    }

    private static List<Seat> of(
            String rule,
            List<Integer> pages,
            List<Finding.Place> places,
            Earlier.@Nullable Item earlier,
            String message) {
        List<Seat> seats = new ArrayList<>();
        if (!places.isEmpty()) {
            places.forEach(place -> seats.add(new Seat(rule, place.page(), place, earlier, message)));
        } else if (pages.isEmpty()) {
            seats.add(new Seat(rule, 0, null, earlier, message));
        } else {
            pages.forEach(page -> seats.add(new Seat(rule, page, null, earlier, message)));
        }
        return seats;
    }

    /** The kind of thing, "text" for a finding of text whether it is hit or tight. */
    String family() {
        return family;
    }

    /** Page number; 0 for the whole document. */
    int page() {
        return page;
    }

    Finding.@Nullable Place place() {
        return place;
    }

    /** The finding of the earlier report; null for one of this. */
    Earlier.@Nullable Item earlier() {
        return earlier;
    }

    String message() {
        return message;
    }

    @Nullable
    Seat partner() {
        return partner;
    }

    void pairWith(Seat other) {
        partner = other;
        other.partner = this;
    }
}
