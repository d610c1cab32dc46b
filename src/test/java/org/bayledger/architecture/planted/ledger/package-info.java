/** Breaks the rules on purpose. */
@NullMarked
package org.bayledger.architecture.planted.ledger;

import org.jspecify.annotations.NullMarked;
