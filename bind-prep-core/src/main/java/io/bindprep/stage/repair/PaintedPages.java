package io.bindprep.stage.repair;

import io.bindprep.marks.Painted;
import io.bindprep.pdf.edit.PageThings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Things that the pages of a file paint: a repair that moves single things asks for them three times, and to find them takes
 * as long as to check the page. For several threads.
 */
final class PaintedPages {
    /** Things of all pages that are kept, 21 bytes each; those of further pages are found anew. */
    private static final int MOST = 2_000_000;

    private final Map<Integer, Optional<PageThings>> pages = new HashMap<>();
    private int kept;

    /** Those of a page, by number from 1; null where its content cannot be read whole. */
    @Nullable
    List<Painted> of(int page, Supplier<@Nullable PageThings> find) {
        Optional<PageThings> known = known(page);
        PageThings things = known == null ? found(page, find.get()) : known.orElse(null);
        return things == null ? null : things.painted();
    }

    private synchronized @Nullable Optional<PageThings> known(int page) {
        return pages.get(page);
    }

    private synchronized @Nullable PageThings found(int page, @Nullable PageThings things) {
        int more = things == null ? 0 : things.room();
        if (kept + more <= MOST) {
            kept += more;
            pages.put(page, Optional.ofNullable(things));
        }
        return things;
    }

    /** Lets go of those of a page. */
    synchronized void drop(int page) {
        Optional<PageThings> known = pages.remove(page);
        kept -= known == null ? 0 : known.map(PageThings::room).orElse(0);
    }

    /** Those of a page that need not be found anew; null for none. */
    @Nullable
    PageThings kept(int page) {
        Optional<PageThings> known = known(page);
        return known == null ? null : known.orElse(null);
    }
}
