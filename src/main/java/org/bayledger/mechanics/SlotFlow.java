package org.bayledger.mechanics;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

/**
 * Flow through a narrow slot under a difference of pressure, and the head that a pressure holds.
 *
 * <p>A slot of width g, length L and depth t (the way the fluid travels) loses pressure in two
 * ways, one after the other: by friction along its walls and by the speed with which the fluid
 * leaves. Each alone gives a flow that both together cannot exceed, so that {@link #upperBound},
 * the smaller of the two, is never below that of both in series; where the two are equal it is
 * above it by a factor of 1.62 (golden ratio), elsewhere by less. The bound is one on these two
 * losses with a sharp-edged inlet: in a slot several gaps deep the jet touches the walls again and
 * Cd may rise to about 0.8 (textbooks, from memory), a third more.
 *
 * <p>Limits: steady flow, incompressible (for air: pressures under about 2 kPa), smooth parallel
 * walls, g much smaller than L and t for {@link #viscous}.
 */
public final class SlotFlow {

    /**
     * Discharge coefficient of a sharp-edged orifice at high Reynolds number: 0.61 (textbooks of
     * fluid mechanics; Kirchhoff's pi/(pi + 2) = 0.611 for a slit in a thin plate).
     */
    public static final double SHARP_EDGED = 0.61;

    private SlotFlow() {}

    /**
     * Flow through an orifice, Q = Cd A sqrt(2 dp / rho).
     *
     * @param coefficient Cd, discharge coefficient
     * @param area A, m2
     * @param pressure dp, Pa
     * @param fluid what flows
     * @return Q, m3/s
     */
    public static double orifice(double coefficient, double area, double pressure, Fluid fluid) {
        require(coefficient > 0, "the discharge coefficient must be greater than zero");
        require(area >= 0, "the area must not be negative");
        require(pressure >= 0, "the pressure must not be negative");
        return coefficient * area * Math.sqrt(2 * pressure / fluid.density());
    }

    /**
     * Laminar flow between parallel plates (plane Poiseuille flow), Q = L g^3 dp / (12 mu t).
     *
     * @param gap g, distance of the plates, m
     * @param length L, breadth of the slot across the flow, m
     * @param depth t, length of the way through the slot, m
     * @param pressure dp, Pa
     * @param fluid what flows
     * @return Q, m3/s
     */
    public static double viscous(
            double gap, double length, double depth, double pressure, Fluid fluid) {
        require(gap >= 0, "the gap must not be negative");
        require(length >= 0, "the length must not be negative");
        require(depth > 0, "the depth must be greater than zero");
        require(pressure >= 0, "the pressure must not be negative");
        return length * gap * gap * gap * pressure / (12 * fluid.viscosity() * depth);
    }

    /**
     * A flow that friction and exit loss in series do not exceed: the smaller of orifice and
     * viscous flow.
     *
     * @param gap g, m
     * @param length L, m
     * @param depth t, m
     * @param pressure dp, Pa
     * @param fluid what flows
     * @return Q, m3/s
     */
    public static double upperBound(
            double gap, double length, double depth, double pressure, Fluid fluid) {
        return Math.min(
                orifice(SHARP_EDGED, gap * length, pressure, fluid),
                viscous(gap, length, depth, pressure, fluid));
    }

    /**
     * Flow with friction and exit loss in series: the root q of dp = a q + b q^2 with a = dp / Qv
     * and b = dp / Qo^2, Qv the viscous and Qo the orifice flow; never above either.
     *
     * @param coefficient Cd, discharge coefficient
     * @param gap g, m
     * @param length L, m
     * @param depth t, m
     * @param pressure dp, Pa
     * @param fluid what flows
     * @return Q, m3/s
     */
    public static double series(
            double coefficient,
            double gap,
            double length,
            double depth,
            double pressure,
            Fluid fluid) {
        double orifice = orifice(coefficient, gap * length, pressure, fluid);
        double viscous = viscous(gap, length, depth, pressure, fluid);
        if (orifice == 0 || viscous == 0) {
            return 0;
        }
        // q = 2 / (1/Qv + sqrt(1/Qv^2 + 4/Qo^2)), the form without a difference of near numbers
        return 2 / (1 / viscous + Math.hypot(1 / viscous, 2 / orifice));
    }

    /**
     * The greatest pressure that the surface of a liquid spanning a hole can hold back: the pull of
     * the surface along the rim over the area of the hole, pc = gamma P / A, which is 4 gamma / d
     * for a round hole and 2 gamma / s for a long slot of width s.
     *
     * @param perimeter P, m
     * @param area A, m2
     * @param surfaceTension gamma, N/m
     * @return pc, Pa
     */
    public static double rimThreshold(double perimeter, double area, double surfaceTension) {
        require(perimeter > 0 && area > 0, "the perimeter and the area must be greater than zero");
        require(surfaceTension > 0, "the surface tension must be greater than zero");
        return surfaceTension * perimeter / area;
    }

    /**
     * The greatest pressure that the curved surface of a wetting liquid in a slot can hold back at
     * the far edge (Young and Laplace, one radius of curvature g/2): pc = 2 gamma / g.
     *
     * @param gap g, m
     * @param surfaceTension gamma, N/m
     * @return pc, Pa
     */
    public static double capillaryThreshold(double gap, double surfaceTension) {
        require(gap > 0, "the gap must be greater than zero");
        require(surfaceTension > 0, "the surface tension must be greater than zero");
        return 2 * surfaceTension / gap;
    }

    /**
     * Height of a column of liquid that a pressure holds, h = p / (rho g).
     *
     * @param pressure p, Pa
     * @param density rho, kg/m3
     * @return h, m
     */
    public static double head(double pressure, double density) {
        require(pressure >= 0, "the pressure must not be negative");
        require(density > 0, "the density must be greater than zero");
        return pressure / (density * STANDARD_GRAVITY);
    }

    private static void require(boolean condition, String message) {
        if (!condition) {
            throw new IllegalArgumentException(message);
        }
    }
}
