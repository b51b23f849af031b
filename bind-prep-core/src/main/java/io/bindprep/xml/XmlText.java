package io.bindprep.xml;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * An XML 1.0 document in the making, indented, in UTF-8. Any text may be given: control and direction marks, and what XML
 * cannot hold, are written as U+FFFD, so that hostile file names and words neither break the document nor a screen.
 */
public final class XmlText {
    private static final String UNSAFE = "[\\p{Cc}\\p{Cf}\\p{Cs}\\uFFFE\\uFFFF]";

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;
    private int depth;
    private boolean childless;

    /** A document that begins with its declaration. */
    public XmlText() {
        try {
            // the JDK's own, whatever else is on the class path
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Begins an element, inside the one that is open.
     *
     * @param attributes names and values in turn; one whose value is empty is left out
     */
    public XmlText open(String name, String... attributes) {
        try {
            newLine();
            xml.writeStartElement(name);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        depth++;
        childless = true;
        return this;
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                xml.writeAttribute(attributes[i], safe(attributes[i + 1]));
            }
        }
    }

    /** Ends the element that is open. */
    public XmlText close() {
        depth--;
        try {
            if (!childless) {
                newLine();
            }
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        childless = false;
        return this;
    }

    /** An element without content; attributes as for {@link #open}. */
    public XmlText empty(String name, String... attributes) {
        try {
            newLine();
            xml.writeEmptyElement(name);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        childless = false;
        return this;
    }

    /** An element that holds text alone; line feeds stay. */
    public XmlText leaf(String name, String content, String... attributes) {
        open(name, attributes);
        try {
            xml.writeCharacters(
                    String.join("\n", content.lines().map(XmlText::safe).toList()));
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return close();
    }

    /** The whole document, once every element is closed; ends in a line feed. */
    public String finish() {
        if (depth != 0) {
            throw new IllegalStateException(depth + " elements are still open");
        }
        try {
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text + "\n";
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }

    private static String safe(String any) {
        return any.replaceAll(UNSAFE, "\uFFFD");
    }
}
