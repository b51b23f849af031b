package io.bindprep.pdf.strip;

import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.DefaultResourceCache;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;

/** Keeps fonts and the like from one drawing to the next, where parsing them again was a third of the time; no pictures. */
public final class DrawnFonts extends DefaultResourceCache {
    @Override
    public void put(COSObject indirect, PDXObject picture) {
        // a decoded picture is too large to keep
    }
}
