package io.bindprep.day;

import io.bindprep.catalogue.Method;
import io.bindprep.run.ElementNeed;
import io.bindprep.run.Materials;
import io.bindprep.run.Press;
import io.bindprep.run.StockNeed;
import io.bindprep.run.Use;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Adds up the materials of jobs. */
final class SupplyCount {
    /** Sizes to the whole millimetre: a page may be measured a hundredth off the size that the next job names. */
    private record SheetKey(
            String stock, boolean cover, @Nullable String sheet, long widthMm, long heightMm) {
        static SheetKey of(StockNeed need, Size size) {
            Press press = need.press();
            return new SheetKey(
                    need.stock().name(),
                    need.use() == Use.FRONT_COVER || need.use() == Use.BACK_COVER,
                    press == null ? null : press.sheet().name(),
                    Math.round(size.width().mm()),
                    Math.round(size.height().mm()));
        }
    }

    private record Size(Length width, Length height) {}

    private record ElementKey(Method method, String name, String pitch) {}

    private final Map<SheetKey, Size> sizes = new LinkedHashMap<>();
    private final Map<SheetKey, long[]> sheets = new LinkedHashMap<>();
    private final Map<ElementKey, long[]> elements = new LinkedHashMap<>();
    private BigDecimal grams = BigDecimal.ZERO;
    private boolean whole = true;

    private SupplyCount() {}

    static Supplies of(List<DayJob> jobs, @Nullable Rates rates) {
        SupplyCount count = new SupplyCount();
        jobs.forEach(count::add);
        List<Supplies.Sheets> sheets = new ArrayList<>();
        count.sizes.forEach((k, size) -> {
            long[] n = count.sheets.getOrDefault(k, new long[2]);
            sheets.add(new Supplies.Sheets(k.stock(), k.cover(), k.sheet(), size.width(), size.height(), n[0], n[1]));
        });
        List<Supplies.Pieces> pieces = new ArrayList<>();
        count.elements.forEach((k, n) -> {
            Supplies.Pieces loose = new Supplies.Pieces(k.method(), k.name(), k.pitch(), n[0], n[1], n[2], null);
            Integer spool = rates == null ? null : rates.loopsPerSpool().get(loose.key());
            pieces.add(new Supplies.Pieces(k.method(), k.name(), k.pitch(), n[0], n[1], n[2], spool));
        });
        return new Supplies(sheets, pieces, count.grams, count.whole);
    }

    private void add(DayJob job) {
        Materials materials = job.report().run().materials();
        for (StockNeed need : materials.stocks()) {
            Press press = need.press();
            Size size = press == null
                    ? new Size(need.width(), need.height())
                    : new Size(press.sheet().width(), press.sheet().height());
            SheetKey key = SheetKey.of(need, size);
            sizes.putIfAbsent(key, size);
            sum(sheets.computeIfAbsent(key, k -> new long[2]), need.sheets(), need.overs());
        }
        for (ElementNeed need : materials.elements()) {
            ElementKey key = new ElementKey(
                    need.method(), need.name(), job.report().plan().pitchName());
            sum(elements.computeIfAbsent(key, k -> new long[3]), need.totalLoops(), need.pieces(), need.spares());
        }
        BigDecimal run = materials.runG();
        whole &= run != null;
        grams = grams.add(run != null ? run : materials.knownCopyG().multiply(BigDecimal.valueOf(materials.copies())));
    }

    private static void sum(long[] sums, long... more) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] = Math.addExact(sums[i], more[i]);
        }
    }
}
