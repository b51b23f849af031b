package io.bindprep.volume;

import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.Job;
import io.bindprep.paper.Sheet;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks for a thinner paper on which a book stays one: of the same family if there is one, the nearest in grammage. */
final class ThinnerStock {
    private final Job job;
    private final Block block;
    private final LeafSizes sizes;

    ThinnerStock(Job job, Block block, LeafSizes sizes) {
        this.job = job;
        this.block = block;
        this.sizes = sizes;
    }

    /** The stock, or null. */
    @Nullable
    Stock find(Length most) {
        Stock now = job.stock();
        return job.catalogue().stocks().all().stream()
                .filter(s -> s.kind() == now.kind() && s.caliperUm().compareTo(now.caliperUm()) < 0)
                .filter(s -> replaced(block, s, sizes).deciding(job.bySize()).compareTo(most) <= 0)
                .min(Comparator.comparing((Stock s) -> !family(s).equals(family(now)))
                        .thenComparing(s -> (s.grammage() == null) != (now.grammage() == null))
                        .thenComparing(s -> apart(s, now))
                        .thenComparing(Stock::name))
                .orElse(null);
    }

    /** The stack with the block's own stock replaced; covers and other leaves stay. */
    static Stack replaced(Block block, Stock stock, LeafSizes sizes) {
        List<Sheet> sheets = block.leaves().stream()
                .map(l -> {
                    Sheet sheet = sizes.of(l);
                    return l.role() == Leaf.Role.TEXT
                            ? new Sheet(stock, sheet.layers(), sheet.width(), sheet.height())
                            : sheet;
                })
                .toList();
        return StackEstimator.estimate(sheets);
    }

    // "offset-60" and "offset-50" are of one family
    private static String family(Stock stock) {
        return stock.name().replaceFirst("-[^-]*$", "");
    }

    // by grammage where both are known, else by thickness, in shares of the stock that is replaced
    private static BigDecimal apart(Stock stock, Stock now) {
        BigDecimal gsm = stock.grammage();
        BigDecimal nowGsm = now.grammage();
        return gsm != null && nowGsm != null
                ? gsm.subtract(nowGsm).abs()
                : stock.caliperUm().subtract(now.caliperUm()).abs();
    }
}
