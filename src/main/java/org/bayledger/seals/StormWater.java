package org.bayledger.seals;

import org.bayledger.quantity.Quantity;

/**
 * Water through the unsealed joint (the missed one, else the illustrative one) in a storm.
 *
 * @param pressure steady pressure during it
 * @param duration how long it lasts
 * @param supply water that reaches the wetted area in each time; no joint passes more
 * @param water what passes, at the rate that governs
 * @param waterRange between what it is expected to lie
 */
public record StormWater(
        Quantity pressure,
        Quantity duration,
        Quantity supply,
        Quantity water,
        QuantityRange waterRange) {}
