package org.bayledger.glass;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums of the sealed-cavity model, and its cases in words. */
final class SealedUnitTrace {

    private SealedUnitTrace() {}

    /**
     * Writes the case that asks most of a pane.
     *
     * @param resistances what each pane resists alone for the wind's duration, Pa
     */
    static void write(
            SealedUnit unit, SealedUnitResult result, List<Double> resistances, Trace trace) {
        String source = "Boyle and Gay-Lussac; large-deflection plate theory (von Karman)";
        trace.detail(
                "ps",
                "absolute pressure when sealed",
                Dimension.PRESSURE,
                unit.sealed().absolutePressure(),
                unit.sealed().pressure() == null
                        ? "101 325 Pa (1 - 2.25577e-5 h)^5.25588"
                        : "input",
                unit.sealed().pressure() == null ? "ISO 2533:1975 (from memory)" : "input");
        SealedUnitResult.Case worst = SealedUnitCheck.worst(result);
        if (worst == null) {
            return;
        }
        for (int i = 0; i < worst.panes().size(); i++) {
            trace.detail(
                    "q" + (i + 1),
                    "net pressure on pane "
                            + (i + 1)
                            + " by the sealed-cavity model, "
                            + words(worst),
                    Dimension.PRESSURE,
                    worst.panes().get(i).pressure().si(),
                    "q_i = p_(i-1) - p_i, p_j V_j / T_j = ps A s_j / Ts,"
                            + " V_j = A s_j - v_j(q_j) + v_(j+1)(q_(j+1))",
                    source);
            trace.detail(
                    "R" + (i + 1),
                    "pressure that pane " + (i + 1) + " resists alone under the wind's duration",
                    Dimension.PRESSURE,
                    resistances.get(i),
                    "NFL x PF x GTF of the single lite",
                    "ASTM E1300-16 (from memory)");
        }
        trace.detail(
                "u,sealed",
                "greatest utilization by the sealed-cavity model, " + words(worst),
                Dimension.NONE,
                worst.utilization() == null ? 0 : worst.utilization(),
                "max(|q|/R(dw), |qc/R(dc) + (q - qc)/R(dw)|, |qc|/R(dc))",
                "ASTM E1300-16, combining loads of different durations (from memory)");
    }

    /** A case in words. */
    static String words(SealedUnitResult.Case each) {
        String climate = each.climate() == null ? "as sealed" : each.climate();
        return each.wind() == null
                ? climate + ", without wind"
                : climate
                        + (each.wind() == PressureSign.POSITIVE
                                ? ", positive wind"
                                : ", negative wind");
    }
}
