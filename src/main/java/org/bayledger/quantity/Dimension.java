package org.bayledger.quantity;

import java.util.List;

/**
 * What a quantity measures: its SI unit inside, the units it is reported in, the symbols a caller
 * may use, and the magnitude above which a number is taken for a slip of the pen.
 *
 * <p>This is the one table of units. Two dimensions may share a physical dimension and differ in
 * the unit that a reader expects: the deflection of a member is read in inches, the width of an
 * elevation in feet.
 */
public enum Dimension {
    /** Sizes of members, joints, deflections; inside: m. */
    LENGTH("mm", "in", 1e5, "mm", "cm", "m", "in", "ft"),
    /** Sizes of bays, elevations and buildings; inside: m. */
    DISTANCE("m", "ft", 1e5, "mm", "cm", "m", "in", "ft"),
    /** Areas of glass and wall; inside: m2. */
    AREA("m2", "ft2", 1e8, "mm2", "m2", "in2", "ft2"),
    /** Areas of gaps and sections; inside: m2. */
    SECTION_AREA("mm2", "in2", 1e8, "mm2", "m2", "in2", "ft2"),
    /** Volumes of sealant and water; inside: m3. */
    VOLUME("L", "in3", 1e6, "L", "mL", "m3", "in3"),
    /** Section modulus; inside: m3. */
    SECTION_MODULUS("mm3", "in3", 1e3, "mm3", "in3"),
    /** Second moment of area and torsion constant; inside: m4. */
    SECOND_MOMENT_OF_AREA("cm4", "in4", 1e3, "mm4", "cm4", "in4"),
    /** Warping constants; inside: m6. */
    WARPING_CONSTANT("cm6", "in6", 1e3, "mm6", "cm6", "in6"),
    /** Pressures; inside: Pa. */
    PRESSURE("kPa", "psf", 1e9, "Pa", "kPa", "MPa", "GPa", "psf", "psi", "ksi"),
    /** Stresses, strengths and moduli; inside: Pa. */
    STRESS("MPa", "ksi", 1e13, "Pa", "kPa", "MPa", "GPa", "psf", "psi", "ksi"),
    /** Forces; inside: N. */
    FORCE("kN", "lbf", 1e9, "N", "kN", "lbf", "kip"),
    /** Loads per length; inside: N/m. */
    LINE_LOAD("kN/m", "lbf/ft", 1e9, "N/m", "kN/m", "lbf/ft", "plf"),
    /** Bending and twisting moments; inside: N m. */
    MOMENT("kN*m", "kip*in", 1e9, "N*m", "kN*m", "lbf*in", "lbf*ft", "kip*in"),
    /** Masses; inside: kg. */
    MASS("kg", "lb", 1e7, "kg", "lb"),
    /** Masses per length; inside: kg/m. */
    LINE_MASS("kg/m", "lb/ft", 1e5, "kg/m", "lb/ft"),
    /** Masses per area; inside: kg/m2. */
    AREA_MASS("kg/m2", "lb/ft2", 1e5, "kg/m2", "lb/ft2"),
    /** Speeds; inside: m/s. */
    SPEED("m/s", "mph", 1e4, "m/s", "km/h", "mph"),
    /** Temperatures; inside: K. */
    TEMPERATURE("degC", "degF", 1e4, "degC", "degF"),
    /** Differences of temperature; inside: K. */
    TEMPERATURE_DIFFERENCE("delta_degC", "delta_degF", 1e4, "delta_degC", "delta_degF"),
    /** Angles; inside: rad. */
    ANGLE("deg", "deg", 1e3, "deg"),
    /** Flows of water; inside: m3/s. */
    WATER_RATE("L/min", "gal/min", 1e6, "L/min", "L/s", "gal/min"),
    /** Flows of air; inside: m3/s. */
    AIR_RATE("L/s", "cfm", 1e6, "L/s", "L/min", "cfm"),
    /** Flows of air through an area of wall; inside: m/s. */
    AIR_LEAKAGE("L/s/m2", "cfm/ft2", 1e3, "L/s/m2", "cfm/ft2"),
    /** Flows of water onto an area of wall; inside: m/s. */
    SPRAY_RATE("L/min/m2", "gal/h/ft2", 1e3, "L/min/m2", "gal/h/ft2"),
    /** Durations; inside: s. */
    TIME("s", "s", 1e11, "s", "min", "h", "d"),
    /** Pure numbers. */
    NONE("1", "1", 1e12, "1");

    private final String si;
    private final String us;
    private final double absurd;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> symbols;

    Dimension(String si, String us, double absurd, String... symbols) {
        this.si = si;
        this.us = us;
        this.absurd = absurd;
        this.symbols = List.of(symbols);
    }

    /** The symbol of the unit in which this dimension is reported. */
    public String symbol(UnitSystem system) {
        return system == UnitSystem.US ? us : si;
    }

    /** The symbols that a caller may use, case-sensitive. */
    public List<String> symbols() {
        return symbols;
    }

    /** Whether a magnitude, in SI, is beyond anything that can stand on a building. */
    public boolean isAbsurd(double siValue) {
        return !(Math.abs(siValue) <= absurd);
    }
}
