/** Where the two setting blocks of a lite stand, and what the horizontal under them does. */
@NullMarked
package org.bayledger.blocks;

import org.jspecify.annotations.NullMarked;
