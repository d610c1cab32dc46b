package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * One splice of a member that fails moved to where the member is used least: near a place at which
 * the member without that splice has no moment. Its own stretch between the neighbouring splices is
 * searched in steps, then by golden section about the best of them.
 */
final class SpliceRemedy {

    private static final int STEPS = 60;
    private static final int SECTIONS = 30;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int DIGITS = 3;

    private SpliceRemedy() {}

    static @Nullable Remedy of(FramingRequest request, Reporting reporting) {
        Remedy best = null;
        for (int i = 0; i < request.splices().size(); i++) {
            Remedy moved = moved(request, i, reporting);
            if (moved != null && (best == null || moved.utilization() < best.utilization())) {
                best = moved;
            }
        }
        return best;
    }

    private static @Nullable Remedy moved(FramingRequest request, int splice, Reporting reporting) {
        List<Double> splices = request.splices();
        double low = splice == 0 ? 0 : splices.get(splice - 1);
        double high = splice + 1 == splices.size() ? request.length() : splices.get(splice + 1);
        double step = (high - low) / STEPS;
        double best = low;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k < STEPS; k++) {
            double used = utilization(request, splice, low + k * step);
            if (used < least) {
                least = used;
                best = low + k * step;
            }
        }
        double left = best - step;
        double right = best + step;
        for (int k = 0; k < SECTIONS; k++) {
            double one = right - GOLDEN * (right - left);
            double other = left + GOLDEN * (right - left);
            if (utilization(request, splice, one) <= utilization(request, splice, other)) {
                right = other;
            } else {
                left = one;
            }
        }
        Quantity at =
                Quantity.roundedDown(
                        Dimension.DISTANCE, (left + right) / 2, reporting.units(), DIGITS);
        List<Double> changed = with(splices, splice, at.si());
        if (utilization(request, splice, at.si()) > 1) {
            return null;
        }
        List<Quantity> written =
                changed.stream().map(place -> Quantity.of(Dimension.DISTANCE, place)).toList();
        return FramingRemedies.passing(
                "Move the splice at "
                        + Quantity.of(Dimension.DISTANCE, splices.get(splice))
                                .text(reporting.units())
                        + " from the member's start to "
                        + at.text(reporting.units())
                        + ".",
                List.of(new Change("/hinges", written)),
                request.withHinges(changed),
                reporting);
    }

    /** Utilization with the splice at a place, infinite where that makes a mechanism. */
    private static double utilization(FramingRequest request, int splice, double at) {
        try {
            Double used =
                    FramingCheck.withoutRemedies(
                                    request.withHinges(with(request.splices(), splice, at)),
                                    new Reporting(UnitSystem.SI, TraceLevel.GOVERNING))
                            .outcome()
                            .utilization();
            return used == null ? Double.POSITIVE_INFINITY : used;
        } catch (FaultsException mechanism) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private static List<Double> with(List<Double> splices, int splice, double at) {
        List<Double> changed = new ArrayList<>(splices);
        changed.set(splice, at);
        return changed;
    }
}
