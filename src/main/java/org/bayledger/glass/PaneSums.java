package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.Pane;
import org.bayledger.mechanics.PlateResponse;
import org.jspecify.annotations.Nullable;

/**
 * The load resistance of one pane of a lite.
 *
 * <pre>
 * LR_i = NFL_i PF_i GTF_i LS_i      the lite resists the least of its panes
 * LS_i = (sum of t^3) / t_i^3       sealed cavities share load by bending stiffness
 * </pre>
 *
 * t is the minimum thickness, or the effective thickness for deflection of a laminated pane. Where
 * a pane is laminated, LS is found twice, with the interlayers as soft as the temperature and
 * duration make them and with rigid ones, and each pane keeps the lesser: a cold laminated pane
 * draws load, a warm one leaves it to the others. Source: ASTM E1300-16, procedure for insulating
 * glass, from memory; the second of the two is ours, on the safe side.
 *
 * @param pane the pane
 * @param glass minimum thickness of its glass, all plies, m
 * @param modulus shear modulus of its interlayer, Pa; null where it has none
 * @param thickness its effective thicknesses
 * @param nonFactoredLoad NFL at 3 s and 8 per 1000, Pa
 * @param probabilityFactor PF, resistance at the probability asked for over that at 8 per 1000
 * @param glassTypeFactor GTF
 * @param loadShareFactor LS
 */
record PaneSums(
        Pane pane,
        double glass,
        @Nullable Double modulus,
        EffectiveThickness thickness,
        double nonFactoredLoad,
        double probabilityFactor,
        double glassTypeFactor,
        double loadShareFactor) {

    /**
     * All panes of a lite, outermost first.
     *
     * @throws FaultsException where a pane is outside what the plate solution covers
     */
    static List<PaneSums> of(GlassRequest request, GlassModel model) {
        List<Pane> panes = request.glass().panes();
        double duration = request.load().durationOrShort();
        List<EffectiveThickness> thicknesses =
                panes.stream().map(pane -> thickness(pane, model, duration)).toList();
        List<PaneSums> sums = new ArrayList<>(panes.size());
        for (int i = 0; i < panes.size(); i++) {
            Pane pane = panes.get(i);
            EffectiveThickness own = thicknesses.get(i);
            double nonFactored = resistance(model, own, GlassModel.PROBABILITY, i);
            double asked = request.probability();
            double factor =
                    asked == GlassModel.PROBABILITY
                            ? 1
                            : resistance(model, own, asked, i) / nonFactored;
            sums.add(
                    new PaneSums(
                            pane,
                            pane.minimumThicknesses().stream()
                                    .mapToDouble(Double::doubleValue)
                                    .sum(),
                            modulus(pane, duration),
                            own,
                            nonFactored,
                            factor,
                            GlassTypeFactor.of(panes, i, duration),
                            loadShare(thicknesses, i)));
        }
        return List.copyOf(sums);
    }

    /** LR, pressure on the whole lite at which this pane reaches its resistance, Pa. */
    double loadResistance() {
        return nonFactoredLoad * probabilityFactor * glassTypeFactor * loadShareFactor;
    }

    /** The pane's share of a pressure on the lite, Pa. */
    double share(double pressure) {
        return pressure / loadShareFactor;
    }

    /**
     * What its share of a pressure does to it; all of it null beyond what is tabulated.
     *
     * @param deflection of its middle, m
     * @param pullIn how far the middle of an edge moves in, in the plane of the glass, the greater
     *     of the edges', m
     * @param biteLoss what bends out of the bite, m
     * @param probability of breakage as if annealed
     */
    record Bent(
            @Nullable Double deflection,
            @Nullable Double pullIn,
            @Nullable Double biteLoss,
            @Nullable Double probability) {

        static final Bent UNKNOWN = new Bent(null, null, null, null);
    }

    /** What its share of a pressure, Pa, does to it in a duration, s. */
    Bent under(GlassModel model, double pressure, double duration) {
        PlateResponse bends = response(model, thickness.deflection(), pressure);
        PlateResponse breaks =
                thickness.stress() == thickness.deflection()
                        ? bends
                        : response(model, thickness.stress(), pressure);
        Double probability = breaks == null ? null : GlassModel.probability(breaks, duration);
        return bends == null
                ? new Bent(null, null, null, probability)
                : new Bent(
                        bends.centreDeflection(),
                        Math.max(bends.longEdgePullIn(), bends.shortEdgePullIn()),
                        model.biteLoss(bends),
                        probability);
    }

    private @Nullable PlateResponse response(GlassModel model, double sheet, double pressure) {
        try {
            return model.respond(sheet, share(pressure));
        } catch (IllegalArgumentException beyond) {
            return null;
        }
    }

    static double resistance(
            GlassModel model, EffectiveThickness thickness, double probability, int index) {
        try {
            return model.resistance(thickness.stress(), probability, LoadDuration.SHORT);
        } catch (IllegalArgumentException beyond) {
            throw FaultsException.outOfRange(
                    GlassRequest.panePointer(index), model.refusal(thickness.stress()));
        }
    }

    static EffectiveThickness thickness(Pane pane, GlassModel model, double duration) {
        Interlayer interlayer = pane.interlayer();
        Double modulus = modulus(pane, duration);
        return interlayer == null || modulus == null
                ? EffectiveThickness.monolithic(pane.minimumThicknesses().get(0))
                : EffectiveThickness.laminated(pane, interlayer, modulus, model.bendingLength());
    }

    private static @Nullable Double modulus(Pane pane, double duration) {
        Interlayer interlayer = pane.interlayer();
        if (interlayer == null) {
            return null;
        }
        Double given = interlayer.shearModulus();
        return given == null
                ? (Double)
                        InterlayerModulus.of(
                                interlayer.material(),
                                GlassRequest.temperature(interlayer),
                                duration)
                : given;
    }

    static double loadShare(List<EffectiveThickness> all, int index) {
        double soft = 0;
        double rigid = 0;
        for (EffectiveThickness each : all) {
            soft += cube(each.deflection());
            rigid += cube(each.onePiece());
        }
        EffectiveThickness own = all.get(index);
        return Math.min(soft / cube(own.deflection()), rigid / cube(own.onePiece()));
    }

    /**
     * The share factor by the practice's tables, which take a laminated pane as one sheet under
     * short and as loose plies under long duration (ASTM E1300-16, from memory).
     */
    static double tabulatedShare(List<PaneSums> all, int index, boolean brief) {
        double sum = all.stream().mapToDouble(each -> each.tabulatedStiffness(brief)).sum();
        return sum / all.get(index).tabulatedStiffness(brief);
    }

    private double tabulatedStiffness(boolean brief) {
        return brief
                ? cube(glass)
                : pane.minimumThicknesses().stream().mapToDouble(PaneSums::cube).sum();
    }

    private static double cube(double t) {
        return t * t * t;
    }
}
