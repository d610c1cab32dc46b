/**
 * Beams, plates, flow and failure probability as pure numerics in SI units, without trade words.
 */
@NullMarked
package org.bayledger.mechanics;

import org.jspecify.annotations.NullMarked;
