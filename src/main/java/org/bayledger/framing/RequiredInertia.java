package org.bayledger.framing;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.quantity.Dimension;

/** The least second moment of area of the aluminum that keeps every deflection limit. */
final class RequiredInertia {

    private final FramingRequest request;
    private final List<BeamLoad> loads;

    RequiredInertia(FramingRequest request, List<BeamLoad> loads) {
        this.request = request;
        this.loads = loads;
    }

    /**
     * That of the aluminum, m4, beside any steel.
     *
     * @param inertia what it has, m4
     * @param ratio greatest ratio of a deflection to its limit with that
     * @param trace receives the step
     */
    double least(double inertia, double ratio, Trace trace) {
        boolean steel = request.axis() == Axis.WIND && request.section().reinforcement() != null;
        double required = steel ? besideSteel(inertia * Math.max(1, ratio)) : inertia * ratio;
        trace.step(
                "I,req",
                "second moment of area that keeps every deflection limit",
                Dimension.SECOND_MOMENT_OF_AREA,
                required,
                steel
                        ? "found by halving, the steel kept"
                        : "I x greatest ratio of deflection to limit",
                steel
                        ? "Euler-Bernoulli beam of stepped stiffness"
                        : "deflection is inversely proportional to I");
        return required;
    }

    /** By halving between a size that does and a ten-thousandth of it. */
    private double besideSteel(double enough) {
        double low = enough * 1e-4;
        double high = enough;
        if (ratio(low) <= 1) {
            return low;
        }
        while (high - low > 1e-9 * high) {
            double middle = (low + high) / 2;
            if (ratio(middle) <= 1) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private double ratio(double inertia) {
        return MemberResponse.greatestRatio(
                request, Beam.solve(MemberLoads.model(request, inertia, loads)));
    }
}
