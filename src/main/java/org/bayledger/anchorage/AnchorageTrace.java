package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums at the joints, written down to be redone by hand. */
final class AnchorageTrace {

    private static final String METAL = "thermal expansion, design manuals (from memory)";

    private AnchorageTrace() {}

    /** The tolerances, where there is more than one of them. */
    static void tolerance(Trace trace, Movement movement) {
        if (movement.fabricationTolerance() != null || movement.structureTolerance() != null) {
            trace.step(
                    "t",
                    "tolerances together",
                    Dimension.LENGTH,
                    movement.tolerance(),
                    movement.toleranceFormula(),
                    "practice of ASTM C1472 (from memory)");
        }
    }

    private static String creep(MovementSum sum, String words) {
        return sum.causes().contains(Cause.SLAB_CREEP) || sum.causes().contains(Cause.COLUMN_CREEP)
                ? words
                : "";
    }

    /** The joints; those that do not govern only where every step is asked for. */
    static void joints(Trace trace, List<JointMovement> movements, List<JointResult> joints) {
        int governing = 0;
        for (int j = 1; j < joints.size(); j++) {
            if (demand(joints.get(j)) > demand(joints.get(governing))) {
                governing = j;
            }
        }
        for (int j = 0; j < joints.size(); j++) {
            if (j != governing && !trace.detailed()) {
                continue;
            }
            String at = " " + (j + 1);
            JointMovement m = movements.get(j);
            MovementSum closing = m.closing();
            MovementSum opening = m.opening();
            step(
                    trace,
                    j == governing,
                    "L" + at,
                    "length of metal that moves into joint" + at,
                    Dimension.DISTANCE,
                    m.freeLength(),
                    "between the dead-load anchors on either side",
                    "geometry");
            step(
                    trace,
                    j == governing,
                    "dT+" + at,
                    "closing from warming",
                    Dimension.LENGTH,
                    closing.of(Cause.THERMAL),
                    "alpha L (Tmax - Tinst)",
                    METAL);
            step(
                    trace,
                    j == governing,
                    "dT-" + at,
                    "opening from cooling",
                    Dimension.LENGTH,
                    opening.of(Cause.THERMAL),
                    "alpha L (Tinst - Tmin)",
                    METAL);
            step(
                    trace,
                    j == governing,
                    "closing" + at,
                    "closing from the installed state",
                    Dimension.LENGTH,
                    closing.total(),
                    "plain sum: dT+ + slab above loaded + column shortening"
                            + creep(closing, " + creep of the slab above and of the columns"),
                    "statics");
            step(
                    trace,
                    j == governing,
                    "opening" + at,
                    "opening from the installed state",
                    Dimension.LENGTH,
                    opening.total(),
                    "plain sum: dT- + slab below loaded"
                            + creep(opening, " + creep of the slab below"),
                    "statics");
            Double required = m.requiredWidth();
            if (required != null) {
                step(
                        trace,
                        j == governing,
                        "W" + at,
                        "required width of joint" + at,
                        Dimension.LENGTH,
                        required,
                        JointWidth.FORMULA,
                        JointWidth.SOURCE);
            }
        }
    }

    /** The room that one slot must give; only where every step is asked for. */
    static void slot(Trace trace, SlotResult slot) {
        if (slot.up() != null && slot.down() != null) {
            String strain = "alpha l dT from " + slot.relativeTo();
            trace.detail(
                            "up " + slot.anchor(),
                            "mullion up past anchor " + slot.anchor(),
                            Dimension.LENGTH,
                            slot.up().si(),
                            strain + " + own slab loaded + columns, if above it, + t",
                            "statics of a piece held at one place")
                    .detail(
                            "down " + slot.anchor(),
                            "mullion down past anchor " + slot.anchor(),
                            Dimension.LENGTH,
                            slot.down().si(),
                            strain + " + its slab loaded + columns, if below it, + t",
                            "statics of a piece held at one place");
        }
    }

    private static double demand(JointResult joint) {
        return joint.utilization() == null
                ? Math.max(joint.closing().si(), joint.opening().si())
                : joint.utilization();
    }

    private static void step(
            Trace trace,
            boolean governing,
            String symbol,
            String meaning,
            Dimension dimension,
            double si,
            String formula,
            String source) {
        if (governing) {
            trace.step(symbol, meaning, dimension, si, formula, source);
        } else {
            trace.detail(symbol, meaning, dimension, si, formula, source);
        }
    }
}
