package io.bindprep.marks;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A mark that is punched or tight.
 *
 * @param verdict PUNCHED or TIGHT
 * @param pins numbers of the pins whose holes meet the mark, from the side guide, ascending; empty where none does: it is
 *     tight, or punched out by the thumb cut
 */
public record Hit(Mark mark, Verdict verdict, List<Integer> pins) {
    public Hit {
        pins = List.copyOf(pins);
    }

    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Hit other && mark.equals(other.mark) && verdict == other.verdict && pins.equals(other.pins);
    }

    @Override
    public int hashCode() {
        return Objects.hash(mark, verdict, pins);
    }
}
