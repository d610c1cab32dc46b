/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.blocks;

import org.jspecify.annotations.NullMarked;
