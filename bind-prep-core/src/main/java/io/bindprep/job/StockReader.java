package io.bindprep.job;

import io.bindprep.paper.Stock;
import io.bindprep.paper.StockCatalog;
import io.bindprep.paper.StockParser;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import java.util.Map;

/** Reads stocks by the names of one catalogue. */
final class StockReader {
    private final StockParser parser;

    StockReader(StockCatalog catalog) {
        this.parser = new StockParser(catalog);
    }

    /** A stock from its text or its map. */
    @SuppressWarnings("unchecked")
    Stock stock(String key, Object value) throws SettingException {
        if (value instanceof Map<?, ?> map) {
            return parser.parse(key, (Map<String, ?>) map);
        }
        return parser.parse(key, Scalars.text(key, value));
    }
}
