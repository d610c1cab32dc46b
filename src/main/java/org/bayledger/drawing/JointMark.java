package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.seals.JointType;

/**
 * How joints of one type are marked: by a form that no other has, and by a colour besides. Colours
 * are after those of Okabe and Ito for all kinds of colour vision (2008, from memory), darkened to
 * stand out on white.
 *
 * @param form outline of the mark around the origin, as SVG path data, points; of a line, the
 *     dashes
 * @param filled whether the outline is filled
 * @param line whether joints of this type are lines rather than places
 * @param half half the width and height that the mark takes, points
 * @param colour its colour
 */
record JointMark(String form, boolean filled, boolean line, double half, String colour) {

    private static final String BLACK = "#000000";
    private static final String BLUE = "#0063a0";
    private static final String RED = "#b84a00";
    private static final String GREEN = "#00704f";
    private static final String PURPLE = "#93386f";

    private static final JointMark CROSS = spot("M-2.6-2.6L2.6 2.6M-2.6 2.6L2.6-2.6", false, BLUE);
    private static final JointMark PLUS = spot("M-3 0L3 0M0-3L0 3", false, GREEN);

    private static JointMark spot(String form, boolean filled, String colour) {
        return new JointMark(form, filled, false, 3, colour);
    }

    private static JointMark line(String dashes, String colour) {
        return new JointMark(dashes, false, true, 1, colour);
    }

    /** The mark of a type. */
    static JointMark of(JointType type) {
        return switch (type) {
            case END_DAM -> spot("M-2.6-2.6L2.6-2.6L2.6 2.6L-2.6 2.6Z", true, BLUE);
            case SPLICE -> spot("M0-3.2L3.2 0L0 3.2L-3.2 0Z", false, RED);
            case STACK_JOINT -> line("9 2 2 2", RED);
            case JOINT_COVER -> spot("M-3-2L3-2L3 2L-3 2ZM0-2L0 2", false, PURPLE);
            case ANCHOR_PENETRATION -> CROSS;
            case HORIZONTAL_TO_VERTICAL -> spot("M-2.8 2.6L2.8 2.6L0-2.8Z", true, RED);
            case FASTENER_HEAD ->
                    new JointMark(
                            "M-1.3 0A1.3 1.3 0 1 0 1.3 0A1.3 1.3 0 1 0-1.3 0Z",
                            true,
                            false,
                            1.3,
                            BLACK);
            case JOINT_PLUG -> spot("M-2.4-2.4L2.4-2.4L2.4 2.4L-2.4 2.4Z", false, BLUE);
            case PERIMETER_SILL -> line("8 2", GREEN);
            case PERIMETER_JAMB -> line("5 2 1.5 2", GREEN);
            case PERIMETER_HEAD -> line("2 2", GREEN);
            case PRESSURE_PLATE_BUTT ->
                    new JointMark("M-1.1-3L-1.1 3M1.1-3L1.1 3", false, false, 3, PURPLE);
            case FRAME_CORNER -> spot("M-2.6-2.6L-2.6 2.6L2.6 2.6", false, RED);
            case VERTICAL_TO_HORIZONTAL -> spot("M-3-2.6L3-2.6M0-2.6L0 3", false, RED);
            case UNIT_VERTICAL -> line("12 2 2 2 2 2", PURPLE);
            case SPLICE_SLEEVE -> spot("M-3-1.4L3-1.4M-3 1.4L3 1.4", false, GREEN);
            case END_CAP -> spot("M-3 2.6L3 2.6L0-2.8Z", false, BLUE);
            case RECEPTOR_SPLICE -> PLUS;
            case SLAB_EDGE_JOINT -> line("6 3", BLUE);
            case SLAB_COVER_BUTT -> line("3 1.5", BLUE);
        };
    }

    /** Marks of one type, one element each, in a group that is called after it. */
    void draw(Sheet sheet, String name, List<Place> places) {
        List<Place> all = List.copyOf(places);
        if (!all.isEmpty()) {
            sheet.draw(svg -> write(svg, name, all));
        }
    }

    private void write(Svg svg, String name, List<Place> places) {
        List<String> attributes =
                new ArrayList<>(
                        List.of(
                                "class",
                                name,
                                "fill",
                                filled ? colour : "none",
                                "stroke",
                                colour,
                                "stroke-width",
                                line ? "1.4" : "0.8"));
        if (line) {
            attributes.add("stroke-dasharray");
            attributes.add(form);
        }
        svg.open("g", attributes.toArray(String[]::new));
        for (Place place : places) {
            if (line) {
                svg.empty(
                        "line",
                        "x1",
                        Svg.number(place.x()),
                        "y1",
                        Svg.number(place.y()),
                        "x2",
                        Svg.number(place.endX()),
                        "y2",
                        Svg.number(place.endY()));
            } else {
                String at = Svg.number(place.x()) + " " + Svg.number(place.y());
                svg.empty(
                        "path",
                        "d",
                        form,
                        "transform",
                        "translate(" + at + ")" + (place.turned() ? " rotate(90)" : ""));
            }
        }
        svg.close();
    }

    /**
     * Where a mark stands on a sheet, points.
     *
     * @param endX where a line ends; of a place, where it is
     * @param endY likewise
     * @param turned whether the mark is turned by a right angle
     */
    record Place(double x, double y, double endX, double endY, boolean turned) {

        static Place spot(double x, double y, boolean turned) {
            return new Place(x, y, x, y, turned);
        }

        /** The room that a mark takes there. */
        Box box(double half) {
            return new Box(
                    Math.min(x, endX) - half,
                    Math.min(y, endY) - half,
                    Math.abs(endX - x) + 2 * half,
                    Math.abs(endY - y) + 2 * half);
        }
    }
}
