/** What people look at: drawings as SVG, with their endpoints. */
@NullMarked
package org.bayledger.drawing;

import org.jspecify.annotations.NullMarked;
