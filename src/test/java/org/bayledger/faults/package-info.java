/** What is killed, cut off or fed rubbish, and what stands afterwards. */
@NullMarked
package org.bayledger.faults;

import org.jspecify.annotations.NullMarked;
