/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.seals;

import org.jspecify.annotations.NullMarked;
