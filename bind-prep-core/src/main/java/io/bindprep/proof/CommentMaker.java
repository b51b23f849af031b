package io.bindprep.proof;

import io.bindprep.binding.Plan;
import io.bindprep.check.PageReport;
import io.bindprep.check.Say;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Words for the marks of one page; those of one kind that stand close together, such as the lines of a table, share them. */
final class CommentMaker {
    /** Most room along the binding edge between marks that share a comment: what neighbouring holes cut belongs together. */
    private static final double TOGETHER_MM = 10;

    /** Marks that a reader still takes in at once. */
    private static final int MOST = 20;

    private final Plan plan;
    private final Measures measures;
    private final PageReport page;

    CommentMaker(Plan plan, Measures measures, PageReport page) {
        this.plan = plan;
        this.measures = measures;
        this.page = page;
    }

    /** Worst first. */
    List<Comment> comments() {
        List<Comment> comments = new ArrayList<>();
        String unchecked = page.verdict().unchecked();
        if (unchecked != null) {
            double length = page.facts().along(page.place().bindingEdge()).mm();
            comments.add(new Comment(
                    Verdict.UNCHECKED,
                    List.of(new Outline(false, 0, plan.bindingMargin().mm(), 0, length)),
                    "This page could not be read whole, so nothing on it is known to be clear of the holes: "
                            + unchecked + "."));
        }
        for (List<Hit> group : groups(page.verdict().hits())) {
            List<Outline> marks = group.stream()
                    .map(Hit::mark)
                    .map(m -> new Outline(false, m.nearMm(), m.farMm(), m.alongStartMm(), m.alongEndMm()))
                    .toList();
            comments.add(new Comment(group.get(0).verdict(), marks, words(group) + (comments.isEmpty() ? rest() : "")));
        }
        return comments;
    }

    /** Said once a page, so that nobody takes what has no frame for clear. */
    private String rest() {
        int most = PageVerdict.MOST_HITS;
        return page.verdict().hits().size() < most
                ? ""
                : " Of this page the " + most + " worst marks are framed; there may be more.";
    }

    /** Each in order along the binding edge; the group with the worst mark first. */
    private static List<List<Hit>> groups(List<Hit> worstFirst) {
        List<List<Hit>> groups = new ArrayList<>();
        worstFirst.stream()
                .collect(
                        Collectors.groupingBy(h -> List.of(h.verdict(), h.mark().kind())))
                .values()
                .forEach(alike -> groups.addAll(together(alike)));
        groups.sort(Comparator.comparingInt(
                g -> g.stream().mapToInt(worstFirst::indexOf).min().orElseThrow()));
        return groups;
    }

    private static List<List<Hit>> together(List<Hit> alike) {
        List<List<Hit>> groups = new ArrayList<>();
        double end = Double.NEGATIVE_INFINITY;
        List<Hit> group = new ArrayList<>();
        for (Hit hit : alike.stream()
                .sorted(Comparator.comparingDouble(h -> h.mark().alongStartMm()))
                .toList()) {
            if (hit.mark().alongStartMm() > end + TOGETHER_MM || group.size() == MOST) {
                group = new ArrayList<>();
                groups.add(group);
                end = hit.mark().alongEndMm();
            }
            group.add(hit);
            end = Math.max(end, hit.mark().alongEndMm());
        }
        return groups;
    }

    private String words(List<Hit> group) {
        boolean inHole = group.get(0).verdict() == Verdict.HIT;
        boolean several = group.size() > 1;
        Length near = Length.ofMeasuredMm(
                group.stream().mapToDouble(h -> h.mark().nearMm()).min().orElseThrow());
        Length limit = inHole ? plan.holeZone() : plan.bindingMargin();
        List<Integer> pins = group.stream()
                .flatMap(h -> h.pins().stream())
                .distinct()
                .sorted()
                .toList();
        double start =
                group.stream().mapToDouble(h -> h.mark().alongStartMm()).min().orElseThrow();
        double end =
                group.stream().mapToDouble(h -> h.mark().alongEndMm()).max().orElseThrow();
        return (inHole ? "The holes would cut " : "Too near the binding edge: ") + found(group) + ", "
                + (several ? "the nearest " : "") + measures.beside(near, limit) + " from the binding edge; "
                + (inHole ? "the holes, tolerance included, reach " : "minimum margin ")
                + measures.beside(limit, near) + ". At "
                + (pins.isEmpty() ? "" : Say.pins(pins) + ", ")
                + measures.marks(start, end) + " from "
                + (page.place().bindingEdge().upright() ? "the head" : "the left edge") + "."
                + (several ? quoted(group) : "");
    }

    private static String found(List<Hit> group) {
        Mark mark = group.get(0).mark();
        String noun = noun(mark.kind(), group.size() > 1);
        return group.size() > 1
                ? group.size() + " " + noun
                : noun + (mark.words().isBlank() ? "" : " " + Say.quote(mark.words()));
    }

    private static String quoted(List<Hit> group) {
        String all = group.stream()
                .map(h -> h.mark().words())
                .filter(w -> !w.isBlank())
                .map(Say::quote)
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : " Their words: " + all + ".";
    }

    private static String noun(MarkKind kind, boolean several) {
        return switch (kind) {
            case TEXT -> several ? "pieces of text" : "text";
            case LINE -> several ? "lines" : "line";
            case ART -> several ? "pieces of drawn art" : "drawn art";
            case IMAGE -> several ? "pictures" : "picture";
            case ANNOTATION -> several ? "annotations" : "annotation";
            case BACKGROUND -> several ? "backgrounds" : "background";
        };
    }
}
