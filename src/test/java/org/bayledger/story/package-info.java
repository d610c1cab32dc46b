/** The service as its users meet it, from the first check to the audit. */
@NullMarked
package org.bayledger.story;

import org.jspecify.annotations.NullMarked;
