package org.bayledger.wind;

/**
 * A pressure coefficient that falls on a straight line over the logarithm of the area and is flat
 * at both ends, as the figures of ASCE/SEI 7 chapter 30 and EN 1991-1-4 Fig. 7.2 draw it.
 *
 * @param small area at which the line begins, m2
 * @param atSmall coefficient there and for every smaller area
 * @param large area at which the line ends, m2
 * @param atLarge coefficient there and for every larger area
 */
record AreaLine(double small, double atSmall, double large, double atLarge) {

    /** The coefficient for an area, m2. */
    double at(double area) {
        if (area <= small) {
            return atSmall;
        }
        if (area >= large) {
            return atLarge;
        }
        return atSmall + (atLarge - atSmall) * Math.log(area / small) / Math.log(large / small);
    }

    /**
     * The line in words, so that a coefficient can be redone by hand: {@code 1 at 10 ft2 to 0.7 at
     * 500 ft2, straight on log A}.
     *
     * @param unit name of the unit of area
     * @param size that unit, m2
     */
    String words(String unit, double size) {
        return "%s at %d %s to %s at %d %s, straight on log A"
                .formatted(
                        rounded(atSmall),
                        Math.round(small / size),
                        unit,
                        rounded(atLarge),
                        Math.round(large / size),
                        unit);
    }

    private static double rounded(double coefficient) {
        return Math.round(coefficient * 1e4) / 1e4;
    }

    /** What to say of an area in the derivation: on the line or on one of its flat ends. */
    String remark(double area) {
        if (area < small) {
            return ", on the figure's flat end for small areas";
        }
        return area > large ? ", on the figure's flat end for large areas" : "";
    }
}
