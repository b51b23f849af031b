package io.bindprep.pdf.edit;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;

/** Page labels (ISO 32000-1:2008, 12.4.2) when pages come in or go: each page keeps its own, a blank has none. */
final class PageLabels {
    private static final COSName START = COSName.getPDFName("St");
    private static final COSName NUMS = COSName.getPDFName("Nums");

    private PageLabels() {}

    /** Numbers the pages of a document that has labels; numbers them again around blanks after these pages. */
    static void blanksAfter(COSDictionary catalog, Set<Integer> blanks, int pages) {
        COSDictionary root = catalog.getCOSDictionary(COSName.PAGE_LABELS);
        if (root == null) {
            return;
        }
        TreeMap<Integer, COSDictionary> ranges = ranges(root);
        COSArray nums = new COSArray();
        int added = 0;
        boolean fresh = true;
        for (int page = 1; page <= pages; page++) {
            Map.Entry<Integer, COSDictionary> range = ranges.floorEntry(page - 1);
            boolean begins = range != null && range.getKey() == page - 1;
            if (range != null && (begins || fresh)) {
                COSDictionary label = new COSDictionary(range.getValue());
                int start = Math.max(1, label.getInt(START, 1)) + page - 1 - range.getKey();
                label.setInt(START, start);
                add(nums, page - 1 + added, label);
            }
            fresh = blanks.contains(page);
            if (fresh) {
                add(nums, page + added, new COSDictionary());
                added++;
            }
        }
        COSDictionary labels = new COSDictionary();
        labels.setItem(NUMS, nums);
        catalog.setItem(COSName.PAGE_LABELS, new COSObject(labels));
    }

    /** Keeps the labels of the others where pages are left out; without labels, each gets its number. */
    static void only(COSDictionary catalog, List<Integer> pages) {
        COSDictionary root = catalog.getCOSDictionary(COSName.PAGE_LABELS);
        TreeMap<Integer, COSDictionary> ranges = root == null ? new TreeMap<>() : ranges(root);
        COSArray nums = new COSArray();
        for (int i = 0; i < pages.size(); i++) {
            int index = pages.get(i) - 1;
            Map.Entry<Integer, COSDictionary> range = ranges.floorEntry(index);
            COSDictionary label = new COSDictionary();
            if (range != null) {
                label.addAll(range.getValue());
                label.setInt(START, Math.max(1, label.getInt(START, 1)) + index - range.getKey());
            } else {
                label.setName(COSName.S, "D");
                label.setInt(START, index + 1);
            }
            add(nums, i, label);
        }
        COSDictionary labels = new COSDictionary();
        labels.setItem(NUMS, nums);
        catalog.setItem(COSName.PAGE_LABELS, new COSObject(labels));
    }

    private static void add(COSArray nums, int index, COSDictionary label) {
        nums.add(COSInteger.get(index));
        nums.add(label);
    }

    private static TreeMap<Integer, COSDictionary> ranges(COSDictionary root) {
        TreeMap<Integer, COSDictionary> ranges = new TreeMap<>();
        Deque<COSDictionary> open = new ArrayDeque<>(List.of(root));
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        while (!open.isEmpty()) {
            COSDictionary node = open.pop();
            if (!seen.add(node)) {
                continue;
            }
            COSArray nums = node.getCOSArray(NUMS);
            for (int i = 0; nums != null && i + 1 < nums.size(); i += 2) {
                if (nums.getObject(i) instanceof COSNumber index
                        && nums.getObject(i + 1) instanceof COSDictionary label) {
                    ranges.put(index.intValue(), label);
                }
            }
            COSArray kids = node.getCOSArray(COSName.KIDS);
            for (int i = 0; kids != null && i < kids.size(); i++) {
                if (kids.getObject(i) instanceof COSDictionary kid) {
                    open.push(kid);
                }
            }
        }
        return ranges;
    }
}
