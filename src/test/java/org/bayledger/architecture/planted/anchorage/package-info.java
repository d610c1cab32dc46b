/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.anchorage;

import org.jspecify.annotations.NullMarked;
