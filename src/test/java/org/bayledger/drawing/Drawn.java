package org.bayledger.drawing;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A drawing as a reader of XML sees it, who knows nothing of how it was made. */
record Drawn(Document document) {

    private static final Pattern TURN = Pattern.compile("rotate\\(-90 (\\S+) (\\S+)\\)");

    private static final Pattern MOVE = Pattern.compile("translate\\((\\S+) (\\S+)\\)");

    static Drawn of(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return new Drawn(factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg)));
        } catch (Exception e) {
            throw new AssertionError("no XML", e);
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> elements(String name) {
        NodeList found = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    Set<String> names() {
        Set<String> names = new TreeSet<>();
        elements("*").forEach(element -> names.add(element.getTagName()));
        return names;
    }

    List<String> texts() {
        return elements("text").stream().map(Element::getTextContent).toList();
    }

    /** The values of an attribute, wherever it stands. */
    Set<String> values(String attribute) {
        Set<String> values = new TreeSet<>();
        for (Element element : elements("*")) {
            if (element.hasAttribute(attribute)) {
                values.add(element.getAttribute(attribute));
            }
        }
        return values;
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The outline of the frame of a bay: the largest heavy rectangle inside that of the sheet. */
    Element frame() {
        return elements("rect").stream()
                .filter(rect -> rect.getAttribute("stroke-width").equals("1.4"))
                .sorted(
                        Comparator.comparingDouble(
                                rect -> -number(rect, "width") * number(rect, "height")))
                .skip(1)
                .findFirst()
                .orElseThrow();
    }

    /** Rectangles without a pattern that are filled so, white behind words aside. */
    List<Element> filled(String fill) {
        return elements("rect").stream()
                .filter(rect -> rect.getAttribute("fill").equals(fill))
                .filter(rect -> rect.hasAttribute("stroke"))
                .toList();
    }

    /** Marks of a group that is called so. */
    List<Element> marks(String group) {
        List<Element> marks = new ArrayList<>();
        for (Element each : elements("g")) {
            if (each.getAttribute("class").equals(group)) {
                NodeList children = each.getElementsByTagName("*");
                for (int i = 0; i < children.getLength(); i++) {
                    marks.add((Element) children.item(i));
                }
            }
        }
        return marks;
    }

    /** Where a mark was moved to. */
    static double[] place(Element mark) {
        Matcher move = MOVE.matcher(mark.getAttribute("transform"));
        if (!move.lookingAt()) {
            throw new AssertionError(mark.getAttribute("transform"));
        }
        return new double[] {Double.parseDouble(move.group(1)), Double.parseDouble(move.group(2))};
    }

    /** All words in one, in their order, with plain blanks. */
    String said() {
        return String.join(" ", texts()).replace('\u00a0', ' ');
    }

    /** Words and the room they take at least, by a narrow count: 0.5 of the size a character. */
    record Words(String words, double left, double top, double right, double bottom) {

        boolean overlaps(Words other) {
            return Math.min(right, other.right) - Math.max(left, other.left) > 0.05
                    && Math.min(bottom, other.bottom) - Math.max(top, other.top) > 0.05;
        }
    }

    List<Words> words() {
        List<Words> all = new ArrayList<>();
        for (Element text : elements("text")) {
            double size = number(text, "font-size");
            double length = text.getTextContent().length() * size * 0.5;
            double x = number(text, "x");
            double y = number(text, "y");
            double start =
                    switch (text.getAttribute("text-anchor")) {
                        case "middle" -> -length / 2;
                        case "end" -> -length;
                        default -> 0;
                    };
            double up = 0.72 * size;
            double down = 0.2 * size;
            Matcher turn = TURN.matcher(text.getAttribute("transform"));
            all.add(
                    turn.matches()
                            ? new Words(
                                    text.getTextContent(),
                                    x - up,
                                    y - start - length,
                                    x + down,
                                    y - start)
                            : new Words(
                                    text.getTextContent(),
                                    x + start,
                                    y - up,
                                    x + start + length,
                                    y + down));
        }
        return all;
    }

    /** Pairs of words that stand on one another. */
    List<String> overlaps() {
        List<Words> all = words();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (all.get(i).overlaps(all.get(k))) {
                    found.add(all.get(i) + " on " + all.get(k));
                }
            }
        }
        return found;
    }
}
