/** The boundaries between the rooms, and planted breaches that prove the rules. */
@NullMarked
package org.bayledger.architecture;

import org.jspecify.annotations.NullMarked;
