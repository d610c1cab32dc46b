package org.bayledger.seals;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a frame's seals beside its grid and its load. A count that is left out is not
 * taken for zero: give 0 or an empty list to say that there are none.
 *
 * @param drainage how the wall gets rid of water
 * @param bead cross-section of the beads inside the system; its depth is also taken for the way
 *     that water travels through an unsealed joint
 * @param perimeterBead cross-section of the beads at head, jambs and sill and of stack joints; as
 *     bead where absent
 * @param beadLengths length of one joint's bead, by kind; for a nominal profile where absent
 * @param splices heights above the sill at which every vertical is spliced, m
 * @param stackJoints heights above the sill of the stack joints that cross the frame, m; 0 for one
 *     along a lower edge at which the wall goes on, which counts with this frame
 * @param pressurePlateLength stock length of the pressure plates, m
 * @param fastenersPerHorizontalEnd fasteners with heads inside the pocket at each end of a
 *     horizontal; in a unitized wall at each corner of a unit and each end of its inner members
 * @param perimeterFastenerSpacing greatest spacing of fasteners through head, jambs and sill into
 *     the building with heads inside the pocket, m
 * @param jointCovers covers over joints of this frame, from the shop drawings
 * @param anchorPenetrations anchors of this frame that pierce the line of the seals
 * @param continuousEdges edges at which the wall goes on, without a perimeter joint; the vertical
 *     at a continuous right edge and the horizontal at a continuous top edge are counted with the
 *     neighbour; none where absent
 * @param endDamHeight height of the sill's end dams above the surface that holds water, in a
 *     unitized wall also of the gutters in its stack joints, m
 * @param cartridgeVolume nominal content of a cartridge, m3; 300 mL where absent
 * @param wasteFactor sealant wasted, as a share of what is placed; 0.10 where absent
 * @param waterTest rule for the water test; specification practice where absent
 * @param airLeakage limit on air leakage with its pressure; 0.06 cfm/ft2 at 300 Pa where absent
 * @param wettedArea area of wall whose spray can reach an unsealed joint, m2; the whole frame where
 *     absent
 * @param system how the wall is made; STICK_BUILT where absent
 * @param unitized units of a UNITIZED wall
 * @param windowWall slabs and receptors of a WINDOW_WALL
 * @param sealant what its maker says of the sealant inside the system
 * @param perimeterSealant the same of the sealant at head, jambs and sill, at stack joints and slab
 *     edges; as sealant where absent
 * @param sausageVolume nominal content of a sausage, m3; 600 mL where absent
 * @param inspection how sure an inspection of a sample of the joints is to be; no plan where absent
 * @param missedJoint a joint known to be unsealed; it counts in the verdict
 * @param waterAndAir what drives water and air, how it drains, and what was found on site
 */
