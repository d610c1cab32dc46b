package org.bayledger.review;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.List;
import org.bayledger.anchorage.Anchor;
import org.bayledger.framing.Section;
import org.bayledger.glazing.GlassBuildUp;
import org.jspecify.annotations.Nullable;

/** The weight that a vertical of a bay hands to its dead-load anchor. */
final class VerticalWeight {

    private final ReviewContext context;
    private final Bay bay;

    private VerticalWeight(ReviewContext context, Bay bay) {
        this.context = context;
        this.bay = bay;
    }

    /**
     * Weight that the heaviest vertical of the bay hands to its dead-load anchor, N: half of each
     * lite and horizontal beside it and its own, over the bay's height; null where a glass type or
     * a mass is not known, or where the bay has more than one dead-load anchor.
     */
    static @Nullable Double of(ReviewContext context, Bay bay) {
        return new VerticalWeight(context, bay).find();
    }

    private @Nullable Double find() {
        long fixed =
                bay.anchors() == null
                        ? 0
                        : bay.anchors().stream()
                                .filter(anchor -> anchor.role() == Anchor.Role.DEAD_LOAD)
                                .filter(anchor -> MullionLine.onPiece(bay, anchor))
                                .count();
        Mullion mullion = bay.mullion();
        Horizontal horizontal = bay.horizontal();
        Section upright = context.section(mullion == null ? null : mullion.section());
        Section across = context.section(horizontal == null ? null : horizontal.section());
        MullionLine line = MullionLine.of(bay, "", context.reporting);
        if (fixed != 1
                || upright == null
                || across == null
                || line == null
                || upright.massPerLength() == null
                || across.massPerLength() == null) {
            return null;
        }
        double heaviest = 0;
        for (Layout.Vertical vertical : context.layout.verticals(bay)) {
            double mass =
                    upright.massPerLength() * line.length()
                            + across.massPerLength()
                                    * vertical.tributaryWidth()
                                    * (bay.rows().size() + 1);
            Double right =
                    vertical.number() > bay.columns().size()
                            ? heaviest(context.layout.rightOf(bay), true)
                            : columnMass(bay, vertical.number());
            Double left = leftMass(vertical);
            if (right == null || left == null) {
                return null;
            }
            heaviest = Math.max(heaviest, mass + (left + right) / 2);
        }
        return heaviest * STANDARD_GRAVITY;
    }

    private @Nullable Double leftMass(Layout.Vertical vertical) {
        return vertical.number() > 1
                ? columnMass(bay, vertical.number() - 1)
                : heaviest(context.layout.leftOf(bay), false);
    }

    /**
     * Mass of the heaviest first or last column of some bays, kg, or null where one is not known.
     */
    private @Nullable Double heaviest(List<Bay> neighbours, boolean first) {
        double heaviest = 0;
        for (Bay neighbour : neighbours) {
            Double mass = columnMass(neighbour, first ? 1 : neighbour.columns().size());
            if (mass == null) {
                return null;
            }
            heaviest = Math.max(heaviest, mass);
        }
        return heaviest;
    }

    private @Nullable Double columnMass(Bay of, int column) {
        double mass = 0;
        for (int row = 1; row <= of.rows().size(); row++) {
            GlassBuildUp glass = context.glass(of.glassTypeOf(column, row));
            if (glass == null) {
                return null;
            }
            mass += glass.areaMass() * of.columns().get(column - 1) * of.rows().get(row - 1);
        }
        return mass;
    }
}
