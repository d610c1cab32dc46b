package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The internal seals of a frame: joints, order, sealant, water test and the price of a missed one.
 *
 * <p>The verdict rests on these things. The head of water at the test pressure, and at what drives
 * water where that is given, must not exceed the height of the sill's end dams. A chamber must keep
 * its limit and weeps must drain their flow, where these are given. Observed joints must not leak
 * too much together, and what they leak must be computed. A joint known to be unsealed must let
 * through neither more water than counts as no leakage nor more air than the whole frame may leak;
 * an illustrative joint counts for nothing. And every kind of joint must have been counted, both
 * signs of wind called out and the end dams' height given: else the answer is UNDETERMINED.
 */
public final class SealsCheck {

    private SealsCheck() {}

    /**
     * Runs the check.
     *
     * @param request the frame
     * @param reporting units of the sentences and extent of the trace
     */
    public static SealsResult run(SealsRequest request, Reporting reporting) {
        SealsResult result = assess(request, reporting, List.of());
        if (result.outcome().verdict() != Verdict.EXCEEDED) {
            return result;
        }
        return assess(request, reporting, SealsRemedies.of(request, result, reporting));
    }

    static SealsResult assess(SealsRequest request, Reporting reporting, List<Remedy> remedies) {
        SealDetails details = request.details();
        Trace trace = new Trace(reporting.trace());
        AllowableLoad load = request.load().allowable(trace);
        JointTally counts = JointCounts.of(request, reporting);
        SealantTakeOff takeOff = SealantTakeOff.of(counts.counts(), details, trace);
        Inspection asked = details.inspection();
        InspectionPlans inspection =
                asked == null ? null : new InspectionPlans(asked, takeOff.joints());
        Double positive = load.positive();
        TestPressure test =
                positive == null
                        ? null
                        : TestPressure.of(positive, details.waterTestOrDefault(), trace);
        UnsealedJoint unsealed =
                UnsealedFlow.of(request, test == null ? null : test.laboratory(), trace);

        WaterAndAirCheck water =
                new WaterAndAirCheck(request, load, test, unsealed, takeOff, trace, reporting);

        Double missed = details.missedJoint() == null ? null : unsealed.utilization();
        Double utilization =
                greater(greater(damUtilization(details, test), missed), water.utilization());
        List<Finding> gaps = new ArrayList<>(load.missingSigns("/load"));
        gaps.addAll(counts.findings());
        if (inspection != null) {
            gaps.addAll(inspection.open());
        }
        if (details.endDamHeight() == null && details.holdsWater()) {
            gaps.add(
                    Finding.action(
                            "END_DAM_HEIGHT_NOT_GIVEN",
                            "/endDamHeight",
                            "The height of the sill's end dams was not given, so that nothing shows"
                                    + " that they hold the head of water at the test pressure."));
        }
        gaps.addAll(water.gaps());
        Verdict verdict =
                (gaps.isEmpty() ? Verdict.SATISFIED : Verdict.UNDETERMINED)
                        .and(Verdict.ofUtilization(utilization == null ? 0 : utilization));
        List<Finding> findings = new ArrayList<>(gaps);
        SealFindings.add(findings, request, test, unsealed, takeOff, reporting);
        SealFindings.plan(findings, details, inspection);
        findings.addAll(water.findings());
        return new SealsResult(
                new Outcome(
                        verdict,
                        utilization,
                        findings,
                        remedies,
                        trace.steps(),
                        Cautions.with(
                                caution(details.systemOrDefault()),
                                "Compatibility and adhesion of the sealant with every surface it"
                                        + " touches are not checked.",
                                "Flows are estimates for a straight, even gap with sharp edges; a real"
                                        + " gap may pass a fraction of them, or up to a third more.")),
                takeOff.joints(),
                counts.notCounted(),
                details.systemOrDefault().step(Obstacle.GLASS),
                Quantity.of(Dimension.VOLUME, takeOff.volume()),
                takeOff.cartridges(),
                test == null ? null : Quantity.of(Dimension.PRESSURE, test.laboratory()),
                test == null ? null : Quantity.of(Dimension.PRESSURE, test.field()),
                test == null ? null : Quantity.of(Dimension.LENGTH, test.head()),
                SealSequence.of(details, counts, reporting),
                takeOff.takeOff(),
                inspection == null ? null : inspection.plan(),
                unsealed,
                water.result());
    }

    private static @Nullable Double greater(@Nullable Double one, @Nullable Double other) {
        return one == null ? other : other == null ? one : (Double) Math.max(one, other);
    }

    private static String caution(WallSystem system) {
        return switch (system) {
            case STICK_BUILT ->
                    "Counts and sequence are those of a stick-built wall with pressure plates; the"
                            + " system's own instructions govern.";
            case UNITIZED ->
                    "Counts and sequence are those of a unitized wall whose units interlock with"
                            + " gaskets; the system's own instructions govern.";
            case WINDOW_WALL ->
                    "Counts and sequence are those of a window wall in receptors; the system's own"
                            + " instructions govern.";
        };
    }

    private static @Nullable Double damUtilization(
            SealDetails details, @Nullable TestPressure test) {
        return test == null || details.endDamHeight() == null || !details.holdsWater()
                ? null
                : (Double) (test.head() / details.endDamHeight());
    }
}
