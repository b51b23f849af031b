package io.bindprep.report.words;

import io.bindprep.check.Finding;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.check.Say;
import io.bindprep.check.Severity;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Capital;
import io.bindprep.wording.Counted;
import io.bindprep.wording.FileNames;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A message to the designer of a document: what to change, page by page, in plain words and the document's own units. The
 * sender adds greeting and name. It says nothing of cost, stock or machine.
 *
 * @param file the document's name without its folder
 * @param opening one sentence or two
 * @param pages what to move, pages alike together
 * @param beyond number of pages that are not listed
 * @param export what else to change, a sentence each
 */
public record ClientMessage(String file, String opening, List<Moves> pages, int beyond, List<String> export) {
    private static final int MOST_GROUPS = 60;
    private static final int MOST_MOVES = 6;
    private static final int MOST_RANGES = 12;
    private static final double MM_PER_INCH = 25.4;

    /**
     * Changes of some pages.
     *
     * @param title "Page 14", "Pages 40, 42"
     * @param first the first of these pages
     * @param lines what to move, how far, to which side
     */
    public record Moves(String title, int first, List<String> lines) {
        public Moves {
            lines = List.copyOf(lines);
        }
    }

    public ClientMessage {
        pages = List.copyOf(pages);
        export = List.copyOf(export);
    }

    /** The message on a report. */
    public static ClientMessage of(Report r) {
        boolean inches = inches(r);
        Map<List<String>, List<Integer>> alike = new LinkedHashMap<>();
        for (PageReport page : r.pages()) {
            List<String> lines = moves(r, page, inches);
            if (!lines.isEmpty()) {
                alike.computeIfAbsent(lines, k -> new ArrayList<>())
                        .add(page.facts().page());
            }
        }
        List<Moves> pages = new ArrayList<>();
        int beyond = 0;
        for (Map.Entry<List<String>, List<Integer>> group : alike.entrySet()) {
            List<Integer> numbers = group.getValue();
            if (pages.size() == MOST_GROUPS) {
                beyond += numbers.size();
            } else {
                pages.add(new Moves(Capital.first(pages(numbers)), numbers.get(0), group.getKey()));
            }
        }
        List<String> export = new ArrayList<>();
        for (Finding f : r.findings()) {
            if (f.accepted() == null
                    && (f.severity() != Severity.NOTE || f.rule().startsWith("background"))) {
                ClientAdvice.of(f.rule())
                        .ifPresent(advice -> export.add(
                                (f.pages().isEmpty() ? "" : Capital.first(pages(f.pages())) + ": ") + advice));
            }
        }
        String opening = alike.isEmpty() && export.isEmpty()
                ? "Nothing has to change in this file."
                : alike.isEmpty()
                        ? "Please change this before we print."
                        : "The pages get holes along the side that is bound. Nothing may stand closer to that side than "
                                + length(margin(r), inches) + ". Please change this before we print.";
        return new ClientMessage(name(r.document().file()), opening, pages, beyond, export);
    }

    /** The message on a file that could not be opened. */
    public static ClientMessage unreadable(String file, UnreadableInputException why) {
        boolean locked = why.reason() == UnreadableInputException.Reason.LOCKED
                || why.reason() == UnreadableInputException.Reason.ENCRYPTED_OTHERWISE;
        return new ClientMessage(
                name(file),
                locked
                        ? "The file is locked, so it could not be checked. Please send it without a password."
                        : "The file could not be opened, so it was not checked. Please export it again as a PDF and send it.",
                List.of(),
                0,
                List.of());
    }

    private static List<String> moves(Report r, PageReport page, boolean inches) {
        LinkedHashSet<String> lines = new LinkedHashSet<>();
        for (Hit hit : page.verdict().hits()) {
            Mark mark = hit.mark();
            String rule =
                    mark.kind().name().toLowerCase(Locale.ROOT) + (hit.verdict() == Verdict.HIT ? "-hit" : "-tight");
            double by = margin(r) - mark.nearMm();
            if (by > 0 && open(r, rule, page.facts().page())) {
                lines.add(line(mark, by, page.place().bindingEdge(), inches));
            }
        }
        List<String> all = List.copyOf(lines);
        if (all.size() <= MOST_MOVES) {
            return all;
        }
        List<String> few = new ArrayList<>(all.subList(0, MOST_MOVES));
        few.add("And " + (all.size() - MOST_MOVES) + " more things as near to this side.");
        return few;
    }

    // an accepted finding is nobody's to mend
    private static boolean open(Report r, String rule, int page) {
        return r.findings().stream()
                .anyMatch(f -> f.rule().equals(rule)
                        && f.accepted() == null
                        && f.pages().contains(page));
    }

    private static String line(Mark mark, double by, PageEdge edge, boolean inches) {
        String what = switch (mark.kind()) {
            case TEXT -> "the text" + (mark.words().isBlank() ? "" : " " + Say.quote(mark.words()));
            case LINE -> "the line";
            case ART -> "the drawing";
            case IMAGE -> "the picture";
            case ANNOTATION -> "the form field or comment";
            case BACKGROUND -> "the background";
        };
        String along = edge.upright() ? "from the top" : "from the left";
        return "Move " + what + " by " + length(by, inches) + " " + direction(edge) + ". It is "
                + place(mark.nearMm(), inches) + " from the " + side(edge) + " side, "
                + place(mark.alongStartMm(), inches) + " " + along + ".";
    }

    /** A place as the report says it. */
    private static String place(double mm, boolean inches) {
        return inches
                ? String.format(Locale.ROOT, "%.2f in", mm / MM_PER_INCH)
                : LengthText.mm(Math.round(mm * 10) / 10.0);
    }

    private static String side(PageEdge edge) {
        return edge.name().toLowerCase(Locale.ROOT);
    }

    private static String direction(PageEdge edge) {
        return switch (edge) {
            case LEFT -> "to the right";
            case RIGHT -> "to the left";
            case TOP -> "down";
            case BOTTOM -> "up";
        };
    }

    private static double margin(Report r) {
        return r.plan().bindingMargin().max(r.plan().holeZone()).mm();
    }

    // rounded up, so that moving it by what is said does
    private static String length(double mm, boolean inches) {
        return inches
                ? String.format(Locale.ROOT, "%.2f in", Math.ceil(mm / MM_PER_INCH * 100 - 1e-6) / 100)
                : LengthText.mm(Math.ceil(mm * 10 - 1e-6) / 10);
    }

    // sizes in whole eighths of an inch that are no whole millimetres were drawn in inches
    private static boolean inches(Report r) {
        return !r.pages().isEmpty()
                && List.of(
                                r.pages().get(0).facts().trimWidth(),
                                r.pages().get(0).facts().trimHeight())
                        .stream()
                        .allMatch(ClientMessage::inEighths);
    }

    private static boolean inEighths(Length side) {
        double eighths = side.mm() / MM_PER_INCH * 8;
        return Math.abs(eighths - Math.rint(eighths)) < 0.02 && Math.abs(side.mm() - Math.rint(side.mm())) > 0.05;
    }

    private static String pages(List<Integer> pages) {
        return PageLists.named(pages, MOST_RANGES);
    }

    private static String name(String file) {
        return Printable.with("", FileNames.last(file));
    }

    /** The pages that are not listed, in words; empty where all are. */
    public String more() {
        return beyond == 0 ? "" : Counted.of(beyond, "more page") + " need the same; ask us for the whole list.";
    }
}
