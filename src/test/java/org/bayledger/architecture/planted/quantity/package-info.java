/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.quantity;

import org.jspecify.annotations.NullMarked;
