package io.bindprep.check;

import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Plan;
import io.bindprep.binding.Skew;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code element-off-pitch}: the holes of a punch that was measured drift so far from the element's pitch that its wire thicknesses do
 * not pass them all; {@code element-off-line}: they slant by more than wire and paper leave. Both are derived from the hole,
 * the wire thickness and the paper outside the hole (see {@link Skew}); where the wire thickness is not known nothing is said.
 */
final class WireThicknessRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        Skew skew = s.plan().skew();
        if (skew != null) {
            pitch(s.plan(), skew, s.measures(), findings);
            line(s.plan(), skew, s.measures(), findings);
        }
        return findings;
    }

    // an element put on in the middle is off by half of the drift at either end, and has half of the room there
    private static void pitch(Plan plan, Skew skew, Measures measures, List<Finding> findings) {
        Length drift = plan.row().stretch();
        Length room = plan.holeAlong().minus(skew.wireThickness()).max(Length.ZERO);
        if (drift.abs().compareTo(room) > 0) {
            findings.add(Finding.measured(
                    "element-off-pitch",
                    Severity.ERROR,
                    List.of(),
                    "The element does not go in. The measured row is "
                            + measures.fine(drift.abs())
                            + (drift.compareTo(Length.ZERO) > 0 ? " longer" : " shorter")
                            + " than the element's pitch from first to last hole. Holes of "
                            + measures.fine(plan.holeAlong()) + " leave a wire of "
                            + measures.fine(skew.wireThickness())
                            + " no more than " + measures.fine(room) + ".",
                    "Punch nothing with it. Have its pins checked as its manual says, then measure it again (testsheet,"
                            + " calibrate).",
                    drift.abs().mm(),
                    room.mm()));
        }
    }

    private static void line(Plan plan, Skew skew, Measures measures, List<Finding> findings) {
        HoleRow row = plan.row();
        Length slant = row.slant().abs();
        Length outside = plan.depth().outside();
        boolean open = slant.half().compareTo(outside) >= 0;
        if (!open && slant.compareTo(skew.rise()) <= 0) {
            return;
        }
        String end = row.slant().compareTo(Length.ZERO) > 0 ? "first" : "last";
        findings.add(Finding.measured(
                "element-off-line",
                open ? Severity.ERROR : Severity.WARNING,
                List.of(),
                "The measured row slants by " + measures.fine(slant) + " from first to last hole. "
                        + (open
                                ? "The " + end + " hole is cut open: only " + measures.fine(outside)
                                        + " of paper lies between holes and edge in the middle of the row."
                                : "Wire and paper leave " + measures.fine(skew.rise())
                                        + ". A leaf fed askew or the other way keeps the element out, or tears."),
                "Have the back stop set square to the pins as the manual says. Then measure the punch again (testsheet,"
                        + " calibrate).",
                slant.mm(),
                open ? outside.times(2).mm() : skew.rise().mm()));
    }
}
