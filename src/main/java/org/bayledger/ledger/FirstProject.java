package org.bayledger.ledger;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.bayledger.check.RawJson;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.json.JsonMapper;

/**
 * The ledger's oldest project, for the service's own start: recorded and read by the code that
 * answers requests, without HTTP in between.
 */
@Component
public class FirstProject {

    private final Ledger ledger;
    private final LedgerStore store;
    private final Wholes wholes;
    private final TransactionTemplate transaction;
    private final JsonMapper json;

    FirstProject(
            Ledger ledger,
            LedgerStore store,
            Wholes wholes,
            TransactionTemplate transaction,
            JsonMapper json) {
        this.ledger = ledger;
        this.store = store;
        this.wholes = wholes;
        this.transaction = transaction;
        this.json = json;
    }

    /**
     * A revision to record.
     *
     * @param author who stands behind it
     * @param reason why it is recorded
     * @param document the review document, as JSON
     */
    public record Issue(String author, String reason, String document) {}

    /**
     * The oldest project as it is stored.
     *
     * @param id its identifier
     * @param name what its creator called it
     * @param results recorded results of its first revisions, as JSON, first one first
     */
    public record Stored(String id, String name, List<String> results) {

        public Stored {
            results = List.copyOf(results);
        }
    }

    /** Records a project with its revisions, all or none, unless the ledger holds a project. */
    public void recordIfEmpty(String name, List<Issue> issues) {
        transaction.executeWithoutResult(
                status -> {
                    if (oldest().isPresent()) {
                        return;
                    }
                    Project project = ledger.create(Caller.OPEN, name);
                    Supplier<Precondition> precondition = () -> Precondition.of(null, "*");
                    for (Issue issue : issues) {
                        String head =
                                "\""
                                        + ledger.record(
                                                        Caller.OPEN,
                                                        project,
                                                        body(issue),
                                                        null,
                                                        precondition)
                                                .hash()
                                        + "\"";
                        precondition = () -> Precondition.of(head, null);
                    }
                });
    }

    /**
     * Reads the oldest project.
     *
     * @param revisions of how many revisions, at most
     */
    public Optional<Stored> read(int revisions) {
        return oldest().map(
                        project -> {
                            List<String> results = new ArrayList<>();
                            for (Revision revision : store.revisions(project, 0, revisions)) {
                                List<Manifest.Bay> bays = store.bays(project, revision.number());
                                results.add(
                                        new String(
                                                wholes.result(project, revision, bays),
                                                StandardCharsets.UTF_8));
                            }
                            return new Stored(project.id().toString(), project.name(), results);
                        });
    }

    private Optional<Project> oldest() {
        return ledger.projects(Caller.OPEN, 1, null).items().stream().findFirst();
    }

    private RawJson body(Issue issue) {
        String body =
                "{\"author\":%s,\"reason\":%s,\"document\":%s}"
                        .formatted(
                                json.writeValueAsString(issue.author()),
                                json.writeValueAsString(issue.reason()),
                                issue.document());
        return RawJson.read(body.getBytes(StandardCharsets.UTF_8));
    }
}
