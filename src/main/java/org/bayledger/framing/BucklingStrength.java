package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.framing.FramingResult.AllowableStress;
import org.bayledger.framing.FramingResult.LimitState;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Allowable bending stresses for buckling of a section under wind, of what was given of it. */
final class BucklingStrength {

    private static final String MANUAL = "Aluminum Design Manual 2015, ";

    private final Section section;
    private final boolean covered;
    private final List<Finding> unchecked;
    private final Trace trace;

    private BucklingStrength(Section section, Trace trace, List<Finding> unchecked) {
        this.section = section;
        this.covered = Boolean.TRUE.equals(section.bucklingCovered());
        this.trace = trace;
        this.unchecked = unchecked;
    }

    /**
     * The allowable stresses.
     *
     * @param modulus section modulus under wind, m3, or null where it is not known
     * @param stretches stretches on which nothing holds the member sideways; the weakest counts for
     *     the whole member
     * @param trace receives the steps
     * @param unchecked receives what is missing
     */
    static List<AllowableStress> of(
            Section section,
            @Nullable Double modulus,
            List<UnbracedStretch> stretches,
            Trace trace,
            List<Finding> unchecked) {
        return new BucklingStrength(section, trace, unchecked).find(modulus, stretches);
    }

    private List<AllowableStress> find(@Nullable Double modulus, List<UnbracedStretch> stretches) {
        Alloy alloy = section.alloy();
        List<Wall> walls = section.walls();
        LateralBuckling lateral = section.lateralBuckling();
        if (walls == null && lateral == null && !covered) {
            unchecked.add(
                    Finding.action(
                            "BUCKLING_NOT_CHECKED",
                            "/section/bucklingCovered",
                            "Local and lateral-torsional buckling were not checked. "
                                    + (alloy == null
                                            ? "Confirm"
                                            : "Give walls and lateralBuckling, or confirm")
                                    + " with bucklingCovered that the allowable bending stress"
                                    + " covers both for this member as it is braced."));
        }
        List<AllowableStress> found = new ArrayList<>();
        if (alloy == null) {
            return found;
        }
        AluminumBuckling buckling = new AluminumBuckling(alloy);
        if (walls != null) {
            double nominal = ofWalls(walls, buckling);
            found.add(AllowableStress.of(LimitState.LOCAL_BUCKLING, nominal / Alloy.OMEGA_YIELD));
        } else if (lateral != null && !covered) {
            unchecked.add(
                    Finding.action(
                            "LOCAL_BUCKLING_NOT_CHECKED",
                            "/section/walls",
                            "Local buckling was not checked: the flat walls of the section were"
                                    + " not given."));
        }
        LateralBuckling known =
                lateral == null || elasticMoment(lateral, 1) == null ? null : lateral;
        if (known != null && modulus != null && !stretches.isEmpty()) {
            double nominal = sideways(known, modulus, stretches, buckling);
            found.add(
                    AllowableStress.of(
                            LimitState.LATERAL_TORSIONAL_BUCKLING, nominal / Alloy.OMEGA_YIELD));
            if (walls != null && buckling.interacts(walls, nominal)) {
                unchecked.add(
                        Finding.action(
                                "BUCKLING_MODES_INTERACT",
                                "/section/walls",
                                "An outstanding wall buckles elastically at a lower stress than the"
                                        + " member does sideways; how both act together was not"
                                        + " checked. Use a thicker wall or have it analysed."));
            }
        } else if ((walls != null || lateral != null) && !covered && known == null) {
            unchecked.add(
                    Finding.action(
                            "LATERAL_TORSIONAL_BUCKLING_NOT_CHECKED",
                            "/section/lateralBuckling",
                            "Lateral-torsional buckling was not checked: it needs the unbraced"
                                    + " length with the weak axis' second moment of area, the"
                                    + " torsion constant and the warping constant, or the elastic"
                                    + " buckling moment. None of these follows from an outline"
                                    + " alone."));
        }
        return found;
    }

