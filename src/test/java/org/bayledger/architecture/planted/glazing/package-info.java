/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.glazing;

import org.jspecify.annotations.NullMarked;
