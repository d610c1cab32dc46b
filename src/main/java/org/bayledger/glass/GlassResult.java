package org.bayledger.glass;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What the glass check answers.
 *
 * @param outcome verdict, utilization, findings, remedies, trace and cautions
 * @param panes the panes, outermost first
 * @param loadResistance pressure in either direction that the lite resists for the duration at the
 *     breakage probability: the least of its panes
 * @param governingPane the pane that has it, 0 for the outermost
 * @param governingSign direction of the greater design pressure; null where none was called out
 * @param designPressure magnitude of that pressure at the level at which glass is checked; null
 *     likewise
 * @param edges the held edges, each with the deflection of its support up to which the resistance
 *     holds
 * @param weight mass of the lite from nominal thicknesses, interlayers included, spacers not
 * @param area width times height
 * @param biteLeft bite left on the worst edge under the greater design pressure, the lite in the
 *     middle of its opening: at a jamb after the pull-in of that edge, at the head after that of
 *     both horizontal edges, since the sill edge stays on its setting blocks; null where no bite
 *     was given or the deflection is beyond what is tabulated
 * @param sealedUnit what the sealed-cavity model says, beside the practice; null where the request
 *     describes no sealed unit
 * @param aspectRatio longer over shorter side
 */
public record GlassResult(
        @JsonUnwrapped Outcome outcome,
        List<PaneResult> panes,
        Quantity loadResistance,
        int governingPane,
        @Nullable PressureSign governingSign,
        @Nullable Quantity designPressure,
        List<EdgeResult> edges,
        Quantity weight,
        Quantity area,
        @Nullable Quantity biteLeft,
        @Nullable SealedUnitResult sealedUnit,
        double aspectRatio) {

    public GlassResult {
        panes = List.copyOf(panes);
        edges = List.copyOf(edges);
    }
}
