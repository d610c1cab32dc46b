package org.bayledger.seals;

import org.jspecify.annotations.Nullable;

/**
 * Where joints of a frame are: a point, or a line from one point to another, on the grid of the
 * frame as seen from outside.
 *
 * @param type kind of joint
 * @param joints joints here, at least 1: several fasteners stand at one end of a horizontal
 * @param x distance of the point, or of the left or lower end of the line, from the left edge, m
 * @param y its height above the sill, m
 * @param toX distance of the other end of the line; x for a point, m
 * @param toY height of the other end of the line; y for a point, m
 * @param side side of the grid's line on which the joint lies; null where it lies on it
 */
public record JointPlace(
        JointType type,
        int joints,
        double x,
        double y,
        double toX,
        double toY,
        @Nullable Edge side) {

    /** Whether the joint is drawn as a line. */
    public boolean line() {
        return x != toX || y != toY;
    }
}
