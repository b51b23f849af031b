package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.job.BoundEdge;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code edge-unpunchable}: no hole row fits the bound edge; {@code pins-stuck}: a pin that would cut a half hole and cannot be pulled; {@code clear-margin-inside-punched-zone}:
 * the job lets live matter stand where the holes may fall; {@code hanger-pins-stuck}: a hole would be cut into the hanger's
 * gap; {@code feed-same-end}: a leaf fed turned over would miss the element; {@code closer-size}: the closer does not
 * take the element; {@code leaves-bind}: so much paper lies outside the holes that pages do not turn freely.
 */
final class PunchRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        List<Integer> stuck = s.plan().row().stuckPins();
        if (s.plan().row().holes().isEmpty()) {
            findings.add(Say.document(
                    "edge-unpunchable",
                    Severity.ERROR,
                    "No hole row fits the bound edge of "
                            + LengthText.both(s.plan().row().length())
                            + ": no page was held against holes, only against the clear margin.",
                    "Ask for the document at the size of its leaves, or give another bound-edge or trim."));
        }
        if (!stuck.isEmpty()) {
            findings.add(Say.document(
                    "pins-stuck",
                    Severity.ERROR,
                    pins(stuck)
                            + " would cut a half hole or leave too little paper at the end of the sheet, and cannot be"
                            + " pulled.",
                    "Punch this size on a machine whose end pins come out, or choose another punch, pitch or trim."));
        }
        element(s.plan()).ifPresent(findings::add);
        turning(s.plan(), s.stack()).ifPresent(findings::add);
        Gap gap = s.plan().row().gap();
        if (gap != null && !gap.stuckPins().isEmpty()) {
            findings.add(Say.document(
                    "hanger-pins-stuck",
                    Severity.ERROR,
                    pins(gap.stuckPins()) + " would cut holes into the hanger's gap, and cannot be pulled.",
                    "Punch it on a machine whose pins come out, or take a smaller hanger."));
        }
        if (s.plan().sameEndToGuide()) {
            boolean top = s.job().boundEdge() == BoundEdge.TOP;
            Length off = s.plan().row().offset();
            boolean slants = off.equals(s.plan().row().slant().abs());
            findings.add(new Finding(
                    "feed-same-end",
                    Severity.WARNING,
                    List.of(),
                    "The hole row " + (slants ? "slants, as the punch was measured" : "is not symmetric")
                            + ": the holes of a leaf fed turned over would lie " + off.inMm()
                            + " off those of the others, beyond the registration of "
                            + s.plan().registration().inMm() + ", and miss the element.",
                    "Put the " + (top ? "left end" : "head") + " to the side guide on every lift, covers too, or "
                            + (slants
                                    ? "have the back stop set square to the pins and measure it again (testsheet, calibrate)."
                                    : "centre the row by a guide that moves."),
                    off.mm(),
                    s.plan().registration().mm(),
                    null));
        }
        if (s.plan().clearMargin().compareTo(s.plan().punchedZone()) < 0) {
            findings.add(new Finding(
                    "clear-margin-inside-punched-zone",
                    Severity.WARNING,
                    List.of(),
                    "The clear margin of " + LengthText.both(s.plan().clearMargin())
                            + " lies inside the punched zone of "
                            + LengthText.both(s.plan().punchedZone()) + ", registration included.",
                    "Give a clear-margin beyond the punched zone, or leave it out for the pattern's own.",
                    s.plan().clearMargin().mm(),
                    s.plan().punchedZone().mm(),
                    null));
        }
        return findings;
    }

    private static Optional<Finding> element(Plan plan) {
        Element element = plan.element();
        ElementSizes sizes = plan.closerTakes();
        if (element == null || sizes == null || sizes.takes(element.size())) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "closer-size",
                Severity.ERROR,
                List.of(),
                "The stack needs an element of " + element.name() + ", and the closer of the punch " + plan.punch()
                        + " takes " + sizes.text() + ".",
                "Close it on a machine that takes it, take a thinner stock, or split the book into volumes.",
                element.size().mm(),
                sizes.largest().mm(),
                null));
    }

    private static Optional<Finding> turning(Plan plan, Stack stack) {
        Length below = plan.depth().turnsBelow();
        Element element = plan.element();
        if (below == null || element == null || !plan.depth().binds()) {
            return Optional.empty();
        }
        Length outside = plan.depth().outside();
        return Optional.of(new Finding(
                "leaves-bind",
                Severity.WARNING,
                List.of(),
                "Pages will not turn freely: " + outside.inMm()
                        + " of paper lies outside the holes, and the element of "
                        + element.name() + " leaves less than " + below.inMm() + " beside a stack of up to "
                        + stack.max().inMm() + ".",
                "Punch less deep (depth), or take a larger element (clearance).",
                outside.mm(),
                below.mm(),
                null));
    }

    private static String pins(List<Integer> pins) {
        return (pins.size() == 1 ? "Pin " : "Pins ") + PageLists.compact(pins);
    }
}
