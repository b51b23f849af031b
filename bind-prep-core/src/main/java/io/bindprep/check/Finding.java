package io.bindprep.check;

import io.bindprep.marks.Stage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing to know, repeats folded.
 *
 * @param rule stable id, "text-hit"
 * @param pages the pages it holds for, ascending; empty for the whole document
 * @param message what is so, where, with the measured value and the limit
 * @param remedy what to do
 * @param measuredMm the worst measured value in millimetres; null where the rule measures none
 * @param limitMm the limit it was held against, in millimetres; null where the rule has none
 * @param alongMm where the worst one begins and ends along the binding edge, in millimetres; null where that means nothing
 * @param seen how the worst mark was seen; null where the finding is of no mark
 * @param accepted who lets it pass and why; null where nobody does
 * @param since what became of it since an earlier check; null where none was compared with
 */
public record Finding(
        String rule,
        Severity severity,
        List<Integer> pages,
        String message,
        String remedy,
        @Nullable Double measuredMm,
        @Nullable Double limitMm,
        @Nullable Span alongMm,
        @Nullable Seen seen,
        @Nullable Accepted accepted,
        @Nullable Since since) {
    /** Reason why a finding may pass, and who says so. */
    public record Accepted(String reason, String who) {}

    /** Change since an earlier check. */
    public enum Change {
        /** Nothing like it was there. */
        NEW,
        /** It was there, and is on more pages, nearer the binding edge or of a worse severity. */
        WORSE,
        /** It was there, no better than now. */
        SAME
    }

    /**
     * Comparison with an earlier check.
     *
     * @param detail the way in which it is worse; empty where it is not
     */
    public record Since(Change change, String detail) {}

    /**
     * The worst mark of a finding on one page, in the binding-edge frame, millimetres.
     *
     * @param words the words it shows, shortened; empty for what is not text
     */
    public record Place(int page, double nearMm, double startMm, double endMm, String words) {}

    /** Place along the binding edge, in millimetres. */
    public record Span(double startMm, double endMm) {}

    /**
     * Evidence of the worst mark.
     *
     * @param stage which stage of the analysis decided
     * @param pins the pins whose holes meet it, ascending
     * @param words the words it shows, shortened, without control and direction marks; empty for what is not text
     * @param places the worst mark of each page, in the order of the finding's pages
     */
    public record Seen(Stage stage, List<Integer> pins, String words, List<Place> places) {
        public Seen {
            pins = List.copyOf(pins);
            places = List.copyOf(places);
        }
    }

    /** A finding without a number of its own. */
    static Finding of(String rule, Severity severity, List<Integer> pages, String message, String remedy) {
        return new Finding(rule, severity, pages, message, remedy, null, null, null, null, null, null);
    }

    /** A length or thickness held against a limit, at no place of a page. */
    static Finding measured(
            String rule,
            Severity severity,
            List<Integer> pages,
            String message,
            String remedy,
            double measuredMm,
            @Nullable Double limitMm) {
        return new Finding(rule, severity, pages, message, remedy, measuredMm, limitMm, null, null, null, null);
    }

    /** A length held against a limit, at a place along the binding edge. */
    static Finding measuredAlong(
            String rule,
            Severity severity,
            List<Integer> pages,
            String message,
            String remedy,
            double measuredMm,
            @Nullable Double limitMm,
            Span alongMm) {
        return new Finding(rule, severity, pages, message, remedy, measuredMm, limitMm, alongMm, null, null, null);
    }

    /** A mark held against a limit. */
    static Finding ofMark(
            String rule,
            Severity severity,
            List<Integer> pages,
            String message,
            String remedy,
            double measuredMm,
            @Nullable Double limitMm,
            Span alongMm,
            Seen seen) {
        return new Finding(rule, severity, pages, message, remedy, measuredMm, limitMm, alongMm, seen, null, null);
    }

    /** The same finding, let pass. */
    Finding accepted(Accepted by) {
        return new Finding(rule, severity, pages, message, remedy, measuredMm, limitMm, alongMm, seen, by, since);
    }

    /** The same finding, compared with an earlier check. */
    Finding since(Since earlier) {
        return new Finding(
                rule, severity, pages, message, remedy, measuredMm, limitMm, alongMm, seen, accepted, earlier);
    }

    /** Returns true if it is of this severity and nobody lets it pass. */
    public boolean counts(Severity as) {
        return severity == as && accepted == null;
    }

    public Finding {
        pages = List.copyOf(pages);
    }
}
