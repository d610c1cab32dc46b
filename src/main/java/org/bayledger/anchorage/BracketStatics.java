package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Tension and shear of a bracket's bolts, by equilibrium of moments.
 *
 * <pre>
 *   about the edge on which weight and suction turn the bracket:
 *     nt T z = D e + W a
 *   about the opposite edge, the weight not counted where it relieves:
 *     on the face of a slab   nt T u = W (z + u - a)   suction below the bolts (a &lt; z)
 *                             nt T u = W (a - z - u)   pressure above the bracket (a &gt; z + u)
 *     on top of a slab        nt T u = W a             pressure
 *   shear:  on the face  V = D / n;   on top  V = W / n
 *   both:   T/Ta + V/Va &lt;= 1
 * </pre>
 *
 * <p>Statics of a rigid bracket whose bolts in tension stand in one line and share alike; D weight,
 * W the greater of the two wind reactions, taken to act either way, both at allowable-stress level
 * and at the same time; e, z, a, u eccentricity, lever arm, wind lever arm, opposite lever arm; nt
 * bolts in tension, n all. The linear sum is the most severe of the usual rules for bolts (common
 * practice, no source). Prying is the caller's factor on T. Embedment is not in it.
 */
final class BracketStatics {

    private static final String SOURCE = "statics, equilibrium of moments";

    /** Differences below this, m, are rounding between units. */
    private static final double SAME_LEVEL = 1e-6;

    private BracketStatics() {}

    /**
     * What the bolts of an anchor carry, or null where it has no bracket or its forces are not
     * known.
     *
     * @param pointer to the anchor in the request
     * @param findings receives what is missing or exceeded
     */
    static @Nullable BracketResult of(
            Anchor anchor,
            String pointer,
            Reporting reporting,
            List<Finding> findings,
            Trace trace) {
        Bracket bracket = anchor.bracket();
        if (bracket == null) {
            return null;
        }
        Double wind = AnchorForces.wind(anchor);
        Double weight = anchor.isFixed() ? anchor.deadLoadReaction() : (Double) 0.0;
        if (wind == null || weight == null) {
            findings.add(
                    Finding.action(
                            "BRACKET_FORCES_NOT_GIVEN",
                            pointer
                                    + (weight == null
                                            ? "/deadLoadReaction"
                                            : "/windReactionNegative"),
                            "The bolts of the bracket at anchor "
                                    + anchor.id()
                                    + " were not looked at: give its reactions from wind"
                                    + (anchor.isFixed() ? " and weight." : ".")));
            return null;
        }
        int before = findings.size();
        double moment = weight * bracket.eccentricity() + wind * bracket.windLeverArm();
        Double pull = pull(bracket, moment, wind);
        if (pull == null) {
            findings.add(
                    Finding.action(
                            "OPPOSITE_LEVER_ARM_NOT_GIVEN",
                            pointer + "/bracket/oppositeLeverArm",
                            "Wind can turn the bracket at anchor "
                                    + anchor.id()
                                    + " about its opposite edge, and the distance of the bolts from"
                                    + " that edge was not given: their tension is not known."));
        }
        double prying = bracket.pryingFactor() == null ? 1 : bracket.pryingFactor();
        Double tension = pull == null ? null : (Double) (pull * prying);
        boolean face = bracket.mounting() == Bracket.Mounting.FACE_OF_SLAB;
        double shear = (face ? weight : wind) / bracket.boltCount();
        if (tension != null && tension > 0 && bracket.pryingFactor() == null) {
            findings.add(
                    Finding.action(
                            "PRYING_NOT_CHECKED",
                            pointer + "/bracket/pryingFactor",
                            "Prying of the bracket at anchor "
                                    + anchor.id()
                                    + " is not in the tension of its bolts. Give its factor, from"
                                    + " the thickness of the bracket; 1 where it is stiff enough"
                                    + " for none."));
        }
        if (bracket.allowableBoltTension() == null || bracket.allowableBoltShear() == null) {
            findings.add(
                    Finding.action(
                            "ALLOWABLE_BOLT_FORCES_NOT_GIVEN",
                            pointer
                                    + (bracket.allowableBoltTension() == null
                                            ? "/bracket/allowableBoltTension"
                                            : "/bracket/allowableBoltShear"),
                            "The bolts at anchor "
                                    + anchor.id()
                                    + " have no allowable tension and shear to be held against."));
        }
        Verdict verdict = findings.size() > before ? Verdict.UNDETERMINED : Verdict.SATISFIED;
        Double inTension = over(tension, bracket.allowableBoltTension());
        Double inShear = over(shear, bracket.allowableBoltShear());
        BracketResult result =
                new BracketResult(
                        Quantity.of(Dimension.MOMENT, moment),
                        tension == null ? null : Quantity.of(Dimension.FORCE, tension),
                        Quantity.of(Dimension.FORCE, shear),
                        inTension,
                        inShear,
                        inTension == null || inShear == null
                                ? null
                                : (Double) (inTension + inShear),
                        verdict);
        explain(anchor, bracket, result, trace);
        Double utilization = result.utilization();
        if (utilization == null || utilization <= 1) {
            return result;
        }
        findings.add(
                Finding.action(
                        "BRACKET_BOLTS_EXCEEDED",
                        pointer + "/bracket",
                        "The bolts of the bracket at anchor "
                                + anchor.id()
                                + " carry "
                                + reporting.text(Dimension.NONE, utilization)
                                + " times what they may, tension and shear together."));
        return new BracketResult(
                result.overturningMoment(),
                result.boltTension(),
                result.boltShear(),
                inTension,
                inShear,
                result.interaction(),
                Verdict.EXCEEDED);
    }

