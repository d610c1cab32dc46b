package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamModel;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.Nullable;

/**
 * A horizontal on two simple supports, or on three where it is propped at mid-span, under lites on
 * their setting blocks and under its own weight; exact within beam theory, blocks anywhere.
 *
 * <pre>
 *   unpropped, two equal loads P at a from each support, own weight w per length, at mid-span:
 *     d = P a (3 L^2 - 4 a^2) / (24 E I) + 5 w L^4 / (384 E I)
 * </pre>
 *
 * @param span L, m
 * @param rigidity E I, N m2
 * @param ownWeight w, N/m
 * @param propped whether it is supported at mid-span as well
 */
record HorizontalDeflection(double span, double rigidity, double ownWeight, boolean propped) {

    /** The member of a request, or null where it is not known. */
    static @Nullable HorizontalDeflection of(BlockSupport support) {
        if (support.span() == null
                || support.secondMomentOfArea() == null
                || support.elasticModulus() == null) {
            return null;
        }
        return new HorizontalDeflection(
                support.span(),
                support.elasticModulus() * support.secondMomentOfArea() + support.steelRigidity(),
                support.ownWeight(),
                support.propped());
    }

    /** Its supports, m from the left one. */
    List<Double> supports() {
        return propped ? List.of(0.0, span / 2, span) : List.of(0.0, span);
    }

    /** The member under weights at any places of it, and under its own. */
    BeamSolution under(List<BeamLoad.Force> weights) {
        List<BeamLoad> loads = new ArrayList<>(weights);
        if (ownWeight > 0) {
            loads.add(BeamLoad.uniform(0, span, ownWeight));
        }
        return Beam.solve(BeamModel.uniform(span, supports(), List.of(), rigidity, loads));
    }
}
