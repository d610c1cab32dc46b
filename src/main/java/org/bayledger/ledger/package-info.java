/**
 * Projects and their recorded revisions: a hash chain that can be read, compared and verified, and
 * that nothing in the service can change.
 */
@NullMarked
package org.bayledger.ledger;

import org.jspecify.annotations.NullMarked;
