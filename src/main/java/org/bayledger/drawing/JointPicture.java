package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.drawing.JointMark.Place;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealJoint;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.SealsResult;
import org.jspecify.annotations.Nullable;

/** The joints of a frame as marks on it, as many of a type as the check counts or none. */
final class JointPicture {

    /** How much of the joints is drawn one by one. */
    enum Level {
        /** Every joint whose place is known. */
        ALL,
        /** One sign at each end of a horizontal for all joints there. */
        ENDS,
        /** No joints at ends of horizontals. */
        EDGES
    }

    /** The sign for all joints at one end of a horizontal. */
    static final JointMark END =
            new JointMark("M-2 0A2 2 0 1 0 2 0A2 2 0 1 0-2 0Z", false, false, 2, "#000000");

    /** The class of those signs. */
    static final String END_NAME = "END_OF_HORIZONTAL";

    private static final double LINE = 9;

    /** Marks beyond which none is told from another on any sheet. */
    private static final int MOST_MARKS = 10_000;

    /** Places that are tried for the name of the detail on each side of its ring. */
    private static final int TRIES = 25;

    /** Radius of the ring around the end that the detail shows, points. */
    private static final double RING = 12.5;

    private final Sheet sheet;
    private final Scale scale;
    private final SealsResult result;
    private final JointPlaces places;
    private final Level level;
    private final Map<JointType, String> notDrawn = new EnumMap<>(JointType.class);

    JointPicture(Sheet sheet, Scale scale, SealsRequest request, SealsResult result, Level level) {
        this.sheet = sheet;
        this.scale = scale;
        this.result = result;
        this.places = new JointPlaces(request);
        this.level = level;
    }

    /** Whether there are more marks than a drawing can show. */
    static boolean isTooMuch(SealsResult result, SealsRequest request, Level level) {
        long marks =
                switch (level) {
                    case ALL -> result.joints().stream().mapToLong(SealJoint::count).sum();
                    case ENDS -> 2L * request.columns().size() * (request.rows().size() + 1);
                    case EDGES -> 0;
                };
        return marks > MOST_MARKS;
    }

    /** Draws the marks; whether all stand clear of one another. */
    boolean draw(Box room) {
        Occupied taken = new Occupied();
        boolean clear = true;
        Map<SealJoint, List<Place>> drawn = new LinkedHashMap<>();
        boolean ends = false;
        for (SealJoint joint : result.joints()) {
            List<JointPlaces.Joint> lie = places.of(joint.type());
            String why = why(joint, lie);
            if (why != null) {
                notDrawn.put(joint.type(), why);
                ends |= level == Level.ENDS && atEnd(joint.type());
                continue;
            }
            drawn.put(joint, lie.stream().map(this::place).toList());
        }
        for (Map.Entry<SealJoint, List<Place>> marks : drawn.entrySet()) {
            JointMark mark = JointMark.of(marks.getKey().type());
            clear &= marked(mark, marks.getKey().type().name(), marks.getValue(), taken);
        }
        if (ends) {
            clear &=
                    marked(
                            END,
                            END_NAME,
                            places.ofEnds().stream().map(this::place).toList(),
                            taken);
        }
        drawn.forEach((joint, marks) -> number(joint, marks, room));
        if (drawn.keySet().stream().anyMatch(joint -> atEnd(joint.type()))) {
            clear &= ring(room);
        }
        return clear;
    }

    private boolean atEnd(JointType type) {
        return places.of(type).stream().anyMatch(JointPlaces.Joint::atEnd);
    }

