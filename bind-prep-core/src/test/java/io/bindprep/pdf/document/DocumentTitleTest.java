package io.bindprep.pdf.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
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

    /** ISO 16684-1, 8.3: dc:title is a list of alternatives by language; x-default is for those who ask for none. */
    @Test
    void aTitleIsReadFromTheMetadata() throws Exception {
        String alternatives = "<rdf:Alt><rdf:li xml:lang='de'>Pflege</rdf:li>"
                + "<rdf:li xml:lang='x-default'>Care &amp; <![CDATA[use]]> of\n the lathe</rdf:li></rdf:Alt>";
        assertEquals("Care & use of the lathe", metadata(alternatives, "UTF-8"));
        assertEquals("Care & use of the lathe", metadata(alternatives, "UTF-16BE"));
        assertEquals("Care & use of the lathe", metadata(alternatives, "UTF-16LE"));
        assertEquals("Care & use of the lathe", metadata(alternatives, "UTF-32LE"));
        assertEquals("Care & use of the lathe", metadata(alternatives, "UTF-32BE"));
        assertEquals("Pflege", metadata("<rdf:Alt><rdf:li xml:lang='de'>Pflege</rdf:li></rdf:Alt>", "UTF-8"));
        assertEquals("Plain", metadata("Plain", "UTF-8"));
        assertEquals("", metadata("<rdf:Alt><rdf:li xml:lang='x-default'>untitled</rdf:li></rdf:Alt>", "UTF-8"));
        assertEquals("", metadata("<rdf:Alt/>", "UTF-8"));
        assertEquals("", metadata("no XML", "UTF-8", "<"));
    }

    /** Java's reader of bytes prints "[Fatal Error]" on the standard error for them. */
    @Test
    void bytesThatCannotBeDecodedAreNoTitleAndPrintNothing() throws Exception {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            assertEquals("", metadata("Pfl\u00fcge", "ISO-8859-1"));
        } finally {
            System.setErr(before);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }

    /** XML 1.0, 4.4: entities; one that grows or reads a file is not followed. */
    @Test
    void metadataReadsNoEntity() throws Exception {
        String doctype = "<!DOCTYPE x [<!ENTITY a SYSTEM 'file:///etc/passwd'><!ENTITY b 'bbbb'>]>";
        assertEquals("", metadata("&a;", "UTF-8", doctype));
        assertEquals("", metadata("&b;", "UTF-8", doctype));
    }

    @Test
    void theInformationDictionaryGoesBeforeTheMetadata() throws Exception {
        COSDictionary trailer = trailer("Care of the lathe");
        trailer.setItem(COSName.ROOT, catalog("Other", "UTF-8", ""));
        assertEquals("Care of the lathe", DocumentTitle.read(trailer));
        trailer.getCOSDictionary(COSName.INFO).setString(COSName.TITLE, "Untitled");
        assertEquals("Other", DocumentTitle.read(trailer));
    }

    private static String metadata(String title, String charset) throws Exception {
        return metadata(title, charset, "");
    }

    private static String metadata(String title, String charset, String before) throws Exception {
        COSDictionary trailer = new COSDictionary();
        trailer.setItem(COSName.ROOT, catalog(title, charset, before));
        return DocumentTitle.read(trailer);
    }

    private static COSDictionary catalog(String title, String charset, String before) throws Exception {
        String xml = before + "<x:xmpmeta xmlns:x='adobe:ns:meta/'>"
                + "<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
                + "<rdf:Description xmlns:dc='http://purl.org/dc/elements/1.1/'><dc:title>" + title
                + "</dc:title></rdf:Description></rdf:RDF></x:xmpmeta>";
        COSStream stream = new COSStream();
        try (OutputStream out = stream.createOutputStream()) {
            out.write((charset.startsWith("UTF-16") ? "\uFEFF" + xml : xml).getBytes(charset));
        }
        COSDictionary catalog = new COSDictionary();
        catalog.setItem(COSName.METADATA, stream);
        return catalog;
    }

    private static COSDictionary trailer(String title) {
        COSDictionary info = new COSDictionary();
        info.setString(COSName.TITLE, title);
        COSDictionary trailer = new COSDictionary();
        trailer.setItem(COSName.INFO, info);
        return trailer;
    }

    private static String read(String title) {
        return DocumentTitle.read(trailer(title));
    }
}
