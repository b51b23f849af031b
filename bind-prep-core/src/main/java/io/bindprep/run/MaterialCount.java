package io.bindprep.run;

import io.bindprep.binding.Element;
import io.bindprep.binding.Plan;
import io.bindprep.block.Leaf;
import io.bindprep.job.Job;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Counts what a run uses up. */
final class MaterialCount {
    private final Job job;
    private final List<Bound> parts;
    private final List<String> because = new ArrayList<>();

    private MaterialCount(Job job, List<Bound> parts) {
        this.job = job;
        this.parts = parts;
    }

    static Materials of(Job job, Length width, Length height, List<Bound> parts) {
        return new MaterialCount(job, parts).materials(width, height);
    }

    private Materials materials(Length width, Length height) {
        List<StockNeed> stocks = stocks();
        List<ElementNeed> elements = elements();
        BigDecimal copy = copyG();
        BigDecimal run = copy == null ? null : copy.multiply(BigDecimal.valueOf(job.copies()));
        return new Materials(job.copies(), width, height, stocks, elements, copy, run, because);
    }

    private record Key(Use use, Stock stock, boolean printed) {}

    private List<StockNeed> stocks() {
        Map<Key, Integer> counts = new LinkedHashMap<>();
        for (Bound part : parts) {
            for (Leaf leaf : part.block().leaves()) {
                counts.merge(new Key(Use.of(leaf), leaf.stock(), leaf.printed()), 1, Integer::sum);
            }
        }
        List<StockNeed> needs = new ArrayList<>();
        counts.forEach((key, count) -> {
            long net = Math.multiplyExact((long) count, (long) job.copies());
            needs.add(new StockNeed(
                    key.use(),
                    key.stock(),
                    key.printed(),
                    count,
                    net,
                    job.supply().overs().on(net)));
        });
        because.add("overs of each stock and use: "
                + LengthText.plain(job.supply().overs().percent(), 3)
                + " %, at least " + job.supply().overs().least() + " ("
                + job.supply().overs().source() + ")");
        return needs;
    }

    private record Size(String name, int loops, Length length) {}

    private List<ElementNeed> elements() {
        Map<Size, Long> counts = new LinkedHashMap<>();
        for (Bound part : parts) {
            Plan plan = part.plan();
            Element element = plan.element();
            if (element == null || plan.row().holes().isEmpty()) {
                because.add("no element is counted: none takes the stack, or no hole row fits its edge");
                return List.of();
            }
            counts.merge(new Size(element.name(), plan.loops(), length(plan)), (long) job.copies(), Long::sum);
        }
        List<ElementNeed> needs = new ArrayList<>();
        counts.forEach((size, pieces) -> needs.add(new ElementNeed(
                job.binding(),
                size.name(),
                size.loops(),
                size.length(),
                pieces,
                job.supply().overs().share(pieces))));
        because.add("spare elements by the percentage of the overs alone");
        return needs;
    }

    private static Length length(Plan plan) {
        int last = plan.row().holes().size() - 1;
        return plan.row()
                .holes()
                .get(last)
                .axis()
                .minus(plan.row().holes().get(0).axis())
                .plus(plan.pitch());
    }

    private @Nullable BigDecimal copyG() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Bound part : parts) {
            BigDecimal grams = part.stack().weightG();
            if (grams == null) {
                because.add("no weight: the grammage of a stock is not known");
                return null;
            }
            sum = sum.add(grams);
        }
        because.add("weights are of paper, board and film at the size of the leaf, holes not taken off; the element is"
                + " not weighed");
        return sum;
    }
}
