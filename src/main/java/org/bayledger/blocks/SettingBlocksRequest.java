package org.bayledger.blocks;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A lite, what carries it and what stands below.
 *
 * @param width of the glass, m
 * @param height of the glass, m
 * @param glass build-up of the lite, from which its weight follows
 * @param glassWeight mass of the lite, kg, in place of the build-up; without either the deflection
 *     of a member is undetermined
 * @param support what the blocks rest on
 * @param below what stands under the horizontal and loses clearance, NONE where nothing does;
 *     without it the clearance is undetermined
 * @param fabricatorApproval whether the glass fabricator has agreed in writing to blocks further
 *     out than the eighth points; not given is taken as not agreed
 * @param blockDistance from each glass corner to the center of its block, m, where that is already
 *     chosen; then this place is judged and no other
 * @param leastBlockDistance least distance from the glass corner to the center of a block that the
 *     glass fabricator has agreed to in writing, m
 * @param blockWidth width of the blocks across the glass, m; absent: they are as wide as the glass
 *     is thick
 * @param blockPressureAllowable greatest bearing pressure on a block, Pa; without it the pressure
 *     is given and not judged
 * @param secondLite another lite that stands on the same span; then support.glassOffset says where
 *     this one stands
 * @param alternativeBuildUps other build-ups that the lite could have, to be tried where it is too
 *     heavy; with glass
 * @param installed the blocks as they were found on site; with it the verdict is on both, what is
 *     drawn and what was found
 */
public record SettingBlocksRequest(
        @Measured(value = Dimension.DISTANCE, min = LEAST_WIDTH, max = GREATEST_SIZE) double width,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = GREATEST_SIZE)
                double height,
        @Nullable GlassBuildUp glass,
        @Measured(value = Dimension.MASS, sign = Measured.Sign.POSITIVE)
                @Nullable Double glassWeight,
        BlockSupport support,
        @Nullable GlazingBelow below,
        @Nullable Boolean fabricatorApproval,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double blockDistance,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double leastBlockDistance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double blockWidth,
        @Measured(value = Dimension.STRESS, sign = Measured.Sign.POSITIVE)
                @Nullable Double blockPressureAllowable,
        @Nullable SecondLite secondLite,
        @Size(max = 20) @Nullable List<GlassBuildUp> alternativeBuildUps,
        @Nullable Installed installed) {

    /** Width of a lite under which two blocks of the least length fit, m: 8 in. */
    static final double LEAST_WIDTH = 0.2032;

    /** Sizes beyond this, m, are not made in one lite. */
    static final double GREATEST_SIZE = 18;

    public SettingBlocksRequest {
        alternativeBuildUps = alternativeBuildUps == null ? null : List.copyOf(alternativeBuildUps);
        boolean shimmed = support.kind() == BlockSupport.Kind.SHIMMED_SILL;
        Faults faults = new Faults();
        faults.require(
                glass == null || glassWeight == null,
                "/glassWeight",
                "must be absent where the glass is given: one or the other");
        faults.require(
                blockDistance == null || !shimmed,
                "/blockDistance",
                "must be absent on a SHIMMED_SILL: a lite keeps the quarter points there");
        faults.require(
                blockDistance == null || blockDistance < width / 2,
                "/blockDistance",
                "must be less than half of the width of the glass");
        faults.require(
                leastBlockDistance == null || leastBlockDistance <= width / 4,
                "/leastBlockDistance",
                "must not be beyond the quarter point of the glass");
        faults.require(
                secondLite == null || support.glassOffset() != null,
                "/support/glassOffset",
                "is required where a second lite stands on the same span");
        faults.require(
                alternativeBuildUps == null || glass != null,
                "/alternativeBuildUps",
                "need the glass that they could replace");
        if (installed != null) {
            installed.check(faults, "/installed", width, glass);
            faults.require(
                    installed.drawnPoint() != BlockPoint.CHOSEN || blockDistance != null,
                    "/installed/drawnPoint",
                    "needs blockDistance, which says where CHOSEN is");
        }
        faults.throwIfAny();
    }

    /** Mass of the lite, kg, spacers not included, or null where it is not known. */
    @Nullable Double mass() {
        return glass == null ? glassWeight : (Double) (glass.areaMass() * width * height);
    }

    /** Weight on each block, N, or null where the mass of the lite is not known. */
    @Nullable Double blockLoad() {
        Double mass = mass();
        return mass == null ? null : (Double) SettingBlock.load(mass);
    }

    SettingBlocksRequest withSupport(BlockSupport changed) {
        return with(glass, changed, below, blockDistance);
    }

    SettingBlocksRequest withBelow(@Nullable GlazingBelow changed) {
        return with(glass, support, changed, blockDistance);
    }

    SettingBlocksRequest withGlass(GlassBuildUp changed) {
        return with(changed, support, below, blockDistance);
    }

    SettingBlocksRequest withBlockDistance(double changed) {
        return with(glass, support, below, changed);
    }

    SettingBlocksRequest withInstalled(Installed changed) {
        return with(glass, support, below, blockDistance, changed);
    }

    private SettingBlocksRequest with(
            @Nullable GlassBuildUp changedGlass,
            BlockSupport changedSupport,
            @Nullable GlazingBelow changedBelow,
            @Nullable Double changedDistance) {
        return with(changedGlass, changedSupport, changedBelow, changedDistance, installed);
    }

    private SettingBlocksRequest with(
            @Nullable GlassBuildUp changedGlass,
            BlockSupport changedSupport,
            @Nullable GlazingBelow changedBelow,
            @Nullable Double changedDistance,
            @Nullable Installed found) {
        return new SettingBlocksRequest(
                width,
                height,
                changedGlass,
                glassWeight,
                changedSupport,
                changedBelow,
                fabricatorApproval,
                changedDistance,
                leastBlockDistance,
                blockWidth,
                blockPressureAllowable,
                secondLite,
                alternativeBuildUps,
                found);
    }
}
