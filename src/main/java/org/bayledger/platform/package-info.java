/** HTTP problems, JSON, security, configuration and the embedded database; imported by nobody. */
@NullMarked
package org.bayledger.platform;

import org.jspecify.annotations.NullMarked;