    /** Rings the end of a horizontal that the detail takes apart; whether its name has room. */
    private boolean ring(Box room) {
        JointPlaces.Joint typical = places.ofEnds().get(0);
        for (JointPlaces.Joint end : places.ofEnds()) {
            boolean inside = end.y() > 0 && typical.y() == 0;
            boolean inner = end.right() > 0 && end.y() == typical.y() && typical.x() == 0;
            if (inside || (inner && end.x() > 0)) {
                typical = end;
            }
        }
        double x = scale.x(typical.x()) + 1.4 * typical.right();
        double y = scale.y(typical.y());
        sheet.circle(Stroke.DASHED, x, y, RING, "none");
        for (int away = 0; away < TRIES; away++) {
            for (int side = 0; side < 4; side++) {
                double right = side % 2 == 0 ? 1 : -1;
                double down = side < 2 ? -1 : 1;
                double labelX = x + right * (26 + 4 * (away % 5));
                double labelY = y + down * (17 + 3 * (away / 5));
                if (sheet.putIfFree(Label.centred("Detail", labelX, labelY), room)) {
                    Dimensions.leader(
                            sheet,
                            new Sheet.Point(x + right * RING * 0.7, y + down * RING * 0.7),
                            new Sheet.Point(labelX - right * 11, labelY - down * 3));
                    return true;
                }
            }
        }
        return false;
    }

    private boolean marked(JointMark mark, String name, List<Place> marks, Occupied taken) {
        boolean clear = true;
        for (Place place : marks) {
            Box box = place.box(mark.half());
            if (!mark.line()) {
                clear &= !taken.meets(box);
                taken.add(box);
            }
            sheet.keepClear(box);
        }
        mark.draw(sheet, name, marks);
        return clear;
    }

    /** Why joints of a type are not drawn one by one, or null. */
    private @Nullable String why(SealJoint joint, List<JointPlaces.Joint> lie) {
        if (joint.count() == 0) {
            return null;
        }
        boolean crowded = atEnd(joint.type());
        if (lie.isEmpty()) {
            return "the document does not say where they lie";
        }
        if (lie.size() != joint.count()) {
            return "the places of only " + lie.size() + " of them are known";
        }
        return crowded && level != Level.ALL
                ? level == Level.ENDS
                        ? "too many for this sheet, one sign stands at each end of a horizontal"
                        : "too many for this sheet, they lie at the ends of the horizontals"
                : null;
    }

    private Place place(JointPlaces.Joint joint) {
        return new Place(
                scale.x(joint.x()) + joint.right(),
                scale.y(joint.y()) + joint.down(),
                scale.x(joint.endX()) + joint.right(),
                scale.y(joint.endY()) + joint.down(),
                joint.turned());
    }

    /** Writes the step at marks that stand alone, and once at each line. */
    private void number(SealJoint joint, List<Place> marks, Box room) {
        String step = "" + joint.step();
        List<JointPlaces.Joint> lie = places.of(joint.type());
        boolean before = false;
        for (int i = 0; i < marks.size(); i++) {
            Place place = marks.get(i);
            boolean line = JointMark.of(joint.type()).line();
            if (line) {
                double x = (place.x() + place.endX()) / 2;
                double y = (place.y() + place.endY()) / 2;
                sheet.put(Label.centred(step, x, y).inBold());
            } else if (!lie.get(i).atEnd()
                    && !(before && joint.type() == JointType.FASTENER_HEAD)) {
                before |= beside(step, place, room);
            }
        }
    }

    private boolean beside(String step, Place place, Box room) {
        List<double[]> tries =
                List.of(
                        new double[] {LINE - 1, 0},
                        new double[] {1 - LINE, 0},
                        new double[] {LINE - 2, -LINE},
                        new double[] {2 - LINE, -LINE},
                        new double[] {LINE - 2, LINE},
                        new double[] {2 - LINE, LINE});
        for (double[] off : tries) {
            Label label = Label.centred(step, place.x() + off[0], place.y() + off[1]).inBold();
            if (sheet.putIfFree(label, room)) {
                return true;
            }
        }
        return false;
    }

    /** Types that are not drawn one by one, each with the reason. */
    Map<JointType, String> notDrawn() {
        return notDrawn;
    }

    /** Types that lie at the ends of horizontals, in the order of their steps. */
    List<SealJoint> atEnds() {
        List<SealJoint> at = new ArrayList<>();
        for (SealJoint joint : result.joints()) {
            if (joint.count() > 0 && atEnd(joint.type())) {
                at.add(joint);
            }
        }
        return at;
    }
}
