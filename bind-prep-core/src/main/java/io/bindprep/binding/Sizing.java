package io.bindprep.binding;

import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Search for the element of a pattern that takes a stack.
 *
 * <p>An element takes the sheets of 20 lb bond of its capacity, which has its room in it, by the nominal stack. Where none
 * is known, or the job gives a clearance, it takes what its size less the clearance is thick. A coil is screwed through the closed stack, so that besides its clearance
 * the paper between binding edge and holes must fit within its circle with the whole stack upon it: t^2 + p^2 below D^2
 * (derived: a rectangle within a circle).
 *
 * @param bySize whether the job asks for sizes with its clearance, capacities or not; then the thickest likely stack counts
 * @param outside paper between the binding edge and the holes
 * @param closer the sizes that the punch's closer takes; null where no bound is known
 */
record Sizing(
        Elements elements,
        Pattern pattern,
        Length clearance,
        boolean bySize,
        Length outside,
        @Nullable ElementSizes closer) {
    /** The sizes there are, smallest first; empty where none is known. */
    List<Elements.Entry> known() {
        return elements.of(pattern);
    }

    static Sizing of(Job job, Pattern pattern, Length outside, @Nullable ElementSizes closer) {
        return new Sizing(job.catalogue().elements(), pattern, job.allowance(), job.bySize(), outside, closer);
    }

    /** The thickness that an element is chosen by. */
    Length decides(Stack stack) {
        return stack.deciding(bySize);
    }

    /** The capacity that an element is chosen by; null where its size is. */
    @Nullable
    Integer sheets(Elements.Entry entry) {
        return bySize ? null : entry.sheets();
    }

    /** Returns true if a stack closes in it at all, clearance or not. */
    boolean closes(Elements.Entry entry, Length thickness) {
        return entry.spans(thickness, Length.ZERO) && turns(entry, thickness);
    }

    Optional<Elements.Entry> smallest(Length thickness) {
        List<Elements.Entry> fit =
                known().stream().filter(e -> takes(e, thickness)).toList();
        return fit.stream()
                .filter(e -> closer == null || closer.takes(e.element().size()))
                .findFirst()
                // none that it closes: the size that the stack needs is worth knowing all the same
                .or(() -> fit.stream().findFirst());
    }

    private boolean takes(Elements.Entry entry, Length thickness) {
        boolean taken = bySize ? entry.spans(thickness, clearance) : entry.takes(thickness, clearance);
        return taken && turns(entry, thickness);
    }

    private boolean turns(Elements.Entry entry, Length thickness) {
        return pattern.method() != Method.COIL || Turning.within(entry.element().size(), thickness, outside);
    }

    /** The thickest that an element takes. */
    Length most(Elements.Entry entry) {
        Integer sheets = sheets(entry);
        if (sheets != null) {
            return Elements.bond(sheets);
        }
        Length size = entry.element().size();
        Length room = size.minus(clearance);
        if (pattern.method() != Method.COIL) {
            return room;
        }
        return room.min(Turning.limit(size, outside).minus(new Length(1)));
    }
}
