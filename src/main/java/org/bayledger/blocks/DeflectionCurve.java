package org.bayledger.blocks;

import java.util.List;
import org.bayledger.mechanics.BeamExtreme;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.Nullable;

/**
 * The bent shape of the horizontal with the blocks at one place: what is drawn of it. Positions are
 * in m from its left support as the wall is seen, deflections in m, downward positive.
 */
public final class DeflectionCurve {

    private final BeamSolution beam;
    private final List<Double> supports;
    private final List<Double> blocks;
    private final double limit;

    private DeflectionCurve(
            BeamSolution beam, List<Double> supports, List<Double> blocks, double limit) {
        this.beam = beam;
        this.supports = supports;
        this.blocks = blocks;
        this.limit = limit;
    }

    /**
     * The shape with the blocks at a place.
     *
     * @return null where it can't be found: a sill that is shimmed, a member or a weight that is
     *     not known, a place beyond the ends of the member, or none chosen
     */
    public static @Nullable DeflectionCurve of(SettingBlocksRequest request, BlockPoint point) {
        HorizontalDeflection horizontal = HorizontalDeflection.of(request.support());
        Double fraction = point.fraction(request);
        if (horizontal == null || fraction == null) {
            return null;
        }
        BlockLayout layout = BlockLayout.of(request, horizontal.span(), fraction);
        List<BeamLoad.Force> loads = layout.loads(request);
        if (loads == null || !layout.on(horizontal.span())) {
            return null;
        }
        double drop = HorizontalTwist.drop(request, loads);
        return new DeflectionCurve(
                horizontal.under(loads),
                horizontal.supports(),
                layout.all(),
                DeadLoadLimits.of(request, horizontal.span()).limit(drop));
    }

    /** Distance between the outer supports, m. */
    public double span() {
        return beam.length();
    }

    /** Where it is supported, its ends included, m from the left. */
    public List<Double> supports() {
        return supports;
    }

    /** Centers of the blocks on it, those of a second lite included, m from the left. */
    public List<Double> blocks() {
        return blocks;
    }

    /** Deflection at a position on it, m. */
    public double deflectionAt(double at) {
        return beam.deflection(at);
    }

    /** Where it bends most, and by how much, m. */
    public BeamExtreme greatest() {
        return beam.greatestDeflection();
    }

    /**
     * The greatest deflection that keeps every limit known, those of bite and clearance below
     * included, m; zero or less where the clearance is too small before anything bends.
     */
    public double limit() {
        return limit;
    }
}
