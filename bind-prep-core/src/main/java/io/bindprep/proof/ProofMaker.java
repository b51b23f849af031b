package io.bindprep.proof;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.check.Say;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Verdict;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lays out what is drawn over each page of a report. */
public final class ProofMaker {
    private final Plan plan;
    private final Measures measures;

    private ProofMaker(Report report) {
        this.plan = report.plan();
        this.measures = report.measures();
    }

    /** Every page in order. */
    public static List<ProofPage> of(Report report) {
        ProofMaker maker = new ProofMaker(report);
        return report.pages().stream().map(maker::page).toList();
    }

    private ProofPage page(PageReport page) {
        return new ProofPage(page.facts().page(), page.place().bindingEdge(), strip(page), comments(page));
    }

    private Strip strip(PageReport page) {
        double length = page.facts().along(page.place().bindingEdge()).mm();
        double centre = plan.edgeDistance().mm();
        double across = plan.holeAcross().mm() / 2;
        double along = plan.holeAlong().mm() / 2;
        double reg = plan.punchingTolerance().mm();
        List<Outline> holes = new ArrayList<>();
        List<Outline> reach = new ArrayList<>();
        for (Hole hole : plan.row().holes()) {
            double at = page.place().mirrored()
                    ? length - hole.centre().mm()
                    : hole.centre().mm();
            holes.add(new Outline(plan.round(), centre - across, centre + across, at - along, at + along));
            reach.add(new Outline(
                    plan.round(), centre - across - reg, centre + across + reg, at - along - reg, at + along + reg));
        }
        return new Strip(length, plan.holeZone().mm(), plan.bindingMargin().mm(), holes, reach);
    }

    private List<Comment> comments(PageReport page) {
        List<Comment> comments = new ArrayList<>();
        String unchecked = page.verdict().unchecked();
        if (unchecked != null) {
            double length = page.facts().along(page.place().bindingEdge()).mm();
            comments.add(new Comment(
                    Verdict.UNCHECKED,
                    new Outline(false, 0, plan.bindingMargin().mm(), 0, length),
                    "This page could not be read whole, so nothing on it is known to be clear of the holes: "
                            + unchecked + "."));
        }
        for (Hit hit : page.verdict().hits()) {
            Mark m = hit.mark();
            comments.add(new Comment(
                    hit.verdict(),
                    new Outline(false, m.nearMm(), m.farMm(), m.alongStartMm(), m.alongEndMm()),
                    words(hit, page)));
        }
        return comments;
    }

    private String words(Hit hit, PageReport page) {
        Mark m = hit.mark();
        boolean inHole = hit.verdict() == Verdict.HIT;
        String kind = m.kind().name().toLowerCase(Locale.ROOT);
        // the document's own words: no control or direction mark may pass
        String words = Printable.line(m.words());
        String found = kind + (words.isEmpty() ? "" : " \"" + words + "\"");
        Length near = Length.ofMeasuredMm(m.nearMm());
        Length limit = inHole ? plan.holeZone() : plan.bindingMargin();
        return (inHole ? "The holes would cut " : "Too near the binding edge: ") + found + ", "
                + measures.beside(near, limit) + " from the binding edge; "
                + (inHole ? "the holes, tolerance included, reach " : "minimum margin ")
                + measures.beside(limit, near) + ". At "
                + (hit.pins().isEmpty() ? "" : Say.pins(hit.pins()) + ", ")
                + measures.marks(m.alongStartMm(), m.alongEndMm()) + " from "
                + (page.place().bindingEdge().upright() ? "the head" : "the left edge") + ".";
    }
}
