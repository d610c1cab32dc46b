package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Forces on one anchor against what the caller allows it, wind and weight each for itself. */
final class AnchorForces {

    private AnchorForces() {}

    /** Whether anything was given about its strength. */
    static boolean isGiven(Anchor anchor) {
        return wind(anchor) != null
                || anchor.deadLoadReaction() != null
                || anchor.allowableWindForce() != null
                || anchor.allowableDeadLoadForce() != null
                || anchor.bracket() != null;
    }

    /** The greater wind reaction of the signs given, absolute, N, or null where none was. */
    static @Nullable Double wind(Anchor anchor) {
        Double positive = anchor.windReactionPositive();
        Double negative = anchor.windReactionNegative();
        if (positive == null) {
            return negative == null ? null : (Double) Math.abs(negative);
        }
        return negative == null
                ? (Double) Math.abs(positive)
                : (Double) Math.max(Math.abs(positive), Math.abs(negative));
    }

    /**
     * What the anchor carries against what it may.
     *
     * @param pointer to the anchor in the request
     * @param findings receives what is missing or exceeded
     */
    static AnchorForceResult of(
            Anchor anchor,
            String pointer,
            Reporting reporting,
            List<Finding> findings,
            Trace trace) {
        int before = findings.size();
        Double wind = wind(anchor);
        if (wind != null
                && (anchor.windReactionPositive() == null
                        || anchor.windReactionNegative() == null)) {
            boolean positive = anchor.windReactionPositive() == null;
            findings.add(
                    Finding.action(
                            "WIND_REACTION_SIGN_NOT_GIVEN",
                            pointer
                                    + (positive
                                            ? "/windReactionPositive"
                                            : "/windReactionNegative"),
                            "The reaction of anchor "
                                    + anchor.id()
                                    + " was given under one sign of the wind only."));
        }
        Double windUtilization =
                ratio(
                        wind,
                        anchor.allowableWindForce(),
                        findings,
                        anchor,
                        pointer + "/allowableWindForce",
                        "wind");
        Double deadUtilization =
                ratio(
                        anchor.isFixed() ? anchor.deadLoadReaction() : null,
                        anchor.isFixed() ? anchor.allowableDeadLoadForce() : null,
                        findings,
                        anchor,
                        pointer + "/allowableDeadLoadForce",
                        "dead load");
        BracketResult bracket = BracketStatics.of(anchor, pointer, reporting, findings, trace);
        Verdict verdict = findings.size() > before ? Verdict.UNDETERMINED : Verdict.SATISFIED;
        if (bracket != null) {
            verdict = verdict.and(bracket.verdict());
        }
        if (windUtilization != null && windUtilization > 1) {
            verdict = Verdict.EXCEEDED;
            findings.add(exceeded(anchor, pointer, "wind", windUtilization, reporting));
        }
        if (deadUtilization != null && deadUtilization > 1) {
            verdict = Verdict.EXCEEDED;
            findings.add(exceeded(anchor, pointer, "dead load", deadUtilization, reporting));
        }
        return new AnchorForceResult(
                anchor.id(),
                wind == null ? null : Quantity.of(Dimension.FORCE, wind),
                windUtilization,
                deadUtilization,
                bracket,
                verdict);
    }

    private static @Nullable Double ratio(
            @Nullable Double reaction,
            @Nullable Double allowable,
            List<Finding> findings,
            Anchor anchor,
            String pointer,
            String load) {
        if (reaction != null && allowable != null) {
            return reaction / allowable;
        }
        if (reaction != null) {
            findings.add(
                    Finding.action(
                            "ALLOWABLE_ANCHOR_FORCE_NOT_GIVEN",
                            pointer,
                            "Anchor "
                                    + anchor.id()
                                    + " has a reaction from "
                                    + load
                                    + " and no allowable force to hold it against."));
        } else if (allowable != null) {
            findings.add(
                    Finding.action(
                            "ANCHOR_REACTION_NOT_GIVEN",
                            pointer,
                            "Anchor "
                                    + anchor.id()
                                    + " has an allowable force for "
                                    + load
                                    + " and no reaction to hold against it."));
        }
        return null;
    }

    private static Finding exceeded(
            Anchor anchor, String pointer, String load, double utilization, Reporting reporting) {
        return Finding.action(
                "ANCHOR_FORCE_EXCEEDED",
                pointer,
                "Anchor "
                        + anchor.id()
                        + " carries "
                        + reporting.text(Dimension.NONE, utilization)
                        + " times the "
                        + load
                        + " that it may.");
    }
}
