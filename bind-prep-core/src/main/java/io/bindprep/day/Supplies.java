package io.bindprep.day;

import io.bindprep.catalogue.Method;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Supplies of a day.
 *
 * @param sheets by stock and size, in the order of the list
 * @param elements by method and size
 * @param knownG grams of all leaves whose grammage is known, without elements and overs
 * @param weightWhole whether the weight of every job is known
 */
public record Supplies(List<Sheets> sheets, List<Pieces> elements, BigDecimal knownG, boolean weightWhole) {
    /**
     * Sheets of one stock and size.
     *
     * @param cover whether they are covers
     * @param sheet the press sheet's name; null where sheets are of the leaf's size
     * @param width of the leaf, or of the press sheet
     * @param height of the leaf, or of the press sheet
     * @param needed without overs
     * @param overs spare sheets
     */
    public record Sheets(
            String stock, boolean cover, @Nullable String sheet, Length width, Length height, long needed, long overs) {
        /** Sheets to issue. */
        public long total() {
            return needed + overs;
        }
    }

    /**
     * Elements of one method and size.
     *
     * @param pitch of the holes that they fit
     * @param loops loops in all, spares included, to cut from a spool; 0 where the element is not cut by loops
     * @param pieces without spares
     * @param spares spare pieces
     * @param perSpool loops that a spool holds, as the shop's file says; null where it says nothing
     */
    public record Pieces(
            Method method,
            String name,
            String pitch,
            long loops,
            long pieces,
            long spares,
            @Nullable Integer perSpool) {
        /** Pieces to issue. */
        public long total() {
            return pieces + spares;
        }

        /** Spools to issue, the last one begun; 0 where it comes in pieces. */
        public long spools() {
            return perSpool == null ? 0 : (loops + perSpool - 1) / perSpool;
        }

        /** Its name in a file of rates, "wire 3/8 in". */
        public String key() {
            return method.name().toLowerCase(Locale.ROOT) + " " + name;
        }
    }

    public Supplies {
        sheets = List.copyOf(sheets);
        elements = List.copyOf(elements);
    }
}
