package org.bayledger.wind;

import jakarta.validation.constraints.Size;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One line of a table of specified wind pressures.
 *
 * @param elevation name of the elevation that it holds for, in a review; absent: all of them
 * @param zone zone of the wall that it holds for: 4 or 5 of ASCE/SEI 7; A, B or C of EN 1991-1-4
 * @param from height above ground from which it holds, m; absent: from the ground
 * @param to height above ground up to which it holds, m; absent: to the top
 * @param effectiveWindArea area that it is given for, m2: it holds for that and larger ones, up to
 *     the next area of the table; absent: it holds for every area
 * @param positive pressure toward the wall, Pa; where absent it is called out nowhere else and what
 *     depends on it is undetermined
 * @param negative pressure away from the wall, Pa, below zero; likewise
 */
public record SpecifiedPressure(
        @Size(min = 1, max = 80) @Nullable String elevation,
        @Size(min = 1, max = 10) String zone,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) @Nullable Double from,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double to,
        @Measured(value = Dimension.AREA, sign = Sign.POSITIVE) @Nullable Double effectiveWindArea,
        @Measured(value = Dimension.PRESSURE, sign = Sign.POSITIVE) @Nullable Double positive,
        @Measured(value = Dimension.PRESSURE, sign = Sign.NOT_POSITIVE) @Nullable Double negative) {

    /** Heights nearer than this are one, m. */
    static final double TOUCH = 0.001;

    /** By how much areas may differ, as a share, for the rounding of units. */
    private static final double SAME_AREA = 1e-6;

    public SpecifiedPressure {
        Faults faults = new Faults();
        faults.require(
                negative == null || negative < 0,
                "/negative",
                "must be below zero; leave it out where none was specified");
        faults.require(
                from == null || to == null || to - from > TOUCH,
                "/to",
                "must be greater than from");
        faults.throwIfAny();
    }

    /** Height from which it holds, m. */
    double bottom() {
        return from == null ? 0 : from;
    }

    /** Height up to which it holds, m; infinite where none was given. */
    double top() {
        return to == null ? Double.POSITIVE_INFINITY : to;
    }

    /** Whether it holds on an elevation; null stands for a wall that nobody named. */
    boolean on(@Nullable String face) {
        return elevation == null || elevation.equals(face);
    }

    /** Whether it holds over all of a range of heights. */
    boolean covers(double low, double high) {
        return bottom() <= low + TOUCH && top() >= high - TOUCH;
    }

    /** Whether it holds for an effective wind area, m2. */
    boolean holdsFor(double area) {
        return effectiveWindArea == null || effectiveWindArea <= area * (1 + SAME_AREA);
    }

    /** Area that it is given for, m2; none where it holds for every area. */
    double area() {
        return effectiveWindArea == null ? 0 : effectiveWindArea;
    }

    /** Whether both can hold at one place. */
    boolean meets(SpecifiedPressure other) {
        boolean sameFace =
                elevation == null || other.elevation == null || elevation.equals(other.elevation);
        return sameFace
                && zone.equals(other.zone)
                && Math.min(top(), other.top()) - Math.max(bottom(), other.bottom()) > TOUCH;
    }

    /** Whether both are for the same area, of two that each are for one. */
    boolean sameArea(SpecifiedPressure other) {
        return Math.abs(area() - other.area()) <= SAME_AREA * area();
    }
}
