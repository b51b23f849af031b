package io.bindprep.block;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.Sheet;
import io.bindprep.unit.Length;
import java.util.List;

/**
 * Size of each leaf of a book, unfolded: as the book, unless the job or the page that it carries says otherwise.
 */
public final class LeafSizes {
    /** The widest cutting tolerance of ISO 216:2007, 7.1: a page within it is cut to the book's size. */
    private static final Length AS_THE_BOOK = Length.ofMm(3);

    private final Job job;
    private final List<PageFacts> pages;
    private final Length width;
    private final Length height;

    /**
     * The sizes of a book.
     *
     * @param pages of the PDF, in order
     * @param width width of the book's trimmed leaf
     * @param height height of the book's trimmed leaf
     */
    public LeafSizes(Job job, List<PageFacts> pages, Length width, Length height) {
        this.job = job;
        this.pages = List.copyOf(pages);
        this.width = width;
        this.height = height;
    }

    /** The sizes of a book that has no document yet: no page has a size of its own but by the job. */
    public static LeafSizes withoutDocument(Job job, Length width, Length height) {
        return new LeafSizes(job, List.of(), width, height);
    }

    /** Width of the book's trimmed leaf. */
    public Length width() {
        return width;
    }

    /** Height of the book's trimmed leaf. */
    public Length height() {
        return height;
    }

    /** A leaf's sheet, unfolded, its tab's extension included. */
    public Sheet of(Leaf leaf) {
        Integer page = leaf.recto() != null ? leaf.recto() : leaf.verso();
        Length w = width;
        Length h = height;
        if (page != null) {
            Trim own = job.special().size(page).orElse(null);
            if (own != null) {
                w = own.width();
                h = own.height();
            } else if (!pages.isEmpty()) {
                PageFacts facts = pages.get(page - 1);
                boolean rotated = job.special().rotated(page).isPresent();
                Length pageW = rotated ? facts.trimHeight() : facts.trimWidth();
                Length pageH = rotated ? facts.trimWidth() : facts.trimHeight();
                if (!near(pageW, width) || !near(pageH, height)) {
                    w = tabWithout(leaf, pageW, width, true);
                    h = tabWithout(leaf, pageH, height, false);
                }
            }
        }
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        return new Sheet(
                leaf.stock(), leaf.layers(), top ? w : w.plus(leaf.extension()), top ? h.plus(leaf.extension()) : h);
    }

    /** The sheets of leaves, in order. */
    public List<Sheet> of(List<Leaf> leaves) {
        return leaves.stream().map(this::of).toList();
    }

    // a divider's page may be drawn with its tab: the extension is added once
    private Length tabWithout(Leaf leaf, Length page, Length book, boolean across) {
        boolean away = across != (job.bindingEdge() == BindingEdge.TOP);
        return away && leaf.role() == Leaf.Role.TAB && near(page, book.plus(leaf.extension())) ? book : page;
    }

    private static boolean near(Length one, Length other) {
        return one.minus(other).abs().compareTo(AS_THE_BOOK) <= 0;
    }
}
