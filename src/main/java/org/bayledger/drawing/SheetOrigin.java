package org.bayledger.drawing;

import java.util.List;
import org.bayledger.ledger.RecordedRevision;

/**
 * Where the results of a review sheet come from.
 *
 * @param title what the sheet is called
 * @param foot what stands at the foot of every page
 * @param rows what is known of it, as name and value
 */
record SheetOrigin(String title, String foot, List<Row> rows) {

    /** One line. */
    record Row(String name, String value) {}

    /** A review that nobody recorded. */
    static SheetOrigin unrecorded(String engineVersion) {
        return new SheetOrigin(
                "Review sheet, not recorded",
                "Not recorded",
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
}
