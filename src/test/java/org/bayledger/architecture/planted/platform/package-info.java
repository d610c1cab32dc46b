/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.platform;

import org.jspecify.annotations.NullMarked;
