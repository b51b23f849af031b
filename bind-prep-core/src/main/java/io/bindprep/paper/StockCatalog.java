package io.bindprep.paper;

import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.wording.StockErrors;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The stocks known by name, ours and the shop's own; sources stand with each. */
public final class StockCatalog {
    private static final Table OURS = Table.beside(StockCatalog.class, "stocks.csv");
    // names that a job can use: a stock's other forms begin with a number
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9.-]*", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHEET =
            Pattern.compile("([1-9]\\d{0,2}(?:\\.\\d{1,3})?)x([1-9]\\d{0,2}(?:\\.\\d{1,3})?)");
    private static final BigDecimal THINNEST_UM = new BigDecimal(5);
    private static final BigDecimal THICKEST_UM = new BigDecimal(10_000);
    private static final List<String> KINDS = List.of("paper", "board", "film");

    private final List<Stock> all;

    private StockCatalog(List<Stock> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Our stocks with those of the shop.
     *
     * @throws SettingException where a row of the shop's own is wrong
     */
    public static StockCatalog of(OwnTables own) throws SettingException {
        return new StockCatalog(own.over(TableKind.STOCKS, OURS, StockCatalog::stock));
    }

    /** Every stock, as the tables have them. */
    public List<Stock> all() {
        return all;
    }

    /** The stock of this id, upper or lower case. */
    public Optional<Stock> byId(String id) {
        return all.stream().filter(s -> s.name().equalsIgnoreCase(id.strip())).findFirst();
    }

    /** Every id. */
    public List<String> ids() {
        return all.stream().map(Stock::name).toList();
    }

    /** Notes above our table: where its numbers come from. */
    public static List<String> notes() {
        return OURS.notes();
    }

    private static Stock stock(Table.Row row) {
        String id = row.get("id");
        if (!ID.matcher(id).matches()) {
            throw row.wrong("id", StockErrors.ID, List.of());
        }
        BigDecimal caliper = row.read("caliper", Thickness::micrometres);
        if (caliper.compareTo(THINNEST_UM) < 0 || caliper.compareTo(THICKEST_UM) > 0) {
            throw row.wrong("caliper", StockErrors.CALIPER, List.of());
        }
        BigDecimal tolerance = row.read("tolerance", Thickness::micrometres);
        if (tolerance.compareTo(caliper) >= 0) {
            throw row.wrong("tolerance", StockErrors.TOLERANCE, List.of());
        }
        return new Stock(
                id,
                Stock.Kind.valueOf(row.choice("kind", KINDS).toUpperCase(Locale.ROOT)),
                grammage(row),
                caliper,
                tolerance,
                row.source(),
                false);
    }

    private static @Nullable BigDecimal grammage(Table.Row row) {
        String pounds = row.get("basis_lb");
        String sheet = row.get("basis_in");
        if (!pounds.isEmpty() || !sheet.isEmpty()) {
            return row.read("basis_in", text -> {
                Matcher m = SHEET.matcher(text);
                if (!m.matches()) {
                    throw new IllegalArgumentException(StockErrors.BASIS_SHEET);
                }
                return Thickness.grammage(
                        weight(row, "basis_lb"), new BigDecimal(m.group(1)), new BigDecimal(m.group(2)));
            });
        }
        return row.get("gsm").isEmpty() ? null : weight(row, "gsm");
    }

    private static BigDecimal weight(Table.Row row, String column) {
        return row.read(column, text -> {
            if (!text.matches("\\d{1,4}(\\.\\d{1,3})?") || text.matches("[0.]+")) {
                throw new IllegalArgumentException(StockErrors.notWeight(column.equals("gsm")));
            }
            return new BigDecimal(text);
        });
    }
}
