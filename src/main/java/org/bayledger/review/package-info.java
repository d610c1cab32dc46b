/** The whole job: one review document through all checks, bay by bay. */
@NullMarked
package org.bayledger.review;

import org.jspecify.annotations.NullMarked;
