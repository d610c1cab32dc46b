package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Steel put into a member that fails, no longer than it has to be: about each of several places
 * along the member the least length is found by halving, and the shortest of all counts. More steel
 * stiffens, yet on several spans it also draws moment to where it is; what is offered was checked.
 */
final class SteelRemedy {

    private static final int PLACES = 24;
    private static final int HALVINGS = 12;

    /** Digits of a length: hundredths of a foot or millimetres on any usual member. */
    private static final int DIGITS = 4;

    /**
     * Half of the least length of steel that is offered, m: a shorter piece could not take its
     * share from the aluminum that it lies in (common practice, no source).
     */
    private static final double LEAST_HALF = 0.3;

    private SteelRemedy() {}

    /** With the steel that is available or, where it ends too early, with that inside. */
    static @Nullable Remedy of(FramingRequest request, Reporting reporting) {
        Reinforcement steel =
                request.availableReinforcement() == null
                        ? request.section().reinforcement()
                        : request.availableReinforcement();
        if (request.axis() != Axis.WIND || steel == null) {
            return null;
        }
        double length = request.length();
        double[] best = null;
        for (int i = 1; i < PLACES; i++) {
            double center = length * i / PLACES;
            double most = Math.max(center, length - center);
            double limit = best == null ? most : Math.min(most, (best[1] - best[0]) / 2);
            if (!passes(request, steel, center, limit)) {
                continue;
            }
            double low = Math.min(limit, LEAST_HALF);
            double high = passes(request, steel, center, low) ? low : limit;
            for (int k = 0; k < HALVINGS && high > low; k++) {
                double middle = (low + high) / 2;
                if (passes(request, steel, center, middle)) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            double[] found = {Math.max(0, center - high), Math.min(length, center + high)};
            if (best == null || found[1] - found[0] < best[1] - best[0]) {
                best = found;
            }
        }
        return best == null ? null : remedy(request, steel, best, reporting);
    }

    private static @Nullable Remedy remedy(
            FramingRequest request, Reinforcement steel, double[] stretch, Reporting reporting) {
        double length = request.length();
        Quantity from =
                stretch[0] == 0
                        ? Quantity.of(Dimension.DISTANCE, 0)
                        : Quantity.roundedDown(
                                Dimension.DISTANCE, stretch[0], reporting.units(), DIGITS);
        Quantity up = Quantity.roundedUp(Dimension.DISTANCE, stretch[1], reporting.units(), DIGITS);
        Quantity to = up.si() > length ? Quantity.of(Dimension.DISTANCE, length) : up;
        Reinforcement placed = steel.between(from.si(), to.si());
        boolean whole = from.si() == 0 && to.si() >= length * (1 - 1e-9);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change("/section/reinforcement", placed));
        return FramingRemedies.passing(
                whole
                        ? "Put the steel in over the whole length."
                        : "Put the steel in from "
                                + from.text(reporting.units())
                                + " to "
                                + to.text(reporting.units())
                                + " from the member's start, "
                                + Quantity.of(Dimension.DISTANCE, to.si() - from.si())
                                        .text(reporting.units())
                                + " of it.",
                changes,
                request.withSection(request.section().withReinforcement(placed)),
                reporting);
    }

    private static boolean passes(
            FramingRequest request, Reinforcement steel, double center, double half) {
        double from = Math.max(0, center - half);
        double to = Math.min(request.length(), center + half);
        if (to - from <= 1e-6 * request.length()) {
            return false;
        }
        try {
            Section section = request.section().withReinforcement(steel.between(from, to));
            return FramingCheck.withoutRemedies(
                                    request.withSection(section),
                                    new Reporting(UnitSystem.SI, TraceLevel.GOVERNING))
                            .outcome()
                            .verdict()
                    != Verdict.EXCEEDED;
        } catch (FaultsException beyondTheBeam) {
            return false;
        }
    }
}
