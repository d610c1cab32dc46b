package org.bayledger.glass;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * How far the framing under each held edge of the lite bends across the glass under the design
 * pressure at allowable-stress level: what was computed for it, or the limit to which it is
 * designed. Edges left out are not checked, and a finding names them.
 *
 * @param head deflection along the top edge, m
 * @param sill deflection along the bottom edge, m
 * @param leftJamb deflection along the left edge as seen from outside, m
 * @param rightJamb deflection along the right edge as seen from outside, m
 */
public record EdgeSupport(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double head,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double sill,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double leftJamb,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double rightJamb) {

    /** Deflection along an edge, m; null where it was not given. */
    @Nullable Double of(LiteEdge edge) {
        return switch (edge) {
            case HEAD -> head;
            case SILL -> sill;
            case LEFT_JAMB -> leftJamb;
            case RIGHT_JAMB -> rightJamb;
        };
    }

    /** Pointer to an edge's deflection in the request. */
    static String pointer(LiteEdge edge) {
        return "/edgeSupport/"
                + switch (edge) {
                    case HEAD -> "head";
                    case SILL -> "sill";
                    case LEFT_JAMB -> "leftJamb";
                    case RIGHT_JAMB -> "rightJamb";
                };
    }
}
