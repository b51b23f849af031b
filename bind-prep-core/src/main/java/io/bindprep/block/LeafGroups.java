package io.bindprep.block;

import io.bindprep.job.Insert;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.SpecialLeaves.FoldOut;
import io.bindprep.job.SpecialLeaves.OtherSize;
import io.bindprep.job.SpecialLeaves.Rotated;
import io.bindprep.job.SpecialLeaves.Tab;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.BlockErrors;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** Parts the pages of the body into pieces: plain ones, inserts, fold-outs, dividers. */
final class LeafGroups {
    private final Job job;
    private final int pages;
    private final int from;
    private final int to;

    /** The body's pages {@code from} to {@code to}, of a PDF with so many. */
    LeafGroups(Job job, int pages, int from, int to) {
        this.job = job;
        this.pages = pages;
        this.from = from;
        this.to = to;
    }

    List<LeafGroup> inOrder() throws SettingException {
        List<LeafGroup> own = own();
        Deque<LeafGroup> blanks = new ArrayDeque<>(blanks(own));
        List<LeafGroup> all = new ArrayList<>();
        for (LeafGroup stretch : stretches(own)) {
            int next = stretch.pages().first();
            // a divider parts the stretch that it stands in
            while (!blanks.isEmpty()
                    && blanks.element().pages().first() <= stretch.pages().last()) {
                LeafGroup blank = blanks.remove();
                int at = blank.pages().first();
                if (at > next) {
                    all.add(stretch.of(next, at - 1));
                    next = at;
                }
                all.add(blank);
            }
            all.add(stretch.of(next, stretch.pages().last()));
        }
        return all;
    }

    /** The groups with pages of their own and the plain ones around them: every page of the body once. */
    private List<LeafGroup> stretches(List<LeafGroup> own) {
        List<LeafGroup> all = new ArrayList<>();
        int next = from;
        for (LeafGroup group : own) {
            plain(all, next, group.pages().first() - 1);
            all.add(group);
            next = group.pages().last() + 1;
        }
        plain(all, next, to);
        return all;
    }

    private void plain(List<LeafGroup> all, int first, int last) {
        if (first <= last) {
            all.add(LeafGroup.plain(new PageRange(first, last), job.stock()));
        }
    }

    /** Groups that take pages of their own, in order and apart. */
    private List<LeafGroup> own() throws SettingException {
        List<LeafGroup> own = new ArrayList<>();
        for (Insert i : job.inserts()) {
            own.add(new LeafGroup("inserts", i.pages(), false, Leaf.Role.INSERT, i.stock(), 1, Length.ZERO));
        }
        for (FoldOut f : job.special().foldOuts()) {
            own.add(new LeafGroup(
                    "fold-outs",
                    f.pages(),
                    false,
                    Leaf.Role.FOLD_OUT,
                    f.stock() == null ? job.stock() : f.stock(),
                    f.panels(),
                    Length.ZERO));
        }
        for (Tab t : job.special().tabs()) {
            if (t.printed()) {
                own.add(new LeafGroup("tabs", t.pages(), false, Leaf.Role.TAB, t.stock(), 1, t.extension()));
            }
        }
        own.sort(Comparator.comparingInt(p -> p.pages().first()));
        int free = from;
        for (LeafGroup piece : own) {
            inPdf(piece.key(), piece.pages());
            if (piece.pages().first() < free || piece.pages().last() > to) {
                throw errors(piece.key(), piece.pages()).usedTwice();
            }
            free = piece.pages().last() + 1;
        }
        for (Rotated t : job.special().rotated()) {
            inPdf("rotated", t.pages());
        }
        for (OtherSize s : job.special().sizes()) {
            inPdf("other-sizes", s.pages());
        }
        return own;
    }

    /** Blank dividers, in order; only an insert may be parted by one. */
    private List<LeafGroup> blanks(List<LeafGroup> own) throws SettingException {
        List<LeafGroup> blanks = new ArrayList<>();
        for (Tab t : job.special().tabs()) {
            if (!t.printed()) {
                inPdf("tabs", t.pages());
                int at = t.pages().first();
                if (at < from || at > to) {
                    throw errors("tabs", t.pages()).tabAtCover();
                }
                for (LeafGroup piece : own) {
                    boolean inside =
                            piece.pages().first() < at && at <= piece.pages().last();
                    if (inside && piece.role() != Leaf.Role.INSERT) {
                        throw errors("tabs", t.pages()).tabInside();
                    }
                }
                blanks.add(new LeafGroup("tabs", t.pages(), true, Leaf.Role.TAB, t.stock(), 1, t.extension()));
            }
        }
        blanks.sort(Comparator.comparingInt(p -> p.pages().first()));
        return blanks;
    }

    private void inPdf(String key, PageRange range) throws SettingException {
        if (range.first() < 1 || range.last() > pages || range.count() < 1) {
            throw errors(key, range).noSuchPages();
        }
    }

    private BlockErrors errors(String key, PageRange range) {
        return new BlockErrors(key, BlockBuilder.text(range), pages);
    }
}
