package org.bayledger.ledger;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.JsonOf;
import org.bayledger.review.ReviewDocument;

/**
 * A revision to record.
 *
 * @param author who stands behind it; a claim, kept beside the authenticated name
 * @param reason why it is recorded
 * @param document the review document
 */
record RevisionRequest(
        @NotBlank @Size(max = 200) String author,
        @NotBlank @Size(max = 2000) String reason,
        @JsonOf(ReviewDocument.class) Object document) {}
