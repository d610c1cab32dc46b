package org.bayledger.framing;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.mechanics.BeamModel;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One member to be checked about one axis. Positions are measured along the member from its start:
 * from the bottom of a vertical, from the left of a horizontal seen from outside.
 *
 * @param axis load that the member is checked for
 * @param supports positions of the anchors or end connections, increasing, m; at least two unless
 *     hinges make up for it
 * @param hinges positions of splices that carry shear but no moment, increasing, m
 * @param length length of the member, m
 * @param tributaryWidth width of wall that the member carries, m; needed under wind
 * @param section the cross-section
 * @param load wind pressures with both signs; under wind only
 * @param lineLoad weight per length besides the member's own mass, N/m; under dead load only
 * @param pointLoads weights that rest on the member, N; under dead load only
 * @param glassEdges stretches along which edges of lites are held; under wind only
 * @param deflectionLimit the caller's own limit for every span and overhang, m; absent: the rule's
 * @param deflectionRule published rule for deflection; absent: IBC
 * @param concurrentBendingStress greatest bending stress from the other axis that acts at the same
 *     time, Pa; added to this axis's own
 * @param tributaryAreas areas of wall whose wind comes onto the member at one place; under wind
 *     only
 */
public record FramingRequest(
        Axis axis,
        @NotEmpty @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE)
                List<Double> supports,
        @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable List<Double> hinges,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100) double length,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                @Nullable Double tributaryWidth,
        Section section,
        @Nullable Load load,
        @Measured(value = Dimension.LINE_LOAD, sign = Sign.NOT_NEGATIVE) @Nullable Double lineLoad,
        @Size(max = 200) @Nullable List<PointLoad> pointLoads,
        @Size(max = 200) @Nullable List<GlassEdge> glassEdges,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE) @Nullable Double deflectionLimit,
        @Nullable DeflectionRule deflectionRule,
        @Measured(value = Dimension.STRESS, sign = Sign.NOT_NEGATIVE)
                @Nullable Double concurrentBendingStress,
        @Size(max = 200) @Nullable List<TributaryArea> tributaryAreas) {

    /** A member with nothing that comes onto it at one place under wind. */
    public FramingRequest(
            Axis axis,
            List<Double> supports,
            @Nullable List<Double> hinges,
            double length,
            @Nullable Double tributaryWidth,
            Section section,
            @Nullable Load load,
            @Nullable Double lineLoad,
            @Nullable List<PointLoad> pointLoads,
            @Nullable List<GlassEdge> glassEdges,
            @Nullable Double deflectionLimit,
            @Nullable DeflectionRule deflectionRule,
            @Nullable Double concurrentBendingStress) {
        this(
                axis,
                supports,
                hinges,
                length,
                tributaryWidth,
                section,
                load,
                lineLoad,
                pointLoads,
                glassEdges,
                deflectionLimit,
                deflectionRule,
                concurrentBendingStress,
                null);
    }

    public FramingRequest {
        supports = List.copyOf(supports);
        Faults faults = new Faults();
        if (axis == Axis.WIND) {
            faults.require(
                    tributaryWidth != null,
                    "/tributaryWidth",
                    "is needed under wind: the width of wall that the member carries");
            faults.require(
                    lineLoad == null, "/lineLoad", "belongs to axis DEAD; wind comes in load");
            faults.require(
                    pointLoads == null, "/pointLoads", "belongs to axis DEAD; wind comes in load");
        } else {
            faults.require(
                    load == null, "/load", "belongs to axis WIND; give lineLoad, pointLoads");
            faults.require(glassEdges == null, "/glassEdges", "belongs to axis WIND");
            faults.require(tributaryAreas == null, "/tributaryAreas", "belong to axis WIND");
        }
        for (int i = 0; tributaryAreas != null && i < tributaryAreas.size(); i++) {
            faults.require(
                    tributaryAreas.get(i).at() <= length * (1 + 1e-9),
                    "/tributaryAreas/" + i + "/at",
                    "lies beyond the end of the member");
        }
        for (int i = 0; pointLoads != null && i < pointLoads.size(); i++) {
            faults.require(
                    pointLoads.get(i).at() <= length,
                    "/pointLoads/" + i + "/at",
                    "lies beyond the end of the member");
        }
        for (int i = 0; glassEdges != null && i < glassEdges.size(); i++) {
            faults.require(
                    glassEdges.get(i).to() <= length * (1 + 1e-9),
                    "/glassEdges/" + i + "/to",
                    "lies beyond the end of the member");
        }
        try {
            BeamModel.uniform(length, supports, hinges == null ? List.of() : hinges, 1, List.of());
        } catch (IllegalArgumentException refused) {
            String reason = String.valueOf(refused.getMessage());
            faults.outOfRange(reason.contains("hinge") ? "/hinges" : "/supports", reason);
        }
        faults.throwIfAny();
    }

    /** Splices, none where none were given. */
    List<Double> splices() {
        return hinges == null ? List.of() : hinges;
    }

    /** The rule in force. */
    DeflectionRule rule() {
        return deflectionRule == null ? DeflectionRule.IBC : deflectionRule;
    }

    /** The same member with wind that comes onto it at some places. */
    public FramingRequest withTributaryAreas(List<TributaryArea> areas) {
        return new FramingRequest(
                axis,
                supports,
                hinges,
                length,
                tributaryWidth,
                section,
                load,
                lineLoad,
                pointLoads,
                glassEdges,
                deflectionLimit,
                deflectionRule,
                concurrentBendingStress,
                areas);
    }

    FramingRequest withSection(Section changed) {
        return with(changed, tributaryWidth, supports);
    }

    FramingRequest withTributaryWidth(double changed) {
        return with(section, changed, supports);
    }

    FramingRequest withSupports(List<Double> changed) {
        return with(section, tributaryWidth, changed);
    }

    private FramingRequest with(
            Section newSection, @Nullable Double newWidth, List<Double> newSupports) {
        return new FramingRequest(
                axis,
                newSupports,
                hinges,
                length,
                newWidth,
                newSection,
                load,
                lineLoad,
                pointLoads,
                glassEdges,
                deflectionLimit,
                deflectionRule,
                concurrentBendingStress,
                tributaryAreas);
    }
}
