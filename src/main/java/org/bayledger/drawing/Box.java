package org.bayledger.drawing;

/**
 * A rectangle on a sheet, in points; y grows downward.
 *
 * @param x its left edge
 * @param y its upper edge
 * @param width width
 * @param height height
 */
record Box(double x, double y, double width, double height) {

    /** Boxes that only touch do not overlap. */
    private static final double TOUCH = 0.01;

    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double middleX() {
        return x + width / 2;
    }

    double middleY() {
        return y + height / 2;
    }

    /** The same, smaller by so much on every side. */
    Box inset(double by) {
        return new Box(x + by, y + by, width - 2 * by, height - 2 * by);
    }

    boolean overlaps(Box other) {
        return Math.min(right(), other.right()) - Math.max(x, other.x) > TOUCH
                && Math.min(bottom(), other.bottom()) - Math.max(y, other.y) > TOUCH;
    }

    boolean contains(Box other) {
        return other.x > x - TOUCH
                && other.y > y - TOUCH
                && other.right() < right() + TOUCH
                && other.bottom() < bottom() + TOUCH;
    }
}
