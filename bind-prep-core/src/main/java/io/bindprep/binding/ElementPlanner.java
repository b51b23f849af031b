package io.bindprep.binding;

import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.job.Clearances;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Chooses the element, and says what to measure where the stack's likely range lies across two. */
final class ElementPlanner {
    private final Job job;
    private final Block block;
    private final Stack stack;
    private final Sizing sizing;
    private final Consumer<Reason> because;

    ElementPlanner(Job job, Block block, Stack stack, Sizing sizing, Consumer<Reason> because) {
        this.job = job;
        this.block = block;
        this.stack = stack;
        this.sizing = sizing;
        this.because = because;
    }

    ElementChoice choose() {
        List<Elements.Entry> known = sizing.known();
        Pattern pattern = sizing.pattern();
        if (known.isEmpty()) {
            because.accept(new Reason.NoSizes(pattern.id()));
            return new ElementChoice(null, null, false, false, List.of(), null);
        }
        Length thickness = sizing.decides(stack);
        Elements.Entry found = sizing.smallest(thickness).orElse(null);
        if (found == null) {
            Elements.Entry largest = known.get(known.size() - 1);
            because.accept(new Reason.TooThick(need(largest), pattern.elements(), largest.element()));
        } else {
            because.accept(new Reason.Smallest(found.element(), need(found), pattern.elements(), sizing.sheets(found)));
        }
        return straddled(found, thickness);
    }

    private Reason.Need need(Elements.Entry entry) {
        if (sizing.sheets(entry) != null) {
            return new Reason.InSheets(stack.nominal(), sheets(stack.nominal()));
        }
        return new Reason.InSize(
                sizing.decides(stack),
                sizing.bySize(),
                sizing.clearance(),
                Clearances.of(sizing.clearance()).orElse(null),
                sizing.pattern().method() == Method.COIL ? sizing.outside() : null);
    }

    /** Sheets of 20 lb bond as thick as a stack, rounded up. */
    private static int sheets(Length thickness) {
        int sheets = 0;
        while (Elements.bond(sheets).compareTo(thickness) < 0) {
            sheets++;
        }
        return sheets;
    }

    private ElementChoice straddled(Elements.@Nullable Entry found, Length thickness) {
        Element element = found == null ? null : found.element();
        Integer sheets = found == null || sizing.sheets(found) == null ? null : Integer.valueOf(sheets(thickness));
        boolean near = found != null && sheets != null && found.near(thickness);
        boolean open = found != null && !sizing.closes(found, stack.max());
        Elements.Entry thin = sizing.smallest(stack.min()).orElse(null);
        Elements.Entry thick = sizing.smallest(stack.max()).orElse(null);
        if (thin == null || alike(thin, thick) || measured()) {
            return new ElementChoice(element, sheets, near, open, List.of(), null);
        }
        Element small = thin.element();
        Element large = thick == null ? null : thick.element();
        PackMeasure measure = measure(sizing.most(thin));
        because.accept(new Reason.Straddled(
                stack.min(),
                stack.max(),
                small,
                large,
                measure,
                job.catalogue().limits().pack().source()));
        return new ElementChoice(
                element, sheets, near, open, large == null ? List.of() : List.of(small, large), measure);
    }

    private static boolean alike(Elements.Entry thin, Elements.@Nullable Entry thick) {
        return thick != null && thin.element().name().equals(thick.element().name());
    }

    /** Returns true if every sheet of the block was measured, so that no other pack settles it better. */
    private boolean measured() {
        return block.leaves().stream()
                .filter(leaf -> !leaf.cover())
                .allMatch(leaf -> leaf.stock().measured());
    }

    /** A pack of the stock of most leaves, the first of them where several are equal. */
    private PackMeasure measure(Length stackAtMost) {
        Map<Stock, Integer> counts = new LinkedHashMap<>();
        for (Leaf leaf : block.leaves()) {
            counts.merge(leaf.stock(), 1, Integer::sum);
        }
        Stock most = block.leaves().get(0).stock();
        BigDecimal others = BigDecimal.ZERO;
        for (Map.Entry<Stock, Integer> entry : counts.entrySet()) {
            most = entry.getValue() > counts.getOrDefault(most, 0) ? entry.getKey() : most;
        }
        for (Map.Entry<Stock, Integer> entry : counts.entrySet()) {
            Stock stock = entry.getKey();
            if (!stock.equals(most)) {
                others = others.add(
                        stock.caliperUm().add(stock.toleranceUm()).multiply(BigDecimal.valueOf(entry.getValue())));
            }
        }
        int sheets = job.catalogue()
                .limits()
                .pack()
                .length()
                .micrometres()
                .divide(most.caliperUm(), 0, RoundingMode.CEILING)
                .intValueExact();
        BigDecimal pack = stackAtMost
                .micrometres()
                .subtract(others)
                .multiply(BigDecimal.valueOf(sheets))
                .divide(BigDecimal.valueOf(counts.getOrDefault(most, 1)), 0, RoundingMode.FLOOR);
        return new PackMeasure(stackAtMost, most.name(), sheets, Length.ofMicrometres(pack));
    }
}
