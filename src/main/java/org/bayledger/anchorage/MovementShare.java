package org.bayledger.anchorage;

import org.bayledger.quantity.Quantity;

/**
 * The share of one cause in all that happens in one direction, tolerances included.
 *
 * @param cause what moves
 * @param amount by which it moves
 * @param percentage of the total in this direction; 0 where nothing moves at all
 */
public record MovementShare(MovementPart.Cause cause, Quantity amount, double percentage) {}
