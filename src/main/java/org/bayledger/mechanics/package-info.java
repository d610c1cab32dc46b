/** Mechanics: beams, plates, flow and failure probability in SI units, as pure numerics. */
@NullMarked
package org.bayledger.mechanics;

import org.jspecify.annotations.NullMarked;
