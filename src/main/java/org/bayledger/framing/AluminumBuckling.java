package org.bayledger.framing;

import static org.bayledger.quantity.Constants.PSI;

import java.util.List;

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
     * What b/t of a wall counts with: 1.6 for a wall held at both edges and 5.0 for one held at one
     * edge under uniform compression (B.5.4.2, B.5.4.1), 0.65 and 3.5 in bending (B.5.5.1 for a
     * wall bent about its middle, B.5.5.2 for one whose free edge is compressed).
     */
    static double edgeFactor(Wall wall) {
        boolean both = wall.supportedEdges() == Wall.SupportedEdges.BOTH;
        if (wall.stress() == Wall.Stress.UNIFORM_COMPRESSION) {
            return both ? 1.6 : 5.0;
        }
        return both ? 0.65 : 3.5;
    }

    /** Slenderness of a wall, k b/t. */
    static double slenderness(Wall wall) {
        return edgeFactor(wall) * wall.width() / wall.thickness();
    }

    /** The buckling line of a wall. */
    Line line(Wall wall) {
        return wall.stress() == Wall.Stress.UNIFORM_COMPRESSION ? flatCompression() : flatBending();
    }

    /** Nominal strength of a wall, Pa. */
    double wall(Wall wall) {
        Line line = line(wall);
        double slenderness = slenderness(wall);
        if (wall.stress() == Wall.Stress.UNIFORM_COMPRESSION) {
            return buckled(line, slenderness, 0.35, 2.27);
        }
        if (wall.supportedEdges() == Wall.SupportedEdges.BOTH) {
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
     * lambda = pi sqrt(E S / (Cb M,e)) (F.4.2.5); M,e the elastic buckling moment.
     *
     * @param modulus S, m3
     * @param moment Cb M,e, N m
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

    /** ADM F.4.3: an outstanding flange that buckles before the member does weakens it. */
    boolean interacts(List<Wall> walls, double lateral) {
        return walls.stream()
                .filter(
                        wall ->
                                wall.supportedEdges() == Wall.SupportedEdges.ONE
                                        && wall.stress() == Wall.Stress.UNIFORM_COMPRESSION)
                .anyMatch(wall -> elastic(slenderness(wall)) < lateral);
    }
}
