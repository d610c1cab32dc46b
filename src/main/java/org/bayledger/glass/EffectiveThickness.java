package org.bayledger.glass;

import java.util.List;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.Pane;

/**
 * The thickness of the single sheet that bends, or is stressed, as a laminated pane is.
 *
 * <p>Two plies, after Woelfel and Bennison (ASTM E1300-16, appendix on the effective thickness of
 * laminated glass, from memory), for simply supported edges and uniform load:
 *
 * <pre>
 * hs    = (h1 + h2)/2 + hv
 * hs1   = hs h1/(h1 + h2),  hs2 = hs h2/(h1 + h2)
 * Is    = h1 hs2^2 + h2 hs1^2
 * Gamma = 1 / (1 + 9.6 E Is hv / (G hs^2 a^2))
 * hefw  = cbrt(h1^3 + h2^3 + 12 Gamma Is)
 * hefs1 = sqrt(hefw^3 / (h1 + 2 Gamma hs2)),  hefs2 = sqrt(hefw^3 / (h2 + 2 Gamma hs1))
 * </pre>
 *
 * h1, h2 minimum thicknesses of the plies (m); hv thickness of the interlayer (m); G its shear
 * modulus (Pa); E Young's modulus of glass (Pa); a the shorter side, or the span on two edges (m);
 * Gamma shear transfer, 0 for loose plies, 1 for plies that act as one.
 *
 * <p>Where one ply is much thinner than the other it can be stressed more as part of one piece than
 * loose. The thickness for stress is therefore the least of both plies at Gamma and at 1; a colder
 * interlayer then never turns out to be the worse.
 *
 * <p>More than two plies are taken as loose (Gamma = 0), whatever the interlayer: the least that
 * they can do.
 *
 * @param deflection thickness that bends as the pane does, m
 * @param stress thickness that is stressed as the most stressed ply is, m
 * @param onePiece thickness that bends as the pane would with rigid interlayers, m
 * @param transfer shear transfer Gamma from 0 to 1; 1 for a single sheet
 */
record EffectiveThickness(double deflection, double stress, double onePiece, double transfer) {

    /** Single sheet. */
    static EffectiveThickness monolithic(double minimum) {
        return new EffectiveThickness(minimum, minimum, minimum, 1);
    }

    /**
     * Laminated pane.
     *
     * @param pane a pane with plies
     * @param interlayer its interlayer
     * @param modulus shear modulus G of the interlayer, Pa
     * @param span the shorter side, or the span on two edges, m
     */
    static EffectiveThickness laminated(
            Pane pane, Interlayer interlayer, double modulus, double span) {
        List<Double> plies = pane.minimumThicknesses();
        double onePiece = onePiece(plies, interlayer.thickness());
        if (plies.size() > 2) {
            double cubes = plies.stream().mapToDouble(ply -> ply * ply * ply).sum();
            double thickest = plies.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
            return new EffectiveThickness(
                    Math.cbrt(cubes), Math.sqrt(cubes / thickest), onePiece, 0);
        }
        return twoPlies(plies.get(0), plies.get(1), interlayer.thickness(), modulus, span);
    }

    static EffectiveThickness twoPlies(double h1, double h2, double hv, double g, double a) {
        double hs = (h1 + h2) / 2 + hv;
        double hs1 = hs * h1 / (h1 + h2);
        double hs2 = hs * h2 / (h1 + h2);
        double is = h1 * hs2 * hs2 + h2 * hs1 * hs1;
        double stiffness = g * hs * hs * a * a;
        double gamma = stiffness / (stiffness + 9.6 * GlassModel.ELASTIC_MODULUS * is * hv);
        double cubes = h1 * h1 * h1 + h2 * h2 * h2;
        double bending = cubes + 12 * gamma * is;
        double rigid = cubes + 12 * is;
        double soft = Math.min(bending / (h1 + 2 * gamma * hs2), bending / (h2 + 2 * gamma * hs1));
        double whole = Math.min(rigid / (h1 + 2 * hs2), rigid / (h2 + 2 * hs1));
        return new EffectiveThickness(
                Math.cbrt(bending), Math.sqrt(Math.min(soft, whole)), Math.cbrt(rigid), gamma);
    }

    /** cbrt(sum h^3 + 12 sum h z^2), z from the common centroid to the middle of each ply, m. */
    private static double onePiece(List<Double> plies, double film) {
        double area = 0;
        double moment = 0;
        double at = 0;
        for (double ply : plies) {
            area += ply;
            moment += ply * (at + ply / 2);
            at += ply + film;
        }
        double centroid = moment / area;
        double sum = 0;
        at = 0;
        for (double ply : plies) {
            double z = at + ply / 2 - centroid;
            sum += ply * ply * ply + 12 * ply * z * z;
            at += ply + film;
        }
        return Math.cbrt(sum);
    }
}
