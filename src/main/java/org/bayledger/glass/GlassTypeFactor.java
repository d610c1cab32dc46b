package org.bayledger.glass;

import java.util.List;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Pane;

/**
 * Glass type factor GTF: the load that a pane carries over that of an annealed one at 3 s.
 *
 * <pre>
 * single lite          3 s    30 d        either lite of a double unit at 3 s
 * annealed             1.0    0.43        with its like                              0.9  of the single lite's
 * heat-strengthened    2.0    1.3         annealed with a heat-treated one           1.0
 * fully tempered       4.0    3.0         heat-treated with glass treated otherwise  0.95
 * </pre>
 *
 * The right-hand factors on the left-hand ones give the practice's table for double units at 3 s
 * (0.9, 1.8, 3.6; 1.0 with 1.9; 1.0 with 3.8; 1.9 with 3.8). The same product is used at 30 d: it
 * gives 0.39 for annealed pairs, as the practice has it, and for heat-treated panes what the
 * practice's long-duration table has or up to 7 % less. Source: ASTM E1300-16, tables of glass type
 * factors, from memory.
 *
 * <p>Triple units: 0.81 of the single lite's factor for every pane, whatever its neighbours: the
 * practice's figure for three like panes as far as memory goes, and below what the weakest of three
 * equally stressed panes asks for, (1/3)^(1/7) = 0.855.
 *
 * <p>Annealed glass follows the law of {@link LoadDuration}; heat-treated glass has the two
 * durations above and no other.
 */
final class GlassTypeFactor {

    private static final double LIKE_PAIR = 0.9;
    private static final double TREATED_UNLIKE_PAIR = 0.95;
    private static final double TRIPLE = 0.81;

    private GlassTypeFactor() {}

    /**
     * The factor of one pane of a lite.
     *
     * @param panes all panes, outermost first
     * @param index the pane
     * @param duration load duration, s: for heat-treated glass 3 s or 30 d
     */
    static double of(List<Pane> panes, int index, double duration) {
        HeatTreatment own = panes.get(index).heatTreatment();
        double unit =
                switch (panes.size()) {
                    case 1 -> 1;
                    case 2 -> pair(own, panes.get(1 - index).heatTreatment());
                    default -> TRIPLE;
                };
        double factor = unit * single(own, duration);
        return own == HeatTreatment.ANNEALED ? LoadDuration.round(factor) : factor;
    }

    private static double pair(HeatTreatment own, HeatTreatment other) {
        if (own == other) {
            return LIKE_PAIR;
        }
        return own == HeatTreatment.ANNEALED ? 1 : TREATED_UNLIKE_PAIR;
    }

    private static double single(HeatTreatment treatment, double duration) {
        if (treatment == HeatTreatment.ANNEALED) {
            return LoadDuration.annealedFactor(duration);
        }
        boolean brief = LoadDuration.isShort(duration);
        if (!brief && !LoadDuration.isLong(duration)) {
            throw new IllegalArgumentException(
                    "heat-treated glass has factors for 3 s and 30 d, not " + duration + " s");
        }
        if (treatment == HeatTreatment.HEAT_STRENGTHENED) {
            return brief ? 2.0 : 1.3;
        }
        return brief ? 4.0 : 3.0;
    }
}
