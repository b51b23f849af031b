package io.bindprep.job;

import org.jspecify.annotations.Nullable;

/**
 * Whose job it is, as the shop writes it; printed on the job sheet, never judged.
 *
 * @param number the shop's number of the job; null where it has none
 * @param customer who ordered it; null where nobody says
 * @param due when it must be ready, in free words; null where nobody says
 */
public record Order(
        @Nullable String number,
        @Nullable String customer,
        @Nullable String due) {
    /** No number, no customer, no date. */
    public static final Order NONE = new Order(null, null, null);
}
