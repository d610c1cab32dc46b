package org.bayledger.glass;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bayledger.check.Trace;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.NominalThickness;
import org.bayledger.quantity.Dimension;

/** The sums of one pane of the lite, in the order in which a person would redo them. */
final class PaneTrace {

    private static final String TABLE =
            "ASTM E1300-16, nominal and minimum thicknesses (from memory)";

    private PaneTrace() {}

    /** Writes the steps of the pane of an index, 0 for the outermost. */
    static void write(GlassRequest request, LiteSums sums, int index, Steps steps) {
        PaneSums pane = sums.panes().get(index);
        if (pane.pane().isLaminated()) {
            steps.add(
                    "t",
                    "minimum thickness of the glass, all plies",
                    Dimension.LENGTH,
                    pane.glass(),
                    "sum of its plies",
                    TABLE);
            laminate(pane, GlassModel.of(request).bendingLength(), steps);
        } else {
            steps.share(
                    "t",
                    "minimum thickness of the glass",
                    Dimension.LENGTH,
                    pane.glass(),
                    nominal(pane.pane().nominalThicknesses().get(0)),
                    TABLE);
        }
        boolean four = request.supportedEdges() == SupportedEdges.FOUR;
        steps.add(
                "NFL",
                "non-factored load: annealed, alone, 3 s, 8 per 1000",
                Dimension.PRESSURE,
                pane.nonFactoredLoad(),
                four
                        ? "p at which k (3/60)^(7/16) Integral (c sigma)^7 dA = -ln(1 - 0.008);"
                                + " plate on four edges, large deflection, k = 2.86e-53 N^-7 m^12"
                        : "p at which k (3/60)^(7/16) Integral (c sigma)^7 dA = -ln(1 - 0.008);"
                                + " strip between two edges, k = 2.86e-53 N^-7 m^12",
                "ASTM E1300-16, glass failure prediction model (from memory)");
        if (pane.probabilityFactor() != 1) {
            steps.add(
                    "PF",
                    "resistance at the probability asked for over that at 8 per 1000",
                    Dimension.NONE,
                    pane.probabilityFactor(),
                    "the same with the probability asked for, over NFL",
                    "ASTM E1300-16, glass failure prediction model (from memory)");
        }
        steps.add(
                "GTF",
                "glass type factor",
                Dimension.NONE,
                pane.glassTypeFactor(),
                pane.pane().heatTreatment().words()
                        + ", "
                        + switch (sums.panes().size()) {
                            case 1 -> "single lite";
                            case 2 -> "double unit";
                            default -> "triple unit";
                        },
                "ASTM E1300-16, glass type factors and load durations (from memory)");
        steps.add(
                "LS",
                "load share factor",
                Dimension.NONE,
                pane.loadShareFactor(),
                "(sum of t^3) / t^3"
                        + (sums.panes().stream().anyMatch(each -> each.pane().isLaminated())
                                ? ", t of a laminated pane hefw, then hrigid; the lesser"
                                : ""),
                GlassTrace.EDITION);
        boolean brief = LoadDuration.isShort(sums.duration());
        if (sums.panes().size() > 1
                && sums.panes().stream().anyMatch(each -> each.pane().isLaminated())) {
            steps.add(
                    "LSx",
                    "cross-check of LS, not used: the practice's tables",
                    Dimension.NONE,
                    PaneSums.tabulatedShare(sums.panes(), index, brief),
                    brief
                            ? "(sum of t^3) / t^3, t of a laminated pane the sum of its plies"
                            : "(sum of t^3) / t^3, t^3 of a laminated pane the sum of its plies'",
                    "ASTM E1300-16, load share factors (from memory)");
        }
        steps.add(
                "LR",
                "pressure on the lite at which this pane reaches its resistance",
                Dimension.PRESSURE,
                pane.loadResistance(),
                pane.probabilityFactor() == 1 ? "NFL x GTF x LS" : "NFL x PF x GTF x LS",
                GlassTrace.EDITION);
        Double deflection = sums.deflections().get(index);
        if (deflection != null) {
            steps.add(
                    "w",
                    "deflection of the middle under its share p/LS",
                    Dimension.LENGTH,
                    deflection,
                    four
                            ? "plate on four edges under p/LS, with the thickness for deflection"
                            : "5 (p/LS) s^4 / (32 E t^3), with the thickness for deflection",
                    four
                            ? "large-deflection plate theory (von Karman)"
                            : "beam theory, strip between two edges");
            Double formula =
                    four
                            ? DeflectionPolynomial.deflection(
                                    GlassModel.of(request),
                                    pane.thickness().deflection(),
                                    pane.share(sums.load().greatest()))
                            : null;
            if (formula != null) {
                steps.add(
                        "wx",
                        "cross-check of w, not used: the practice's approximate formula",
                        Dimension.LENGTH,
                        formula,
                        "t exp(r0 + r1 x + r2 x^2), x = ln(ln(q (a b)^2 / (E t^4))); within 2 % of"
                                + " the plate to an aspect ratio of 1.7, 9 % to 5",
                        "ASTM E1300-16, approximate maximum lateral deflection (from memory)");
            }
        }
    }

