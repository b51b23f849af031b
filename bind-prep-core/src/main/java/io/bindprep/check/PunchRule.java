package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Limits;
import io.bindprep.job.BindingEdge;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * {@code edge-unpunchable}: no hole row fits the binding edge; {@code pins-fixed}: a pin that would cut a half hole and cannot be pulled; {@code binding-margin-inside-hole-zone}:
 * the job allows print where the holes may fall; {@code hanger-at-side}: a hanger on a book
 * that is not bound at the top; {@code hanger-pins-fixed}: a hole would be cut into the hanger's
 * gap; {@code feed-same-end}: a leaf fed turned over would miss the element; {@code closer-size}: the closer does not
 * take the element; {@code pages-turn-stiffly}: so much paper lies outside the holes that pages do not turn freely;
 * {@code paper-outside-long}: so much that it does not lie inside the closed element; {@code paper-outside-short}: so little
 * that it tears.
 */
final class PunchRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        List<Integer> fixed = s.plan().row().fixedPins();
        if (s.plan().row().holes().isEmpty()) {
            findings.add(Say.document(
                    "edge-unpunchable",
                    Severity.ERROR,
                    "No hole row fits the binding edge of "
                            + s.measures().exact(s.plan().row().length())
                            + ". The pages were checked against the " + Terms.BINDING_MARGIN + " only.",
                    "Ask for the document at the size of its leaves, or correct the job (binding-edge, trim)."));
        }
        if (!fixed.isEmpty()) {
            findings.add(Say.document(
                    "pins-fixed",
                    Severity.ERROR,
                    pins(fixed)
                            + " would cut a half hole or leave too little paper at the end of the leaf. "
                            + (fixed.size() == 1 ? "It is fixed." : "They are fixed."),
                    "Use a punch with removable end pins, or another pitch or size (punch, pitch, trim)."));
        }
        element(s.plan()).ifPresent(findings::add);
        turning(s, measured(s.block())).ifPresent(findings::add);
        outside(s.plan(), s.job().catalogue().limits(), s.measures()).ifPresent(findings::add);
        Gap gap = s.plan().row().gap();
        if (gap != null && s.job().bindingEdge() != BindingEdge.TOP) {
            findings.add(Say.document(
                    "hanger-at-side",
                    Severity.WARNING,
                    "A hanger is asked for on a book bound at the "
                            + s.job().bindingEdge().name().toLowerCase(Locale.ROOT)
                            + ". On the wall its pages lie on their side.",
                    "Bind it at the top (binding-edge: top), or leave the hanger out."));
        }
        if (gap != null && !gap.fixedPins().isEmpty()) {
            findings.add(Say.document(
                    "hanger-pins-fixed",
                    Severity.ERROR,
                    pins(gap.fixedPins()) + " would cut holes into the gap for the hanger. "
                            + (gap.fixedPins().size() == 1 ? "It is fixed." : "They are fixed."),
                    "Use a punch with removable pins, or a smaller hanger."));
        }
        if (s.plan().sameEndToGuide()) {
            boolean top = s.job().bindingEdge() == BindingEdge.TOP;
            Length off = s.plan().row().offset();
            boolean slants = off.equals(s.plan().row().slant().abs());
            findings.add(Finding.measured(
                    "feed-same-end",
                    Severity.WARNING,
                    List.of(),
                    "The hole row " + (slants ? "slants, as the punch was measured" : "is not symmetric")
                            + ". The holes of a leaf fed the other way would lie "
                            + s.measures().beside(off, s.plan().punchingTolerance())
                            + " off the others and miss the element; " + Terms.PUNCHING_TOLERANCE + " "
                            + s.measures().beside(s.plan().punchingTolerance(), off) + ".",
                    "Put the " + (top ? "left end" : "head") + " to the side guide on every lift, covers too, or "
                            + (slants
                                    ? "have the back stop set square to the pins. Then measure the punch again (testsheet,"
                                            + " calibrate)."
                                    : "use an adjustable side guide."),
                    off.mm(),
                    s.plan().punchingTolerance().mm()));
        }
        if (s.plan().bindingMargin().compareTo(s.plan().holeZone()) < 0) {
            findings.add(Finding.measured(
                    "binding-margin-inside-hole-zone",
                    Severity.WARNING,
                    List.of(),
                    "The " + Terms.BINDING_MARGIN + " of "
                            + s.measures()
                                    .beside(s.plan().bindingMargin(), s.plan().holeZone())
                            + " is narrower than the " + Terms.HOLE_ZONE + "; the holes, tolerance included, reach "
                            + s.measures().beside(s.plan().holeZone(), s.plan().bindingMargin()) + ".",
                    "Use a wider margin, or that of the pattern (binding-margin).",
                    s.plan().bindingMargin().mm(),
                    s.plan().holeZone().mm()));
        }
        return findings;
    }

    private static Optional<Finding> element(Plan plan) {
        Element element = plan.element();
        ElementSizes sizes = plan.closerTakes();
        if (element == null || sizes == null || sizes.takes(element.size())) {
            return Optional.empty();
        }
        return Optional.of(Finding.measured(
                "closer-size",
                Severity.ERROR,
                List.of(),
                "The stack needs an element of " + element.name() + ". The closer of the punch " + plan.punch()
                        + " takes " + sizes.text() + ".",
                "Close it on a machine that takes it, use a thinner stock, or split the book into volumes.",
                element.size().mm(),
                sizes.largest().mm()));
    }

    private static Optional<Finding> turning(Situation s, boolean measured) {
        Plan plan = s.plan();
        Stack stack = s.stack();
        Measures measures = s.measures();
        Length below = plan.depth().turnsBelow();
        Element element = plan.element();
        if (below == null
                || element == null
                || (!plan.depth().binds() && (measured || !bindsAtThickest(plan, stack)))) {
            return Optional.empty();
        }
        Length outside = plan.depth().outside();
        String remedy = "Punch nearer the edge (depth), or use a larger element (clearance).";
        if (plan.depth().binds() && !plan.paperLiesInside(stack.min())) {
            return Optional.of(Finding.measured(
                    "paper-outside-long",
                    Severity.ERROR,
                    List.of(),
                    "The element does not close. " + measures.mark(outside)
                            + " of paper lies between holes and edge, more than the " + element.name()
                            + " element has room for beside the stack.",
                    remedy,
                    outside.mm(),
                    below.mm()));
        }
        return Optional.of(Finding.measured(
                "pages-turn-stiffly",
                plan.depth().binds() ? Severity.WARNING : Severity.NOTE,
                List.of(),
                plan.depth().binds()
                        ? "Pages turn stiffly. " + measures.beside(outside, below)
                                + " of paper lies between holes and edge; the " + element.name()
                                + " element takes less than " + measures.beside(below, outside) + " beside the stack."
                        : "Pages may turn stiffly. If the stack is "
                                + measures.thickness(stack.max()) + " thick, the " + element.name()
                                + " element has no room for "
                                + measures.mark(outside) + " of paper between holes and edge.",
                remedy,
                outside.mm(),
                below.mm()));
    }

    /** Returns true if every leaf but the covers was measured: of its range nothing is left to say. */
    private static boolean measured(Block block) {
        return block.leaves().stream()
                .filter(leaf -> !leaf.cover())
                .allMatch(leaf -> leaf.stock().measured());
    }

    /** Returns true if pages turn on the likely stack, but not on the thickest; one that does not close is told by itself. */
    private static boolean bindsAtThickest(Plan plan, Stack stack) {
        return !plan.chosen().mayNotClose() && !plan.paperLiesInside(stack.max());
    }

    private static Optional<Finding> outside(Plan plan, Limits limits, Measures measures) {
        Length outside = plan.depth().outside();
        Limits.Limit least = limits.paperOutsideError();
        Limits.Limit near = limits.paperOutsideWarning();
        if (outside.compareTo(near.length()) >= 0) {
            return Optional.empty();
        }
        boolean error = outside.compareTo(least.length()) < 0;
        Limits.Limit limit = error ? least : near;
        return Optional.of(Finding.measured(
                "paper-outside-short",
                error ? Severity.ERROR : Severity.WARNING,
                List.of(),
                "Only " + measures.beside(outside, limit.length())
                        + " of paper lies between the binding edge and the holes, less than "
                        + measures.beside(limit.length(), outside) + " (" + limit.source() + "). "
                        + (error ? "The leaves tear out." : "Leaves tear easily."),
                "Punch deeper (depth), or measure the punch's stop again.",
                outside.mm(),
                limit.length().mm()));
    }

    private static String pins(List<Integer> pins) {
        return (pins.size() == 1 ? "Pin " : "Pins ") + PageLists.compact(pins);
    }
}
