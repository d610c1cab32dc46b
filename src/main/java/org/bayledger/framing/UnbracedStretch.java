package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a member on which nothing holds it sideways.
 *
 * <pre>
 *   Cb = 12.5 Mmax / (2.5 Mmax + 3 MA + 4 MB + 3 MC)
 * </pre>
 *
 * <p>Aluminum Design Manual 2015, F.4.1, the same as AISC 360-16, F1-1 (from memory): Mmax the
 * greatest moment between two braces, MA, MB, MC those at its quarter points and middle, all
 * absolute. At least 1. It is 1 on a stretch with a free end, where the braces' places are not
 * known, and beside steel, whose ends make the aluminum's moment jump.
 *
 * @param length Lb, m
 * @param factor Cb
 * @param origin how the factor was found
 */
record UnbracedStretch(double length, double factor, String origin) {

    static final String FORMULA = "12.5 Mmax / (2.5 Mmax + 3 MA + 4 MB + 3 MC)";

    /** Share of the member's greatest moment, and of its length, that is rounding. */
    private static final double NONE = 1e-9;

    /** The stretches of the member of a request that bend; none where nothing is said of them. */
    static List<UnbracedStretch> of(FramingRequest request, BeamSolution beam) {
        LateralBuckling lateral = request.section().lateralBuckling();
        if (lateral == null) {
            return List.of();
        }
        List<Double> braces = lateral.bracePoints();
        Double given = lateral.unbracedLength();
        if (braces == null) {
            return given == null
                    ? List.of()
                    : List.of(
                            new UnbracedStretch(
                                    given, 1, "1: the moment is taken as uniform along it"));
        }
        boolean steel = request.section().reinforcement() != null;
        List<UnbracedStretch> stretches = new ArrayList<>();
        int last = braces.size() - 1;
        add(stretches, freeEnd(beam, 0, braces.get(0)));
        for (int i = 0; i < last; i++) {
            add(stretches, between(beam, braces.get(i), braces.get(i + 1), steel));
        }
        add(stretches, freeEnd(beam, braces.get(last), beam.length()));
        return List.copyOf(stretches);
    }

    private static void add(List<UnbracedStretch> stretches, @Nullable UnbracedStretch stretch) {
        if (stretch != null) {
            stretches.add(stretch);
        }
    }

    private static @Nullable UnbracedStretch freeEnd(BeamSolution beam, double from, double to) {
        return bends(beam, from, to)
                ? new UnbracedStretch(to - from, 1, "1: one end is free")
                : null;
    }

    private static @Nullable UnbracedStretch between(
            BeamSolution beam, double from, double given, boolean steel) {
        double to = Math.min(given, beam.length());
        if (!bends(beam, from, to)) {
            return null;
        }
        double length = to - from;
        if (steel) {
            return new UnbracedStretch(length, 1, "1: steel changes the aluminum's share along it");
        }
        double most = Math.abs(beam.greatestMoment(from, to).value());
        double quarters =
                3 * Math.abs(beam.moment(from + length / 4))
                        + 4 * Math.abs(beam.moment(from + length / 2))
                        + 3 * Math.abs(beam.moment(to - length / 4));
        return new UnbracedStretch(length, 12.5 * most / (2.5 * most + quarters), FORMULA);
    }

    private static boolean bends(BeamSolution beam, double from, double to) {
        return to - from > NONE * beam.length()
                && Math.abs(beam.greatestMoment(from, to).value())
                        > NONE * Math.abs(beam.greatestMoment().value());
    }
}
