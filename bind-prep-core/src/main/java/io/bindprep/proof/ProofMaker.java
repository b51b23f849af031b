package io.bindprep.proof;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.wording.Measures;
import java.util.ArrayList;
import java.util.List;

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
        return new ProofPage(
                page.facts().page(),
                page.place().bindingEdge(),
                strip(page),
                new CommentMaker(plan, measures, page).comments());
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
}