public record SealDetails(
        Drainage drainage,
        Bead bead,
        @Nullable Bead perimeterBead,
        @Nullable BeadLengths beadLengths,
        @Size(max = 100) @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable List<Double> splices,
        @Size(max = 100) @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable List<Double> stackJoints,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, min = 0.1, max = 30)
                @Nullable Double pressurePlateLength,
        @Min(0) @Max(100) @Nullable Integer fastenersPerHorizontalEnd,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, min = 0.02)
                @Nullable Double perimeterFastenerSpacing,
        @Min(0) @Max(100_000) @Nullable Integer jointCovers,
        @Min(0) @Max(100_000) @Nullable Integer anchorPenetrations,
        @Nullable List<Edge> continuousEdges,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 2)
                @Nullable Double endDamHeight,
        @Measured(value = Dimension.VOLUME, sign = Measured.Sign.POSITIVE, min = 1e-5, max = 1)
                @Nullable Double cartridgeVolume,
        @DecimalMin(value = "0", message = "must not be negative")
                @DecimalMax(value = "1", message = "must be at most 1")
                @Nullable Double wasteFactor,
        @Nullable WaterTest waterTest,
        @Nullable AirLeakage airLeakage,
        @Measured(value = Dimension.AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double wettedArea,
        @Nullable WallSystem system,
        @Nullable UnitizedFrame unitized,
        @Nullable WindowWallFrame windowWall,
        @Nullable Sealant sealant,
        @Nullable Sealant perimeterSealant,
        @Measured(value = Dimension.VOLUME, sign = Measured.Sign.POSITIVE, min = 1e-5, max = 1)
                @Nullable Double sausageVolume,
        @Nullable Inspection inspection,
        @Nullable MissedJoint missedJoint,
        @JsonUnwrapped @Nullable WaterAndAir waterAndAir) {

    public SealDetails {
        splices = splices == null ? null : List.copyOf(splices);
        stackJoints = stackJoints == null ? null : List.copyOf(stackJoints);
        continuousEdges = continuousEdges == null ? null : List.copyOf(continuousEdges);
    }

    Bead perimeterBeadOrDefault() {
        return perimeterBead == null ? bead : perimeterBead;
    }

    BeadLengths beadLengthsOrDefault() {
        return beadLengths == null ? BeadLengths.NONE : beadLengths;
    }

    double cartridgeVolumeOrDefault() {
        return cartridgeVolume == null ? 300e-6 : cartridgeVolume;
    }

    double wasteFactorOrDefault() {
        return wasteFactor == null ? 0.10 : wasteFactor;
    }

    WaterTest waterTestOrDefault() {
        return waterTest == null ? WaterTest.PRACTICE : waterTest;
    }

    AirLeakage airLeakageOrDefault() {
        return airLeakage == null ? AirLeakage.PRACTICE : airLeakage;
    }

    boolean continues(Edge edge) {
        return continuousEdges != null && continuousEdges.contains(edge);
    }

    double sausageVolumeOrDefault() {
        return sausageVolume == null ? 600e-6 : sausageVolume;
    }

    /** How the wall is made. */
    public WallSystem systemOrDefault() {
        return system == null ? WallSystem.STICK_BUILT : system;
    }

    Sealant sealantOf(JointType type) {
        Sealant given = type.weatherSeal() && perimeterSealant != null ? perimeterSealant : sealant;
        return given == null ? Sealant.UNKNOWN : given;
    }

    /** Whether end dams or gutters of this frame hold a head of water. */
    boolean holdsWater() {
        return switch (systemOrDefault()) {
            case STICK_BUILT -> !continues(Edge.BOTTOM);
            case UNITIZED, WINDOW_WALL -> true;
        };
    }

    /** The same with end dams of another height, m. */
    SealDetails withEndDamHeight(double height) {
        return with(splices, stackJoints, continuousEdges, height, missedJoint, waterAndAir);
    }

    /** The same with another unsealed joint. */
    SealDetails withMissedJoint(MissedJoint joint) {
        return with(splices, stackJoints, continuousEdges, endDamHeight, joint, waterAndAir);
    }

    /** The same with other heights of splices and stack joints and other continuous edges. */
    public SealDetails within(
            @Nullable List<Double> spliced, @Nullable List<Double> stacked, List<Edge> continuous) {
        return with(spliced, stacked, continuous, endDamHeight, missedJoint, waterAndAir);
    }

    /** The same with the level of the sill, m, where stack effect needs one and none was given. */
    public SealDetails atLevel(double level) {
        return waterAndAir == null ? this : withWaterAndAir(waterAndAir.withSillLevel(level));
    }

    /** The same with other things said of water and air. */
    SealDetails withWaterAndAir(WaterAndAir other) {
        return with(splices, stackJoints, continuousEdges, endDamHeight, missedJoint, other);
    }

    WaterAndAir waterAndAirOrNone() {
        return waterAndAir == null ? WaterAndAir.NONE : waterAndAir;
    }

    private SealDetails with(
            @Nullable List<Double> spliced,
            @Nullable List<Double> stacked,
            @Nullable List<Edge> continuous,
            @Nullable Double height,
            @Nullable MissedJoint joint,
            @Nullable WaterAndAir water) {
        return new SealDetails(
                drainage,
                bead,
                perimeterBead,
                beadLengths,
                spliced,
                stacked,
                pressurePlateLength,
                fastenersPerHorizontalEnd,
                perimeterFastenerSpacing,
                jointCovers,
                anchorPenetrations,
                continuous,
                height,
                cartridgeVolume,
                wasteFactor,
                waterTest,
                airLeakage,
                wettedArea,
                system,
                unitized,
                windowWall,
                sealant,
                perimeterSealant,
                sausageVolume,
                inspection,
                joint,
                water);
    }
}
