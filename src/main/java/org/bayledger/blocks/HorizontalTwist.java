package org.bayledger.blocks;

import java.util.List;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.TwistedBar;
import org.jspecify.annotations.Nullable;

/**
 * How the horizontal turns about its axis because the glass stands off its shear center: each block
 * puts the torque P e on it; its ends are held against twist. Its own weight acts in its axis.
 *
 * <pre>
 *   drop at the far face of the glass   phi (|e| + t/2)
 * </pre>
 *
 * <p>Turning by phi, the metal over the lite below comes down by that much more than it bends; t is
 * the thickness of the glass above, as of that below. Ahead of a weight without a build-up t is
 * zero.
 *
 * @param bar the member under its torques
 * @param eccentricity e, m, without its sign
 * @param halfGlass t/2, m
 */
record HorizontalTwist(TwistedBar bar, double eccentricity, double halfGlass) {

    /** The twist, or null where it is not known. */
    static @Nullable HorizontalTwist of(
            SettingBlocksRequest request, List<BeamLoad.Force> weights) {
        BlockSupport support = request.support();
        Double rigidity = support.torsionalRigidity();
        Double span = support.span();
        if (rigidity == null || span == null || support.eccentricity() == null) {
            return null;
        }
        double e = Math.abs(support.eccentricity());
        return new HorizontalTwist(
                new TwistedBar(
                        span,
                        rigidity,
                        support.warpingRigidity(),
                        weights.stream()
                                .map(p -> new TwistedBar.Torque(p.at(), p.force() * e))
                                .toList()),
                e,
                request.glass() == null ? 0 : request.glass().thickness() / 2);
    }

    /** How far twist brings down the metal over the lite below, m; zero where it is not known. */
    static double drop(SettingBlocksRequest request, List<BeamLoad.Force> weights) {
        HorizontalTwist twist = of(request, weights);
        return twist == null ? 0 : twist.greatestDrop();
    }

    /** Greatest rotation, rad. */
    double rotation() {
        return bar.greatestRotation().value();
    }

    /** How far it brings down the metal over the lite below where it turns most, m. */
    double greatestDrop() {
        return rotation() * (eccentricity + halfGlass);
    }

    /** How far it lets a block at a position in m sink, at the center of the glass, m. */
    double sinking(double at) {
        return bar.rotation(at) * eccentricity;
    }

    /** The greater of the torques at the ends, N m. */
    double endTorque() {
        return Math.max(bar.startTorque(), bar.endTorque());
    }
}
