package io.bindprep.pdf.edit;

import java.awt.geom.AffineTransform;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * References into moved pages from anywhere in the document: destinations of outlines, names, links and actions, and the
 * boxes that structure elements give.
 *
 * <p>The whole document is walked, so that a destination is found wherever it stands; it can only be an array that begins
 * with a page and the name of a fit (ISO 32000-1:2008, Table 151).
 */
final class PageReferences {
    private static final int MOST_KIN = 200;
    private static final COSName STRUCT_PAGE = COSName.PG;
    private static final COSName BBOX = COSName.BBOX;

    /** Meaning of the numbers after each fit: x or y. */
    private static final Map<String, String> FITS =
            Map.of("XYZ", "xy", "FitH", "y", "FitBH", "y", "FitV", "x", "FitBV", "x", "FitR", "xyxy");

    private final Map<COSBase, AffineTransform> pages = new IdentityHashMap<>();
    private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<COSBase> boxed = Collections.newSetFromMap(new IdentityHashMap<>());

    void moved(COSDictionary page, AffineTransform by) {
        pages.put(page, by);
    }

    void apply(COSDictionary catalog) {
        if (pages.isEmpty()) {
            return;
        }
        Deque<COSBase> open = new ArrayDeque<>();
        open.push(catalog);
        while (!open.isEmpty()) {
            COSBase object = open.pop();
            // streams hold what is painted; nothing in their dictionaries leads to a page
            if (object instanceof COSStream || !seen.add(object)) {
                continue;
            }
            if (object instanceof COSArray array) {
                destination(array);
                array.forEach(value -> follow(value, open));
            } else if (object instanceof COSDictionary dictionary) {
                structure(dictionary);
                dictionary.getValues().forEach(value -> follow(value, open));
            }
        }
    }

    private static void follow(@Nullable COSBase value, Deque<COSBase> open) {
        COSBase object = value instanceof COSObject reference ? reference.getObject() : value;
        if (object instanceof COSArray || object instanceof COSDictionary) {
            open.push(object);
        }
    }

    private void destination(COSArray array) {
        if (array.size() < 3 || !(array.getObject(1) instanceof COSName fit)) {
            return;
        }
        AffineTransform t = pages.get(array.getObject(0));
        String axes = FITS.get(fit.getName());
        if (t == null || axes == null) {
            return;
        }
        for (int i = 0; i < axes.length() && i + 2 < array.size(); i++) {
            // null keeps the reader where it is
            if (array.getObject(i + 2) instanceof COSNumber number) {
                boolean x = axes.charAt(i) == 'x';
                double v = number.floatValue();
                double moved = x ? v * t.getScaleX() + t.getTranslateX() : v * t.getScaleY() + t.getTranslateY();
                array.set(i + 2, new COSFloat((float) moved));
            }
        }
    }

    /** A structure element's layout attributes may give its box on the page (14.8.5.4.3). */
    private void structure(COSDictionary element) {
        if (!element.containsKey(COSName.S) || !element.containsKey(COSName.P)) {
            return;
        }
        COSBase attributes = element.getDictionaryObject(COSName.A);
        if (attributes instanceof COSDictionary one) {
            box(one, element);
        } else if (attributes instanceof COSArray several) {
            for (int i = 0; i < several.size(); i++) {
                if (several.getObject(i) instanceof COSDictionary one) {
                    box(one, element);
                }
            }
        }
    }

    private void box(COSDictionary attributes, COSDictionary element) {
        if (!"Layout".equals(attributes.getNameAsString(COSName.O))
                || attributes.getCOSArray(BBOX) == null
                || !boxed.add(attributes)) {
            return;
        }
        AffineTransform t = pages.get(page(element));
        if (t != null) {
            AnnotationMove.points(attributes, BBOX.getName(), t);
        }
    }

    /** The page of an element: its own, else its nearest descendant's, else its nearest ancestor's. */
    private static @Nullable COSBase page(COSDictionary element) {
        Deque<COSBase> open = new ArrayDeque<>(List.of(element));
        for (int i = 0; i < MOST_KIN && !open.isEmpty(); i++) {
            COSBase kin = open.poll();
            if (kin instanceof COSDictionary dictionary) {
                COSBase page = dictionary.getDictionaryObject(STRUCT_PAGE);
                if (page != null) {
                    return page;
                }
                COSBase kids = dictionary.getDictionaryObject(COSName.K);
                if (kids != null) {
                    open.add(kids);
                }
            } else if (kin instanceof COSArray kids) {
                for (int k = 0; k < Math.min(MOST_KIN, kids.size()); k++) {
                    COSBase kid = kids.getObject(k);
                    if (kid != null) {
                        open.add(kid);
                    }
                }
            }
        }
        COSDictionary above = element.getCOSDictionary(COSName.P);
        for (int i = 0; i < MOST_KIN && above != null; i++) {
            COSBase page = above.getDictionaryObject(STRUCT_PAGE);
            if (page != null) {
                return page;
            }
            above = above.getCOSDictionary(COSName.P);
        }
        return null;
    }
}
