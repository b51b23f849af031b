package io.bindprep.pdf.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** The title in a document's metadata: dc:title of XMP (ISO 16684-1, 8.3), which PDF 2.0 has instead of the older one. */
final class XmpTitle {
    private static final int MOST_METADATA = 1024 * 1024;
    private static final int MOST_TITLE = 2_000;
    private static final Charset UTF_32_BE = Charset.forName("UTF-32BE");
    private static final Charset UTF_32_LE = Charset.forName("UTF-32LE");
    /** Stands for what could not be decoded. */
    private static final char LOST = '\ufffd';

    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";

    private XmpTitle() {}

    /** The title as written, its default language before others; empty where there is none that can be read. */
    static String read(COSDictionary catalog) {
        if (!(catalog.getDictionaryObject(COSName.METADATA) instanceof COSStream stream)) {
            return "";
        }
        try (InputStream in = stream.createInputStream()) {
            String title = read(text(in.readNBytes(MOST_METADATA)));
            return title.indexOf(LOST) < 0 ? title : "";
        } catch (IOException | XMLStreamException | RuntimeException e) {
            // metadata that is no XML says nothing
            return "";
        }
    }

    /** Its characters, in the encodings of XMP (ISO 16684-1, 7.1): Java's reader of bytes prints what it cannot decode. */
    private static String text(byte[] b) {
        Charset charset = StandardCharsets.UTF_8;
        if (b.length > 3 && (b[0] == 0 || b[0] == (byte) 0xfe)) {
            charset = b[1] == 0 ? UTF_32_BE : StandardCharsets.UTF_16BE;
        } else if (b.length > 3 && (b[1] == 0 || b[0] == (byte) 0xff)) {
            charset = b[2] == 0 && b[3] == 0 ? UTF_32_LE : StandardCharsets.UTF_16LE;
        }
        String text = new String(b, charset);
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private static String read(String metadata) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // the file is hostile: no entity is read, from it or from elsewhere
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(metadata));
        try {
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("title")
                        && DC.equals(xml.getNamespaceURI())) {
                    return alternatives(xml);
                }
            }
            return "";
        } finally {
            xml.close();
        }
    }

    /** The alternative of the default language, else the first with a word. */
    private static String alternatives(XMLStreamReader xml) throws XMLStreamException {
        String first = "";
        boolean asDefault = false;
        StringBuilder text = new StringBuilder();
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    asDefault = "x-default".equals(xml.getAttributeValue(XML, "lang"));
                    text.setLength(0);
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                    if (text.length() < MOST_TITLE) {
                        text.append(xml.getText());
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    boolean words = !text.toString().isBlank();
                    if (words && asDefault) {
                        return text.toString();
                    }
                    first = first.isEmpty() && words ? text.toString() : first;
                    text.setLength(0);
                    asDefault = false;
                    if (xml.getLocalName().equals("title")) {
                        return first;
                    }
                }
                default -> {
                    // comments and instructions are no part of a title
                }
            }
        }
        return first;
    }
}
