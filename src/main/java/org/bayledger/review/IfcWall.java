package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.review.IfcFrame.Vector;
import org.bayledger.review.IfcGrid.Rectangle;

/**
 * A plane curtain wall of the file.
 *
 * @param source its instance
 * @param along horizontal unit vector in its plane, to the right
 * @param distance of its plane from the origin, along the horizontal normal, m
 * @param grid its columns and rows
 * @param glassThickness greatest depth of its plates at right angles to the plane, m
 */
record IfcWall(
        StepEntity source, Vector along, double distance, IfcGrid grid, double glassThickness) {

    /** A wall whose plates leave the plane further than this is not plane, m. */
    private static final double PLANE_WITHIN = 0.15;

    /** Two corners of a plate that are nearer to one another give no direction, m. */
    private static final double LEAST_WIDTH = 0.1;

    /** Corners of a plate that are looked at for its direction; a rectangle has eight. */
    private static final int MOST_CORNERS = 100;

    private static final Vector UP = new Vector(0, 0, 1);

    /**
     * Reads a wall.
     *
     * @throws IllegalArgumentException where it is none that a bay can be made of, with the reason
     */
    static IfcWall of(IfcModel model, StepEntity wall, List<StepEntity> parts) {
        IfcShape shape = new IfcShape(model);
        List<List<Vector>> plates = bodies(shape, parts, "IFCPLATE");
        if (plates.isEmpty()) {
            throw new IllegalArgumentException("it has no IfcPlate with a body that is read here");
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
        for (List<Vector> plate : plates) {
            double[] through = extent(plate, normal);
            thickness = Math.max(thickness, through[1] - through[0]);
        }
        return new IfcWall(
                wall,
                along,
                (depth[0] + depth[1]) / 2,
                IfcGrid.of(
                        rectangles(plates, along),
                        rectangles(bodies(shape, parts, "IFCMEMBER"), along)),
                thickness);
    }

    private static List<List<Vector>> bodies(IfcShape shape, List<StepEntity> parts, String type) {
        return parts.stream()
                .filter(part -> part.type().equals(type))
                .map(shape::corners)
                .filter(corners -> !corners.isEmpty())
                .toList();
    }

    /**
     * The horizontal direction of the wall: of the lines between two corners of its first plate the
     * one along which the plates are shallowest; toward positive x (toward positive y where it runs
     * along y).
     */
    private static Vector along(List<List<Vector>> plates) {
        List<Vector> all = plates.stream().flatMap(List::stream).toList();
        List<Vector> corners = plates.get(0);
        Vector best = null;
        double shallowest = Double.POSITIVE_INFINITY;
        for (Vector from : corners.subList(0, Math.min(corners.size(), MOST_CORNERS))) {
            for (Vector to : corners) {
                Vector flat = new Vector(to.x() - from.x(), to.y() - from.y(), 0);
                if (flat.length() > LEAST_WIDTH) {
                    Vector unit = flat.unit();
                    double[] depth = extent(all, unit.cross(UP));
                    if (depth[1] - depth[0] < shallowest - 1e-9) {
                        shallowest = depth[1] - depth[0];
                        best = unit;
                    }
                }
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("its plates have no width");
        }
        boolean backward = best.x() < -1e-6 || (Math.abs(best.x()) <= 1e-6 && best.y() < 0);
        return backward ? best.times(-1) : best;
    }

    private static double[] extent(List<Vector> corners, Vector direction) {
        double[] extent = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vector corner : corners) {
            extent[0] = Math.min(extent[0], corner.dot(direction));
            extent[1] = Math.max(extent[1], corner.dot(direction));
        }
        return extent;
    }

    private static List<Rectangle> rectangles(List<List<Vector>> bodies, Vector along) {
        List<Rectangle> rectangles = new ArrayList<>();
        for (List<Vector> body : bodies) {
            double[] across = extent(body, along);
            double[] up = extent(body, UP);
            rectangles.add(new Rectangle(across[0], across[1], up[0], up[1]));
        }
        return rectangles;
    }

    /** Whether both stand in one plane, as walls of one elevation do. */
    boolean isBeside(IfcWall other) {
        return along.dot(other.along) > 1 - 1e-6
                && Math.abs(distance - other.distance) < PLANE_WITHIN;
    }
}
