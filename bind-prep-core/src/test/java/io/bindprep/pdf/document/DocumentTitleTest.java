package io.bindprep.pdf.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Titles are invented; where they stand is ISO 32000-1:2008, 14.3.3 and Table 317. */
class DocumentTitleTest {
    @Test
    void aTitleIsReadFromTheInformationDictionary() {
        assertEquals("Care of the lathe", read("Care of\n  the lathe "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "  ", "Untitled", "untitled-1", "Microsoft Word - x.doc", "book.indd", "C:\\a\\b.pages"})
    void aTitleThatAProgramPutInIsNone(String junk) {
        assertEquals("", read(junk));
    }

    @Test
    void marksThatRewriteAScreenAreGone() {
        assertEquals("a b c", read("a\u202Eb\u001Bc"));
    }

    @Test
    void aLongTitleIsCut() {
        assertEquals("x".repeat(117) + "...", read("x".repeat(5_000_000)));
        assertEquals("", DocumentTitle.read(null));
    }

    private static String read(String title) {
        COSDictionary info = new COSDictionary();
        info.setString(COSName.TITLE, title);
        COSDictionary trailer = new COSDictionary();
        trailer.setItem(COSName.INFO, info);
        return DocumentTitle.read(trailer);
    }
}
