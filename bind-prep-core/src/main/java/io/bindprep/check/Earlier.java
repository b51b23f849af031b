package io.bindprep.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Report of an earlier check, as far as a later one is compared with it.
 *
 * @param file the name of its document
 * @param sha256 digest of its document's bytes, lower-case hexadecimal; empty where it could not be read
 * @param pages number of its document's pages; 0 where it could not be read
 * @param findings all of them, the accepted ones too
 */
public record Earlier(String file, String sha256, int pages, List<Item> findings) {
    /**
     * One finding of it.
     *
     * @param pages ascending; empty for the whole document
     * @param measuredMm the worst measured value; null where its rule measures none
     * @param limitMm the limit it was held against; null where its rule has none
     * @param places the worst mark of each page; empty where it is of no mark
     */
    public record Item(
            String rule,
            Severity severity,
            List<Integer> pages,
            String message,
            @Nullable Double measuredMm,
            @Nullable Double limitMm,
            List<Finding.Place> places) {
        public Item {
            pages = List.copyOf(pages);
            places = List.copyOf(places);
        }
    }

    public Earlier {
        findings = List.copyOf(findings);
    }
}
