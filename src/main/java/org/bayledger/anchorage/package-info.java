/** Where the wall is held, and what the building and the metal move at joints and slots. */
@NullMarked
package org.bayledger.anchorage;

import org.jspecify.annotations.NullMarked;
