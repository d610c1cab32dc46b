package org.bayledger.anchorage;

/**
 * The width that a sealant joint needs for what moves in it.
 *
 * <pre>
 *   W = max(max(closing, opening) / S + t,  closing + t + m)
 * </pre>
 *
 * <p>S the sealant's movement capability, t the tolerance, m the clearance asked for between the
 * metal. Practice of ASTM C1193 and C1472, from memory.
 */
final class JointWidth {

    static final String FORMULA = "max(max(closing, opening) / S + t, closing + t + m)";
    static final String SOURCE = "practice of ASTM C1193 and C1472 (from memory)";

    private JointWidth() {}

    /** W, m; all lengths in m. */
    static double required(
            double closing,
            double opening,
            double capability,
            double tolerance,
            double metalClearance) {
        return Math.max(
                Math.max(closing, opening) / capability + tolerance,
                closing + tolerance + metalClearance);
    }
}
