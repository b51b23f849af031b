package io.bindprep.check;

import io.bindprep.binding.ElementChoice;
import io.bindprep.binding.PackMeasure;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.wording.Capital;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * {@code stack-too-thick}: no element of the method takes it; {@code pitch-too-thick}: none of the pitch that the job
 * asks for does; {@code element-unknown}: nothing is known of its sizes; {@code stack-straddles}: the likely range lies across two
 * elements; {@code stack-may-not-close}: at its thickest it closes in none of them; {@code element-near-limit}: charts differ
 * whether the element takes it.
 */
final class StackRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        if (s.plan().element() == null) {
            return List.of(noElement(s));
        }
        List<Finding> findings = new ArrayList<>();
        ElementChoice chosen = s.plan().chosen();
        if (chosen.mayNotClose()) {
            findings.add(mayNotClose(s));
        }
        if (chosen.straddles().size() > 1) {
            findings.add(straddles(s, chosen.straddles()));
        } else if (chosen.nearLimit()) {
            findings.add(nearLimit(s));
        }
        return findings;
    }

    private static Finding mayNotClose(Situation s) {
        Element element = Objects.requireNonNull(s.plan().element());
        return Finding.measured(
                "stack-may-not-close",
                Severity.WARNING,
                List.of(),
                "The stack may be too thick for the " + element.name() + " element: it may measure up to "
                        + s.measures().thickness(s.stack().max()) + ".",
                pack(s) + " If the stack is thicker than the element, use the next size.",
                s.stack().max().mm(),
                element.size().mm());
    }

    private static Finding nearLimit(Situation s) {
        Element element = Objects.requireNonNull(s.plan().element());
        return Say.document(
                "element-near-limit",
                Severity.NOTE,
                "The " + element.name() + " element is near its limit: the stack is as thick as "
                        + s.plan().chosen().sheets() + " sheets of 20 lb bond.",
                "Bind one copy first. If its pages turn stiffly, use the next size.");
    }

    private static Finding noElement(Situation s) {
        List<Elements.Entry> sold = s.job().catalogue().patterns().byId(s.plan().pattern()).stream()
                .flatMap(p -> s.job().catalogue().elements().of(p).stream())
                .toList();
        return sold.isEmpty() ? unknown(s) : tooThick(s, sold.get(sold.size() - 1));
    }

    private static Finding unknown(Situation s) {
        return Say.document(
                "element-unknown",
                Severity.ERROR,
                "No element sizes are known for " + s.plan().pattern()
                        + ", so no element could be chosen for the stack (" + range(s) + ").",
                "Try an element on a dummy of the real stock, or choose another pitch (pitch).");
    }

    private static Finding tooThick(Situation s, Elements.Entry largest) {
        Job job = s.job();
        String method = job.binding().name().toLowerCase(Locale.ROOT);
        boolean forced = job.pitch() != null || job.punch() != null;
        Integer sheets = largest.sheets();
        boolean bySize = sheets == null || job.bySize();
        Length need = bySize
                ? s.stack().deciding(job.bySize()).plus(job.allowance())
                : s.stack().nominal();
        String limit = bySize
                ? "; the largest is " + largest.element().name() + ". With clearance ("
                        + s.measures().exact(job.allowance()) + ") the stack needs "
                        + s.measures().up(need) + "."
                : "; the largest, " + largest.element().name() + ", takes " + sheets + " sheets of 20 lb bond.";
        String message = "The stack is too thick: " + range(s) + ". No " + method + " element of pitch "
                + s.plan().pitchName() + " takes it" + limit;
        String split = SplitAdvice.of(s.split())
                + (job.binding() == Method.COMB
                        ? "."
                        : ". Or bind by another method; combs take the thickest stacks (binding).");
        return Finding.measured(
                forced ? "pitch-too-thick" : "stack-too-thick",
                Severity.ERROR,
                List.of(),
                message,
                forced ? "Allow another pitch (pitch, punch). Otherwise " + split : Capital.first(split),
                need.mm(),
                bySize ? largest.element().size().mm() : null);
    }

    private static Finding straddles(Situation s, List<Element> between) {
        Element small = between.get(0);
        Element large = between.get(between.size() - 1);
        return Finding.measured(
                "stack-straddles",
                Severity.NOTE,
                List.of(),
                "The stack falls between two element sizes: " + range(s) + ". " + small.name() + " takes the thinnest, "
                        + large.name() + " the thickest.",
                pack(s) + " Give the measured pack before you buy elements (stock: 25 sheets = 2.6 mm).",
                s.stack().max().mm(),
                s.plan().chosen().measure() == null
                        ? null
                        : Double.valueOf(
                                s.plan().chosen().measure().stackAtMost().mm()));
    }

    // at least 2.5 mm of stock, as calipers are true to a few hundredths
    private static String pack(Situation s) {
        PackMeasure measure = s.plan().chosen().measure();
        if (measure == null) {
            return "Measure a pack of the real stock, at least 2.5 mm of it.";
        }
        boolean others = measure.packAtMost().compareTo(Length.ZERO) <= 0;
        return "Measure a pack of " + measure.sheets() + " sheets of " + measure.stock() + ". "
                + (others
                        ? "The smaller size takes a stack of " + s.measures().down(measure.stackAtMost()) + " at most."
                        : "If the pack measures " + s.measures().down(measure.packAtMost())
                                + " or less, use the smaller size.");
    }

    private static String range(Situation s) {
        Stack stack = s.stack();
        return s.measures().thickness(stack.nominal()) + ", range "
                + s.measures().thicknesses(stack.min(), stack.max());
    }
}
