package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.catalogue.Element;
import io.bindprep.job.Job;
import io.bindprep.job.PressSheet;
import io.bindprep.paper.Sheet;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Counts what a run uses up. */
final class MaterialCount {
    private final Job job;
    private final LeafSizes sizes;
    private final List<BookPart> parts;
    private final List<MaterialReason> because = new ArrayList<>();

    private MaterialCount(Job job, LeafSizes sizes, List<BookPart> parts) {
        this.job = job;
        this.sizes = sizes;
        this.parts = parts;
    }

    static Materials of(Job job, LeafSizes sizes, List<BookPart> parts) {
        return new MaterialCount(job, sizes, parts).materials();
    }

    private Materials materials() {
        List<StockNeed> stocks = stocks();
        List<ElementNeed> elements = elements();
        BigDecimal copy = copyG();
        BigDecimal run = copy == null ? null : copy.multiply(BigDecimal.valueOf(job.copies()));
        return new Materials(job.copies(), sizes.width(), sizes.height(), stocks, elements, copy, run, because);
    }

    private record Key(Use use, boolean printed, Sheet sheet) {
        // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
        @Override
        public boolean equals(@Nullable Object o) {
            return o instanceof Key other && use == other.use && printed == other.printed && sheet.equals(other.sheet);
        }

        @Override
        public int hashCode() {
            return Objects.hash(use, printed, sheet);
        }
    }

    private List<StockNeed> stocks() {
        Map<Key, Integer> counts = new LinkedHashMap<>();
        for (BookPart part : parts) {
            for (Leaf leaf : part.block().leaves()) {
                counts.merge(new Key(Use.of(leaf), leaf.printed(), sizes.of(leaf)), 1, Integer::sum);
            }
        }
        List<StockNeed> needs = new ArrayList<>();
        counts.forEach((key, count) -> needs.add(need(key, count)));
        because.add(new MaterialReason.OversOfEach(job.supply().overs()));
        return needs;
    }

    private StockNeed need(Key key, int leaves) {
        Sheet sheet = key.sheet();
        PressSheet large = key.printed() ? job.supply().pressSheet() : null;
        int up = large == null ? 0 : Imposer.up(large, sheet.width(), sheet.height());
        Press press = null;
        long sheets = Math.multiplyExact((long) leaves, (long) job.copies());
        if (large != null && up > 0) {
            long stacked = Imposer.cutAndStack(leaves, job.copies(), up);
            long repeated = Imposer.stepAndRepeat(leaves, job.copies(), up);
            sheets = Math.min(stacked, repeated);
            press = new Press(
                    large, up, stacked <= repeated ? Press.Imposition.CUT_AND_STACK : Press.Imposition.STEP_AND_REPEAT);
            because.add(new MaterialReason.OnPressSheet(sheet.width(), sheet.height(), large, up, stacked, repeated));
        } else if (large != null) {
            because.add(new MaterialReason.NotOnPressSheet(sheet.width(), sheet.height(), large));
        }
        return new StockNeed(
                key.use(),
                sheet.stock(),
                key.printed(),
                sheet.width(),
                sheet.height(),
                leaves,
                sheets,
                job.supply().overs().on(sheets),
                press);
    }

    private record Size(String name, int loops, Length length) {
        // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
        @Override
        public boolean equals(@Nullable Object o) {
            return o instanceof Size other
                    && name.equals(other.name)
                    && loops == other.loops
                    && length.equals(other.length);
        }

        @Override
        public int hashCode() {
            return Objects.hash(name, loops, length);
        }
    }

    private List<ElementNeed> elements() {
        Map<Size, Long> counts = new LinkedHashMap<>();
        for (BookPart part : parts) {
            Plan plan = part.plan();
            Element element = plan.element();
            if (element == null || plan.row().holes().isEmpty()) {
                because.add(new MaterialReason.NoElement());
                return List.of();
            }
            for (Size piece : pieces(element.name(), plan)) {
                counts.merge(piece, (long) job.copies(), Long::sum);
            }
        }
        List<ElementNeed> needs = new ArrayList<>();
        counts.forEach((size, pieces) -> needs.add(new ElementNeed(
                job.binding(),
                size.name(),
                size.loops(),
                size.length(),
                pieces,
                job.supply().overs().share(pieces))));
        because.add(new MaterialReason.SpareElements());
        return needs;
    }

    /** One piece of the element for each unbroken run of holes: a hanger parts them. */
    private static List<Size> pieces(String name, Plan plan) {
        List<Size> pieces = new ArrayList<>();
        int at = 0;
        for (int holes : plan.row().runs()) {
            Length first = plan.row().holes().get(at).centre();
            Length last = plan.row().holes().get(at + holes - 1).centre();
            pieces.add(new Size(
                    name, plan.loops() == 0 ? 0 : holes, last.minus(first).plus(plan.pitch())));
            at += holes;
        }
        return pieces;
    }

    private @Nullable BigDecimal copyG() {
        BigDecimal sum = BigDecimal.ZERO;
        for (BookPart part : parts) {
            BigDecimal grams = part.stack().weightG();
            if (grams == null) {
                because.add(new MaterialReason.NoWeight());
                return null;
            }
            sum = sum.add(grams);
        }
        because.add(new MaterialReason.Weights());
        return sum;
    }
}
