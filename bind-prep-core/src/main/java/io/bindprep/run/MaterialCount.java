package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.catalogue.Element;
import io.bindprep.job.Job;
import io.bindprep.job.PressSheet;
import io.bindprep.paper.Sheet;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Counts what a run uses up. */
final class MaterialCount {
    private final Job job;
    private final LeafSizes sizes;
    private final List<BookPart> parts;
    private final List<String> because = new ArrayList<>();

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

    private record Key(Use use, boolean printed, Sheet sheet) {}

    private List<StockNeed> stocks() {
        Map<Key, Integer> counts = new LinkedHashMap<>();
        for (BookPart part : parts) {
            for (Leaf leaf : part.block().leaves()) {
                counts.merge(new Key(Use.of(leaf), leaf.printed(), sizes.of(leaf)), 1, Integer::sum);
            }
        }
        List<StockNeed> needs = new ArrayList<>();
        counts.forEach((key, count) -> needs.add(need(key, count)));
        because.add("overs of each stock and use: "
                + LengthText.plain(job.supply().overs().percent(), 3)
                + " %, at least " + job.supply().overs().least() + " ("
                + job.supply().overs().source() + ")");
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
            because.add("leaves of " + LengthText.area(sheet.width(), sheet.height()) + ": " + up
                    + " on a press sheet " + large.name() + ", " + large.bleed().inMm() + " of bleed round each and "
                    + large.gripper().inMm() + " of gripper along the sheet's long edge: " + stacked
                    + " press sheets cut and stacked copy by copy, " + repeated + " with each leaf repeated");
        } else if (large != null) {
            because.add("leaves of " + LengthText.area(sheet.width(), sheet.height()) + " do not fit on a press sheet "
                    + large.name() + " with bleed and gripper");
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

    private record Size(String name, int loops, Length length) {}

    private List<ElementNeed> elements() {
        Map<Size, Long> counts = new LinkedHashMap<>();
        for (BookPart part : parts) {
            Plan plan = part.plan();
            Element element = plan.element();
            if (element == null || plan.row().holes().isEmpty()) {
                because.add("no element is counted: none takes the stack, or no hole row fits its edge");
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
        because.add("spare elements by the percentage of the overs alone");
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
