/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.drawing;

import org.jspecify.annotations.NullMarked;
