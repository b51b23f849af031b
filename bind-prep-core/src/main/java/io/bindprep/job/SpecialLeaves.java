package io.bindprep.job;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Leaves and pages that are not like the others. */
public record SpecialLeaves(List<Tab> tabs, List<FoldOut> foldOuts, List<Rotated> rotated, List<OtherSize> sizes) {
    /** Distance of folds from the trim and the holes where nothing is said; common practice, no source. */
    public static final Length FOLD_ALLOWANCE = Length.ofMm(3);

    /** All leaves alike. */
    public static final SpecialLeaves NONE = new SpecialLeaves(List.of(), List.of(), List.of(), List.of());

    public SpecialLeaves {
        tabs = List.copyOf(tabs);
        foldOuts = List.copyOf(foldOuts);
        rotated = List.copyOf(rotated);
        sizes = List.copyOf(sizes);
    }

    /**
     * A divider.
     *
     * @param pages the pages of the PDF that it carries, where {@code printed}; else the one page before which it is put
     * @param printed whether it carries pages; else it is blank
     * @param extension how far its tab stands out beyond the trim; zero for a divider without a tab
     */
    public record Tab(PageRange pages, boolean printed, Stock stock, Length extension) {}

    /**
     * Pages on leaves that are folded in.
     *
     * @param panels how many panels each leaf has, the bound one included
     * @param allowance how far each fold stays short of the trim, and the folded-in end clear of the holes
     * @param stock its own stock; null for that of the block
     */
    public record FoldOut(
            PageRange pages,
            int panels,
            Length allowance,
            @Nullable Stock stock) {}

    /**
     * Pages that are rotated 90 degrees in the book.
     *
     * @param headLeft whether their head lies to the left of the book as it is held to read the others; else to the right
     */
    public record Rotated(PageRange pages, boolean headLeft) {}

    /** Pages whose leaves are cut to another size, flush with the others at the binding edge and the head. */
    public record OtherSize(PageRange pages, Trim size) {}

    /** The same leaves where pages have moved along, each range as the function has it; empty for pages that are gone. */
    public SpecialLeaves renumbered(Function<PageRange, Optional<PageRange>> ranges) {
        return new SpecialLeaves(
                each(tabs, t -> ranges.apply(t.pages()).map(r -> tab(t, r))),
                each(
                        foldOuts,
                        f -> ranges.apply(f.pages()).map(r -> new FoldOut(r, f.panels(), f.allowance(), f.stock()))),
                each(rotated, t -> ranges.apply(t.pages()).map(r -> new Rotated(r, t.headLeft()))),
                each(sizes, s -> ranges.apply(s.pages()).map(r -> new OtherSize(r, s.size()))));
    }

    private static <T> List<T> each(List<T> items, Function<T, Optional<T>> change) {
        return items.stream().map(change).flatMap(Optional::stream).toList();
    }

    // a blank divider stands before one page, whatever was put behind that page
    private static Tab tab(Tab tab, PageRange moved) {
        PageRange pages = tab.printed() ? moved : new PageRange(moved.first(), moved.first());
        return new Tab(pages, tab.printed(), tab.stock(), tab.extension());
    }

    /** Rotation of a page; empty where it stands as the others. */
    public Optional<Rotated> rotated(int page) {
        return rotated.stream().filter(t -> t.pages().holds(page)).findFirst();
    }

    /** The fold-out that a page is on; empty for none. */
    public Optional<FoldOut> foldOut(int page) {
        return foldOuts.stream().filter(f -> f.pages().holds(page)).findFirst();
    }

    /** The printed divider that a page is on; empty for none. */
    public Optional<Tab> tab(int page) {
        return tabs.stream().filter(t -> t.printed() && t.pages().holds(page)).findFirst();
    }

    /** The size that a page's leaf has of its own; empty where it has that of the others. */
    public Optional<Trim> size(int page) {
        return sizes.stream()
                .filter(s -> s.pages().holds(page))
                .map(OtherSize::size)
                .findFirst();
    }
}
