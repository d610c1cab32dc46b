/** Internal seals: which joints, in which order, how much sealant, and what a missed one costs. */
@NullMarked
package org.bayledger.seals;

import org.jspecify.annotations.NullMarked;
