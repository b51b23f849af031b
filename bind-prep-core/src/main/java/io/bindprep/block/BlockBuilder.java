package io.bindprep.block;

import io.bindprep.job.Cover;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import io.bindprep.problem.SettingException;
import io.bindprep.wording.BlockErrors;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays the pages of a PDF on leaves.
 *
 * <p>A page's side follows from its leaf, not from its number: an insert of one page, or a cover printed on one side,
 * shifts all that follows; so do fold-outs and dividers, which take leaves of their own. Covers take the first and the last pages; one cover page lies on the front of its leaf.
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
     * @param pages how many pages there are, at least 1
     * @throws SettingException where covers or inserts do not go with the pages that there are
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
            throw new BlockErrors("covers.back", text(back), pages).coversOverlap();
        }
        cover(job.frontCover(), front, Leaf.Role.FRONT_COVER);
        for (LeafGroup piece : new LeafGroups(job, pages, next, bodyEnd).inOrder()) {
            lay(piece);
        }
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
            BlockErrors errors = new BlockErrors(key, text(range), pages);
            throw front ? errors.frontCover() : errors.backCover();
        }
        return range;
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
    private void lay(LeafGroup piece) {
        if (piece.blank()) {
            leaves.add(piece.leaf(null, null));
            return;
        }
        boolean twoSided = job.sides() != Sides.ONE;
        int last = piece.pages().last();
        for (int page = piece.pages().first(); page <= last; page += twoSided ? 2 : 1) {
            boolean backPrinted = twoSided && page < last;
            leaves.add(piece.leaf(page, backPrinted ? page + 1 : null));
            places.add(place(page, true));
            if (backPrinted) {
                places.add(place(page + 1, false));
            } else if (twoSided && page < pages) {
                addedBlankBacks.add(page);
            }
        }
    }

    private PagePlace place(int page, boolean recto) {
        return PagePlaces.place(job, page, recto);
    }

    static String text(@Nullable PageRange range) {
        return range == null
                ? ""
                : range.first() == range.last() ? "" + range.first() : range.first() + "-" + range.last();
    }
}
