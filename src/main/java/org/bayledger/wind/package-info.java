/** Design wind pressures on walls, both signs, by zone, effective area and height. */
@NullMarked
package org.bayledger.wind;

import org.jspecify.annotations.NullMarked;
