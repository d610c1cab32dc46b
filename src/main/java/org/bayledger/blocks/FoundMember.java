package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.BeamLoad;
import org.jspecify.annotations.Nullable;

/**
 * The horizontal under blocks in any places, measured from the left glass corner. A second lite on
 * the same span stands on blocks where they are drawn. A block beyond the end of the span stands
 * over what holds the horizontal and does not bend it.
 */
final class FoundMember {

    private final SettingBlocksRequest request;
    private final HorizontalDeflection horizontal;
    private final double start;
    private final List<BeamLoad.Force> beside;

    private FoundMember(
            SettingBlocksRequest request,
            HorizontalDeflection horizontal,
            double start,
            List<BeamLoad.Force> beside) {
        this.request = request;
        this.horizontal = horizontal;
        this.start = start;
        this.beside = beside;
    }

    /**
     * The member of a request, or null where something of it or of what it carries is not known.
     *
     * @param drawnAt where blocks are drawn, from each glass corner, m, or null
     */
    static @Nullable FoundMember of(SettingBlocksRequest request, @Nullable Double drawnAt) {
        HorizontalDeflection horizontal = HorizontalDeflection.of(request.support());
        SecondLite second = request.secondLite();
        if (horizontal == null || (second != null && drawnAt == null)) {
            return null;
        }
        Double offset = request.support().glassOffset();
        List<BeamLoad.Force> beside = new ArrayList<>();
        if (second != null && drawnAt != null) {
            double way = drawnAt / request.width() * second.width();
            double load = SettingBlock.load(second.glassWeight());
            for (double at : new double[] {way, second.width() - way}) {
                double on = second.offset() + at;
                if (on > 0 && on < horizontal.span()) {
                    beside.add(new BeamLoad.Force(on, load));
                }
            }
        }
        return new FoundMember(
                request,
                horizontal,
                offset == null ? (horizontal.span() - request.width()) / 2 : offset,
                beside);
    }

    /** Whether a place is on the span. */
    boolean spans(double place) {
        return place + start > 0 && place + start < horizontal.span();
    }

    /** A position on the member, m from its left support, as a place from the glass corner. */
    double fromCorner(double at) {
        return at - start;
    }

    /** E I, N m2. */
    double rigidity() {
        return horizontal.rigidity();
    }

    private List<BeamLoad.Force> forces(double[] places, double[] loads) {
        List<BeamLoad.Force> forces = new ArrayList<>(beside);
        for (int i = 0; i < places.length; i++) {
            if (spans(places[i])) {
                forces.add(new BeamLoad.Force(places[i] + start, loads[i]));
            }
        }
        return forces;
    }

    /** What blocks at places with loads, N, ask of the member. */
    BlockDemand.OfMember under(double[] places, double[] loads) {
        List<Double> own = new ArrayList<>();
        for (double place : places) {
            if (spans(place)) {
                own.add(place + start);
            }
        }
        return BlockDemand.under(request, horizontal, forces(places, loads), own);
    }

    /** How far a block at a place sinks under loads, N, at places, rotation included, m. */
    double sinks(double[] places, double[] loads, double place) {
        if (!spans(place)) {
            return 0;
        }
        List<BeamLoad.Force> forces = forces(places, loads);
        HorizontalTwist twist = HorizontalTwist.of(request, forces);
        return horizontal.under(forces).deflection(place + start)
                + (twist == null ? 0 : twist.sinking(place + start));
    }

    /** How far each place sinks under a unit load at each, m/N. */
    double[][] flexibility(double[] places) {
        int n = places.length;
        double[] nothing = new double[n];
        double[][] flexibility = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] unit = new double[n];
            unit[j] = 1;
            for (int i = 0; i < n; i++) {
                flexibility[i][j] =
                        sinks(places, unit, places[i]) - sinks(places, nothing, places[i]);
            }
        }
        return flexibility;
    }
}
