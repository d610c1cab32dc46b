/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.framing;

import org.jspecify.annotations.NullMarked;
