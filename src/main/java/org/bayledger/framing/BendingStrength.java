package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.FramingResult.AllowableStress;
import org.bayledger.framing.FramingResult.LimitState;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Allowable bending stresses of a section about one axis; the least counts. */
final class BendingStrength {

    private static final String MANUAL = "Aluminum Design Manual 2015, ";

    private BendingStrength() {}

    /**
     * The allowable stresses of every limit state that can be checked, the least first; none where
     * neither a stress nor an alloy was given.
     *
     * @param wind whether the section bends under wind, where buckling counts
     * @param modulus section modulus about that axis, m3, or null where it is not known
     * @param stretches stretches on which nothing holds the member sideways
     * @param trace receives the steps
     * @param unchecked receives what is missing for buckling
     */
    static List<AllowableStress> of(
            Section section,
            boolean wind,
            @Nullable Double modulus,
            List<UnbracedStretch> stretches,
            Trace trace,
            List<Finding> unchecked) {
        List<AllowableStress> found = new ArrayList<>();
        Alloy alloy = section.alloy();
        if (section.allowableBendingStress() != null) {
            found.add(AllowableStress.of(LimitState.GIVEN, section.allowableBendingStress()));
        }
        if (alloy != null) {
            found.add(AllowableStress.of(LimitState.YIELDING, alloy.allowableYield()));
            found.add(AllowableStress.of(LimitState.RUPTURE, alloy.allowableRupture()));
        }
        if (wind) {
            found.addAll(BucklingStrength.of(section, modulus, stretches, trace, unchecked));
        }
        found.sort(Comparator.comparingDouble(allowable -> allowable.stress().si()));
        if (alloy != null) {
            for (AllowableStress allowable : found) {
                trace.detail(
                        "F," + subscript(allowable.limitState()),
                        "allowable bending stress for " + words(allowable.limitState()),
                        Dimension.STRESS,
                        allowable.stress().si(),
                        formula(allowable.limitState()),
                        source(allowable.limitState()));
            }
        }
        return found;
    }

    /**
     * The least allowable stress under wind, Pa, that the section would have with another section
     * modulus.
     *
     * @param modulus m3
     */
    static double least(Section section, double modulus, List<UnbracedStretch> stretches) {
        return of(
                        section,
                        true,
                        modulus,
                        stretches,
                        new Trace(TraceLevel.GOVERNING),
                        new ArrayList<>())
                .get(0)
                .stress()
                .si();
    }

    /** How the governing one was found. */
    static String origin(Section section, LimitState governing) {
        return section.alloy() == null
                ? "input; no one-third increase for wind"
                : "the least, for "
                        + words(governing)
                        + " of "
                        + section.alloy().title()
                        + "; no one-third increase for wind";
    }

    static String source(LimitState state) {
        return switch (state) {
            case GIVEN -> "input";
            case YIELDING, RUPTURE -> MANUAL + "F.2, table A.3.4 (from memory)";
            case LOCAL_BUCKLING -> MANUAL + "B.5.4, B.5.5, table B.4.2 (from memory)";
            case LATERAL_TORSIONAL_BUCKLING -> MANUAL + "F.4 (from memory)";
        };
    }

    static String words(LimitState state) {
        return switch (state) {
            case GIVEN -> "what the request gives";
            case YIELDING -> "yielding";
            case RUPTURE -> "rupture";
            case LOCAL_BUCKLING -> "local buckling";
            case LATERAL_TORSIONAL_BUCKLING -> "lateral-torsional buckling";
        };
    }

    private static String subscript(LimitState state) {
        return switch (state) {
            case GIVEN -> "given";
            case YIELDING -> "y";
            case RUPTURE -> "u";
            case LOCAL_BUCKLING -> "lb";
            case LATERAL_TORSIONAL_BUCKLING -> "ltb";
        };
    }

    private static String formula(LimitState state) {
        return switch (state) {
            case GIVEN -> "input";
            case YIELDING -> "Fy / 1.65";
            case RUPTURE -> "Ftu / (kt 1.95)";
            case LOCAL_BUCKLING ->
                    "least strength of the walls / 1.65; b/t against B - D k b/t and what remains"
                            + " after buckling";
            case LATERAL_TORSIONAL_BUCKLING ->
                    "(Fy (1 - lambda/Cc) + pi2 E lambda / Cc3) / 1.65, beyond Cc pi2 E / (1.65"
                            + " lambda2)";
        };
    }
}
