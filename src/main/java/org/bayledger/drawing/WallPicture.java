package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.drawing.Sheet.Point;
import org.bayledger.review.Bay;
import org.bayledger.review.ElevationZones.ProfilePart;
import org.bayledger.review.ElevationZones.ZoneRectangle;
import org.jspecify.annotations.Nullable;

/** A wall with its zones and its bays. */
final class WallPicture {

    /** Lines nearer to one another than this are left out, points. */
    private static final double CLOSE = 2;

    private final Sheet sheet;
    private final Scale scale;
    private final ElevationPicture picture;
    private final @Nullable String marked;
    private boolean named = true;

    /**
     * @param marked name of the bay that is drawn with a double line, or null
     */
    WallPicture(Sheet sheet, Scale scale, ElevationPicture picture, @Nullable String marked) {
        this.sheet = sheet;
        this.scale = scale;
        this.picture = picture;
        this.marked = marked;
    }

    /** Whether all bays are named. */
    boolean isNamed() {
        return named;
    }

    /** Zones, bays with their lines, and the outline over them. */
    void draw() {
        for (ZoneRectangle zone : picture.wall().zones()) {
            Box area =
                    scale.box(
                            zone.from().si(), zone.to().si(), zone.bottom().si(), zone.top().si());
            if (zone.zone() == null) {
                sheet.outline(Stroke.DASHED, area);
            } else {
                sheet.area(Stroke.DASHED, area, picture.hatch(zone.zone()));
            }
        }
        for (Bay bay : picture.bays()) {
            grid(bay);
        }
        List<Point> outline = new ArrayList<>();
        outline.add(new Point(scale.x(0), scale.y(picture.base())));
        for (ProfilePart part : picture.wall().profile()) {
            double top = scale.y(part.top().si());
            outline.add(new Point(scale.x(part.from().si()), top));
            outline.add(new Point(scale.x(part.to().si()), top));
        }
        outline.add(new Point(scale.x(picture.width()), scale.y(picture.base())));
        sheet.shape(Stroke.HEAVY, outline, "none");
    }

    private void grid(Bay bay) {
        Box frame = scale.box(bay.offset(), bay.right(), bay.sill(), bay.top());
        double last = frame.x();
        for (int column = 2; column <= bay.columns().size(); column++) {
            double x = scale.x(bay.columnStart(column));
            if (x - last > CLOSE && frame.right() - x > CLOSE) {
                sheet.line(Stroke.FINE, x, frame.y(), x, frame.bottom());
                last = x;
            }
        }
        last = frame.bottom();
        for (int row = 2; row <= bay.rows().size(); row++) {
            double y = scale.y(bay.sill() + bay.rowStart(row));
            if (last - y > CLOSE && y - frame.y() > CLOSE) {
                sheet.line(Stroke.FINE, frame.x(), y, frame.right(), y);
                last = y;
            }
        }
        sheet.outline(bay.id().equals(marked) ? Stroke.HEAVY : Stroke.MEDIUM, frame);
        if (bay.id().equals(marked)) {
            sheet.outline(Stroke.MEDIUM, frame.inset(-2.5));
        }
    }

    /** Names the bays; gives what is to be said of those whose names have no room. */
    List<String> nameBays() {
        BayNames names = new BayNames(sheet);
        int number = 0;
        for (Bay bay : picture.bays()) {
            number++;
            Box frame = scale.box(bay.offset(), bay.right(), bay.sill(), bay.top());
            List<String> below =
                    picture.withoutPressure().containsKey(bay.id())
                            ? List.of("UNDETERMINED")
                            : List.of();
            names.write(bay, number, frame.inset(0.3), below);
        }
        List<String> notes = new ArrayList<>();
        if (!names.key().isEmpty()) {
            notes.add("Bays by number: " + String.join(", ", names.key()) + ".");
        }
        if (names.unnamed() > 0) {
            named = false;
            notes.add(
                    names.unnamed()
                            + " of "
                            + picture.bays().size()
                            + " bays are too small here to be named.");
        }
        return notes;
    }
}
