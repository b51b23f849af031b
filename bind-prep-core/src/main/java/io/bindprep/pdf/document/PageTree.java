package io.bindprep.pdf.document;

import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.jspecify.annotations.Nullable;

/**
 * The pages in order, each with what it inherits (ISO 32000-1:2008, 7.7.3).
 *
 * <p>Walks the tree instead of trusting its counts: one file in the wild claims 1,410,065,407 pages.
 */
public final class PageTree {
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
    public record Found(List<Entry> pages, int lost) {}

    /** A page's entry in the tree, most often a reference, and what the page inherits. */
    public record Entry(COSBase node, COSDictionary inherited) {
        /** The page itself, which from then on stays in memory. */
        public COSDictionary own() {
            return node instanceof COSObject reference && reference.getObject() instanceof COSDictionary page
                    ? page
                    : (COSDictionary) node;
        }

        /** A copy with what it inherits written in, read anew at each call: 16,000 of them would fill the memory. */
        public COSDictionary whole(LeanDocument document) {
            return document.read(node) instanceof COSDictionary page ? page(page, inherited) : new COSDictionary();
        }
    }

    private record Step(COSBase node, COSDictionary inherited, int depth) {}

    /**
     * Walks the tree.
     *
     * @param each is given each page with what it inherits, to read and let go of
     */
    public static Found walk(@Nullable COSDictionary root, LeanDocument document, Consumer<COSDictionary> each)
            throws UnreadableInputException {
        List<Entry> pages = new ArrayList<>();
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Step> open = new ArrayDeque<>();
        int lost = 0;
        if (root != null) {
            open.push(new Step(root, new COSDictionary(), 0));
        }
        while (!open.isEmpty()) {
            Step step = open.pop();
            if (!(document.read(step.node) instanceof COSDictionary first)) {
                lost++;
                continue;
            }
            Entry entry = new Entry(step.node, step.inherited);
            if (first.getCOSArray(COSName.KIDS) == null) {
                pages.add(entry);
                each.accept(page(first, step.inherited));
                document.forgetMany();
                continue;
            }
            document.keep(true); // one object for each node, by which a cycle is seen, and for what pages inherit
            COSDictionary node = entry.own();
            COSArray kids = node.getCOSArray(COSName.KIDS);
            if (step.depth > MOST_DEPTH || !seen.add(node)) {
                lost++;
            } else {
                COSDictionary inherited = inherited(node, step.inherited);
                for (int i = kids.size() - 1; i >= 0; i--) {
                    COSBase kid = kids.get(i);
                    open.push(new Step(kid == null ? COSNull.NULL : kid, inherited, step.depth + 1));
                }
            }
            document.keep(false);
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
