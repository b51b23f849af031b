package io.bindprep.pdf.edit;

import io.bindprep.pdf.document.PageTree;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.jspecify.annotations.Nullable;

/** The pages in their order; the page tree is built anew only where a page comes in or stands in it twice. */
final class PageOrder {
    private static final int KIDS = 32;
    private static final List<COSName> INHERITED =
            List.of(COSName.RESOURCES, COSName.MEDIA_BOX, COSName.CROP_BOX, COSName.ROTATE);
    private static final List<COSName> SIZE = List.of(
            COSName.MEDIA_BOX,
            COSName.CROP_BOX,
            COSName.BLEED_BOX,
            COSName.TRIM_BOX,
            COSName.ROTATE,
            COSName.USER_UNIT);

    private final COSDictionary catalog;
    private final List<PageTree.Entry> entries = new ArrayList<>();
    private List<COSDictionary> order;
    private List<COSDictionary> removed = List.of();
    private boolean changed;

    PageOrder(COSDictionary catalog, List<PageTree.Entry> pages) {
        this.catalog = catalog;
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (PageTree.Entry page : pages) {
            if (seen.add(page.own())) {
                entries.add(page);
            } else {
                // one page printed twice may lie on a front and on a back
                entries.add(new PageTree.Entry(new COSDictionary(page.own()), page.inherited()));
                changed = true;
            }
        }
        this.order = entries.stream().map(PageTree.Entry::own).toList();
    }

    /** A page's own dictionary. */
    COSDictionary page(int page) {
        return entries.get(page - 1).own();
    }

    /** An entry of a page or, where it has none, what it inherits; a reference where it is one. */
    @Nullable
    COSBase inherited(int page, COSName key) {
        PageTree.Entry entry = entries.get(page - 1);
        return entry.own().getDictionaryObject(key) != null
                ? entry.own().getItem(key)
                : entry.inherited().getItem(key);
    }

    void blanksAfter(List<Integer> pages) {
        if (pages.isEmpty()) {
            return;
        }
        Set<Integer> after = new HashSet<>(pages);
        List<COSDictionary> all = new ArrayList<>();
        for (int page = 1; page <= entries.size(); page++) {
            all.add(page(page));
            if (after.contains(page)) {
                all.add(blank(page));
            }
        }
        order = all;
        changed = true;
        PageLabels.blanksAfter(catalog, after, entries.size());
    }

    /** Leaves out all pages but these, and what leads through the document to those left out. */
    void only(List<Integer> pages) {
        order = pages.stream().map(this::page).toList();
        removed = IntStream.rangeClosed(1, entries.size())
                .filter(page -> !pages.contains(page))
                .mapToObj(this::page)
                .toList();
        changed = true;
        List.of(COSName.OUTLINES, COSName.OPEN_ACTION, COSName.THREADS, COSName.STRUCT_TREE_ROOT)
                .forEach(catalog::removeItem);
        PageLabels.only(catalog, pages);
    }

    private COSDictionary blank(int like) {
        COSDictionary blank = new COSDictionary();
        blank.setItem(COSName.TYPE, COSName.PAGE);
        for (COSName key : SIZE) {
            COSBase value = inherited(like, key);
            if (value != null) {
                blank.setItem(key, value);
            }
        }
        blank.setItem(COSName.RESOURCES, new COSDictionary());
        return blank;
    }

    /** Writes the order into the document where it is not what it was. */
    void apply() {
        COSDictionary root = catalog.getCOSDictionary(COSName.PAGES);
        if (!changed || root == null) {
            return;
        }
        for (int page = 1; page <= entries.size(); page++) {
            for (COSName key : INHERITED) {
                COSBase value = inherited(page, key);
                if (value != null) {
                    page(page).setItem(key, value);
                }
            }
        }
        // a link may still lead to them; it keeps nothing of theirs in the file
        removed.forEach(COSDictionary::clear);
        INHERITED.forEach(root::removeItem);
        List<COSDictionary> level = order;
        while (level.size() > KIDS) {
            List<COSDictionary> above = new ArrayList<>();
            for (int i = 0; i < level.size(); i += KIDS) {
                COSDictionary node = new COSDictionary();
                node.setItem(COSName.TYPE, COSName.PAGES);
                fill(node, level.subList(i, Math.min(level.size(), i + KIDS)));
                above.add(node);
            }
            level = above;
        }
        fill(root, level);
    }

    private static void fill(COSDictionary node, List<COSDictionary> kids) {
        COSArray array = new COSArray();
        int count = 0;
        for (COSDictionary kid : kids) {
            array.add(new COSObject(kid));
            kid.setItem(COSName.PARENT, node);
            boolean inner = kid.getCOSName(COSName.TYPE) == COSName.PAGES && kid.containsKey(COSName.KIDS);
            count += inner ? kid.getInt(COSName.COUNT) : 1;
        }
        node.setItem(COSName.KIDS, array);
        node.setInt(COSName.COUNT, count);
    }
}
