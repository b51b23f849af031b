package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Plans the run of a job: materials, lifts and steps. */
public final class RunPlanner {
    private RunPlanner() {}

    /**
     * The run.
     *
     * @param sizes how large each leaf is cut
     * @param parts the copy, or its volumes in order
     */
    public static Run plan(Job job, LeafSizes sizes, List<BookPart> parts) {
        List<Lift> lifts = lifts(parts);
        List<Fold> folds = parts.stream()
                .flatMap(p -> FoldFinder.folds(job, p.block(), p.plan(), sizes).stream())
                .toList();
        Materials materials = MaterialCount.of(job, sizes, parts);
        List<Long> strokes = IntStream.range(0, parts.size())
                .mapToObj(i -> strokes(job, parts.get(i), ofVolume(lifts, i + 1)))
                .toList();
        long all = strokes.stream().reduce(0L, Math::addExact);
        List<Plan> plans = parts.stream().map(BookPart::plan).toList();
        StepValues values = new StepValues(job, materials, folds, plans, lifts, all, 0);
        List<List<Step>> volumes = parts.size() == 1
                ? List.of()
                : IntStream.range(0, parts.size())
                        .mapToObj(
                                i -> StepOrder.ofVolume(values.ofVolume(i + 1, strokes.get(i)), i + 1 == parts.size()))
                        .toList();
        return new Run(
                materials,
                folds,
                lifts,
                all,
                StepOrder.of(values),
                volumes,
                List.of(Caution.MANUAL, Caution.WASTE_FIRST));
    }

    static List<Lift> ofVolume(List<Lift> lifts, int volume) {
        return lifts.stream().filter(l -> l.volume() == volume).toList();
    }

    /** Strokes for all copies of a part: leaves copy by copy, covers of several copies together, each stock in lifts of its own. */
    private static long strokes(Job job, BookPart part, List<Lift> lifts) {
        long apart = Math.multiplyExact((long) lifts.size(), (long) job.copies());
        Punch punch = job.catalogue().punches().byId(part.plan().punch()).orElse(null);
        if (job.copies() == 1 || punch == null) {
            return apart;
        }
        long body = lifts.stream().filter(l -> !l.cover()).count();
        Map<Stock, Long> covers = new LinkedHashMap<>();
        part.block().leaves().stream()
                .filter(Leaf::cover)
                .forEach(l -> covers.merge(l.stock(), (long) job.copies(), Math::addExact));
        long strokes = Math.multiplyExact(body, (long) job.copies());
        for (Map.Entry<Stock, Long> cover : covers.entrySet()) {
            long most = most(punch.limit(cover.getKey().kind()), cover.getKey());
            strokes = Math.addExact(strokes, (cover.getValue() + most - 1) / most);
        }
        return Math.min(apart, strokes);
    }

    /** Sheets of a stock in a lift; one at least. */
    private static long most(LiftLimit limit, Stock stock) {
        long thick = limit.thickness()
                .micrometres()
                .divide(stock.caliperUm(), 0, RoundingMode.FLOOR)
                .longValueExact();
        Integer sheets = limit.sheets();
        return Math.max(1, sheets == null ? thick : Math.min(thick, sheets));
    }

    private static List<Lift> lifts(List<BookPart> parts) {
        List<Lift> lifts = new ArrayList<>();
        for (int volume = 1; volume <= parts.size(); volume++) {
            BookPart part = parts.get(volume - 1);
            int first = 0;
            for (int leaves : part.plan().lifts()) {
                lifts.add(lift(volume, first, part.block().leaves().subList(first, first + leaves)));
                first += leaves;
            }
        }
        return lifts;
    }

    private static Lift lift(int volume, int first, List<Leaf> leaves) {
        BigDecimal thick = BigDecimal.ZERO;
        Integer firstPage = null;
        Integer lastPage = null;
        for (Leaf leaf : leaves) {
            thick = thick.add(leaf.nominalUm());
            firstPage = firstPage == null ? firstOf(leaf.recto(), leaf.verso()) : firstPage;
            Integer last = firstOf(leaf.verso(), leaf.recto());
            lastPage = last == null ? lastPage : last;
        }
        Leaf one = leaves.get(0);
        Stock.Kind kind = one.stock().kind();
        return new Lift(
                volume, first + 1, leaves.size(), one.cover(), kind, Length.ofMicrometres(thick), firstPage, lastPage);
    }

    private static @Nullable Integer firstOf(@Nullable Integer one, @Nullable Integer other) {
        return one != null ? one : other;
    }
}
