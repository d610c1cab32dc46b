/** The contract as a caller sees it: the served document, its examples and a generated client. */
@NullMarked
package org.bayledger.contract;

import org.jspecify.annotations.NullMarked;
