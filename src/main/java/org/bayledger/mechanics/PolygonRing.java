package org.bayledger.mechanics;

import java.util.Arrays;

/**
 * A closed polygon in a plane: its corners in order, the last joined to the first, in either sense
 * of rotation.
 */
public final class PolygonRing {

    private final double[] x;
    private final double[] y;

    /**
     * A ring.
     *
     * @param x first coordinates of the corners, m
     * @param y second coordinates, m, as many
     */
    public PolygonRing(double[] x, double[] y) {
        if (x.length != y.length || x.length < 3) {
            throw new IllegalArgumentException("a ring needs at least three corners");
        }
        this.x = Arrays.copyOf(x, x.length);
        this.y = Arrays.copyOf(y, y.length);
    }

    int size() {
        return x.length;
    }

    double x(int corner) {
        return x[corner % x.length];
    }

    double y(int corner) {
        return y[corner % y.length];
    }

    /** The same ring with x and y exchanged. */
    public PolygonRing transposed() {
        return new PolygonRing(y, x);
    }

    /** The area that the ring encloses, m2, positive whatever its sense of rotation. */
    public double area() {
        return Math.abs(signedArea());
    }

    /** Shoelace formula about the first corner, so that a far origin costs no digits. */
    double signedArea() {
        double twice = 0;
        for (int i = 0; i < size(); i++) {
            twice += (x(i) - x[0]) * (y(i + 1) - y[0]) - (x(i + 1) - x[0]) * (y(i) - y[0]);
        }
        return twice / 2;
    }

    /** The first edge that meets another one than at their common corner, or -1 where none does. */
    public int firstCrossingEdge() {
        int n = size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean next = j == i + 1;
                boolean previous = (i == 0) && (j == n - 1);
                boolean met =
                        (next || previous)
                                ? foldsBack(next ? i : j, next ? j : i)
                                : meet(this, i, this, j);
                if (met) {
                    return i;
                }
            }
        }
        return -1;
    }

    /** Whether any edge of this ring meets any edge of another one. */
    public boolean meets(PolygonRing other) {
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < other.size(); j++) {
                if (meet(this, i, other, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether another ring, whose edges do not meet this one's, lies inside. */
    public boolean holds(PolygonRing other) {
        double px = other.x[0];
        double py = other.y[0];
        boolean inside = false;
        for (int i = 0; i < size(); i++) {
            if ((y(i) > py) != (y(i + 1) > py)
                    && px < (x(i + 1) - x(i)) * (py - y(i)) / (y(i + 1) - y(i)) + x(i)) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether an edge runs back along the one before it. */
    private boolean foldsBack(int before, int edge) {
        double ax = x(before + 1) - x(before);
        double ay = y(before + 1) - y(before);
        double bx = x(edge + 1) - x(edge);
        double by = y(edge + 1) - y(edge);
        return ax * by - ay * bx == 0 && ax * bx + ay * by <= 0;
    }

    private static boolean meet(PolygonRing one, int i, PolygonRing other, int j) {
        double ax = one.x(i);
        double ay = one.y(i);
        double bx = one.x(i + 1);
        double by = one.y(i + 1);
        double cx = other.x(j);
        double cy = other.y(j);
        double dx = other.x(j + 1);
        double dy = other.y(j + 1);
        boolean boxes =
                Math.max(ax, bx) >= Math.min(cx, dx)
                        && Math.max(cx, dx) >= Math.min(ax, bx)
                        && Math.max(ay, by) >= Math.min(cy, dy)
                        && Math.max(cy, dy) >= Math.min(ay, by);
        return boxes
                && side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) <= 0
                && side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) <= 0;
    }

    /** On which side of the line from a to b the point p lies: 1, -1, or 0 on it. */
    private static double side(double ax, double ay, double bx, double by, double px, double py) {
        return Math.signum((bx - ax) * (py - ay) - (by - ay) * (px - ax));
    }
}
