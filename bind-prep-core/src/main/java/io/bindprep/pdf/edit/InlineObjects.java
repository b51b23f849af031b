package io.bindprep.pdf.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Keeps small arrays and dictionaries within the object that holds them. PDFBox would give each a number of its own, which
 * made some books a quarter larger.
 */
final class InlineObjects {
    /** Objects that are walked through; those of larger files are written as PDFBox likes it. */
    private static final int MOST_OBJECTS = 300_000;

    /** Things met, and whether only one other holds them, without a number of their own. */
    private final Map<COSBase, Boolean> single = new IdentityHashMap<>();

    private final Deque<COSBase> open = new ArrayDeque<>();

    private InlineObjects() {}

    static void keep(COSDocument document) {
        if (document.getXrefTable().size() > MOST_OBJECTS) {
            return;
        }
        InlineObjects objects = new InlineObjects();
        for (COSBase value : document.getTrailer().getValues()) {
            objects.meet(value, false);
        }
        objects.walk();
        objects.single.forEach((thing, once) -> {
            if (once) {
                thing.setDirect(true);
            }
        });
    }

    private void walk() {
        while (!open.isEmpty()) {
            COSBase next = open.pop();
            if (next instanceof COSDictionary dictionary) {
                dictionary.getValues().forEach(value -> meet(value, true));
            } else if (next instanceof COSArray array) {
                for (int i = 0; i < array.size(); i++) {
                    meet(array.get(i), true);
                }
            }
        }
    }

    private void meet(@Nullable COSBase value, boolean within) {
        COSBase thing = value instanceof COSObject reference ? reference.getObject() : value;
        if (!(thing instanceof COSDictionary) && !(thing instanceof COSArray)) {
            return;
        }
        boolean inline =
                within && !(value instanceof COSObject) && !(thing instanceof COSStream) && thing.getKey() == null;
        if (single.put(thing, inline) == null) {
            open.push(thing);
        } else if (inline) {
            single.put(thing, false);
        }
    }
}
