package org.bayledger.anchorage;

import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.QuantityParser;
import org.jspecify.annotations.Nullable;

/** Changes to the anchors themselves: longer slots, stronger anchors, stronger bolts. */
final class AnchorRemedies {

    private final AnchorageChanges changes;
    private final Reporting reporting;

    AnchorRemedies(AnchorageChanges changes, Reporting reporting) {
        this.changes = changes;
        this.reporting = reporting;
    }

    void lengthenSlots(AnchorageMovementResult held) {
        for (SlotResult slot : held.slots()) {
            if (!over(slot.utilization()) || slot.up() == null || slot.down() == null) {
                continue;
            }
            int i = changes.index(slot.anchor());
            Anchor anchor = changes.anchors.get(i);
            Double up = longer(slot.up(), anchor.slotUp(), i, "slotUp", "up at " + anchor.id());
            Double down =
                    longer(slot.down(), anchor.slotDown(), i, "slotDown", "down at " + anchor.id());
            changes.anchors.set(i, anchor.withSlot(up, down));
        }
    }

    private @Nullable Double longer(
            Quantity needed, @Nullable Double given, int i, String name, String where) {
        if (given == null || needed.si() <= given) {
            return given;
        }
        String to = reporting.atLeast(Dimension.LENGTH, needed.si());
        changes.add(pointer(i, name), to, "Give the mullion " + to + " to move " + where);
        return QuantityParser.parse(to, Dimension.LENGTH);
    }

    void strengthenAnchors(AnchorageMovementResult held) {
        for (AnchorForceResult force : held.anchors()) {
            int i = changes.index(force.anchor());
            Anchor anchor = changes.anchors.get(i);
            Double wind = anchor.allowableWindForce();
            Double dead = anchor.allowableDeadLoadForce();
            if (over(force.windUtilization()) && force.windReaction() != null) {
                wind = stronger(force.windReaction().si(), i, "allowableWindForce", "wind");
            }
            if (over(force.deadLoadUtilization()) && anchor.deadLoadReaction() != null) {
                dead = stronger(anchor.deadLoadReaction(), i, "allowableDeadLoadForce", "weight");
            }
            changes.anchors.set(i, anchor.withAllowables(wind, dead));
            strengthenBolts(force.bracket(), i);
        }
    }

    private double stronger(double force, int i, String name, String load) {
        String to = reporting.atLeast(Dimension.FORCE, force);
        changes.add(
                pointer(i, name),
                to,
                "Choose an anchor at "
                        + changes.anchors.get(i).id()
                        + " that may carry "
                        + to
                        + " of "
                        + load);
        return QuantityParser.parse(to, Dimension.FORCE);
    }

    /** Tension and shear of the bolts raised by the same factor, so that their sum comes to 1. */
    private void strengthenBolts(@Nullable BracketResult result, int i) {
        Bracket bracket = changes.anchors.get(i).bracket();
        Double utilization = result == null ? null : result.utilization();
        if (bracket == null
                || utilization == null
                || utilization <= 1
                || bracket.allowableBoltTension() == null
                || bracket.allowableBoltShear() == null) {
            return;
        }
        String tension =
                reporting.atLeast(Dimension.FORCE, bracket.allowableBoltTension() * utilization);
        String shear =
                reporting.atLeast(Dimension.FORCE, bracket.allowableBoltShear() * utilization);
        changes.anchors.set(
                i,
                changes.anchors
                        .get(i)
                        .withBracket(
                                bracket.withAllowables(
                                        QuantityParser.parse(tension, Dimension.FORCE),
                                        QuantityParser.parse(shear, Dimension.FORCE))));
        changes.add(
                pointer(i, "bracket/allowableBoltTension"),
                tension,
                "Choose bolts at "
                        + changes.anchors.get(i).id()
                        + " that may each take "
                        + tension
                        + " in tension and "
                        + shear
                        + " in shear");
        changes.also(pointer(i, "bracket/allowableBoltShear"), shear);
    }

    private static String pointer(int anchor, String name) {
        return "/anchors/" + anchor + "/" + name;
    }

    private static boolean over(@Nullable Double utilization) {
        return utilization != null && utilization > 1;
    }
}
