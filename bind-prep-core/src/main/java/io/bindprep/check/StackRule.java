package io.bindprep.check;

import io.bindprep.binding.Element;
import io.bindprep.job.Job;
import io.bindprep.job.Method;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.util.List;
import java.util.Locale;

/**
 * {@code stack-too-thick}: no element of the method takes it; {@code pitch-too-thick}: none of the pitch that the job
 * asks for does; {@code stack-straddles}: the likely range lies across two elements.
 */
final class StackRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        if (s.plan().element() == null) {
            return List.of(tooThick(s));
        }
        List<Element> between = s.plan().straddles();
        return between.size() < 2 ? List.of() : List.of(straddles(s, between));
    }

    private static Finding tooThick(Situation s) {
        Job job = s.job();
        Length need = s.stack().max().plus(job.clearance());
        String method = job.binding().name().toLowerCase(Locale.ROOT);
        boolean forced = job.pitch() != null;
        String what = forced ? method + " of the pitch asked for, " + s.plan().pitchName() + "," : method;
        String message = "The stack is too thick: no element of " + what + " takes " + range(s.stack()) + " with "
                + LengthText.both(job.clearance()) + " clearance, " + LengthText.both(need) + " in all.";
        String split = "split the book into volumes, take a thinner stock"
                + (job.binding() == Method.COMB ? "." : ", or bind by another method (binding: comb goes thickest).");
        return new Finding(
                forced ? "pitch-too-thick" : "stack-too-thick",
                Severity.ERROR,
                List.of(),
                message,
                forced ? "Leave pitch out to let a wider one be chosen; else " + split : capital(split),
                need.mm(),
                null,
                null);
    }

    private static Finding straddles(Situation s, List<Element> between) {
        Element small = between.get(0);
        Element large = between.get(between.size() - 1);
        return new Finding(
                "stack-straddles",
                Severity.WARNING,
                List.of(),
                "The likely range of the stack, " + range(s.stack()) + ", lies across two elements: " + small.name()
                        + " would do for the thinnest, " + large.name() + " for the thickest.",
                "Measure a pack of the real stock, at least 2.5 mm of it, and give it as stock"
                        + " (for example \"25 sheets = 2.6 mm\") before buying elements.",
                s.stack().max().mm(),
                small.size().mm(),
                null);
    }

    private static String range(Stack stack) {
        return LengthText.both(stack.nominal()) + ", likely " + stack.min().inMm() + " to "
                + stack.max().inMm();
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
