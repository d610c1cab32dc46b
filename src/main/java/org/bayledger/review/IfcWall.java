package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.review.IfcFrame.Vector;
import org.bayledger.review.IfcGrid.Rectangle;

/**
 * A plane curtain wall of the file.
 *
 * @param source its instance
 * @param plates its lites
 * @param along horizontal unit vector in its plane, to the right
 * @param distance of its plane from the origin, along the horizontal normal, m
 * @param grid its columns and rows
 * @param glassThickness greatest depth of its plates at right angles to the plane, m
 * @param doubts what somebody has to look at before the grid is relied on
 */
record IfcWall(
        StepEntity source,
        List<StepEntity> plates,
        Vector along,
        double distance,
        IfcGrid grid,
        double glassThickness,
        List<String> doubts) {

    /** A wall whose plates leave the plane further than this is not plane, m. */
    private static final double PLANE_WITHIN = 0.15;

    /** Two corners of a plate that are nearer to one another give no direction, m. */
    private static final double LEAST_WIDTH = 0.1;

    /** A plate whose body comes no nearer to a corner of its extents is no rectangle, m. */
    private static final double CORNER_WITHIN = 0.025;

    private static final List<String> PLATES = List.of("IFCPLATE", "IFCPLATESTANDARDCASE");
    private static final List<String> MEMBERS = List.of("IFCMEMBER", "IFCMEMBERSTANDARDCASE");
    private static final List<String> OTHERS = List.of("IFCDOOR", "IFCWINDOW");

    /** Where a plate and a member say of which kind they are. */
    private static final int KIND = 8;

    private static final Vector UP = new Vector(0, 0, 1);

    /**
     * Reads a wall.
     *
     * @throws IllegalArgumentException where it is none that a bay can be made of, with the reason
     */
    static IfcWall of(IfcShape shape, StepEntity wall, List<StepEntity> parts) {
        List<StepEntity> panels = ofKind(parts, PLATES, "CURTAIN_PANEL");
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("it has no IfcPlate" + others(parts));
        }
        List<List<Vector>> plates = new ArrayList<>();
        for (StepEntity panel : panels) {
            try {
                plates.add(shape.corners(panel));
            } catch (IllegalArgumentException notRead) {
                throw new IllegalArgumentException(
                        "its plate " + panel + " can't be read: " + notRead.getMessage(), notRead);
            }
        }
        Vector along = along(plates);
        Vector normal = along.cross(UP);
        double[] depth = extent(plates.stream().flatMap(List::stream).toList(), normal);
        if (depth[1] - depth[0] > PLANE_WITHIN) {
            throw new IllegalArgumentException(
                    "its plates do not stand in one vertical plane; give every face a wall of its"
                            + " own");
        }
        double thickness = 0;
        List<Rectangle> lites = new ArrayList<>();
        for (int i = 0; i < plates.size(); i++) {
            double[] through = extent(plates.get(i), normal);
            thickness = Math.max(thickness, through[1] - through[0]);
            lites.add(rectangle(plates.get(i), along, panels.get(i)));
        }
        List<String> doubts = new ArrayList<>();
        List<Rectangle> members = members(shape, parts, along, doubts);
        IfcGrid grid;
        try {
            grid = IfcGrid.of(lites, members);
        } catch (IllegalArgumentException noGrid) {
            throw new IllegalArgumentException(noGrid.getMessage() + others(parts), noGrid);
        }
        if (!grid.openEdges().isEmpty()) {
            doubts.add(
                    0,
                    "where its outer lines are: no member that is read stands at its "
                            + String.join(" and ", grid.openEdges())
                            + " edge, so that the grid ends with the plates there");
        }
        long left = parts.stream().filter(part -> PLATES.contains(part.type())).count();
        if (left > panels.size()) {
            doubts.add(
                    "whether "
                            + (left - panels.size())
                            + " plates that the file does not call CURTAIN_PANEL matter; they are"
                            + " not taken for lites");
        }
        return new IfcWall(
                wall,
                panels,
                along,
                (depth[0] + depth[1]) / 2,
                grid,
                thickness,
                List.copyOf(doubts));
    }

    /** Parts of some types; where the file says of which kind they are, those of one kind. */
    private static List<StepEntity> ofKind(
            List<StepEntity> parts, List<String> types, String kind) {
        List<StepEntity> all = parts.stream().filter(part -> types.contains(part.type())).toList();
        List<StepEntity> of = all.stream().filter(part -> part.says(KIND, kind)).toList();
        return of.isEmpty() ? all : of;
    }

    /** Members that are read; those that are not only give no line, which is said. */
    private static List<Rectangle> members(
            IfcShape shape, List<StepEntity> parts, Vector along, List<String> doubts) {
        List<Rectangle> members = new ArrayList<>();
        String reason = null;
        int unread = 0;
        for (StepEntity member : ofKind(parts, MEMBERS, "MULLION")) {
            try {
                List<Vector> body = shape.corners(member);
                double[] across = extent(body, along);
                double[] up = extent(body, UP);
                members.add(new Rectangle(across[0], across[1], up[0], up[1]));
            } catch (IllegalArgumentException notRead) {
                unread++;
                reason = reason == null ? member + ": " + notRead.getMessage() : reason;
            }
        }
        if (reason != null) {
            doubts.add(
                    "where "
                            + unread
                            + " of its members stand, which can't be read; the first one, "
                            + reason);
        }
        return members;
    }

    private static String others(List<StepEntity> parts) {
        long others = parts.stream().filter(part -> OTHERS.contains(part.type())).count();
        return others == 0
                ? ""
                : "; its "
                        + others
                        + " doors and windows are not read: give them a wall of their own";
    }

    /** A plate's extents, where its body is the rectangle that fills them. */
    private static Rectangle rectangle(List<Vector> body, Vector along, StepEntity plate) {
        double[] across = extent(body, along);
        double[] up = extent(body, UP);
        for (double x : across) {
            for (double z : up) {
                if (body.stream()
                        .noneMatch(
                                corner ->
                                        Math.hypot(corner.dot(along) - x, corner.dot(UP) - z)
                                                < CORNER_WITHIN)) {
                    throw new IllegalArgumentException(
                            "its plate " + plate + " is no upright rectangle");
                }
            }
        }
        return new Rectangle(across[0], across[1], up[0], up[1]);
    }

    /**
     * The horizontal direction of the wall: of the edges of its first plate, seen from above, the
     * one along which all plates are shallowest (the least width of a convex shape lies along an
     * edge); toward positive x (toward positive y where it runs along y).
     */
    private static Vector along(List<List<Vector>> plates) {
        List<Vector> all = hull(plates.stream().flatMap(List::stream).toList());
        List<Vector> edges = hull(plates.get(0));
        Vector best = null;
        double shallowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges.size(); i++) {
            Vector edge = edges.get((i + 1) % edges.size()).plus(edges.get(i).times(-1));
            if (edge.length() > LEAST_WIDTH) {
                Vector unit = edge.unit();
                double[] depth = extent(all, unit.cross(UP));
                if (depth[1] - depth[0] < shallowest - 1e-9) {
                    shallowest = depth[1] - depth[0];
                    best = unit;
                }
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("its plates have no width");
        }
        boolean backward = best.x() < -1e-6 || (Math.abs(best.x()) <= 1e-6 && best.y() < 0);
        return backward ? best.times(-1) : best;
    }

    /** The convex outline of points seen from above (Andrew's monotone chain), flattened. */
    private static List<Vector> hull(List<Vector> points) {
        List<Vector> sorted =
                points.stream()
                        .map(point -> new Vector(point.x(), point.y(), 0))
                        .distinct()
                        .sorted(Comparator.comparingDouble(Vector::x).thenComparing(Vector::y))
                        .toList();
        List<Vector> outline = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            int start = outline.size();
            for (int i = 0; i < sorted.size(); i++) {
                Vector next = sorted.get(side == 0 ? i : sorted.size() - 1 - i);
                while (outline.size() - start > 1 && !turnsLeft(outline, next)) {
                    outline.remove(outline.size() - 1);
                }
                outline.add(next);
            }
            // the end of one side is the beginning of the other
            outline.remove(outline.size() - 1);
        }
        return outline.isEmpty() ? sorted : outline;
    }

    private static boolean turnsLeft(List<Vector> outline, Vector next) {
        Vector from = outline.get(outline.size() - 2);
        Vector to = outline.get(outline.size() - 1);
        return (to.x() - from.x()) * (next.y() - from.y())
                        - (to.y() - from.y()) * (next.x() - from.x())
                > 0;
    }

    private static double[] extent(List<Vector> corners, Vector direction) {
        double[] extent = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vector corner : corners) {
            extent[0] = Math.min(extent[0], corner.dot(direction));
            extent[1] = Math.max(extent[1], corner.dot(direction));
        }
        return extent;
    }

    /** Whether both stand in one plane, as walls of one elevation do. */
    boolean isBeside(IfcWall other) {
        return along.dot(other.along) > 1 - 1e-6
                && Math.abs(distance - other.distance) < PLANE_WITHIN;
    }
}
