package io.bindprep.day;

import io.bindprep.binding.Plan;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.run.BookPart;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Puts the jobs of a day in order. */
public final class DayPlanner {
    /** More than a day at any punch; our own, no source. */
    public static final int MOST_JOBS = 200;

    private DayPlanner() {}

    /** A job that can be punched, with the states of its volumes in order. */
    private record Ready(DayJob job, List<PunchState> states) {
        DayOrder.Ends ends() {
            return new DayOrder.Ends(states.get(0), states.get(states.size() - 1));
        }

        Changes within() {
            Changes sum = Changes.NONE;
            for (int i = 1; i < states.size(); i++) {
                sum = sum.plus(Changes.between(states.get(i - 1), states.get(i)));
            }
            return sum;
        }
    }

    /**
     * The day. A job with findings that fail it, without an element or without holes is held back.
     *
     * @param rates of the shop; null for no time and cost
     * @throws IllegalArgumentException where there is no job, or more than {@value #MOST_JOBS}
     */
    public static Day plan(List<DayJob> jobs, @Nullable Rates rates) {
        if (jobs.isEmpty() || jobs.size() > MOST_JOBS) {
            throw new IllegalArgumentException(jobs.size() + " jobs; a day has 1 to " + MOST_JOBS);
        }
        PunchState.Words words = words(jobs);
        List<Ready> ready = new ArrayList<>();
        List<DayJob> heldBack = new ArrayList<>();
        for (DayJob job : jobs) {
            List<PunchState> states = states(job.report(), words);
            if (states.isEmpty() || job.report().outcome() == Outcome.FINDINGS) {
                heldBack.add(job);
            } else {
                ready.add(new Ready(job, states));
            }
        }
        List<Integer> order = DayOrder.of(ready.stream().map(Ready::ends).toList());
        List<Ready> chosen = order.stream().map(ready::get).toList();
        List<DayJob> punched = chosen.stream().map(Ready::job).toList();
        List<Day.Entry> list = IntStream.range(0, chosen.size())
                .mapToObj(i -> entry(chosen.get(i), i == 0 ? null : chosen.get(i - 1)))
                .toList();
        Changes changes = changes(chosen);
        long strokes =
                punched.stream().mapToLong(j -> j.report().run().strokes()).sum();
        boolean least = new HashSet<>(ready.stream().map(Ready::ends).toList()).size() <= DayOrder.EXACT;
        Supplies supplies = SupplyCount.of(punched, rates);
        Quote quote = rates == null || list.isEmpty() ? null : QuoteMaker.quote(rates, list, changes, supplies);
        return new Day(list, heldBack, changes, changes(ready), least, supplies, strokes, quote, words.measures());
    }

    private static PunchState.Words words(List<DayJob> jobs) {
        Set<Measures> measures = jobs.stream().map(j -> j.report().measures()).collect(Collectors.toSet());
        List<Plan> plans = jobs.stream()
                .map(DayJob::report)
                .flatMap(r -> BookPart.parts(r.block(), r.stack(), r.plan(), r.split()).stream())
                .map(BookPart::plan)
                .filter(p -> !p.row().holes().isEmpty())
                .toList();
        return new PunchState.Words(
                measures.size() == 1 ? measures.iterator().next() : new Measures(Units.BOTH),
                plans.stream().map(Plan::edgeDistance).toList(),
                plans.stream().map(p -> p.row().holes().get(0).centre()).toList());
    }

    /** One state for each volume; empty where one cannot be punched and bound. */
    private static List<PunchState> states(Report report, PunchState.Words words) {
        List<PunchState> states = new ArrayList<>();
        boolean top = report.job().bindingEdge() == BindingEdge.TOP;
        for (BookPart part : BookPart.parts(report.block(), report.stack(), report.plan(), report.split())) {
            Plan plan = part.plan();
            if (plan.element() == null || plan.row().holes().isEmpty()) {
                return List.of();
            }
            states.add(PunchState.of(plan, top, words));
        }
        return states;
    }

    private static Day.Entry entry(Ready job, @Nullable Ready before) {
        PunchState now = job.states().get(0);
        PunchState stood = before == null ? null : before.ends().last();
        List<Day.Made> made = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            if (stood == null) {
                made.add(new Day.Made(setting, now.value(setting), null, now.said(setting), null));
            } else if (now.changes(setting, stood)) {
                made.add(new Day.Made(
                        setting, now.value(setting), stood.value(setting), now.said(setting), stood.said(setting)));
            }
        }
        return new Day.Entry(job.job(), made, job.within());
    }

    private static Changes changes(List<Ready> order) {
        Changes sum = Changes.NONE;
        for (int i = 0; i < order.size(); i++) {
            sum = sum.plus(order.get(i).within());
            if (i > 0) {
                sum = sum.plus(Changes.between(
                        order.get(i - 1).ends().last(), order.get(i).ends().first()));
            }
        }
        return sum;
    }
}
