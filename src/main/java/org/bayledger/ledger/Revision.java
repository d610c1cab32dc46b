package org.bayledger.ledger;

import java.time.Instant;
import java.util.List;

/**
 * A revision as the database holds it, without the content it points to.
 *
 * @param number 1 for the first
 * @param hash hash of its manifest, in hexadecimal
 * @param previousHash hash of the revision before, or the project's genesis hash
 * @param author as claimed in the request
 * @param recordedBy as authenticated
 * @param reason why it was recorded
 * @param engineVersion what computed the results
 * @param recordedAt when, to the microsecond
 * @param verdict the review's verdict
 * @param documentShell hash of the document without its bays
 * @param resultShell hash of the results without their bays
 */
record Revision(
        int number,
        String hash,
        String previousHash,
        String author,
        String recordedBy,
        String reason,
        String engineVersion,
        Instant recordedAt,
        String verdict,
        String documentShell,
        String resultShell) {

    /** What the revision's hash has to be over. */
    Manifest manifest(Project project, List<Manifest.Bay> bays) {
        return new Manifest(
                Manifest.VERSION,
                project.organisation(),
                project.id().toString(),
                number,
                previousHash,
                author,
                recordedBy,
                reason,
                engineVersion,
                Instants.text(recordedAt),
                documentShell,
                resultShell,
                bays);
    }

    /** The same revision with the hash of its manifest. */
    Revision sealed(Project project, List<Manifest.Bay> bays) {
        return new Revision(
                number,
                manifest(project, bays).hash(),
                previousHash,
                author,
                recordedBy,
                reason,
                engineVersion,
                recordedAt,
                verdict,
                documentShell,
                resultShell);
    }
}
