/** Quantities and units at the edge of the service; everything inside is a plain SI double. */
@NullMarked
package org.bayledger.quantity;

import org.jspecify.annotations.NullMarked;
