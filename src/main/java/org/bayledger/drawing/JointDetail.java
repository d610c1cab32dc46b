package org.bayledger.drawing;

import java.util.List;
import org.bayledger.drawing.JointMark.Place;
import org.bayledger.drawing.Sheet.Point;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealJoint;
import org.jspecify.annotations.Nullable;

/**
 * One end of a horizontal at its vertical, taken apart so that every joint there can be seen: the
 * horizontal drawn off the vertical, the plug lifted above, the pressure plates below. Not to
 * scale.
 */
final class JointDetail {

    static final double HEIGHT = 118;

    private static final double VERTICAL = 15;
    private static final double GAP = 34;
    private static final double HORIZONTAL = 22;
    private static final double PLATE = 8;

    private final Sheet sheet;
    private final Box box;

    JointDetail(Sheet sheet, Box box) {
        this.sheet = sheet;
        this.box = box;
    }

    void draw(List<SealJoint> joints) {
        double x = box.x() + 46;
        double end = x + VERTICAL + GAP;
        double right = box.right() - 4;
        double y = box.y() + 42;
        double low = box.bottom() - 14;
        metal(new Box(x, box.y() + 4, VERTICAL, box.height() - 42), "vertical");
        metal(new Box(end, y, right - end, HORIZONTAL), null);
        double along = right - Label.width("horizontal", Label.SMALL, false) / 2 - 6;
        sheet.put(Label.centred("horizontal", along, y + HORIZONTAL / 2));
        for (SealJoint joint : joints) {
            switch (joint.type()) {
                case HORIZONTAL_TO_VERTICAL -> seam(joint, x + VERTICAL, end, y);
                case JOINT_PLUG -> plug(joint, end, box.y() + 10, y);
                case FASTENER_HEAD -> heads(joint, end, y);
                case PRESSURE_PLATE_BUTT -> plates(joint, x, end, right, low);
                default -> {}
            }
        }
    }

    private void metal(Box part, @Nullable String name) {
        sheet.outline(Stroke.MEDIUM, part);
        if (name != null) {
            double width = Label.width(name, Label.SMALL, false);
            sheet.put(Label.centred(name, part.x() - 6 - width / 2, part.y() + 8));
        }
    }

    private void seam(SealJoint joint, double from, double to, double y) {
        double middle = (from + to) / 2;
        sheet.line(Stroke.DASHED, from, y, to, y);
        sheet.line(Stroke.DASHED, from, y + HORIZONTAL, to, y + HORIZONTAL);
        mark(joint, middle - 6, y + HORIZONTAL / 2, middle + 5);
    }

    private void plug(SealJoint joint, double end, double top, double y) {
        Box plug = new Box(end + 2, top, 14, 14);
        sheet.outline(Stroke.MEDIUM, plug);
        sheet.line(Stroke.DASHED, plug.middleX(), plug.bottom(), plug.middleX(), y);
        mark(joint, plug.middleX(), plug.middleY(), plug.right() + 8);
        sheet.put(Label.centred("plug", plug.right() + 26, plug.middleY()));
    }

    private void heads(SealJoint joint, double end, double y) {
        JointMark mark = JointMark.of(joint.type());
        double x = end + 8;
        mark.draw(
                sheet,
                "detail",
                List.of(Place.spot(x, y + 7, false), Place.spot(x, y + HORIZONTAL - 7, false)));
        sheet.put(Label.centred("" + joint.step(), x + 12, y + HORIZONTAL / 2).inBold());
    }

    private void plates(SealJoint joint, double x, double end, double right, double low) {
        Box upright = new Box(x + (VERTICAL - PLATE) / 2, low - 18, PLATE, 28);
        Box level = new Box(end, low - PLATE, right - end, PLATE);
        sheet.outline(Stroke.MEDIUM, upright);
        sheet.outline(Stroke.MEDIUM, level);
        sheet.path(
                Stroke.DASHED,
                List.of(
                        new Point(end + 30, box.y() + 42 + HORIZONTAL),
                        new Point(end + 30, level.y())));
        double middle = (upright.right() + end) / 2;
        mark(joint, middle - 7, level.middleY(), middle + 7);
        double width = Label.width("pressure plates", Label.SMALL, false);
        sheet.put(Label.centred("pressure plates", right - width / 2 - 4, level.y() - 8));
    }

    private void mark(SealJoint joint, double x, double y, double number) {
        JointType type = joint.type();
        JointMark.of(type).draw(sheet, "detail", List.of(Place.spot(x, y, false)));
        sheet.put(Label.centred("" + joint.step(), number, y).inBold());
    }
}
