package io.bindprep.binding;

import io.bindprep.binding.Reason.ToleranceMeasured.Base;
import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.unit.Length;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Tolerance of the holes: as the job says, else as the punch's file says, else that of the limits.
 *
 * <p>Of a punch that was measured it is never less than what the measuring left open, on top of what its file says: how
 * lifts differ and how well the punch is known add up at worst.
 */
final class PunchingTolerance {
    private PunchingTolerance() {}

    /**
     * Decides it.
     *
     * @param open what the measuring of the punch leaves open at worst
     */
    static Length of(Job job, Punch punch, Length open, Consumer<Reason> because) {
        Length asked = job.punchingTolerance();
        Length stated = punch.punchingTolerance();
        Limits.Limit usual = job.catalogue().limits().punchingTolerance();
        if (punch.measured() != null) {
            return measured(asked, stated, open, usual, because);
        }
        if (asked != null) {
            return asked;
        }
        because.accept(
                stated != null
                        ? new Reason.ToleranceStated(stated, punch.id())
                        : new Reason.ToleranceUsual(usual.length(), usual.source()));
        return stated != null ? stated : usual.length();
    }

    private static Length measured(
            @Nullable Length asked,
            @Nullable Length stated,
            Length open,
            Limits.Limit usual,
            Consumer<Reason> because) {
        Length own = stated == null ? open : stated.plus(open);
        Length base = asked != null ? asked : stated != null ? own : usual.length();
        boolean widened = own.compareTo(base) >= 0;
        Base ground = widened ? Base.MEASURED : asked != null ? Base.JOB : Base.USUAL;
        Length tolerance = widened ? own : base;
        because.accept(new Reason.ToleranceMeasured(tolerance, open, stated, ground, usual.source()));
        return tolerance;
    }
}
