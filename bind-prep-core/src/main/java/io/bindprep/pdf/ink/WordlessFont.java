package io.bindprep.pdf.ink;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontFactory;
import org.jspecify.annotations.Nullable;

/** Fonts for drawing: a program in the file is drawn without the font's map to words, which takes PDFBox long to read. */
public final class WordlessFont {
    private WordlessFont() {}

    /** A font without its map to words; null where it has none, and where what stands in for it is chosen by the words. */
    public static @Nullable PDFont of(COSDictionary dictionary) throws IOException {
        if (!dictionary.containsKey(COSName.TO_UNICODE) || !Embedding.holds(dictionary)) {
            return null;
        }
        PDFont font = PDFontFactory.createFont(WordMap.without(dictionary));
        return font.isEmbedded() ? font : null;
    }
}
