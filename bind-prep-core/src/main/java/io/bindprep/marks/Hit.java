package io.bindprep.marks;

import org.jspecify.annotations.Nullable;

/**
 * A mark that is punched or tight.
 *
 * @param verdict PUNCHED or TIGHT
 * @param pin number of the pin whose hole meets the mark, from the side guide; null where none does: it is tight, or
 *     punched out by the thumb cut
 */
public record Hit(Mark mark, Verdict verdict, @Nullable Integer pin) {}
