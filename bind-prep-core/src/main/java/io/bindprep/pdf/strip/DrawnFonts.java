package io.bindprep.pdf.strip;

import io.bindprep.pdf.ink.WordlessFont;
import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.DefaultResourceCache;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.jspecify.annotations.Nullable;

/** Keeps fonts and the like from one drawing to the next, where parsing them again was a third of the time; no pictures. */
public final class DrawnFonts extends DefaultResourceCache {
    @Override
    public @Nullable PDFont getFont(COSObject indirect) {
        PDFont known = super.getFont(indirect);
        if (known == null && indirect.getObject() instanceof COSDictionary dictionary) {
            try {
                known = WordlessFont.of(dictionary);
            } catch (IOException | RuntimeException e) {
                return null; // PDFBox tries in its own way, and says what is wrong
            }
            if (known != null) {
                put(indirect, known);
            }
        }
        return known;
    }

    @Override
    public void put(COSObject indirect, PDXObject picture) {
        // a decoded picture is too large to keep
    }
}
