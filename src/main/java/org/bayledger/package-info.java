/**
 * Bayledger: curtain-wall checks, bay by bay and revision by revision, and a ledger of what was
 * checked.
 */
@NullMarked
package org.bayledger;

import org.jspecify.annotations.NullMarked;
