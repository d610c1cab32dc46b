package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Whether a lite follows the seismic drift of the story without touching its frame.
 *
 * <pre>
 *   Dclear >= 1.25 Ie Dp          Dp = story drift x hp / story height
 * </pre>
 *
 * <p>ASCE/SEI 7-16, 13.5.9 (from memory): Dp is the relative displacement over the height of the
 * lite, so that the drift of the story is prorated, the story being taken to rack evenly. Where Ie
 * or the story height is missing, the demand is the most that it can be: Ie = 1.5, and all of the
 * drift within the lite, which holds for lites no taller than the story. Falling short is not a
 * failure: other exceptions of that clause or a racking test may govern.
 *
 * @param movement drift, story height and lite
 */
record GlassDrift(Movement movement) {

    /** The greatest importance factor there is (ASCE/SEI 7-16 table 1.5-2, from memory). */
    private static final double GREATEST_IMPORTANCE = 1.5;

    private static final String SOURCE = "ASCE/SEI 7-16, 13.5.9 (from memory)";

    /** Dclear, m, or null without the lite. */
    @Nullable Double capacity() {
        return movement.drift() == null ? null : movement.drift().capacity();
    }

    /** 1.25 Ie Dp, m, or the most that it can be; null without the lite or the drift. */
    @Nullable Double demand() {
        DriftClearance lite = movement.drift();
        if (lite == null || movement.interstoryDrift() == null) {
            return null;
        }
        double importance =
                lite.importanceFactor() == null ? GREATEST_IMPORTANCE : lite.importanceFactor();
        double share =
                movement.storyHeight() == null ? 1 : lite.glassHeight() / movement.storyHeight();
        return 1.25 * importance * movement.interstoryDrift() * share;
    }

    /** Whether the demand rests on what was given and not on the most that it can be. */
    boolean isExact() {
        return movement.drift() != null
                && movement.drift().importanceFactor() != null
                && movement.storyHeight() != null
                && movement.interstoryDrift() != null;
    }

    /** Demand over capacity, or null where either is not known. */
    @Nullable Double utilization() {
        Double capacity = capacity();
        Double demand = demand();
        return capacity == null || demand == null ? null : demand / capacity;
    }

    Verdict verdict() {
        Double utilization = utilization();
        return utilization != null && utilization <= 1 ? Verdict.SATISFIED : Verdict.UNDETERMINED;
    }

    List<Finding> findings(Reporting reporting) {
        List<Finding> findings = new ArrayList<>();
        DriftClearance lite = movement.drift();
        if (lite == null) {
            findings.add(
                    Finding.action(
                            "DRIFT_CLEARANCE_NOT_GIVEN",
                            "/drift",
                            "The lite and its clearances were not given, so that it is not known"
                                    + " whether the glass follows the drift of the story."));
        }
        if (movement.interstoryDrift() == null) {
            findings.add(
                    Finding.action(
                            "INTERSTORY_DRIFT_NOT_GIVEN",
                            "/interstoryDrift",
                            "The drift of the story was not given, so that it is not known whether"
                                    + " the glass follows it."));
        }
        Double demand = demand();
        Double capacity = capacity();
        if (lite == null || demand == null || capacity == null) {
            return findings;
        }
        boolean kept = verdict() == Verdict.SATISFIED;
        if (lite.importanceFactor() == null) {
            findings.add(
                    bound(
                            kept,
                            "IMPORTANCE_FACTOR_NOT_GIVEN",
                            "/drift/importanceFactor",
                            "The seismic importance factor was not given",
                            "with the greatest there is, 1.5"));
        }
        if (movement.storyHeight() == null) {
            findings.add(
                    bound(
                            kept,
                            "STORY_HEIGHT_NOT_GIVEN",
                            "/storyHeight",
                            "The height of the story was not given",
                            "with all of the story's drift within the lite's height, the lite being"
                                    + " no taller than the story"));
        } else {
            findings.add(
                    Finding.info(
                            "DRIFT_PRORATED",
                            "/storyHeight",
                            "The drift of the story is prorated to the height of the lite: the"
                                    + " story is taken to rack evenly."));
        }
        if (!kept && isExact()) {
            findings.add(
                    Finding.action(
                            "DRIFT_CAPACITY_SHORT",
                            "/drift",
                            "The glass touches its frame at a drift of "
                                    + reporting.text(Dimension.LENGTH, capacity)
                                    + " and must be free up to "
                                    + reporting.text(Dimension.LENGTH, demand)
                                    + ". Have a licensed professional show that another exception"
                                    + " of ASCE/SEI 7-16, 13.5.9 or a racking test covers it, or"
                                    + " give it more clearance."));
        }
        return findings;
    }

    private static Finding bound(
            boolean kept, String code, String pointer, String missing, String with) {
        return kept
                ? Finding.note(code, pointer, missing + "; the clearance does even " + with + ".")
                : Finding.action(
                        code,
                        pointer,
                        missing
                                + ", and the clearance does not do "
                                + with
                                + ". Give it, so that the drift can be judged.");
    }

    void trace(Trace trace) {
        Double capacity = capacity();
        Double demand = demand();
        if (capacity != null) {
            trace.step(
                    "Dclear",
                    "drift at which the glass touches the frame",
                    Dimension.LENGTH,
                    capacity,
                    "2 c1 (1 + hp c2 / (bp c1))",
                    SOURCE);
        }
        if (demand != null) {
            trace.step(
                    "1.25 Ie Dp",
                    isExact()
                            ? "drift over the lite that must stay below Dclear"
                            : "the most that the drift over the lite can be",
                    Dimension.LENGTH,
                    demand,
                    "1.25 Ie D hp / hstory"
                            + (movement.storyHeight() == null ? ", hp / hstory taken as 1" : "")
                            + (isIeMissing() ? ", Ie taken as 1.5" : ""),
                    SOURCE);
        }
    }

    private boolean isIeMissing() {
        return movement.drift() != null && movement.drift().importanceFactor() == null;
    }
}
