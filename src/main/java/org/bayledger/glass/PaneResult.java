package org.bayledger.glass;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One pane of the lite. Its load resistance is nonFactoredLoad x probabilityFactor x
 * glassTypeFactor x loadShareFactor, and is a pressure on the whole lite.
 *
 * @param minimumThickness least thickness of the glass, all plies together, without interlayers
 * @param deflectionEffectiveThickness thickness of the single sheet that bends as the pane does
 * @param stressEffectiveThickness thickness of the single sheet that is stressed as the pane's most
 *     stressed ply is
 * @param nonFactoredLoad pressure that the pane alone would carry, were it annealed, for 3 s at a
 *     breakage probability of 0.008
 * @param probabilityFactor the same at the probability asked for, over that at 0.008
 * @param glassTypeFactor factor for heat treatment, duration and the other panes
 * @param loadShareFactor whole pressure over the pane's share of it, at least 1
 * @param loadResistance pressure on the lite at which this pane reaches its resistance
 * @param centerDeflection deflection of the middle of the pane under its share of the greater
 *     design pressure, positive in its direction; null where no pressure was called out or the
 *     deflection is beyond what is tabulated
 * @param edgePullIn how far the middle of an edge moves in, in the plane of the glass at mid-depth,
 *     under that share as the pane bends, the greater of its edges'; null likewise
 * @param breakageProbability probability that the pane breaks under its share of the greater design
 *     pressure for its duration, by the failure model; annealed glass only, else null
 */
public record PaneResult(
        Quantity minimumThickness,
        Quantity deflectionEffectiveThickness,
        Quantity stressEffectiveThickness,
        Quantity nonFactoredLoad,
        double probabilityFactor,
        double glassTypeFactor,
        double loadShareFactor,
        Quantity loadResistance,
        @Nullable Quantity centerDeflection,
        @Nullable Quantity edgePullIn,
        @Nullable Double breakageProbability) {}
