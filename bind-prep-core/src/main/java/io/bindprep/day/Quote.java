package io.bindprep.day;

import java.util.List;

/**
 * Time and cost of a day by the shop's rates, as a range.
 *
 * @param rates the file that they come from
 * @param currency as that file writes it; empty where it does not
 * @param minutes of work
 * @param cost of work and supplies
 * @param work each kind of work, in minutes
 * @param supplies each supply and the work, in money
 * @param missing what the file gives no rate for, so that it is in no sum
 */
public record Quote(
        String rates,
        String currency,
        Amount minutes,
        Amount cost,
        List<Line> work,
        List<Line> supplies,
        List<String> missing) {
    /**
     * One line of a sum.
     *
     * @param count how many
     * @param rate for each
     * @param sum minutes or money
     */
    public record Line(String what, String count, Amount rate, Amount sum) {}

    public Quote {
        work = List.copyOf(work);
        supplies = List.copyOf(supplies);
        missing = List.copyOf(missing);
    }

    /** Returns true if every rate was given; else time and cost are at least what is said. */
    public boolean whole() {
        return missing.isEmpty();
    }
}
