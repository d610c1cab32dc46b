package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;
import static org.bayledger.drawing.ResultTree.words;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.bayledger.ledger.RecordedRevision;

/**
 * The findings of a revision as topics of the BIM Collaboration Format, BCF-XML 3.0: one topic a
 * finding. The same revision makes the same file, with the same GUIDs.
 */
final class BcfFile {

    private static final String OPEN = "Open";

    /** Titles longer than this are cut; the whole sentence is the description. */
    private static final int TITLE = 120;

    private final RecordedRevision revision;

    private BcfFile(RecordedRevision revision) {
        this.revision = revision;
    }

    static byte[] of(RecordedRevision revision) {
        return new BcfFile(revision).write();
    }

    private interface Xml {
        void write(XMLStreamWriter xml) throws XMLStreamException;
    }

    private byte[] write() {
        List<Object> findings = list(revision.result(), "findings");
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(file)) {
            put(
                    zip,
                    "bcf.version",
                    xml -> {
                        xml.writeEmptyElement("Version");
                        xml.writeAttribute("VersionId", "3.0");
                    });
            put(zip, "extensions.xml", xml -> extensions(xml, findings));
            for (Object finding : findings) {
                UUID guid = guid(finding);
                put(zip, guid + "/markup.bcf", xml -> markup(xml, finding, guid));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return file.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, Xml content)
            throws IOException, XMLStreamException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        XMLStreamWriter xml =
                XMLOutputFactory.newInstance()
                        .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        content.write(xml);
        xml.writeEndDocument();
        xml.close();
        ZipEntry entry = new ZipEntry(name);
        // no clock: the same revision, the same bytes
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(bytes.toByteArray());
        zip.closeEntry();
    }

    private static void extensions(XMLStreamWriter xml, List<Object> findings)
            throws XMLStreamException {
        TreeSet<String> types = new TreeSet<>();
        TreeSet<String> labels = new TreeSet<>();
        for (Object finding : findings) {
            types.add(words(text(finding, "severity")));
            labels.add(text(finding, "code"));
        }
        xml.writeStartElement("Extensions");
        each(xml, "TopicTypes", "TopicType", types);
        each(xml, "TopicStatuses", "TopicStatus", List.of(OPEN));
        each(xml, "TopicLabels", "TopicLabel", labels);
        xml.writeEndElement();
    }

    private void markup(XMLStreamWriter xml, Object finding, UUID guid) throws XMLStreamException {
        List<String> items = ReviewSheet.strings(finding, "items");
        String sentence = text(finding, "text");
        xml.writeStartElement("Markup");
        xml.writeStartElement("Topic");
        xml.writeAttribute("Guid", guid.toString());
        xml.writeAttribute("TopicType", words(text(finding, "severity")));
        xml.writeAttribute("TopicStatus", OPEN);
        element(
                xml,
                "Title",
                sentence.length() > TITLE ? sentence.substring(0, TITLE - 3) + "..." : sentence);
        each(xml, "Labels", "Label", List.of(text(finding, "code")));
        element(xml, "CreationDate", revision.recordedAt());
        element(xml, "CreationAuthor", revision.author());
        element(
                xml,
                "Description",
                sentence
                        + (items.isEmpty() ? "" : "\nItems: " + String.join(", ", items))
                        + "\nIn the document: "
                        + text(finding, "pointer")
                        + "\n"
                        + revision.projectName()
                        + ", revision "
                        + revision.number()
                        + ", hash "
                        + revision.hash());
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static void each(XMLStreamWriter xml, String list, String name, Iterable<String> values)
            throws XMLStreamException {
        xml.writeStartElement(list);
        for (String value : values) {
            element(xml, name, value);
        }
        xml.writeEndElement();
    }

    private static void element(XMLStreamWriter xml, String name, String text)
            throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(printable(text));
        xml.writeEndElement();
    }

    /** XML has no way to say most control characters. */
    private static String printable(String text) {
        return text.replaceAll(
                "[^\\t\\n\\r\\x20-\\ud7ff\\ue000-\\ufffd\\x{10000}-\\x{10ffff}]", "\ufffd");
    }

    /** Two findings of one revision that say the same of the same items are one. */
    private UUID guid(Object finding) {
        String name =
                revision.hash()
                        + "\n"
                        + text(finding, "code")
                        + "\n"
                        + text(finding, "pointer")
                        + "\n"
                        + text(finding, "items")
                        + "\n"
                        + text(finding, "text");
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
