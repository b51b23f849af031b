package io.bindprep.catalogue;

import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The sizes of element that a closer takes: a range, or those listed.
 *
 * @param smallest the smallest size, included
 * @param largest the largest size, included
 * @param listed the only sizes, smallest first; empty where every size of the range goes
 */
public record ElementSizes(Length smallest, Length largest, List<Length> listed) {
    public ElementSizes {
        listed = List.copyOf(listed);
    }

    /** Every size of a range. */
    public static ElementSizes range(Length smallest, Length largest) {
        return new ElementSizes(smallest, largest, List.of());
    }

    /**
     * These sizes and no other.
     *
     * @throws IllegalArgumentException where there is none
     */
    public static ElementSizes only(List<Length> sizes) {
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("no size is listed");
        }
        List<Length> sorted = sizes.stream().distinct().sorted().toList();
        return new ElementSizes(sorted.get(0), sorted.get(sorted.size() - 1), sorted);
    }

    /** Returns true if an element of this nominal size goes into the closer. */
    public boolean takes(Length size) {
        return listed.isEmpty() ? size.compareTo(smallest) >= 0 && size.compareTo(largest) <= 0 : listed.contains(size);
    }

    /** The sizes as people read them: "3/16 in to 9/16 in", "1/4 in, 3/8 in". */
    public String text() {
        return listed.isEmpty()
                ? LengthText.inches(smallest) + " to " + LengthText.inches(largest)
                : listed.stream().map(LengthText::inches).collect(Collectors.joining(", "));
    }
}
