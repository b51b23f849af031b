package io.bindprep.pdf.edit;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Patterns that a page uses itself. They are fixed to the page and not to what is drawn (ISO 32000-1:2008, 8.7.2: a
 * pattern's matrix leads to the default coordinates of its parent content stream), so a transform before the content leaves
 * them behind. Those that forms use move with the form.
 */
final class PatternMove {
    private final COSDocument document;
    private final Map<COSBase, Map<AffineTransform, COSObject>> resources = new IdentityHashMap<>();
    private final Map<COSBase, Map<AffineTransform, COSObject>> patterns = new IdentityHashMap<>();

    PatternMove(COSDocument document) {
        this.document = document;
    }

    /** Resources whose patterns are moved; the same where there are none. */
    @Nullable
    COSBase moved(@Nullable COSBase item, AffineTransform t) {
        COSBase object = item instanceof COSObject reference ? reference.getObject() : item;
        if (!(object instanceof COSDictionary old)) {
            return item;
        }
        COSDictionary oldPatterns = old.getCOSDictionary(COSName.PATTERN);
        if (oldPatterns == null || oldPatterns.size() == 0) {
            return item;
        }
        return resources.computeIfAbsent(old, k -> new HashMap<>()).computeIfAbsent(t, k -> {
            COSDictionary changed = new COSDictionary(old);
            COSDictionary changedPatterns = new COSDictionary();
            List<COSName> names = new ArrayList<>(oldPatterns.keySet());
            for (COSName name : names) {
                COSBase pattern = oldPatterns.getDictionaryObject(name);
                if (pattern instanceof COSDictionary dictionary) {
                    changedPatterns.setItem(name, pattern(dictionary, t));
                }
            }
            changed.setItem(COSName.PATTERN, changedPatterns);
            return new COSObject(changed);
        });
    }

    private COSObject pattern(COSDictionary old, AffineTransform t) {
        return patterns.computeIfAbsent(old, k -> new HashMap<>()).computeIfAbsent(t, k -> {
            COSDictionary copy = old instanceof COSStream stream ? copy(stream) : new COSDictionary(old);
            AffineTransform m = new AffineTransform(t);
            m.concatenate(
                    Matrix.createMatrix(old.getDictionaryObject(COSName.MATRIX)).createAffineTransform());
            double[] six = new double[6];
            m.getMatrix(six);
            copy.setItem(COSName.MATRIX, NewObjects.numbers(six));
            return new COSObject(copy);
        });
    }

    private COSStream copy(COSStream old) {
        COSStream copy = document.createCOSStream();
        try {
            try (InputStream in = old.createRawInputStream();
                    OutputStream out = copy.createRawOutputStream()) {
                in.transferTo(out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a pattern cannot be read", e);
        }
        for (COSName key : new ArrayList<>(old.keySet())) {
            if (!key.equals(COSName.LENGTH)) {
                copy.setItem(key, old.getItem(key));
            }
        }
        return copy;
    }
}
