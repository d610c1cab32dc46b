package org.bayledger.glazing;

import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;

/**
 * The glass of a lite: one pane, or two or three with sealed cavities between them.
 *
 * @param panes the panes, outermost first
 * @param cavities the cavities between them, outermost first; one fewer than the panes, absent or
 *     empty for a single pane
 */
public record GlassBuildUp(
        @Size(min = 1, max = 3) List<Pane> panes, @Size(max = 2) @Nullable List<Cavity> cavities) {

    /** Refuses a number of cavities that does not fit the panes. */
    public GlassBuildUp {
        panes = List.copyOf(panes);
        cavities = cavities == null ? List.of() : List.copyOf(cavities);
        if (panes.isEmpty() || panes.size() > 3) {
            throw FaultsException.outOfRange("/panes", "must hold one, two or three panes");
        }
        if (cavities.size() != panes.size() - 1) {
            throw FaultsException.outOfRange(
                    "/cavities",
                    "must be one fewer than the panes: %d for %d pane%s, not %d"
                            .formatted(
                                    panes.size() - 1,
                                    panes.size(),
                                    panes.size() == 1 ? "" : "s",
                                    cavities.size()));
        }
    }

    /** One pane alone. */
    public static GlassBuildUp single(Pane pane) {
        return new GlassBuildUp(List.of(pane), List.of());
    }

    /** Whether there is a sealed cavity. */
    public boolean isInsulating() {
        return panes.size() > 1;
    }

    /** Mass per area, from nominal thicknesses, interlayers included, spacers not, kg/m2. */
    public double areaMass() {
        double mass = 0;
        for (Pane pane : panes) {
            mass += pane.areaMass();
        }
        return mass;
    }

    /** Nominal thickness from outer face to inner face, cavities included, m. */
    public double thickness() {
        double glass = panes.stream().mapToDouble(Pane::thickness).sum();
        double spaces = cavities == null ? 0 : cavities.stream().mapToDouble(Cavity::width).sum();
        return glass + spaces;
    }

    /** The build-up with another pane in one place. */
    public GlassBuildUp withPane(int index, Pane pane) {
        List<Pane> changed = new ArrayList<>(panes);
        changed.set(index, pane);
        return new GlassBuildUp(changed, cavities);
    }
}
