/** What every check shares: faults, verdicts, findings, remedies, traces, loads and their basis. */
@NullMarked
package org.bayledger.check;

import org.jspecify.annotations.NullMarked;
