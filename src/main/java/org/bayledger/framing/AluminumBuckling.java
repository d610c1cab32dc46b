package org.bayledger.framing;

import static org.bayledger.quantity.Constants.PSI;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.framing.FramingResult.AllowableStress;
import org.bayledger.framing.FramingResult.LimitState;
import org.jspecify.annotations.Nullable;

/**
 * Buckling strength of extruded aluminum in bending, tempers T5 to T9, unwelded (Aluminum Design
 * Manual 2015, table B.4.2, B.5.4, B.5.5, F.4; from memory). Stresses in Pa. Nominal strengths are
 * divided by 1.65. Yielding is taken on the elastic section modulus, where the manual allows up to
 * the plastic one: never on the unsafe side.
 */
final class AluminumBuckling {

    /** The stress of 1 ksi, to which the constants of table B.4.2 belong, Pa. */
    private static final double KAPPA = 1000 * PSI;

    private static final double E = Alloy.ELASTIC_MODULUS;

    private final double yield;

    AluminumBuckling(Alloy alloy) {
        this.yield = alloy.yieldStrength();
    }

    /**
     * A buckling line B - D x that meets the elastic curve at C.
     *
     * @param intercept B, Pa
     * @param slope D, Pa
     * @param limit C
     */
    record Line(double intercept, double slope, double limit) {}

    /** Compression of members, in bending too: Bc, Dc, Cc. */
    Line member() {
        double b = yield * (1 + Math.sqrt(yield / (2250 * KAPPA)));
        double d = b / 10 * Math.sqrt(b / E);
        return new Line(b, d, 0.41 * b / d);
    }

    /** Uniform compression of flat walls: Bp, Dp, Cp. */
    Line flatCompression() {
        double b = yield * (1 + Math.cbrt(yield / (1500 * KAPPA)));
        double d = b / 10 * Math.sqrt(b / E);
        return new Line(b, d, 0.41 * b / d);
    }

    /** Bending of flat walls in their own plane: Bbr, Dbr, Cbr. */
    Line flatBending() {
        double b = 1.3 * yield * (1 + Math.cbrt(yield / (340 * KAPPA)));
        double d = b / 20 * Math.sqrt(6 * b / E);
        return new Line(b, d, 2 * b / (3 * d));
    }

    /**
     * Nominal strength of a wall, Pa. Slenderness counts with 1.6 for a wall held at both edges and
     * 5.0 for one held at one edge under uniform compression (B.5.4.2, B.5.4.1), with 0.65 and 3.5
     * in bending (B.5.5.1 for a wall bent about its middle, B.5.5.2 for one whose free edge is
     * compressed).
     */
    double wall(Wall wall) {
        boolean both = wall.supportedEdges() == Wall.SupportedEdges.BOTH;
        double ratio = wall.width() / wall.thickness();
        if (wall.stress() == Wall.Stress.UNIFORM_COMPRESSION) {
            return buckled(flatCompression(), (both ? 1.6 : 5.0) * ratio, 0.35, 2.27);
        }
        Line line = flatBending();
        double slenderness = (both ? 0.65 : 3.5) * ratio;
        if (both) {
            return buckled(line, slenderness, 0.5, 2.04);
        }
        return slenderness < line.limit()
                ? Math.min(yield, line.intercept() - line.slope() * slenderness)
                : Math.min(yield, elastic(slenderness));
    }

    /** With the strength that remains after buckling: k2 sqrt(B E) / slenderness beyond k1 B/D. */
    private double buckled(Line line, double slenderness, double k1, double k2) {
        double inelastic = line.intercept() - line.slope() * slenderness;
        double beyond = k2 * Math.sqrt(line.intercept() * E) / slenderness;
        boolean after = slenderness >= k1 * line.intercept() / line.slope();
        return Math.min(yield, after ? beyond : inelastic);
    }

    private static double elastic(double slenderness) {
        return Math.PI * Math.PI * E / (slenderness * slenderness);
    }

    /**
     * Nominal stress at which a member buckles sideways, Pa (F.4): M,p (1 - lambda/Cc) + pi2 E
     * lambda S / Cc3 below Cc, pi2 E S / lambda2 above, over S, with M,p = Fy S.
     *
     * @param slenderness lambda of F.4.2
     */
    double lateral(double slenderness) {
        double c = member().limit();
        return slenderness < c
                ? yield * (1 - slenderness / c) + Math.PI * Math.PI * E * slenderness / (c * c * c)
                : elastic(slenderness);
    }

    /**
     * lambda = pi sqrt(E S / (Cb M,e)) with Cb = 1 (F.4.2.5); M,e the elastic buckling moment.
     *
     * @param modulus S, m3
     * @param moment M,e, N m
     */
    static double slenderness(double modulus, double moment) {
        return Math.PI * Math.sqrt(E * modulus / moment);
    }

    /**
     * Elastic buckling moment under uniform moment, N m: pi2 E / L2 sqrt(Iy (Cw + 0.038 J L2)), the
     * classical one with G = 3/8 E (F.4.2.1).
     */
    static double elasticMoment(double length, double weakInertia, double torsion, double warping) {
        double square = length * length;
        return Math.PI
                * Math.PI
                * E
                / square
                * Math.sqrt(weakInertia * (warping + 0.038 * torsion * square));
    }

    /**
     * The allowable stresses for buckling of a section, of what was given of it.
     *
     * @param modulus section modulus under wind, m3, or null where it is not known
     * @param unchecked receives what is missing
     */
    static List<AllowableStress> of(
            Section section, @Nullable Double modulus, List<Finding> unchecked) {
        List<AllowableStress> found = new ArrayList<>();
        Alloy alloy = section.alloy();
        boolean covered = Boolean.TRUE.equals(section.bucklingCovered());
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
                                            : "Give walls and lateralBuckling," + " or confirm")
                                    + " with bucklingCovered that the allowable bending stress"
                                    + " covers both for this member as it is braced."));
        }
        if (alloy == null) {
            return found;
        }
        AluminumBuckling buckling = new AluminumBuckling(alloy);
        if (walls != null) {
            double least = walls.stream().mapToDouble(buckling::wall).min().orElseThrow();
            found.add(AllowableStress.of(LimitState.LOCAL_BUCKLING, least / Alloy.OMEGA_YIELD));
        } else if (lateral != null && !covered) {
            unchecked.add(
                    Finding.action(
                            "LOCAL_BUCKLING_NOT_CHECKED",
                            "/section/walls",
                            "Local buckling was not checked: the flat walls of the section were"
                                    + " not given."));
        }
        Double moment = lateral == null ? null : moment(section, lateral);
        if (moment != null && modulus != null) {
            double nominal = buckling.lateral(slenderness(modulus, moment));
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
        } else if ((walls != null || lateral != null) && !covered && moment == null) {
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

    /** ADM F.4.3: an outstanding flange that buckles before the member does weakens it. */
    private boolean interacts(List<Wall> walls, double lateral) {
        return walls.stream()
                .filter(
                        wall ->
                                wall.supportedEdges() == Wall.SupportedEdges.ONE
                                        && wall.stress() == Wall.Stress.UNIFORM_COMPRESSION)
                .anyMatch(wall -> elastic(5.0 * wall.width() / wall.thickness()) < lateral);
    }

    private static @Nullable Double moment(Section section, LateralBuckling lateral) {
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
                : elasticMoment(
                        lateral.unbracedLength(),
                        weak,
                        lateral.torsionConstant(),
                        lateral.warpingConstant());
    }
}
