package org.bayledger.ledger;

import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What turns a document into results, and which version of it.
 *
 * @param version recorded with every revision
 * @param review gives the results of a document; refuses one that it can't review with an {@link
 *     org.bayledger.check.FaultsException} whose pointers start at the document
 */
record Engine(String version, UnaryOperator<Map<?, ?>> review) {}
