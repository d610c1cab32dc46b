package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A held edge of a lite: its support may bend by L/175 and by 3/4 in under the design pressure (IBC
 * 2021, 2403.3; ASTM E1300-16 takes edges so held as its condition, both from memory).
 *
 * @param edge which one
 * @param length L, m
 * @param deflection of its support, m; null where it was not given
 */
record HeldEdge(LiteEdge edge, double length, @Nullable Double deflection) {

    private static final double RATIO = 175;

    private static final double MOST = 0.75 * 0.0254; // m

    /** The edges that a request says are held. */
    static List<HeldEdge> of(GlassRequest request) {
        EdgeSupport support = request.edgeSupport();
        List<HeldEdge> held = new ArrayList<>();
        for (LiteEdge edge : LiteEdge.values()) {
            if (request.isHeld(edge)) {
                double length = edge.isHorizontal() ? request.width() : request.height();
                held.add(new HeldEdge(edge, length, support == null ? null : support.of(edge)));
            }
        }
        return List.copyOf(held);
    }

    /** Greatest deflection of its support, m. */
    double limit() {
        return Math.min(length / RATIO, MOST);
    }

    /** Deflection over limit; null where it was not given. */
    @Nullable Double utilization() {
        return deflection == null ? null : (Double) (deflection / limit());
    }

    EdgeResult result() {
        return new EdgeResult(
                edge,
                Quantity.of(Dimension.LENGTH, length),
                Quantity.of(Dimension.LENGTH, limit()),
                deflection == null ? null : Quantity.of(Dimension.LENGTH, deflection),
                utilization());
    }
}
