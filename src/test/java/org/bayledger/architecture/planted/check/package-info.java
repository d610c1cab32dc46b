/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.check;

import org.jspecify.annotations.NullMarked;
