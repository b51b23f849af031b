package io.bindprep.pdf.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.jspecify.annotations.Nullable;

/**
 * Numbers the objects of a document anew where most numbers are not in use. PDFBox writes 20 bytes for each number below the
 * highest, so a small file with one high number would grow to many times its size.
 */
final class SparseNumbers {
    /** Free numbers that are written as they are: 20 kB. */
    private static final int FEW = 1_000;
    /** Objects that are read whole to be numbered; in a larger file the table weighs little. */
    private static final int MOST_OBJECTS = 50_000;

    private SparseNumbers() {}

    /** Closes the gaps, before the document is written; afterwards objects can no longer be read from the file. */
    static void close(COSDocument document) {
        long highest = document.getHighestXRefObjectNumber();
        int used = document.getXrefTable().size();
        if (highest - used < FEW || used > MOST_OBJECTS) {
            return;
        }
        List<COSObject> all = all(document.getTrailer());
        Map<COSBase, COSObjectKey> keys = new IdentityHashMap<>();
        long next = 0;
        for (COSObject object : all) {
            COSBase base = object.getObject();
            if (base == null) {
                continue;
            }
            COSObjectKey key = keys.get(base);
            if (key == null) {
                next++;
                key = new COSObjectKey(next, 0);
                keys.put(base, key);
            }
            base.setKey(key);
            object.setKey(key);
        }
        document.setHighestXRefObjectNumber(next);
    }

    /** Every object that is referred to, in the order in which they are met. */
    private static List<COSObject> all(COSDictionary trailer) {
        List<COSObject> all = new ArrayList<>();
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSBase> open = new ArrayDeque<>();
        open.push(trailer);
        while (!open.isEmpty()) {
            COSBase next = open.pop();
            if (!seen.add(next)) {
                continue;
            }
            if (next instanceof COSObject reference) {
                all.add(reference);
                push(open, reference.getObject());
            } else if (next instanceof COSDictionary dictionary) {
                dictionary.getValues().forEach(value -> push(open, value));
            } else if (next instanceof COSArray array) {
                for (int i = 0; i < array.size(); i++) {
                    push(open, array.get(i));
                }
            }
        }
        return all;
    }

    private static void push(Deque<COSBase> open, @Nullable COSBase value) {
        if (value instanceof COSObject || value instanceof COSDictionary || value instanceof COSArray) {
            open.push(value);
        }
    }
}
