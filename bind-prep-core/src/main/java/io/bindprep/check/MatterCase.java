package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Marks of one kind that come to the same end, and what they were held against.
 *
 * @param hit true where a hole takes them, false where they only stand too near
 */
record MatterCase(Situation situation, MatterFold fold, boolean hit) {
    Hit worst() {
        return fold.worst();
    }

    Mark mark() {
        return worst().mark();
    }

    /** The thumb cut for a hanger, where it takes the worst mark and no hole does; null otherwise. */
    Gap.@Nullable ThumbCut cut() {
        Gap gap = plan().row().gap();
        return hit && worst().pins().isEmpty() && gap != null ? gap.thumbCut() : null;
    }

    Length zone() {
        return plan().holeZone();
    }

    /** Distance from the binding edge that the mark does not keep. */
    Length limit() {
        Gap.ThumbCut cut = cut();
        if (cut != null) {
            return cut.depth().plus(plan().punchingTolerance());
        }
        return hit ? zone() : margin();
    }

    /** Distance from the binding edge at which it would stand well. */
    Length goal() {
        return cut() != null ? limit() : margin();
    }

    private Length margin() {
        return plan().bindingMargin().max(zone());
    }

    private Plan plan() {
        return situation.plan();
    }
}