    /** Greatest tension of one bolt, N, without prying; null where the opposite arm is missing. */
    private static @Nullable Double pull(Bracket bracket, double moment, double wind) {
        double z = bracket.leverArm();
        double a = bracket.windLeverArm();
        Double u = bracket.oppositeLeverArm();
        double pull = moment / z;
        boolean face = bracket.mounting() == Bracket.Mounting.FACE_OF_SLAB;
        if (wind > 0 && (!face || Math.abs(a - z) > SAME_LEVEL)) {
            if (u == null) {
                return null;
            }
            double other = !face ? wind * a : a < z ? wind * (z + u - a) : wind * (a - z - u);
            pull = Math.max(pull, other / u);
        }
        return pull / bracket.tensionBoltCount();
    }

    private static @Nullable Double over(@Nullable Double force, @Nullable Double allowable) {
        return force == null || allowable == null ? null : (Double) (force / allowable);
    }

    private static void explain(Anchor anchor, Bracket bracket, BracketResult result, Trace trace) {
        trace.detail(
                "M " + anchor.id(),
                "moment of weight and suction about the edge of the bracket at " + anchor.id(),
                Dimension.MOMENT,
                result.overturningMoment().si(),
                "D e + W a",
                SOURCE);
        if (result.boltTension() != null) {
            trace.detail(
                    "T " + anchor.id(),
                    "tension of one bolt",
                    Dimension.FORCE,
                    result.boltTension().si(),
                    "M / (nt z), or about the opposite edge where that is more"
                            + (bracket.pryingFactor() == null ? "" : "; times prying factor"),
                    SOURCE);
        }
        trace.detail(
                "V " + anchor.id(),
                "shear of one bolt",
                Dimension.FORCE,
                result.boltShear().si(),
                bracket.mounting() == Bracket.Mounting.FACE_OF_SLAB ? "D / n" : "W / n",
                "statics");
    }

    /** What no answer about a bracket covers. */
    static Finding outside(List<String> anchors) {
        return Finding.note(
                "CONCRETE_EMBEDMENT_NOT_CHECKED",
                "/anchors",
                "Embedment in concrete, edge distances and the slab's edge itself at "
                        + String.join(", ", anchors)
                        + " are not checked here: a licensed engineer has to design them for the"
                        + " bolt forces given.");
    }
}
