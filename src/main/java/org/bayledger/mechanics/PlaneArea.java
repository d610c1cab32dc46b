package org.bayledger.mechanics;

import java.util.List;

/**
 * An area bounded by polygons, with holes, and its moments about axes through its centroid (Green's
 * theorem on straight edges; exact for polygons).
 *
 * @param area m2
 * @param centroidX m
 * @param centroidY m
 * @param aboutX integral of y2 dA about the centroid, m4
 * @param aboutY integral of x2 dA about the centroid, m4
 * @param product integral of x y dA about the centroid, m4
 */
public record PlaneArea(
        double area,
        double centroidX,
        double centroidY,
        double aboutX,
        double aboutY,
        double product) {

    /**
     * The area inside a ring and outside the holes in it.
     *
     * @param outer outer boundary
     * @param holes rings inside it that do not meet one another
     */
    public static PlaneArea of(PolygonRing outer, List<PolygonRing> holes) {
        double[] sums = new double[6];
        double originX = outer.x(0);
        double originY = outer.y(0);
        add(sums, outer, 1, originX, originY);
        holes.forEach(hole -> add(sums, hole, -1, originX, originY));
        double cx = originX + sums[1] / sums[0];
        double cy = originY + sums[2] / sums[0];
        double[] central = new double[6];
        add(central, outer, 1, cx, cy);
        holes.forEach(hole -> add(central, hole, -1, cx, cy));
        return new PlaneArea(sums[0], cx, cy, central[3], central[4], central[5]);
    }

    /** Adds area, first moments, y2, x2 and x y of a ring about an origin. */
    private static void add(
            double[] sums, PolygonRing ring, double factor, double originX, double originY) {
        double sign = Math.signum(ring.signedArea()) * factor;
        for (int i = 0; i < ring.size(); i++) {
            double ax = ring.x(i) - originX;
            double ay = ring.y(i) - originY;
            double bx = ring.x(i + 1) - originX;
            double by = ring.y(i + 1) - originY;
            double cross = sign * (ax * by - bx * ay);
            sums[0] += cross / 2;
            sums[1] += cross * (ax + bx) / 6;
            sums[2] += cross * (ay + by) / 6;
            sums[3] += cross * (ay * ay + ay * by + by * by) / 12;
            sums[4] += cross * (ax * ax + ax * bx + bx * bx) / 12;
            sums[5] += cross * (ax * by + 2 * ax * ay + 2 * bx * by + bx * ay) / 24;
        }
    }

    /** How far the farthest corner lies from the centroid along y, m. */
    public double greatestY(PolygonRing outer) {
        double greatest = 0;
        for (int i = 0; i < outer.size(); i++) {
            greatest = Math.max(greatest, Math.abs(outer.y(i) - centroidY));
        }
        return greatest;
    }

    /**
     * The stress at the corner that is stressed most, per unit of moment about the x axis, 1/m3, of
     * a section that is free to bend askew: (Iy y - Ixy x) / (Ix Iy - Ixy2).
     */
    public double stressPerMomentAboutX(PolygonRing outer) {
        double greatest = 0;
        for (int i = 0; i < outer.size(); i++) {
            double value = aboutY * (outer.y(i) - centroidY) - product * (outer.x(i) - centroidX);
            greatest = Math.max(greatest, Math.abs(value));
        }
        return greatest / determinant();
    }

    /** Ix Iy - Ixy2, m8. */
    public double determinant() {
        return aboutX * aboutY - product * product;
    }

    /** The same area with x and y exchanged. */
    public PlaneArea transposed() {
        return new PlaneArea(area, centroidY, centroidX, aboutY, aboutX, product);
    }
}
