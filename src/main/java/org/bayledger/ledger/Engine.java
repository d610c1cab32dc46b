package org.bayledger.ledger;

import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What turns a document into results, and which version of it.
 *
 * @param version recorded with every revision
 * @param review reads a document, and gives the review to be run on it; refuses a document that it
 *     can't review with a {@link org.bayledger.check.FaultsException} whose pointers start there
 */
record Engine(String version, Function<Map<?, ?>, Supplier<Reviewed>> review) {

    /** Reviews a document at once. */
    Reviewed run(Map<?, ?> document) {
        return review.apply(document).get();
    }
}