    private static String nominal(double thickness) {
        NominalThickness known = NominalThickness.of(thickness);
        return "table, nominal " + known.text(known.isCustomary(thickness));
    }

    private static void laminate(PaneSums pane, double span, Steps steps) {
        Double modulus = pane.modulus();
        List<Double> plies = pane.pane().minimumThicknesses();
        for (int i = 0; i < plies.size(); i++) {
            String meaning = "minimum thickness of ply " + (i + 1);
            steps.add(
                    "h" + (i + 1) + ".",
                    meaning,
                    Dimension.LENGTH,
                    plies.get(i),
                    nominal(pane.pane().nominalThicknesses().get(i)),
                    TABLE);
        }
        Interlayer interlayer = pane.pane().interlayer();
        if (interlayer != null) {
            steps.add(
                    "hv",
                    "thickness of the interlayer",
                    Dimension.LENGTH,
                    interlayer.thickness(),
                    "input",
                    "input");
        }
        steps.add(
                "a",
                "shorter side, or span on two edges",
                Dimension.LENGTH,
                span,
                "input",
                "geometry");
        if (modulus != null && plies.size() == 2) {
            boolean given = interlayer != null && interlayer.shearModulus() != null;
            steps.add(
                    "G",
                    "shear modulus of the interlayer",
                    Dimension.STRESS,
                    modulus,
                    given
                            ? "input"
                            : "table; between its points 1/G linear in the temperature and in the"
                                    + " logarithm of the duration",
                    given ? "input" : "published interlayer data (from memory)");
        }
        String source = "ASTM E1300-16, effective thickness of laminated glass (from memory)";
        boolean two = plies.size() == 2;
        steps.add(
                "Gamma",
                "shear transfer between the plies",
                Dimension.NONE,
                pane.thickness().transfer(),
                two
                        ? "1 / (1 + 9.6 E Is hv / (G hs^2 a^2)), E 71.7 GPa, hs = (h1 + h2)/2 + hv,"
                                + " Is = hs^2 h1 h2 / (h1 + h2)"
                        : "0: more than two plies are taken as loose",
                source);
        steps.share(
                "hefw",
                "effective thickness for deflection",
                Dimension.LENGTH,
                pane.thickness().deflection(),
                two ? "cbrt(h1^3 + h2^3 + 12 Gamma Is)" : "cbrt(sum h^3)",
                source);
        steps.add(
                "hefs",
                "effective thickness for stress, least of the plies",
                Dimension.LENGTH,
                pane.thickness().stress(),
                two
                        ? "least of sqrt(hefw^3 / (h1 + 2 Gamma hs h2 / (h1 + h2))), the same with"
                                + " h1 and h2 exchanged, and both at Gamma 1"
                        : "sqrt(sum h^3 / h), h the thickest ply",
                source);
        steps.share(
                "hrigid",
                "thickness for deflection with a rigid interlayer, for load sharing",
                Dimension.LENGTH,
                pane.thickness().onePiece(),
                two
                        ? "cbrt(h1^3 + h2^3 + 12 Is)"
                        : "cbrt(sum h^3 + 12 sum h z^2), z from the common centroid to each ply",
                source);
    }

    /**
     * Writes the steps of one pane: those of the governing pane always, and of every pane that
     * shares the load the thicknesses by which it does.
     */
    record Steps(Trace trace, int pane, boolean governs, boolean shares) {

        /** Symbols and meanings with the number of their pane: few, for ten thousand lites. */
        private static final List<Map<String, String>> OF_PANES =
                List.of(
                        new ConcurrentHashMap<>(),
                        new ConcurrentHashMap<>(),
                        new ConcurrentHashMap<>());

        void share(
                String symbol,
                String meaning,
                Dimension dimension,
                double si,
                String formula,
                String source) {
            new Steps(trace, pane, shares, shares)
                    .add(symbol, meaning, dimension, si, formula, source);
        }

        void add(
                String symbol,
                String meaning,
                Dimension dimension,
                double si,
                String formula,
                String source) {
            if (governs || trace.detailed()) {
                Map<String, String> words = OF_PANES.get(pane - 1);
                trace.step(
                        words.computeIfAbsent(symbol, text -> text + pane),
                        words.computeIfAbsent(meaning, text -> text + " (pane " + pane + ")"),
                        dimension,
                        si,
                        formula,
                        source);
            }
        }
    }
}
