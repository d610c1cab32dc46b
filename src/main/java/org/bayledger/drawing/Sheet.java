package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * A sheet that is being drawn: lines and areas first, words above them on white, so that nothing
 * crosses words. It knows where words stand, so that others keep clear of them.
 */
final class Sheet {

    /** Margin around the frame, points (10 mm). */
    private static final double MARGIN = 28;

    /** Fonts that are asked for, in turn; no font is embedded. */
    private static final String FONTS =
            "Helvetica, Arial, Liberation Sans, DejaVu Sans, sans-serif";

    /** White around words, points. */
    private static final double CLEAR = 0.8;

    private final Paper paper;
    private final String title;
    private final String description;
    private final List<Consumer<Svg>> shapes = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final Occupied taken = new Occupied();
    private final TreeMap<String, Hatch> hatches = new TreeMap<>();

    /**
     * @param title what the drawing is, in a line, for those who can't see it
     * @param description what it shows, likewise
     */
    Sheet(Paper paper, String title, String description) {
        this.paper = paper;
        this.title = title;
        this.description = description;
    }

    /** Where the frame stands. */
    static Box frame(Paper paper) {
        return new Box(0, 0, paper.points(), paper.high()).inset(MARGIN);
    }

    void line(Stroke stroke, double x1, double y1, double x2, double y2) {
        shapes.add(
                svg ->
                        svg.empty(
                                "line",
                                stroke.attributes(
                                        "none",
                                        "x1",
                                        Svg.number(x1),
                                        "y1",
                                        Svg.number(y1),
                                        "x2",
                                        Svg.number(x2),
                                        "y2",
                                        Svg.number(y2))));
    }

    void outline(Stroke stroke, Box box) {
        rectangle(stroke, box, "none");
    }

    /** An area filled with a pattern. */
    void area(Stroke stroke, Box box, Hatch hatch) {
        hatches.put(hatch.id(), hatch);
        rectangle(stroke, box, hatch.fill());
    }

    /** An area of black. */
    void solid(Box box) {
        rectangle(Stroke.FINE, box, "black");
    }

    /** An area of white, which hides what was drawn before. */
    void blank(Stroke stroke, Box box) {
        rectangle(stroke, box, "white");
    }

    void circle(Stroke stroke, double x, double y, double radius, String fill) {
        shapes.add(
                svg ->
                        svg.empty(
                                "circle",
                                stroke.attributes(
                                        fill,
                                        "cx",
                                        Svg.number(x),
                                        "cy",
                                        Svg.number(y),
                                        "r",
                                        Svg.number(radius))));
    }

    private void rectangle(Stroke stroke, Box box, String fill) {
        shapes.add(svg -> svg.empty("rect", stroke.attributes(fill, edges(box))));
    }

    private static String[] edges(Box box) {
        return new String[] {
            "x", Svg.number(box.x()),
            "y", Svg.number(box.y()),
            "width", Svg.number(box.width()),
            "height", Svg.number(box.height())
        };
    }

    /** Straight lines from point to point. */
    void path(Stroke stroke, List<Point> points) {
        polyline(stroke, points, "none");
    }

    /** A closed outline filled with white or black. */
    void shape(Stroke stroke, List<Point> points, String fill) {
        List<Point> closed = new ArrayList<>(points);
        closed.add(points.get(0));
        polyline(stroke, closed, fill);
    }

    private void polyline(Stroke stroke, List<Point> points, String fill) {
        String places =
                points.stream()
                        .map(point -> Svg.number(point.x()) + "," + Svg.number(point.y()))
                        .collect(Collectors.joining(" "));
        shapes.add(svg -> svg.empty("polyline", stroke.attributes(fill, "points", places)));
    }

    /**
     * A point on a sheet.
     *
     * @param x from the left, points
     * @param y from the top, points
     */
    record Point(double x, double y) {}

    /** Puts words where they are. */
    void put(Label label) {
        if (!label.words().isEmpty()) {
            labels.add(label);
            taken.add(label.box());
        }
    }

    /** Keeps words away from what is drawn in a place, if they can stand elsewhere. */
    void keepClear(Box box) {
        taken.add(box.inset(-CLEAR));
    }

    /** Draws something of a form of its own. */
    void draw(Consumer<Svg> form) {
        shapes.add(form);
    }

    /** Puts words where they are if no others stand there. */
    boolean putIfFree(Label label, Box within) {
        return putIfFree(List.of(label), within);
    }

    /** Puts several words if there is room for all of them, and none otherwise. */
    boolean putIfFree(List<Label> several, Box within) {
        for (Label label : several) {
            Box box = label.box();
            if (!within.contains(box) || taken.meets(box)) {
                return false;
            }
        }
        several.forEach(this::put);
        return true;
    }

    /** The document. */
    byte[] finish() {
        Svg svg = new Svg();
        svg.root(
                "width",
                paper.width(),
                "height",
                paper.height(),
                "viewBox",
                "0 0 " + Svg.number(paper.points()) + " " + Svg.number(paper.high()),
                "role",
                "img",
                "aria-label",
                title);
        svg.words("title", title);
        svg.words("desc", description);
        svg.open("defs");
        hatches.values().forEach(hatch -> hatch.define(svg));
        svg.close();
        svg.empty("rect", "width", "100%", "height", "100%", "fill", "white");
        shapes.forEach(shape -> shape.accept(svg));
        backs(svg);
        svg.open("g", "font-family", FONTS, "fill", "black");
        labels.forEach(label -> write(svg, label));
        svg.close();
        svg.close();
        return svg.finish();
    }

    /** White behind words, all of it below all of them. */
    private void backs(Svg svg) {
        svg.open("g", "fill", "white");
        for (Label label : labels) {
            svg.empty("rect", edges(label.box().inset(-CLEAR)));
        }
        svg.close();
    }

    private static void write(Svg svg, Label label) {
        List<String> attributes =
                new ArrayList<>(
                        List.of(
                                "x",
                                Svg.number(label.x()),
                                "y",
                                Svg.number(label.y()),
                                "font-size",
                                Svg.number(label.size())));
        if (label.anchor() != Label.Anchor.START) {
            attributes.add("text-anchor");
            attributes.add(label.anchor() == Label.Anchor.MIDDLE ? "middle" : "end");
        }
        if (label.bold()) {
            attributes.add("font-weight");
            attributes.add("bold");
        }
        if (label.upright()) {
            attributes.add("transform");
            attributes.add(
                    "rotate(-90 " + Svg.number(label.x()) + " " + Svg.number(label.y()) + ")");
        }
        svg.words("text", label.words(), attributes.toArray(String[]::new));
    }
}
