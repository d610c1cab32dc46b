/**
 * Beams, plates, flow and failure probability: pure numerics in SI units, without the trade's
 * words.
 */
@NullMarked
package org.bayledger.mechanics;

import org.jspecify.annotations.NullMarked;
