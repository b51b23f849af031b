package io.bindprep.pdf.ink;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Tells whether the file holds its fonts, told from their dictionaries alone: ISO 32000-1:2008, 9.9. */
final class Embedding {
    private Embedding() {}

    /** Returns true if the font's own outlines are in the file. */
    static boolean holds(COSDictionary font) {
        COSDictionary program = font;
        if (font.getItem(COSName.DESCENDANT_FONTS) != null) {
            COSArray descendants = font.getCOSArray(COSName.DESCENDANT_FONTS);
            if (descendants == null
                    || descendants.size() == 0
                    || !(descendants.getObject(0) instanceof COSDictionary descendant)) {
                return false;
            }
            program = descendant;
        }
        if (COSName.TYPE3.equals(program.getCOSName(COSName.SUBTYPE))) {
            return true;
        }
        COSDictionary descriptor = program.getCOSDictionary(COSName.FONT_DESC);
        return descriptor != null
                && (descriptor.getCOSStream(COSName.FONT_FILE) != null
                        || descriptor.getCOSStream(COSName.FONT_FILE2) != null
                        || descriptor.getCOSStream(COSName.FONT_FILE3) != null);
    }

    /** Name in the document. */
    static String name(COSDictionary font) {
        return font.getNameAsString(COSName.BASE_FONT, "without a name");
    }
}
