package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** An observed joint and what it costs, in words. */
final class ObservedWords {

    private final UnsealedJoint unsealed;
    private final @Nullable StormWater storm;
    private final Reporting reporting;

    /**
     * The words for a frame.
     *
     * @param unsealed limits and pressures
     * @param storm pressure and duration of the storm; null where not known
     */
    ObservedWords(UnsealedJoint unsealed, @Nullable StormWater storm, Reporting reporting) {
        this.unsealed = unsealed;
        this.storm = storm;
        this.reporting = reporting;
    }

    /** Where a joint is and what was found. */
    static String name(ObservedJoint joint) {
        List<String> place = new ArrayList<>();
        if (joint.location() != null) {
            place.add(joint.location());
        }
        if (joint.column() != null) {
            place.add("column " + joint.column());
        }
        if (joint.row() != null) {
            place.add("row " + joint.row());
        }
        return joint.type()
                + (place.isEmpty() ? "" : " (" + String.join(", ", place) + ")")
                + " found "
                + joint.condition();
    }

    /**
     * What to say of a joint through which nothing flows or nothing can be computed.
     *
     * @param joint the joint
     * @param length length that is open, m, given or that of its kind; null where not known
     */
    static String withoutFlow(ObservedJoint joint, @Nullable Double length) {
        if (joint.repaired()) {
            return "Repaired over its whole length: nothing passes.";
        }
        String needed =
                joint.gap() != null ? "the length" : length == null ? "gap and length" : "the gap";
        return "What passes can't be computed: give "
                + needed
                + ". Until then nothing shows that the joint is tight.";
    }

    /** What passes, against what may. */
    String consequence(
            @Nullable LeakRange water,
            LeakRange air,
            @Nullable Quantity stormWater,
            Verdict verdict) {
        return "Lets through "
                + (water == null ? "" : water(water, stormWater))
                + "%s of air at %s. "
                        .formatted(
                                reporting.text(Dimension.AIR_RATE, air.governing()),
                                unsealed.airPressure().text(reporting.units()))
                + judged(water != null, verdict);
    }

    private String water(LeakRange water, @Nullable Quantity stormWater) {
        String rate =
                "about %s of water (%s to %s) at the water test pressure"
                        .formatted(
                                reporting.text(Dimension.WATER_RATE, water.governing()),
                                reporting.text(Dimension.WATER_RATE, water.low()),
                                reporting.text(Dimension.WATER_RATE, water.high()));
        return stormWater == null || storm == null
                ? rate + " and "
                : rate
                        + ", %s in a storm of %s h at %s, and "
                                .formatted(
                                        stormWater.text(reporting.units()),
                                        reporting.text(
                                                Dimension.NONE, storm.duration().si() / 3600),
                                        storm.pressure().text(reporting.units()));
    }

    private String judged(boolean waterKnown, Verdict verdict) {
        return switch (verdict) {
            case EXCEEDED ->
                    "That is more than the %s of water that count as no leakage or the %s of air that the whole frame may let through."
                            .formatted(
                                    unsealed.allowedWater().text(reporting.units()),
                                    unsealed.allowedAir().text(reporting.units()));
            case UNDETERMINED ->
                    waterKnown
                            ? "That is within the limits, but nothing shows that the rest of the joint holds."
                            : "The air is within its limit; how much water passes is not known without a positive design pressure.";
            case SATISFIED -> "That is within the limits.";
        };
    }
}
