package org.bayledger.ledger;

import org.bayledger.review.ReviewDocument;

/**
 * The document of a revision, read again.
 *
 * @param number number of the revision, 1 for the first
 * @param hash hash of the revision
 * @param engineVersion version of the rules and sums that made its results
 * @param document the document
 */
public record RecordedDocument(
        int number, String hash, String engineVersion, ReviewDocument document) {}
