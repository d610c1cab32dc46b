package org.bayledger.drawing;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes one SVG document, element by element. Every name and value goes through the XML writer,
 * which escapes it, after what XML 1.0 can't hold was taken out of it: nothing that a document
 * calls itself can become markup.
 */
final class Svg {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final XMLStreamWriter xml;

    Svg() {
        try {
            // the JDK's own writer, whatever else is on the class path: same bytes everywhere
            xml =
                    XMLOutputFactory.newDefaultFactory()
                            .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Begins the root element. */
    void root(String... attributes) {
        open("svg", attributes);
        try {
            xml.writeDefaultNamespace(NAMESPACE);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Begins an element.
     *
     * @param attributes names and values in turn
     */
    void open(String element, String... attributes) {
        try {
            line();
            xml.writeStartElement(element);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the element that was begun last. */
    void close() {
        try {
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An element without content. */
    void empty(String element, String... attributes) {
        try {
            line();
            xml.writeEmptyElement(element);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An element that holds words. */
    void words(String element, String words, String... attributes) {
        open(element, attributes);
        try {
            xml.writeCharacters(Words.clean(words));
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        close();
    }

    /** The whole document. */
    byte[] finish() {
        try {
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], Words.clean(attributes[i + 1]));
        }
    }

    /** A coordinate to a hundredth of a point. */
    static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
