package org.bayledger.quantity;

/** Constants that rooms share, exact by definition. */
public final class Constants {

    /** Standard gravity, m/s2 (3rd CGPM, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    /** Inch, m (international yard and pound, 1959). */
    public static final double INCH = 0.0254;

    /** Foot, m: 12 inches. */
    public static final double FOOT = 0.3048;

    /** Pound-force per square inch, Pa: 0.45359237 kg times standard gravity on a square inch. */
    public static final double PSI = 0.45359237 * STANDARD_GRAVITY / (INCH * INCH);

    private Constants() {}
}
