package io.bindprep.check;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * {@code unusual-turn}: backs would stand upside down when the book is turned; {@code reading-direction}: the PDF reads
 * right to left but the job binds left.
 */
final class RotationRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        Job job = s.job();
        List<Finding> findings = new ArrayList<>();
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        if (top && job.sides() == Sides.TWO) {
            findings.add(unusual(
                    "Bound at the top and printed head to head: every back is upside down when its leaf is turned over.",
                    "two-head-to-foot"));
        } else if (!top && job.sides() == Sides.TWO_HEAD_TO_FOOT) {
            findings.add(unusual(
                    "Bound at the " + job.bindingEdge().name().toLowerCase(Locale.ROOT)
                            + " and printed head to foot: every back is upside down when its leaf is turned.",
                    "two"));
        }
        if (s.document().rightToLeft() && job.bindingEdge() == BindingEdge.LEFT) {
            findings.add(Say.document(
                    "reading-direction",
                    Severity.NOTE,
                    "The PDF reads right to left, but the job binds it at the left.",
                    "If the book opens the other way, bind it at the right (binding-edge: right)."));
        }
        return findings;
    }

    private static Finding unusual(String message, String usual) {
        return Say.document(
                "unusual-turn",
                Severity.WARNING,
                message,
                "Print the backs the other way up (sides: " + usual + "), unless this is intended.");
    }
}
