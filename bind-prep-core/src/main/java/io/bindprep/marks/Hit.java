package io.bindprep.marks;

import java.util.List;

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
}
