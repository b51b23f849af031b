package io.bindprep.binding;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.unit.Length;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Punching tolerance: as the job says, else as the punch's file says, else 1 mm.
 *
 * <p>Of a punch that was measured it is never less than what the measuring left open, on top of what its file says: how
 * lifts differ and how well the punch is known add up at worst.
 */
final class PunchingTolerance {
    // our own, no source: as true as a jogged lift goes in by hand
    private static final Length USUAL = Length.ofMm(1);

    private PunchingTolerance() {}

    /**
     * Decides it.
     *
     * @param open what the measuring of the punch leaves open at worst
     */
    static Length of(Job job, Punch punch, Length open, BiConsumer<Topic, String> because) {
        Length asked = job.punchingTolerance();
        Length stated = punch.punchingTolerance();
        if (punch.measured() != null) {
            return measured(asked, stated, open, because);
        }
        if (asked != null) {
            return asked;
        }
        because.accept(
                Topic.MARGIN,
                stated != null
                        ? "punching tolerance " + stated.inMm() + " as the punch " + punch.id() + " was measured"
                        : "punching tolerance " + USUAL.inMm()
                                + " either way, as nobody measured the punch (our own, no source)");
        return stated != null ? stated : USUAL;
    }

    private static Length measured(
            @Nullable Length asked, @Nullable Length stated, Length open, BiConsumer<Topic, String> because) {
        Length own = stated == null ? open : stated.plus(open);
        Length base = asked != null ? asked : stated != null ? own : USUAL;
        boolean widened = own.compareTo(base) >= 0;
        String why = "the " + open.inMm() + " that the measuring of the punch leaves open at worst"
                + (stated == null ? "" : " on top of the " + stated.inMm() + " of its file");
        because.accept(
                Topic.MARGIN,
                widened
                        ? "punching tolerance " + own.inMm() + ": " + why
                        : "punching tolerance " + base.inMm()
                                + (asked != null ? " as the job says" : " (our own, no source)") + ", more than "
                                + why);
        return widened ? own : base;
    }
}
