package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums at the joints, written down to be redone by hand. */
final class AnchorageTrace {

    private static final String METAL = "thermal expansion, design manuals (from memory)";
    private static final String PRACTICE = "practice of ASTM C1193 and C1472 (from memory)";

    private AnchorageTrace() {}

    /** The joints; those that do not govern only where every step is asked for. */
    static void joints(Trace trace, List<JointMovement> movements, List<JointResult> joints) {
        int governing = 0;
        for (int j = 1; j < joints.size(); j++) {
            if (demand(joints.get(j)) > demand(joints.get(governing))) {
                governing = j;
            }
        }
        for (int j = 0; j < joints.size(); j++) {
            String at = " " + (j + 1);
            JointMovement m = movements.get(j);
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
                    m.thermalClosing(),
                    "alpha L (Tmax - Tinst)",
                    METAL);
            step(
                    trace,
                    j == governing,
                    "dT-" + at,
                    "opening from cooling",
                    Dimension.LENGTH,
                    m.thermalOpening(),
                    "alpha L (Tinst - Tmin)",
                    METAL);
            step(
                    trace,
                    j == governing,
                    "closing" + at,
                    "closing from the installed state",
                    Dimension.LENGTH,
                    m.closing(),
                    "plain sum: dT+ + slab above loaded + column shortening",
                    "statics");
            step(
                    trace,
                    j == governing,
                    "opening" + at,
                    "opening from the installed state",
                    Dimension.LENGTH,
                    m.opening(),
                    "plain sum: dT- + slab below loaded",
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
                        "max(max(closing, opening) / S + t, closing + t + m)",
                        PRACTICE);
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
