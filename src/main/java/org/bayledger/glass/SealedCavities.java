package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.PlateResponse;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Panes with gas sealed between them: what every pane carries once the gas has found its pressure.
 *
 * <pre>
 * q_i = p_(i-1) - p_i                  net pressure on pane i, inward; p_0 = pa + w, p_n = pa
 * V_j = A s_j - v_j(q_j) + v_(j+1)(q_(j+1))
 * p_j V_j / T_j = ps A s_j / Ts        Boyle and Gay-Lussac, for each cavity
 * </pre>
 *
 * Symbols: pa pressure of the air about the unit, w wind on it, inward, p_j absolute pressure in
 * cavity j (Pa); A area (m2); s_j width of the cavity (m); v_i volume that pane i displaces, by the
 * large deflection of a plate (m3), odd in q_i; ps and Ts pressure and temperature when sealed. The
 * net pressures add up to w. Every cavity's residual p_j V_j rises with p_j as long as V_j is
 * positive, and so does that of a chain of them, so that nested bracketing finds the only solution.
 *
 * <p>Limits: ideal gas; rigid spacers; seals that neither leak nor let the panes turn hard; the
 * plate's limits ({@link GlassModel}). Beyond the plate's greatest pressure the volume is carried
 * on by a cube root, only to keep the search going; {@link State#beyond} then says so.
 */
final class SealedCavities {

    private static final double LEAST = 0.02;
    private static final double GREATEST = 50;
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-7;
    private static final int ORDER = 5;
    private static final int EVALUATIONS = 300;

    private final List<Sheet> sheets;
    private final List<Double> cold;
    private final List<Double> gas;
    private final double ambient;

    private SealedCavities(
            List<Sheet> sheets, List<Double> volumes, List<Double> gas, double ambient) {
        this.sheets = sheets;
        this.cold = volumes;
        this.gas = gas;
        this.ambient = ambient;
    }

    /**
     * One pane as a plate.
     *
     * @param model the size and how it is held
     * @param thickness of the sheet that bends as the pane does, m
     */
    record Sheet(GlassModel model, double thickness) {

        /** Volume displaced by a net pressure in Pa, with its sign, m3. */
        double volume(double pressure) {
            double most = model.greatestPressure(thickness);
            double size = Math.abs(pressure);
            double volume =
                    size <= most
                            ? model.respond(thickness, size).displacedVolume()
                            : model.respond(thickness, most).displacedVolume()
                                    * Math.cbrt(size / most);
            return Math.copySign(volume, pressure);
        }

        boolean covers(double pressure) {
            return Math.abs(pressure) <= model.greatestPressure(thickness);
        }

        PlateResponse respond(double pressure) {
            return model.respond(thickness, Math.abs(pressure));
        }
    }

    /**
     * The air about and in a unit.
     *
     * @param sealedPressure absolute, when sealed, Pa
     * @param sealedTemperature of the gas when sealed, K
     * @param ambient absolute pressure of the air about the unit, Pa
     * @param temperatures of the gas in each cavity, K
     */
    record Air(
            double sealedPressure,
            double sealedTemperature,
            double ambient,
            List<Double> temperatures) {}

    /**
     * Equilibrium.
     *
     * @param cavityPressures absolute, outermost first, Pa
     * @param panePressures net, positive inward, outermost first, Pa; they add up to the wind
     * @param beyond whether a pane is beyond what the plate solution covers
     */
    record State(List<Double> cavityPressures, List<Double> panePressures, boolean beyond) {}

    /**
     * Finds the equilibrium.
     *
     * @param sheets the panes, outermost first
     * @param area of the unit, m2
     * @param widths of the cavities, outermost first, m
     * @param wind net pressure on the whole unit, positive inward, Pa
     */
    static State solve(List<Sheet> sheets, double area, List<Double> widths, Air air, double wind) {
        List<Double> volumes = widths.stream().map(width -> area * width).toList();
        List<Double> gas = new ArrayList<>();
        for (int j = 0; j < widths.size(); j++) {
            gas.add(
                    air.sealedPressure()
                            * volumes.get(j)
                            * air.temperatures().get(j)
                            / air.sealedTemperature());
        }
        SealedCavities unit = new SealedCavities(sheets, volumes, gas, air.ambient());
        List<Double> pressures = new ArrayList<>();
        List<Double> nets = new ArrayList<>();
        double before = air.ambient() + wind;
        boolean beyond = false;
        for (int i = 0; i < sheets.size(); i++) {
            double behind = unit.pressure(i, before);
            double net = before - behind;
            nets.add(net);
            beyond |= !sheets.get(i).covers(net);
            if (i < widths.size()) {
                pressures.add(behind);
            }
            before = behind;
        }
        return new State(List.copyOf(pressures), List.copyOf(nets), beyond);
    }

    /** Pressure behind pane i where it is {@code before} in front of it, with all that follows. */
    private double pressure(int i, double before) {
        if (i >= gas.size()) {
            return ambient;
        }
        return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, ORDER)
                .solve(
                        EVALUATIONS,
                        p -> residual(i, before, p),
                        LEAST * ambient,
                        GREATEST * ambient,
                        ambient);
    }

    private double residual(int i, double before, double p) {
        double volume =
                cold.get(i)
                        - sheets.get(i).volume(before - p)
                        + sheets.get(i + 1).volume(p - pressure(i + 1, p));
        return (p * volume - gas.get(i)) / cold.get(i);
    }
}
