package org.bayledger.ledger;

import java.util.Map;

/**
 * A revision as it was recorded, for those who show it.
 *
 * @param project the project's identifier
 * @param projectName the project's name
 * @param number 1 for the first
 * @param hash hash of its manifest, in hexadecimal
 * @param recordedAt when, as it stands in the manifest
 * @param author as claimed
 * @param recordedBy as authenticated
 * @param reason why it was recorded
 * @param engineVersion what made its results
 * @param document the document's tree, as it was posted
 * @param result the results' tree, as they were recorded
 */
public record RecordedRevision(
        String project,
        String projectName,
        int number,
        String hash,
        String recordedAt,
        String author,
        String recordedBy,
        String reason,
        String engineVersion,
        Map<?, ?> document,
        Map<?, ?> result) {}
