/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.glass;

import org.jspecify.annotations.NullMarked;
