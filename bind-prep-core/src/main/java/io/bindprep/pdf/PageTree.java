package io.bindprep.pdf;

import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * The pages in order, each with what it inherits (ISO 32000-1:2008, 7.7.3).
 *
 * <p>Walks the tree instead of trusting its counts: one file in the wild claims 1,410,065,407 pages.
 */
final class PageTree {
    private static final int MOST_PAGES = 100_000;
    private static final int MOST_DEPTH = 200;
    private static final List<COSName> INHERITED =
            List.of(COSName.RESOURCES, COSName.MEDIA_BOX, COSName.CROP_BOX, COSName.ROTATE);

    private PageTree() {}

    /**
     * The pages found.
     *
     * @param lost how many entries of the tree are missing or lead back into it
     */
    record Found(List<Entry> pages, int lost) {}

    /** A page as it stands in the tree, and what it inherits. */
    record Entry(COSDictionary own, COSDictionary inherited) {
        /** A copy with what it inherits written in, made anew at each call: 16,000 of them would fill the memory. */
        COSDictionary whole() {
            return page(own, inherited);
        }
    }

    private record Step(COSBase node, COSDictionary inherited, int depth) {}

    static Found walk(@Nullable COSDictionary root) throws UnreadableInputException {
        List<Entry> pages = new ArrayList<>();
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Step> open = new ArrayDeque<>();
        int lost = 0;
        if (root != null) {
            open.push(new Step(root, new COSDictionary(), 0));
        }
        while (!open.isEmpty()) {
            Step step = open.pop();
            if (!(step.node instanceof COSDictionary node)) {
                lost++;
                continue;
            }
            COSArray kids = node.getCOSArray(COSName.KIDS);
            if (kids == null) {
                pages.add(new Entry(node, step.inherited));
            } else if (step.depth > MOST_DEPTH || !seen.add(node)) {
                lost++;
            } else {
                COSDictionary inherited = inherited(node, step.inherited);
                for (int i = kids.size() - 1; i >= 0; i--) {
                    COSBase kid = kids.getObject(i);
                    open.push(new Step(
                            kid == null ? org.apache.pdfbox.cos.COSNull.NULL : kid, inherited, step.depth + 1));
                }
            }
            if (pages.size() + open.size() > MOST_PAGES) {
                throw new UnreadableInputException(
                        Reason.TOO_MUCH,
                        "The file holds more than " + MOST_PAGES + " pages.",
                        "Ask for the document in parts.");
            }
        }
        return new Found(pages, lost);
    }

    private static COSDictionary inherited(COSDictionary node, COSDictionary above) {
        COSDictionary merged = new COSDictionary();
        for (COSName key : INHERITED) {
            COSBase own = node.getDictionaryObject(key);
            COSBase value = own == null ? above.getItem(key) : own;
            if (value != null) {
                merged.setItem(key, value);
            }
        }
        return merged;
    }

    /** A copy of the page with what it inherits written in; the document's own objects stay as they are. */
    private static COSDictionary page(COSDictionary node, COSDictionary above) {
        COSDictionary page = new COSDictionary(node);
        for (COSName key : INHERITED) {
            COSBase value = above.getItem(key);
            if (value != null && page.getDictionaryObject(key) == null) {
                page.setItem(key, value);
            }
        }
        return page;
    }
}
