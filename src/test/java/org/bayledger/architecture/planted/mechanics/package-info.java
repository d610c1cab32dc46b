/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.mechanics;

import org.jspecify.annotations.NullMarked;
