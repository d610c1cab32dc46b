/** Framing members under wind and dead load, and what holds the glass against suction. */
@NullMarked
package org.bayledger.framing;

import org.jspecify.annotations.NullMarked;
