/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.wind;

import org.jspecify.annotations.NullMarked;
