package org.bayledger.anchorage;

import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What one anchor carries against what it may carry, wind and weight each for itself.
 *
 * @param anchor id of the anchor
 * @param windReaction the greater of the two signs, absolute; null where none was given
 * @param windUtilization of the allowable wind force; null where either is not known
 * @param deadLoadUtilization of the allowable dead-load force; null where either is not known
 * @param bracket what its bolts carry; null without a bracket or without the forces on it
 * @param verdict on this anchor; undetermined where a force lacks its allowable or a sign of the
 *     wind is missing
 */
public record AnchorForceResult(
        String anchor,
        @Nullable Quantity windReaction,
        @Nullable Double windUtilization,
        @Nullable Double deadLoadUtilization,
        @Nullable BracketResult bracket,
        Verdict verdict) {}