    /** Nominal strength of the wall that buckles first, Pa. */
    private double ofWalls(List<Wall> walls, AluminumBuckling buckling) {
        Wall weakest = walls.stream().min(Comparator.comparingDouble(buckling::wall)).orElseThrow();
        int number = walls.indexOf(weakest) + 1;
        AluminumBuckling.Line line = buckling.line(weakest);
        trace.detail(
                        "k b/t",
                        "slenderness of wall " + number + " of those given, the weakest",
                        Dimension.NONE,
                        AluminumBuckling.slenderness(weakest),
                        "k = "
                                + AluminumBuckling.edgeFactor(weakest)
                                + " for its held edges and stress",
                        MANUAL + "B.5.4, B.5.5 (from memory)")
                .detail(
                        "B",
                        "start of its buckling line B - D k b/t",
                        Dimension.STRESS,
                        line.intercept(),
                        "from Fy",
                        MANUAL + "table B.4.2 (from memory)")
                .detail(
                        "D",
                        "slope of that line",
                        Dimension.STRESS,
                        line.slope(),
                        "from B and E",
                        MANUAL + "table B.4.2 (from memory)");
        return buckling.wall(weakest);
    }

    /** Nominal stress at which the weakest stretch buckles sideways, Pa. */
    private double sideways(
            LateralBuckling lateral,
            double modulus,
            List<UnbracedStretch> stretches,
            AluminumBuckling buckling) {
        UnbracedStretch weakest =
                stretches.stream()
                        .max(
                                Comparator.comparingDouble(
                                        each -> slenderness(lateral, modulus, each)))
                        .orElseThrow();
        double slenderness = slenderness(lateral, modulus, weakest);
        Double moment = elasticMoment(lateral, weakest.length());
        String source = MANUAL + "F.4 (from memory)";
        trace.detail(
                        "L,b",
                        stretches.size() > 1
                                ? "length of the unbraced stretch that buckles first, taken for the whole"
                                        + " member"
                                : "unbraced length",
                        Dimension.DISTANCE,
                        weakest.length(),
                        lateral.bracePoints() == null ? "input" : "between bracePoints",
                        "input")
                .detail(
                        "Cb",
                        "factor for the moments along it",
                        Dimension.NONE,
                        weakest.factor(),
                        weakest.origin(),
                        MANUAL + "F.4.1 (from memory)")
                .detail(
                        "M,e",
                        "elastic buckling moment under uniform moment",
                        Dimension.MOMENT,
                        moment == null ? 0 : moment,
                        lateral.elasticBucklingMoment() == null
                                ? "pi2 E / L,b2 sqrt(Iy (Cw + 0.038 J L,b2))"
                                : "input",
                        lateral.elasticBucklingMoment() == null ? source : "input")
                .detail(
                        "lambda",
                        "slenderness for lateral-torsional buckling",
                        Dimension.NONE,
                        slenderness,
                        "pi sqrt(E S / (Cb M,e))",
                        source)
                .detail(
                        "Cc",
                        "slenderness from which it buckles elastically",
                        Dimension.NONE,
                        buckling.member().limit(),
                        "0.41 Bc / Dc",
                        MANUAL + "table B.4.2 (from memory)");
        return buckling.lateral(slenderness);
    }

    private double slenderness(LateralBuckling lateral, double modulus, UnbracedStretch stretch) {
        Double moment = elasticMoment(lateral, stretch.length());
        return moment == null
                ? 0
                : AluminumBuckling.slenderness(modulus, stretch.factor() * moment);
    }

    /** M,e of a length, N m, or null where the section's constants were not given. */
    private @Nullable Double elasticMoment(LateralBuckling lateral, double length) {
        if (lateral.elasticBucklingMoment() != null) {
            return lateral.elasticBucklingMoment();
        }
        Double weak =
                lateral.weakAxisSecondMomentOfArea() == null
                        ? section.deadLoadInertia()
                        : lateral.weakAxisSecondMomentOfArea();
        return weak == null
                        || lateral.torsionConstant() == null
                        || lateral.warpingConstant() == null
                ? null
                : (Double)
                        AluminumBuckling.elasticMoment(
                                length, weak, lateral.torsionConstant(), lateral.warpingConstant());
    }
}
