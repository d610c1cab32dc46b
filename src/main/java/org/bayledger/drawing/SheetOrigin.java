package org.bayledger.drawing;

import java.util.List;
import org.bayledger.ledger.RecordedRevision;
import org.bayledger.review.Review;
import org.jspecify.annotations.Nullable;

/**
 * Where the results of a review sheet come from.
 *
 * @param title what the sheet is called
 * @param foot what stands at the foot of every page
 * @param drawnFrom what the title block of a drawing says of it
 * @param recordedAt when, as it stands in the manifest; null where nobody recorded it
 * @param rows what is known of it, as name and value
 */
record SheetOrigin(
        String title, String foot, String drawnFrom, @Nullable String recordedAt, List<Row> rows) {

    /** Digits of a hash that are enough to tell one revision from another on paper. */
    private static final int SHORT_HASH = 12;

    /** One line. */
    record Row(String name, String value) {}

    /** A review that nobody recorded. */
    static SheetOrigin unrecorded(String engineVersion) {
        return new SheetOrigin(
                "Review sheet, not recorded",
                "Not recorded",
                "A review that was not recorded, engine " + engineVersion,
                null,
                List.of(
                        new Row("Engine", engineVersion),
                        new Row(
                                "Revision",
                                "none: this review stands in no ledger and can't be verified"
                                        + " later")));
    }

    static SheetOrigin of(RecordedRevision revision) {
        return new SheetOrigin(
                "Review sheet, revision " + revision.number(),
                "Revision " + revision.number() + ", hash " + revision.hash(),
                drawnFrom(revision.number(), revision.hash(), revision.engineVersion()),
                revision.recordedAt(),
                List.of(
                        new Row(
                                "Project",
                                revision.projectName() + " (" + revision.project() + ")"),
                        new Row("Revision", Integer.toString(revision.number())),
                        new Row("Recorded at", revision.recordedAt()),
                        new Row("Author, as claimed", revision.author()),
                        new Row("Recorded by", revision.recordedBy()),
                        new Row("Reason", revision.reason()),
                        new Row("Engine", revision.engineVersion()),
                        new Row("Hash of the revision", revision.hash()),
                        new Row(
                                "Checkpoint to keep",
                                "size "
                                        + revision.number()
                                        + ", headHash "
                                        + revision.hash()
                                        + "; hold a later chain against it with verification")));
    }

    /** What the title block of a drawing says of a revision. */
    static String drawnFrom(int number, String hash, String engineVersion) {
        return "Revision "
                + number
                + ", hash "
                + hash.substring(0, SHORT_HASH)
                + ", recorded by engine "
                + engineVersion
                + ", drawn by engine "
                + Review.ENGINE_VERSION;
    }
}
