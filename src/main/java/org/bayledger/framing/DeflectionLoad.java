package org.bayledger.framing;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The caller's own choice of a wind for deflections: traced, and said every time. */
final class DeflectionLoad {

    private DeflectionLoad() {}

    /**
     * Adds the factor to the trace and what it means to the findings; nothing without one.
     *
     * @return what leaves the verdict open: a member that holds glass is limited under 0.6 W (IBC
     *     2021, 1604.3.7; from memory), whatever Table 1604.3, note f, allows other members
     */
    static List<Finding> explain(FramingRequest request, Trace trace, List<Finding> findings) {
        Double factor = request.deflectionLoadFactor();
        if (factor == null) {
            return List.of();
        }
        trace.step(
                "f,d",
                "share of the strength-level wind for deflections of spans, the caller's choice",
                Dimension.NONE,
                factor,
                "input; 0.6 without one; not for stresses, reactions and edges of glass",
                "IBC 2021 Table 1604.3, note f, and 1604.3.7 (from memory)");
        String share = String.valueOf(Math.round(factor * 1000) / 1000.0);
        findings.add(
                Finding.note(
                        "DEFLECTION_LOAD_CHOSEN",
                        "/deflectionLoadFactor",
                        "By the caller's choice the deflections of spans are those under "
                                + share
                                + " of the strength-level wind instead of 0.6. Stresses, reactions"
                                + " and edges of glass have the full load."));
        if (factor >= Load.ALLOWABLE_STRESS_FACTOR) {
            return List.of();
        }
        if (request.glassEdges() == null || request.glassEdges().isEmpty()) {
            findings.add(
                    Finding.note(
                            "DEFLECTION_LOAD_NOT_FOR_GLASS_FRAMING",
                            "/deflectionLoadFactor",
                            "No glass edges were given. Where the member supports glass, its"
                                    + " deflection is limited under 0.6 of the strength-level wind"
                                    + " (IBC 2021, 1604.3.7): leave the factor out there."));
            return List.of();
        }
        return List.of(
                Finding.action(
                        "DEFLECTION_LOAD_NOT_FOR_GLASS_FRAMING",
                        "/deflectionLoadFactor",
                        "The member supports glass: its deflection is limited under 0.6 of the"
                                + " strength-level wind (IBC 2021, 1604.3.7), and it was looked at"
                                + " under "
                                + share
                                + ". Leave the factor out, or have the authority having"
                                + " jurisdiction agree to it."));
    }
}
