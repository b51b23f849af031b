package io.bindprep.report.text;

import io.bindprep.proof.ProofReport;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Terms;

/** Writes what became of a proof as a few lines of text. */
public final class ProofText {
    private static final int MOST_RANGES = 8;

    private ProofText() {}

    /** The proof as lines that end in a line feed. */
    public static String write(ProofReport proof, TextStyle style) {
        Lines lines = new Lines(style);
        switch (proof.outcome()) {
            case WRITTEN -> written(proof, lines);
            case NOTHING_FLAGGED ->
                lines.paragraph(Lines.Tint.GOOD, "Nothing written: every page is clear, so none is flagged.");
            case REFUSED -> {
                lines.paragraph(Lines.Tint.BAD, "Nothing written.");
                proof.refusals().forEach(why -> lines.entry(Lines.Tint.BAD, "Why", why));
            }
        }
        lines.blank();
        lines.entry(Lines.Tint.NONE, "Check", VerdictSentence.of(proof.report()));
        proof.notes().forEach(note -> lines.entry(Lines.Tint.CARE, "Note", note));
        return lines.toString();
    }

    private static void written(ProofReport proof, Lines lines) {
        boolean all = proof.pages().size() == proof.report().pages().size();
        lines.paragraph(
                Lines.Tint.GOOD,
                "Proof written: " + proof.output() + ", "
                        + (all
                                ? Counted.of(proof.pages().size(), "page")
                                : "page" + (proof.pages().size() == 1 ? " " : "s ")
                                        + PageLists.compact(proof.pages(), MOST_RANGES))
                        + ", " + Counted.of(proof.comments(), "comment") + ".");
        lines.blank();
        lines.entry(
                Lines.Tint.NONE,
                "Layers",
                "binding: holes, binding: " + Terms.BINDING_MARGIN + ", binding: hits; shown, not printed.");
        lines.entry(Lines.Tint.NONE, "Use", "For looking at. Print from the client's file, never from a proof.");
    }
}
