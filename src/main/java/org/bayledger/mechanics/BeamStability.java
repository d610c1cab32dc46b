package org.bayledger.mechanics;

import java.util.List;

/**
 * Whether supports and hinges hold a beam still, decided from where they stand and not from the
 * size of a pivot.
 *
 * <p>Between hinges a beam is a chain of pieces, each of which, as a rigid body, moves along a
 * straight line; the chain is a mechanism if it can move with all supports at zero. Walking from
 * the start, all that matters of the chain so far is whether the hinge reached is held still, or
 * free to move in one way that sets everything before it. A piece with two places held is held
 * itself; a free hinge needs to be stopped by a later piece; a piece that can move while both its
 * hinges stay still, or that leaves two motions open, can be stopped by nothing that comes after.
 */
final class BeamStability {

    private BeamStability() {}

    /**
     * Refuses a mechanism.
     *
     * @param length length of the beam, m
     * @param onePlace distance below which two places are the same, m
     * @param supports increasing positions, m
     * @param hinges increasing positions inside the beam, m
     * @throws IllegalArgumentException if the beam can move, saying where and why
     */
    static void require(
            double length, double onePlace, List<Double> supports, List<Double> hinges) {
        if (supports.size() < 2) {
            throw new IllegalArgumentException(
                    "a beam needs at least two supports that are not at one place, but has "
                            + supports.size()
                            + (supports.isEmpty()
                                    ? ": nothing holds it"
                                    : ": it would turn about the one at "
                                            + BeamModel.metres(supports.get(0))));
        }
        requireHingesBetweenEndSupports(onePlace, supports, hinges);

        boolean startHeld = false;
        double heldUpTo = 0;
        double start = 0;
        for (int piece = 0; piece <= hinges.size(); piece++) {
            boolean last = piece == hinges.size();
            double end = last ? length : hinges.get(piece);
            int held = startHeld ? 1 : 0;
            boolean onlyItsEnd = false;
            for (double support : supports) {
                boolean atHeldStart = startHeld && Math.abs(support - start) <= onePlace;
                if (support >= start - onePlace && support <= end + onePlace && !atHeldStart) {
                    held++;
                    onlyItsEnd = held == 1 && Math.abs(support - end) <= onePlace;
                }
            }
            if (held == 0 || (held == 1 && (last || onlyItsEnd))) {
                throw mechanism(heldUpTo, end, length, supports, hinges, onePlace);
            }
            startHeld = held >= 2;
            if (startHeld) {
                heldUpTo = end;
            }
            start = end;
        }
    }

    private static void requireHingesBetweenEndSupports(
            double onePlace, List<Double> supports, List<Double> hinges) {
        double first = supports.get(0);
        double last = supports.get(supports.size() - 1);
        for (double hinge : hinges) {
            if (hinge <= first + onePlace || hinge >= last - onePlace) {
                boolean before = hinge <= first + onePlace;
                throw new IllegalArgumentException(
                        "the hinge at "
                                + BeamModel.metres(hinge)
                                + " makes the beam a mechanism: the piece "
                                + (before ? "before" : "beyond")
                                + " it overhangs the "
                                + (before ? "first" : "last")
                                + " support at "
                                + BeamModel.metres(before ? first : last)
                                + " and would swing about the hinge; an overhang cannot be"
                                + " hinged");
            }
        }
    }

    private static IllegalArgumentException mechanism(
            double from,
            double to,
            double length,
            List<Double> supports,
            List<Double> hinges,
            double onePlace) {
        StringBuilder text = new StringBuilder("the beam is a mechanism: between ");
        text.append(BeamModel.metres(from)).append(" and ").append(BeamModel.metres(to));
        text.append(" it can fold at its hinges (");
        String separator = "";
        for (double hinge : hinges) {
            if (hinge >= from - onePlace && hinge <= to + onePlace) {
                text.append(separator).append("at ").append(BeamModel.metres(hinge));
                separator = ", ";
            }
        }
        long within =
                supports.stream().filter(s -> s >= from - onePlace && s <= to + onePlace).count();
        text.append("), and the supports there (")
                .append(within)
                .append(" of them) do not stop it; take out a hinge, move it, or add a support");
        if (from > 0 && to < length) {
            text.append(" in that stretch");
        }
        return new IllegalArgumentException(text.toString());
    }
}
