package io.bindprep.block;

import io.bindprep.job.BoundEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.Insert;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import io.bindprep.page.PageEdge;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays the pages of a PDF on leaves.
 *
 * <p>A page's side follows from its leaf, not from its number: an insert of one page, or a cover printed on one side,
 * shifts all that follows. Covers take the first and the last pages; one cover page lies on the front of its leaf.
 */
public final class BlockBuilder {
    private final Job job;
    private final int pages;
    private final List<Leaf> leaves = new ArrayList<>();
    private final List<PagePlace> places = new ArrayList<>();
    private final List<Integer> addedBlankBacks = new ArrayList<>();

    private BlockBuilder(Job job, int pages) {
        this.job = job;
        this.pages = pages;
    }

    /**
     * The leaves of one copy.
     *
     * @param pages how many pages the PDF has, at least 1
     * @throws SettingException where covers or inserts do not go with the pages that the PDF has
     */
    public static Block build(Job job, int pages) throws SettingException {
        if (pages < 1) {
            throw new IllegalArgumentException("a PDF without pages cannot be bound: " + pages);
        }
        return new BlockBuilder(job, pages).build();
    }

    private Block build() throws SettingException {
        PageRange front = printed(job.frontCover(), "covers.front", true);
        PageRange back = printed(job.backCover(), "covers.back", false);
        int next = front == null ? 1 : front.last() + 1;
        int bodyEnd = back == null ? pages : back.first() - 1;
        if (next > bodyEnd + 1) {
            throw wrong("covers.back", text(back), "the back cover's pages are the front cover's already");
        }
        cover(job.frontCover(), front, Leaf.Role.FRONT_COVER);
        for (Insert insert : inserts(next, bodyEnd)) {
            run(next, insert.pages().first() - 1, job.stock(), Leaf.Role.TEXT);
            run(insert.pages().first(), insert.pages().last(), insert.stock(), Leaf.Role.INSERT);
            next = insert.pages().last() + 1;
        }
        run(next, bodyEnd, job.stock(), Leaf.Role.TEXT);
        cover(job.backCover(), back, Leaf.Role.BACK_COVER);
        return new Block(leaves, places, addedBlankBacks);
    }

    private @Nullable PageRange printed(@Nullable Cover cover, String key, boolean front) throws SettingException {
        PageRange range = cover == null ? null : cover.printed();
        if (range == null) {
            return null;
        }
        boolean sound = range.first() >= 1 && range.last() <= pages && range.count() >= 1 && range.count() <= 2;
        boolean outermost = front ? range.first() == 1 : range.last() == pages;
        if (!sound || !outermost) {
            throw wrong(
                    key,
                    text(range),
                    front
                            ? "a printed front cover takes page 1, or pages 1-2"
                            : "a printed back cover takes the last page, or the last two");
        }
        return range;
    }

    private List<Insert> inserts(int from, int to) throws SettingException {
        List<Insert> sorted = new ArrayList<>(job.inserts());
        sorted.sort(Comparator.comparingInt(i -> i.pages().first()));
        int free = from;
        for (Insert insert : sorted) {
            PageRange range = insert.pages();
            if (range.first() < 1 || range.last() > pages || range.count() < 1) {
                throw wrong("inserts", text(range), "an insert's pages must be among those of the PDF, first to last");
            }
            if (range.first() < free || range.last() > to) {
                throw wrong("inserts", text(range), "an insert's pages overlap another insert or a printed cover");
            }
            free = range.last() + 1;
        }
        return sorted;
    }

    private void cover(@Nullable Cover cover, @Nullable PageRange range, Leaf.Role role) {
        if (cover == null) {
            return;
        }
        if (range == null) {
            leaves.add(new Leaf(role, cover.stock(), null, null));
            return;
        }
        boolean both = range.count() == 2;
        leaves.add(new Leaf(role, cover.stock(), range.first(), both ? range.last() : null));
        places.add(place(range.first(), true));
        if (both) {
            places.add(place(range.last(), false));
        }
    }

    /** Lays pages from a fresh leaf on; what follows starts on a fresh leaf too. */
    private void run(int first, int last, Stock stock, Leaf.Role role) {
        boolean twoSided = job.sides() != Sides.ONE;
        for (int page = first; page <= last; page += twoSided ? 2 : 1) {
            boolean backPrinted = twoSided && page < last;
            leaves.add(new Leaf(role, stock, page, backPrinted ? page + 1 : null));
            places.add(place(page, true));
            if (backPrinted) {
                places.add(place(page + 1, false));
            } else if (twoSided && page < pages) {
                addedBlankBacks.add(page);
            }
        }
    }

    private PagePlace place(int page, boolean recto) {
        boolean headToFoot = job.sides() == Sides.TWO_HEAD_TO_FOOT;
        PageEdge edge = switch (job.boundEdge()) {
            case LEFT -> PageEdge.LEFT;
            case RIGHT -> PageEdge.RIGHT;
            case TOP -> PageEdge.TOP;
        };
        if (recto) {
            return new PagePlace(page, true, edge, false);
        }
        boolean atTop = job.boundEdge() == BoundEdge.TOP;
        if (headToFoot) {
            // bound at a side, a head-to-foot back has its head at the recto's foot and the same edge bound: it runs
            // against
            // bound at top, it is read after tumbling, its foot in the binding, left behind left: it runs along
            return atTop ? new PagePlace(page, false, PageEdge.BOTTOM, false) : new PagePlace(page, false, edge, true);
        }
        // bound at a side, the leaf turns like a book's: heads stay up, the other edge is bound, it runs along
        // bound at top and head to head, the leaf seen from behind has left and right changed over: it runs against
        return atTop
                ? new PagePlace(page, false, PageEdge.TOP, true)
                : new PagePlace(page, false, edge == PageEdge.LEFT ? PageEdge.RIGHT : PageEdge.LEFT, false);
    }

    private static String text(@Nullable PageRange range) {
        return range == null
                ? ""
                : range.first() == range.last() ? "" + range.first() : range.first() + "-" + range.last();
    }

    private SettingException wrong(String key, String value, String why) {
        return new SettingException(
                key,
                value,
                why + "; " + value + " was given and the PDF has " + (pages == 1 ? "1 page" : "pages 1-" + pages),
                "correct the page range or leave it out",
                List.of());
    }
}
