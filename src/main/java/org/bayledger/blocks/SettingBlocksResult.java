package org.bayledger.blocks;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Where the two setting blocks of a lite stand, and what the shop drawings must say of it.
 *
 * @param outcome verdict and what goes with it
 * @param blockCount blocks under the lite
 * @param blockLength least length of each block
 * @param blockCutLength length to cut each block to: the least length up to the next quarter inch
 * @param blockMaterial material and hardness of the blocks
 * @param glassWeight mass of the lite; null where it was not given
 * @param deflectionLimit limit on the member's own account, the smaller of L/360 and 1/8 in; null
 *     on a shimmed sill or without a span
 * @param governingLimit greatest deflection that keeps every limit known, those of bite and
 *     clearance below included; zero or less where the clearance is too small as drawn; null
 *     likewise
 * @param recommended where the blocks are to stand; null where no place passes or none could be
 *     judged
 * @param candidates the places in the order in which the trade accepts them
 * @param shopDrawingNote what the shop drawings must say because the blocks are moved
 * @param shimNote what the shop drawings must say of the shims; null where the lite stands on a
 *     member
 * @param rotationLimit greatest rotation of the horizontal that is accepted; null where its
 *     rotation is not known
 * @param glassEdgeStressAllowable tension that the edges of the glass may bear for good
 * @param asFound what comes of the blocks as they were found on site; null where they were not
 *     given
 */
public record SettingBlocksResult(
        @JsonUnwrapped Outcome outcome,
        int blockCount,
        Quantity blockLength,
        Quantity blockCutLength,
        String blockMaterial,
        @Nullable Quantity glassWeight,
        @Nullable Quantity deflectionLimit,
        @Nullable Quantity governingLimit,
        @Nullable BlockPlace recommended,
        List<BlockCandidate> candidates,
        ShopDrawingNote shopDrawingNote,
        @Nullable String shimNote,
        @Nullable Quantity rotationLimit,
        Quantity glassEdgeStressAllowable,
        @Nullable AsFound asFound) {

    public SettingBlocksResult {
        candidates = List.copyOf(candidates);
    }

    SettingBlocksResult withRemedies(List<Remedy> remedies) {
        return with(
                new Outcome(
                        outcome.verdict(),
                        outcome.utilization(),
                        outcome.findings(),
                        remedies,
                        outcome.trace(),
                        outcome.cautions()),
                asFound);
    }

    /** The same places, with another outcome and what was found on site. */
    SettingBlocksResult with(Outcome other, @Nullable AsFound found) {
        return new SettingBlocksResult(
                other,
                blockCount,
                blockLength,
                blockCutLength,
                blockMaterial,
                glassWeight,
                deflectionLimit,
                governingLimit,
                recommended,
                candidates,
                shopDrawingNote,
                shimNote,
                rotationLimit,
                glassEdgeStressAllowable,
                found);
    }
}
