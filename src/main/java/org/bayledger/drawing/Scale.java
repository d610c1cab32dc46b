package org.bayledger.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a part of a wall comes to stand on a sheet. Widths and heights have one scale unless the part
 * would be too slender to be read; then the shorter of the two is drawn larger, and the sheet says
 * so.
 *
 * @param left where the wall's left edge stands, points
 * @param bottom where its lower edge stands, points
 * @param from its left edge, m
 * @param base its lower edge, m
 * @param across points per metre across
 * @param up points per metre up
 */
record Scale(double left, double bottom, double from, double base, double across, double up) {

    private static final double POINTS_PER_METRE = 72 / 0.0254;

    /** Ratios are round to so many digits. */
    private static final int DIGITS = 2;

    /**
     * The largest scale at which a part of a wall fits a room.
     *
     * @param room where it may stand
     * @param least width and height, points, down to which it is drawn at one scale
     */
    static Scale fitting(Box room, double from, double to, double base, double top, double least) {
        double wide = to - from;
        double high = top - base;
        double shared = round(Math.min(room.width() / wide, room.height() / high));
        double across = stretched(shared, wide, least, room.width());
        double up = stretched(shared, high, least, room.height());
        return new Scale(
                room.middleX() - across * wide / 2,
                room.middleY() + up * high / 2,
                from,
                base,
                across,
                up);
    }

    private static double stretched(double shared, double length, double least, double room) {
        return shared * length >= Math.min(least, room)
                ? shared
                : round(Math.min(least, room) / length);
    }

    /** The next smaller scale whose ratio is round. */
    private static double round(double pointsPerMetre) {
        return POINTS_PER_METRE / ratio(pointsPerMetre).doubleValue();
    }

    private static BigDecimal ratio(double pointsPerMetre) {
        // a ratio that is round already must not go up for its last bit
        return new BigDecimal(POINTS_PER_METRE / pointsPerMetre * (1 - 1e-9))
                .round(new MathContext(DIGITS, RoundingMode.CEILING));
    }

    double x(double distance) {
        return left + (distance - from) * across;
    }

    double y(double level) {
        return bottom - (level - base) * up;
    }

    /** A rectangle on the wall. */
    Box box(double begin, double end, double low, double high) {
        return new Box(x(begin), y(high), (end - begin) * across, (high - low) * up);
    }

    /** The scale in words, for a print at full size. */
    String words() {
        String widths = "1:" + ratio(across).toPlainString();
        String heights = "1:" + ratio(up).toPlainString();
        return widths.equals(heights) ? widths : "widths " + widths + ", heights " + heights;
    }
}
