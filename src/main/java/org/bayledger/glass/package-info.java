/**
 * The glass check: the load that a lite resists, pane by pane, and what its panes do under load.
 */
@NullMarked
package org.bayledger.glass;

import org.jspecify.annotations.NullMarked;
