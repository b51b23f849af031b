package io.bindprep.catalogue;

import io.bindprep.paper.SheetSizes;
import io.bindprep.paper.StockCatalog;
import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;

/** Everything a job may name: our tables with the shop's own rows. */
public record Catalogue(
        StockCatalog stocks, SheetSizes sizes, Patterns patterns, Elements elements, Punches punches, Limits limits) {
    private static final Catalogue BUILT_IN = ours();

    /** Our tables alone. */
    public static Catalogue builtIn() {
        return BUILT_IN;
    }

    /**
     * Our tables with the rows of the shop.
     *
     * @throws SettingException where a row of the shop's own is wrong; the message names file, line and column
     */
    public static Catalogue of(OwnTables own) throws SettingException {
        Patterns patterns = Patterns.of(own);
        Elements elements = Elements.of(own);
        return new Catalogue(
                StockCatalog.of(own),
                SheetSizes.of(own),
                patterns,
                elements,
                Punches.of(own, patterns),
                Limits.of(own));
    }

    /**
     * This catalogue with a punch of the shop's own, which takes the place of one of the same name.
     *
     * @param punch a punch of one of this catalogue's patterns
     */
    public Catalogue with(Punch punch) {
        return new Catalogue(stocks, sizes, patterns, elements, punches.with(punch), limits);
    }

    private static Catalogue ours() {
        try {
            return of(OwnTables.NONE);
        } catch (SettingException e) {
            throw new IllegalStateException("only rows of the shop's own are told of so", e);
        }
    }
}
