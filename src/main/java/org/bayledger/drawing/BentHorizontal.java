package org.bayledger.drawing;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamModel;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.Nullable;

/**
 * The line that a horizontal bends into under a lite on two blocks: a beam on two simple supports
 * under two equal forces and its own weight, deflections positive downward.
 *
 * @param span m
 * @param load weight on each block, N
 * @param block distance of each block from the nearer support, m
 * @param solution the bent beam
 */
record BentHorizontal(double span, double load, double block, BeamSolution solution) {

    /**
     * The horizontal under blocks at a distance from the glass corners.
     *
     * @param mass of the lite, kg
     * @param fromCorner from the glass corner to the center of each block, m
     * @return null where the member's stiffness or span was not given, or the blocks do not stand
     *     on it
     */
    static @Nullable BentHorizontal of(
            SettingBlocksRequest request, @Nullable Double mass, double fromCorner) {
        BlockSupport support = request.support();
        Double span = support.span();
        Double inertia = support.secondMomentOfArea();
        Double modulus = support.elasticModulus();
        if (span == null || inertia == null || modulus == null || mass == null) {
            return null;
        }
        double at = fromCorner - (request.width() - span) / 2;
        if (at <= 0) {
            return null;
        }
        double load = mass * STANDARD_GRAVITY / 2;
        List<BeamLoad> loads = new ArrayList<>();
        loads.add(new BeamLoad.Force(at, load));
        loads.add(new BeamLoad.Force(span - at, load));
        if (support.massPerLength() != null) {
            loads.add(BeamLoad.uniform(0, span, support.massPerLength() * STANDARD_GRAVITY));
        }
        return new BentHorizontal(
                span,
                load,
                at,
                Beam.solve(
                        BeamModel.uniform(
                                span, List.of(0.0, span), List.of(), inertia * modulus, loads)));
    }

    /** Deflection at a distance from its left support, m. */
    double deflection(double at) {
        return solution.deflection(at);
    }

    /** Deflection at mid-span, m: the greatest. */
    double midSpan() {
        return deflection(span / 2);
    }
}
