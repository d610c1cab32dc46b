package org.bayledger.glass;

import java.util.List;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Pane;

/**
 * Glass type factor GTF: the load that a pane carries over that of an annealed one at 3 s.
 *
 * <pre>
 *                      single lite      double unit, with its like    with another treatment
 *                      3 s    30 d      3 s     30 d                  3 s     30 d
 * annealed             1.0    0.43      0.9     0.39                  1.0     0.43
 * heat-strengthened    2.0    1.3       1.8     1.25                  1.9     1.25
 * fully tempered       4.0    3.0       3.6     2.85                  3.8     2.85
 * </pre>
 *
 * Source: ASTM E1300-16, tables of glass type factors of single lites and of double units under
 * short and long duration, from memory; of the long-duration table of double units the memory is
 * less sure, and a finding says so.
 *
 * <p>Triple units: 0.81 of the single lite's factor for every pane, whatever its neighbours: the
 * practice's figure for three like panes at 3 s as far as memory goes (0.81, 1.62, 3.24), and below
 * what the weakest of three equally stressed panes asks for, (1/3)^(1/7) = 0.855. At 30 d it gives
 * 0.34, 1.05 and 2.43, annealed rounded down; the practice's table has as much or up to 7 % more.
 *
 * <p>Annealed glass follows the law of {@link LoadDuration}; heat-treated glass has the two
 * durations above and no other.
 */
final class GlassTypeFactor {

    private static final double LIKE_PAIR = 0.9;
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
        double single = single(own, duration);
        return switch (panes.size()) {
            case 1 -> single;
            case 2 -> pair(own, panes.get(1 - index).heatTreatment(), single, duration);
            default ->
                    own == HeatTreatment.ANNEALED
                            ? LoadDuration.roundDown(TRIPLE * single)
                            : TRIPLE * single;
        };
    }

    private static double pair(
            HeatTreatment own, HeatTreatment other, double single, double duration) {
        boolean like = own == other;
        boolean brief = LoadDuration.isShort(duration);
        return switch (own) {
            case ANNEALED -> like ? LoadDuration.round(LIKE_PAIR * single) : single;
            case HEAT_STRENGTHENED -> brief ? (like ? 1.8 : 1.9) : 1.25;
            case FULLY_TEMPERED -> brief ? (like ? 3.6 : 3.8) : 2.85;
        };
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
