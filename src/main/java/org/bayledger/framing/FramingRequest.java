package org.bayledger.framing;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
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
 * @param tributaryWidth width of wall that the member carries along its whole length, m; under wind
 *     needed where neither tributaryStrips nor tributaryLites are given
 * @param section the cross-section
 * @param load wind pressures with both signs; under wind only
 * @param lineLoad weight per length besides the member's own mass, N/m; under dead load only
 * @param pointLoads weights that rest on the member, N; under dead load only
 * @param glassEdges stretches along which edges of lites are held; under wind only
 * @param deflectionLimit the caller's own limit for every span and overhang, m; absent: the rule's
 * @param deflectionRule published rule for deflection; absent: IBC
 * @param concurrentBendingStress greatest bending stress from the other axis that acts at the same
 *     time, Pa; added to this axis's own
 * @param tributaryStrips stretches with widths of wall of their own, added to one another; under
 *     wind only, instead of tributaryWidth
 * @param tributaryLites lites whose wind comes onto the member in two directions; under wind only,
 *     instead of tributaryWidth
 * @param tributaryAreas areas of wall whose wind comes onto the member at one place; under wind
 *     only
 * @param deadLoad weight that bends a horizontal parallel to the wall at the same time, whose
 *     bending stress is added to that of wind at the same place; under wind only, instead of
 *     concurrentBendingStress. Its deflection is a check of axis DEAD.
 * @param availableReinforcement steel that fits into the member and may be put in where it fails;
 *     under wind only
 * @param stations how many places, equally spaced from end to end, to give shear, moment and
 *     deflection at; absent: none
 * @param deflectionLoadFactor share of the strength-level wind W that the deflection of spans and
 *     overhangs is checked under, by the caller's explicit choice; absent: 0.6. It never touches
 *     stresses, reactions and edges of glass. Under 0.6 it is not for members that support glass
 *     (IBC 2021, 1604.3.7). Under wind only, and not with CHARACTERISTIC pressures
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
        @Size(max = 200) @Nullable List<TributaryStrip> tributaryStrips,
        @Size(max = 200) @Nullable List<TributaryLite> tributaryLites,
        @Size(max = 200) @Nullable List<TributaryArea> tributaryAreas,
        @Nullable DeadLoad deadLoad,
        @Nullable Reinforcement availableReinforcement,
        @Min(2) @Max(500) @Nullable Integer stations,
        @Measured(value = Dimension.NONE, sign = Sign.POSITIVE, max = 1)
                @Nullable Double deflectionLoadFactor) {

    public FramingRequest {
        supports = List.copyOf(supports);
        Faults faults = new Faults();
        boolean parts = tributaryStrips != null || tributaryLites != null;
        if (axis == Axis.WIND) {
            faults.require(
                    tributaryWidth != null || parts,
                    "/tributaryWidth",
                    "is needed under wind: the width of wall that the member carries");
            faults.require(
                    tributaryWidth == null || !parts,
                    "/tributaryWidth",
                    "is given besides tributaryStrips or tributaryLites, which would count the same"
                            + " wall twice; give one of them");
            faults.require(
                    deadLoad == null || concurrentBendingStress == null,
                    "/concurrentBendingStress",
                    "is given besides deadLoad, which would count the weight twice; give one of"
                            + " them");
            faults.require(
                    lineLoad == null, "/lineLoad", "belongs to axis DEAD; wind comes in load");
            faults.require(
                    pointLoads == null, "/pointLoads", "belongs to axis DEAD; wind comes in load");
        } else {
            faults.require(
                    load == null, "/load", "belongs to axis WIND; give lineLoad, pointLoads");
            faults.require(glassEdges == null, "/glassEdges", "belongs to axis WIND");
            faults.require(
                    deflectionLoadFactor == null,
                    "/deflectionLoadFactor",
                    "belongs to axis WIND; weight is not reduced");
            faults.require(tributaryStrips == null, "/tributaryStrips", "belong to axis WIND");
            faults.require(tributaryLites == null, "/tributaryLites", "belong to axis WIND");
            faults.require(tributaryAreas == null, "/tributaryAreas", "belong to axis WIND");
            faults.require(
                    deadLoad == null,
                    "/deadLoad",
                    "belongs to axis WIND, to be added to it; give lineLoad, pointLoads");
            faults.require(
                    availableReinforcement == null,
                    "/availableReinforcement",
                    "belongs to axis WIND");
        }
        MemberPlaces places = new MemberPlaces(length, faults);
        places.within(pointLoads, "/pointLoads", "/at", PointLoad::at);
        places.within(glassEdges, "/glassEdges", "/to", GlassEdge::to);
        places.within(tributaryStrips, "/tributaryStrips", "/to", TributaryStrip::to);
        places.within(tributaryLites, "/tributaryLites", "/to", TributaryLite::to);
        places.within(tributaryAreas, "/tributaryAreas", "/at", TributaryArea::at);
        if (deadLoad != null) {
            places.within(deadLoad.pointLoads(), "/deadLoad/pointLoads", "/at", PointLoad::at);
        }
        places.within(section.reinforcement(), "/section/reinforcement");
        places.within(availableReinforcement, "/availableReinforcement");
        places.braced(section.lateralBuckling(), supports);
        faults.require(
                deflectionLoadFactor == null
                        || load == null
                        || load.basis() != LoadBasis.CHARACTERISTIC,
                "/deflectionLoadFactor",
                "is a share of the strength-level wind of ASCE/SEI 7; deflections under"
                        + " CHARACTERISTIC pressures are checked as they are");
        boolean sound = faults.size() == 0;
        places.requireBeam(
                supports,
                hinges == null ? List.of() : hinges,
                section,
                sound ? section.reinforcement() : null,
                sound
                        ? MemberLoads.wind(
                                length,
                                tributaryWidth,
                                tributaryStrips,
                                tributaryLites,
                                tributaryAreas,
                                1)
                        : List.of());
        faults.throwIfAny();
    }

    /** A member that carries one width of wall or weight alone. */
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
            @Nullable DeadLoad deadLoad,
            @Nullable Double deflectionLoadFactor) {
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
                null,
                null,
                null,
                null,
                deadLoad,
                null,
                null,
                deflectionLoadFactor);
    }

    /** Splices, none where none were given. */
    List<Double> splices() {
        return hinges == null ? List.of() : hinges;
    }

    /** The rule in force. */
    DeflectionRule rule() {
        return deflectionRule == null ? DeflectionRule.IBC : deflectionRule;
    }

    /**
     * What deflections under the load at allowable-stress level, 0.6 W, are multiplied by: 1 unless
     * the caller chose another share of W.
     */
    double onDeflection() {
        return deflectionLoadFactor == null
                ? 1
                : deflectionLoadFactor / Load.ALLOWABLE_STRESS_FACTOR;
    }

    /** E I of the member's own section for bending under wind, N m2, without steel inside it. */
    public double rigidity() {
        return section.modulusOfElasticity()
                * SectionProperties.of(section, length, supports, splices()).inertia();
    }

    /**
     * The same member with areas of wall whose wind comes onto it at one place.
     *
     * @param areas the areas, instead of those that it has
     */
    public FramingRequest withTributaryAreas(List<TributaryArea> areas) {
        return with(section, tributaryWidth, supports, hinges, areas, concurrentBendingStress);
    }

    /**
     * The same member with a bending stress from the other axis.
     *
     * @param stress Pa
     */
    public FramingRequest withConcurrentBendingStress(double stress) {
        return with(section, tributaryWidth, supports, hinges, tributaryAreas, stress);
    }

    FramingRequest withSection(Section changed) {
        return with(
                changed, tributaryWidth, supports, hinges, tributaryAreas, concurrentBendingStress);
    }

    FramingRequest withTributaryWidth(double changed) {
        return with(section, changed, supports, hinges, tributaryAreas, concurrentBendingStress);
    }

    FramingRequest withSupports(List<Double> changed) {
        return with(
                section, tributaryWidth, changed, hinges, tributaryAreas, concurrentBendingStress);
    }

    FramingRequest withHinges(List<Double> changed) {
        return with(
                section,
                tributaryWidth,
                supports,
                changed,
                tributaryAreas,
                concurrentBendingStress);
    }

    private FramingRequest with(
            Section newSection,
            @Nullable Double newWidth,
            List<Double> newSupports,
            @Nullable List<Double> newHinges,
            @Nullable List<TributaryArea> newAreas,
            @Nullable Double newConcurrent) {
        return new FramingRequest(
                axis,
                newSupports,
                newHinges,
                length,
                newWidth,
                newSection,
                load,
                lineLoad,
                pointLoads,
                glassEdges,
                deflectionLimit,
                deflectionRule,
                newConcurrent,
                tributaryStrips,
                tributaryLites,
                newAreas,
                deadLoad,
                availableReinforcement,
                stations,
                deflectionLoadFactor);
    }
}
