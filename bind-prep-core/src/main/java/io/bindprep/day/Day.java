package io.bindprep.day;

import io.bindprep.wording.Measures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A day at the punch.
 *
 * @param list the jobs in the order in which they are punched
 * @param heldBack jobs that must not be punched as they are, in the order given; they are in no sum
 * @param changes how often each setting is made anew between the jobs of the list
 * @param given how often it would have been in the order given
 * @param least whether no order changes less; else there were too many different jobs to try all
 * @param supplies what the list uses up
 * @param strokes of the punch for the list
 * @param quote time and cost by the shop's rates; null where none were given
 * @param measures units in which its lengths are shown to people: those of all jobs where they are the same, else both
 */
public record Day(
        List<Entry> list,
        List<DayJob> heldBack,
        Changes changes,
        Changes given,
        boolean least,
        Supplies supplies,
        long strokes,
        @Nullable Quote quote,
        Measures measures) {
    /**
     * A job in its place.
     *
     * @param settings what the operator makes anew for it; for the first all that there is
     * @param within settings made anew between its own volumes
     */
    public record Entry(DayJob job, List<Made> settings, Changes within) {
        public Entry {
            settings = List.copyOf(settings);
        }
    }

    /**
     * A setting that is made.
     *
     * @param value what it is set to, exactly
     * @param before what it was, exactly; null where nothing stood
     * @param said what it is set to, as an operator reads it
     * @param saidBefore what it was, as an operator reads it; null where nothing stood
     */
    public record Made(
            Setting setting,
            String value,
            @Nullable String before,
            String said,
            @Nullable String saidBefore) {}

    public Day {
        list = List.copyOf(list);
        heldBack = List.copyOf(heldBack);
    }
}
