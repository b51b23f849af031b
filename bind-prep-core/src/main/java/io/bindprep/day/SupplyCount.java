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
    private record SheetKey(String stock, boolean cover, @Nullable String sheet, Length width, Length height) {}

    private record ElementKey(Method method, String name, String pitch) {}

    private final Map<SheetKey, long[]> sheets = new LinkedHashMap<>();
    private final Map<ElementKey, long[]> elements = new LinkedHashMap<>();
    private BigDecimal grams = BigDecimal.ZERO;
    private boolean whole = true;

    private SupplyCount() {}

    static Supplies of(List<DayJob> jobs) {
        SupplyCount count = new SupplyCount();
        jobs.forEach(count::add);
        List<Supplies.Sheets> sheets = new ArrayList<>();
        count.sheets.forEach((k, n) -> sheets.add(
                new Supplies.Sheets(k.stock(), k.cover(), k.sheet(), k.width(), k.height(), n[0], n[1])));
        List<Supplies.Pieces> pieces = new ArrayList<>();
        count.elements.forEach(
                (k, n) -> pieces.add(new Supplies.Pieces(k.method(), k.name(), k.pitch(), n[0], n[1], n[2])));
        return new Supplies(sheets, pieces, count.grams, count.whole);
    }

    private void add(DayJob job) {
        Materials materials = job.report().run().materials();
        for (StockNeed need : materials.stocks()) {
            Press press = need.press();
            boolean cover = need.use() == Use.FRONT_COVER || need.use() == Use.BACK_COVER;
            SheetKey key = press == null
                    ? new SheetKey(need.stock().name(), cover, null, need.width(), need.height())
                    : new SheetKey(
                            need.stock().name(),
                            cover,
                            press.sheet().name(),
                            press.sheet().width(),
                            press.sheet().height());
            sum(sheets.computeIfAbsent(key, k -> new long[2]), need.sheets(), need.overs());
        }
        for (ElementNeed need : materials.elements()) {
            ElementKey key =
                    new ElementKey(need.method(), need.name(), job.report().plan().pitchName());
            sum(
                    elements.computeIfAbsent(key, k -> new long[3]),
                    need.totalLoops(),
                    need.pieces(),
                    need.spares());
        }
        BigDecimal run = materials.runG();
        whole &= run != null;
        grams = run == null ? grams : grams.add(run);
    }

    private static void sum(long[] sums, long... more) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] = Math.addExact(sums[i], more[i]);
        }
    }
}
