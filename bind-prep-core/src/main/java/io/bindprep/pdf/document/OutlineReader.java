package io.bindprep.pdf.document;

import io.bindprep.page.Bookmark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSString;
import org.jspecify.annotations.Nullable;

/**
 * The top-level bookmarks and the pages they lead to (ISO 32000-1:2008, 12.3.2 and 12.3.3).
 *
 * <p>A bookmark is a hint: one that leads nowhere is left out, and a broken outline never makes a file unreadable.
 */
public final class OutlineReader {
    private static final int MOST_BOOKMARKS = 1_000;
    private static final int LONGEST_TITLE = 200;
    private static final int MOST_DEPTH = 30;

    /** Nodes of the name tree looked into for the whole outline. */
    private static final int MOST_NODES = 50_000;

    private final COSDictionary catalog;
    private final Map<COSBase, Integer> direct = new IdentityHashMap<>();
    private final Map<COSObjectKey, Integer> pages = new HashMap<>();
    private int count;
    private int nodes;

    private OutlineReader(COSDictionary catalog, List<PageTree.Entry> pages) {
        this.catalog = catalog;
        for (PageTree.Entry page : pages) {
            count++;
            // a page that stands twice in the tree is bookmarked at its first place
            if (page.node() instanceof COSObject reference) {
                this.pages.putIfAbsent(reference.getKey(), count);
            } else {
                direct.putIfAbsent(page.node(), count);
            }
        }
    }

    public static List<Bookmark> read(COSDictionary catalog, List<PageTree.Entry> pages) {
        COSDictionary outlines = catalog.getCOSDictionary(COSName.OUTLINES);
        if (outlines == null) {
            return List.of();
        }
        List<Bookmark> found = new ArrayList<>();
        try {
            new OutlineReader(catalog, pages).collect(outlines, found);
        } catch (RuntimeException | StackOverflowError e) {
            // PDFBox could not read on: what was found so far still helps
            return List.copyOf(found);
        }
        return found;
    }

    private void collect(COSDictionary outlines, List<Bookmark> found) {
        Set<COSDictionary> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        COSDictionary item = outlines.getCOSDictionary(COSName.FIRST);
        while (item != null && seen.add(item) && seen.size() <= MOST_BOOKMARKS) {
            Integer page = page(item);
            if (page != null) {
                found.add(new Bookmark(title(item), page));
            }
            item = item.getCOSDictionary(COSName.NEXT);
        }
    }

    private static String title(COSDictionary item) {
        String title = item.getString(COSName.TITLE, "");
        return title.codePointCount(0, title.length()) <= LONGEST_TITLE
                ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_TITLE));
    }

    private @Nullable Integer page(COSDictionary item) {
        COSBase destination = item.getDictionaryObject(COSName.DEST);
        if (destination == null) {
            COSDictionary action = item.getCOSDictionary(COSName.A);
            boolean here = action != null && "GoTo".equals(action.getNameAsString(COSName.S));
            destination = here ? action.getDictionaryObject(COSName.D) : null;
        }
        if (destination instanceof COSName name) {
            COSDictionary old = catalog.getCOSDictionary(COSName.DESTS);
            destination = old == null ? null : old.getDictionaryObject(name);
        } else if (destination instanceof COSString name) {
            COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
            COSDictionary tree = names == null ? null : names.getCOSDictionary(COSName.DESTS);
            destination = tree == null ? null : named(tree, name.getBytes(), 0);
        }
        if (destination instanceof COSDictionary wrapped) {
            destination = wrapped.getDictionaryObject(COSName.D);
        }
        return destination instanceof COSArray array && array.size() > 0 ? target(array) : null;
    }

    private @Nullable Integer target(COSArray destination) {
        // by its number, so that no page is read for it
        if (destination.get(0) instanceof COSObject reference && pages.containsKey(reference.getKey())) {
            return pages.get(reference.getKey());
        }
        COSBase first = destination.getObject(0);
        if (first instanceof COSDictionary page) {
            return direct.get(page);
        }
        // some producers number the page, from 0, where the standard wants a reference
        if (first instanceof COSInteger number && number.longValue() >= 0 && number.longValue() < count) {
            return number.intValue() + 1;
        }
        return null;
    }

    /** Value in a name tree under a name: nodes that say by their limits that they lack it are passed by. */
    private @Nullable COSBase named(COSDictionary node, byte[] name, int depth) {
        if (depth > MOST_DEPTH || ++nodes > MOST_NODES || outside(node.getCOSArray(COSName.LIMITS), name)) {
            return null;
        }
        COSArray leaves = node.getCOSArray(COSName.NAMES);
        for (int i = 0; leaves != null && i + 1 < leaves.size(); i += 2) {
            if (leaves.getObject(i) instanceof COSString key && Arrays.equals(key.getBytes(), name)) {
                return leaves.getObject(i + 1);
            }
        }
        COSArray kids = node.getCOSArray(COSName.KIDS);
        for (int i = 0; kids != null && i < kids.size(); i++) {
            if (kids.getObject(i) instanceof COSDictionary kid) {
                COSBase found = named(kid, name, depth + 1);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    private static boolean outside(@Nullable COSArray limits, byte[] name) {
        return limits != null
                && limits.getObject(0) instanceof COSString least
                && limits.getObject(1) instanceof COSString most
                && (Arrays.compareUnsigned(name, least.getBytes()) < 0
                        || Arrays.compareUnsigned(name, most.getBytes()) > 0);
    }
}
