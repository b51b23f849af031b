package io.bindprep.pdf.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
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
    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";

    private XmpTitle() {}

    /** The title as written, its default language before others; empty where there is none that can be read. */
    static String read(COSDictionary catalog) {
        if (!(catalog.getDictionaryObject(COSName.METADATA) instanceof COSStream stream)) {
            return "";
        }
        try (InputStream in = stream.createInputStream()) {
            return read(in.readNBytes(MOST_METADATA));
        } catch (IOException | XMLStreamException | RuntimeException e) {
            // metadata that is no XML says nothing
            return "";
        }
    }

    private static String read(byte[] metadata) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // the file is hostile: no entity is read, from it or from elsewhere
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(metadata));
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
