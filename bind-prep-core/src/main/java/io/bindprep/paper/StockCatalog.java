package io.bindprep.paper;

import io.bindprep.table.Table;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The stocks known by name; sources stand with each. */
public final class StockCatalog {
    private static final List<Stock> ALL = Table.beside(StockCatalog.class, "stocks.csv").rows().stream()
            .map(StockCatalog::stock)
            .toList();

    private StockCatalog() {}

    /** Every stock, as the table has them. */
    public static List<Stock> all() {
        return ALL;
    }

    /** The stock of this id, upper or lower case. */
    public static Optional<Stock> byId(String id) {
        return ALL.stream().filter(s -> s.name().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** Every id. */
    public static List<String> ids() {
        return ALL.stream().map(Stock::name).toList();
    }

    private static Stock stock(Table.Row row) {
        BigDecimal grammage = null;
        if (!row.get("basis_lb").isEmpty()) {
            String[] sheet = row.get("basis_in").split("x", 2);
            grammage = Thickness.grammage(
                    new BigDecimal(row.get("basis_lb")), new BigDecimal(sheet[0]), new BigDecimal(sheet[1]));
        } else if (!row.get("gsm").isEmpty()) {
            grammage = new BigDecimal(row.get("gsm"));
        }
        return new Stock(
                row.get("id"),
                Stock.Kind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
                grammage,
                Thickness.micrometres(row.get("caliper")),
                Thickness.micrometres(row.get("tolerance")),
                row.get("source"));
    }
}
