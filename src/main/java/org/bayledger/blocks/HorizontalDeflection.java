package org.bayledger.blocks;

/**
 * A horizontal on two simple supports under a lite on two setting blocks and under its own weight.
 *
 * <pre>
 *   two equal loads P at a from each support:
 *     mid-span      d = P a (3 L^2 - 4 a^2) / (24 E I)
 *     at a block    d = P a^2 (3 L - 4 a) / (6 E I)
 *   own weight w per length:
 *     mid-span      d = 5 w L^4 / (384 E I)
 *     at a          d = w a (L^3 - 2 L a^2 + a^3) / (24 E I)
 * </pre>
 *
 * <p>Source: textbook closed forms for a simply supported beam (bending only, small slopes). Valid
 * for 0 &lt; a &lt;= L/2. Loads and supports being symmetric, mid-span is where the member bends
 * most.
 *
 * @param span L, m
 * @param rigidity E I, N m2
 * @param ownWeight w, N/m
 */
record HorizontalDeflection(double span, double rigidity, double ownWeight) {

    /**
     * Deflection at mid-span, m.
     *
     * @param load P, weight on each block, N
     * @param a distance of each block from the member's support, m
     */
    double midSpan(double load, double a) {
        requireOnMember(a);
        return load * a * (3 * span * span - 4 * a * a) / (24 * rigidity)
                + 5 * ownWeight * Math.pow(span, 4) / (384 * rigidity);
    }

    /**
     * Deflection under each block, m: how far the lite itself sinks.
     *
     * @param load P, weight on each block, N
     * @param a distance of each block from the member's support, m
     */
    double atBlock(double load, double a) {
        requireOnMember(a);
        return load * a * a * (3 * span - 4 * a) / (6 * rigidity)
                + ownWeight
                        * a
                        * (Math.pow(span, 3) - 2 * span * a * a + Math.pow(a, 3))
                        / (24 * rigidity);
    }

    private void requireOnMember(double a) {
        if (!(a > 0 && a <= span / 2)) {
            throw new IllegalArgumentException(
                    "a block at " + a + " m is not on its half of a span of " + span + " m");
        }
    }
}
