/** Glass build-ups: panes, plies, interlayers and cavities, the thickness table and the weight. */
@NullMarked
package org.bayledger.glazing;

import org.jspecify.annotations.NullMarked;
