package org.bayledger.ledger;

import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.StrictJson;
import org.bayledger.review.ReviewDocument;
import org.springframework.stereotype.Component;

/** Gives recorded documents to those who make something of them. */
@Component
public class RecordedDocuments {

    private final Ledger ledger;
    private final LedgerStore store;
    private final Wholes wholes;

    RecordedDocuments(Ledger ledger, LedgerStore store, Wholes wholes) {
        this.ledger = ledger;
        this.store = store;
        this.wholes = wholes;
    }

    /**
     * The document of a revision.
     *
     * @param projectId as it stands in the address
     * @param number likewise
     * @throws org.bayledger.check.FaultsException where today's rules refuse the document
     */
    public RecordedDocument read(String projectId, String number) {
        Project project = ledger.project(Caller.current(), projectId);
        Revision revision = ledger.revision(project, number);
        byte[] document =
                wholes.document(project, revision, store.bays(project, revision.number()));
        return new RecordedDocument(
                revision.number(),
                revision.hash(),
                revision.engineVersion(),
                Binder.bind(StrictJson.read(document), ReviewDocument.class));
    }

    /**
     * A revision with its document and results as they were recorded.
     *
     * @param projectId as it stands in the address
     * @param number likewise
     */
    public RecordedRevision readWhole(String projectId, String number) {
        Project project = ledger.project(Caller.current(), projectId);
        Revision revision = ledger.revision(project, number);
        List<Manifest.Bay> bays = store.bays(project, revision.number());
        return new RecordedRevision(
                project.id().toString(),
                project.name(),
                revision.number(),
                revision.hash(),
                Instants.text(revision.recordedAt()),
                revision.author(),
                revision.recordedBy(),
                revision.reason(),
                revision.engineVersion(),
                tree(wholes.document(project, revision, bays)),
                tree(wholes.result(project, revision, bays)));
    }

    private static Map<?, ?> tree(byte[] canonical) {
        if (StrictJson.read(canonical) instanceof Map<?, ?> tree) {
            return tree;
        }
        throw new IllegalStateException("What was recorded is not a JSON object");
    }
}
