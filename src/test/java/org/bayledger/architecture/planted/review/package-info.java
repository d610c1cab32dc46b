/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.review;

import org.jspecify.annotations.NullMarked;
