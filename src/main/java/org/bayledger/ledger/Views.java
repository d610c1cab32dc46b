package org.bayledger.ledger;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.bayledger.check.JsonOf;
import org.bayledger.review.ReviewDocument;
import org.bayledger.review.ReviewResult;
import org.jspecify.annotations.Nullable;

/** The ledger's answers. Instants are text with six decimals, exactly as they are hashed. */
final class Views {

    private Views() {}

    /**
     * A part of the list of projects.
     *
     * @param items the projects, oldest first
     * @param nextCursor where the list goes on; null at its end
     */
    record ProjectList(List<ProjectView> items, @Nullable String nextCursor) {

        static ProjectList of(Page<Project> page, Function<Project, Head> headOf) {
            return new ProjectList(
                    page.items().stream()
                            .map(project -> ProjectView.of(project, headOf.apply(project)))
                            .toList(),
                    page.nextCursor());
        }
    }

    /**
     * A project.
     *
     * @param projectId its identifier
     * @param name what its creator called it
     * @param createdAt when
     * @param createdBy by whom, as authenticated
     * @param head where its chain ends
     */
    record ProjectView(
            String projectId, String name, String createdAt, String createdBy, Checkpoint head) {

        static ProjectView of(Project project, Head head) {
            return new ProjectView(
                    project.id().toString(),
                    project.name(),
                    Instants.text(project.createdAt()),
                    project.createdBy(),
                    Checkpoint.of(head));
        }
    }

    /**
     * Where a chain ends: what an auditor keeps elsewhere.
     *
     * @param size number of revisions
     * @param headHash hash of the last one, or the project's genesis hash before the first
     * @param recordedAt when the last one was recorded; null before the first
     */
    record Checkpoint(int size, String headHash, @Nullable String recordedAt) {

        static Checkpoint of(Head head) {
            return new Checkpoint(
                    head.size(),
                    head.hash(),
                    head.recordedAt() == null ? null : Instants.text(head.recordedAt()));
        }
    }

    /**
     * A part of the list of revisions.
     *
     * @param items the revisions, first one first
     * @param nextCursor where the list goes on; null at its end
     */
    record RevisionList(List<RevisionSummary> items, @Nullable String nextCursor) {

        static RevisionList of(Page<Revision> page) {
            return new RevisionList(
                    page.items().stream().map(RevisionSummary::of).toList(), page.nextCursor());
        }
    }

    /**
     * A revision without its content.
     *
     * @param number 1 for the first
     * @param hash SHA-256 of its manifest
     * @param previousHash hash of the revision before, or the project's genesis hash
     * @param recordedAt when
     * @param author as claimed in the request
     * @param recordedBy as authenticated
     * @param reason why it was recorded
     * @param engineVersion what computed the results
     * @param verdict the review's verdict
     */
    record RevisionSummary(
            int number,
            String hash,
            String previousHash,
            String recordedAt,
            String author,
            String recordedBy,
            String reason,
            String engineVersion,
            String verdict) {

        static RevisionSummary of(Revision revision) {
            return new RevisionSummary(
                    revision.number(),
                    revision.hash(),
                    revision.previousHash(),
                    Instants.text(revision.recordedAt()),
                    revision.author(),
                    revision.recordedBy(),
                    revision.reason(),
                    revision.engineVersion(),
                    revision.verdict());
        }
    }

    /**
     * A revision, whole. Manifest, document and result are the exact bytes that were recorded.
     *
     * @param number 1 for the first
     * @param hash SHA-256 of the manifest's bytes
     * @param previousHash hash of the revision before, or the project's genesis hash
     * @param recordedAt when
     * @param author as claimed in the request
     * @param recordedBy as authenticated
     * @param reason why it was recorded
     * @param engineVersion what computed the results
     * @param verdict the review's verdict
     * @param manifest what the hash is over
     * @param document the review document
     * @param result its results
     */
    record RevisionView(
            int number,
            String hash,
            String previousHash,
            String recordedAt,
            String author,
            String recordedBy,
            String reason,
            String engineVersion,
            String verdict,
            @JsonRawValue @JsonOf(Manifest.class) String manifest,
            @JsonRawValue @JsonOf(value = ReviewDocument.class, asPosted = true) String document,
            @JsonRawValue @JsonOf(ReviewResult.class) String result) {

        static RevisionView of(Revision revision, byte[] manifest, byte[] document, byte[] result) {
            return new RevisionView(
                    revision.number(),
                    revision.hash(),
                    revision.previousHash(),
                    Instants.text(revision.recordedAt()),
                    revision.author(),
                    revision.recordedBy(),
                    revision.reason(),
                    revision.engineVersion(),
                    revision.verdict(),
                    new String(manifest, StandardCharsets.UTF_8),
                    new String(document, StandardCharsets.UTF_8),
                    new String(result, StandardCharsets.UTF_8));
        }
    }
}
