package org.bayledger.ledger;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bayledger.check.RawJson;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Creates projects and appends revisions to their chains. */
@Component
class Ledger {

    private static final UUID NO_ID = new UUID(0, 0);
    private static final Pattern PROJECT_POSITION =
            Pattern.compile("([0-9]{4}-\\S{22}) ([0-9a-f-]{36})");
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,8}");

    private final LedgerStore store;
    private final LedgerWriter writer;
    private final VerdictStore verdicts;
    private final TransactionTemplate transaction;
    private final Engine engine;
    private final Clock clock;
    private final LedgerMeters meters;

    Ledger(
            LedgerStore store,
            LedgerWriter writer,
            VerdictStore verdicts,
            TransactionTemplate transaction,
            Engine engine,
            Clock clock,
            LedgerMeters meters) {
        this.store = store;
        this.writer = writer;
        this.verdicts = verdicts;
        this.transaction = transaction;
        this.engine = engine;
        this.clock = clock;
        this.meters = meters;
    }

    Project create(Caller caller, String name) {
        Project project =
                new Project(
                        caller.organisation(),
                        UUID.randomUUID(),
                        name,
                        Instants.now(clock),
                        caller.recordedBy());
        writer.insert(project);
        return project;
    }

    /**
     * A project of the caller's organisation; to everybody else it does not exist.
     *
     * @param id as it stands in the address
     */
    Project project(Caller caller, String id) {
        return parsed(id)
                .flatMap(uuid -> store.project(caller.organisation(), uuid))
                .orElseThrow(LedgerProblem::unknownProject);
    }

    private static Optional<UUID> parsed(String id) {
        try {
            UUID uuid = UUID.fromString(id);
            return uuid.toString().equals(id) ? Optional.of(uuid) : Optional.empty();
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    Page<Project> projects(Caller caller, int limit, @Nullable String position) {
        Instant after = Instant.EPOCH;
        UUID idAfter = NO_ID;
        if (position != null) {
            Matcher parts = PROJECT_POSITION.matcher(position);
            if (!parts.matches()) {
                throw Cursor.malformed();
            }
            try {
                after = Instant.parse(parts.group(1));
                idAfter = UUID.fromString(parts.group(2));
            } catch (DateTimeException | IllegalArgumentException notOurs) {
                throw Cursor.malformed();
            }
        }
        List<Project> read = store.projects(caller.organisation(), after, idAfter, limit + 1);
        return Page.of(
                read, limit, project -> Instants.text(project.createdAt()) + " " + project.id());
    }

    /**
     * A revision of a project.
     *
     * @param number 1 for the first
     */
    Revision revision(Project project, int number) {
        return store.revision(project, number).orElseThrow(LedgerProblem::unknownRevision);
    }

    /** A revision of a project, by its number as it stands in the address. */
    Revision revision(Project project, String number) {
        if (!NUMBER.matcher(number).matches()) {
            throw LedgerProblem.unknownRevision();
        }
        return revision(project, Integer.parseInt(number));
    }

    Page<Revision> revisions(Project project, int limit, @Nullable String position) {
        int after = 0;
        if (position != null) {
            try {
                after = Integer.parseInt(position);
            } catch (NumberFormatException notOurs) {
                throw Cursor.malformed();
            }
        }
        return Page.of(
                store.revisions(project, after, limit + 1),
                limit,
                revision -> Integer.toString(revision.number()));
    }

    /**
     * Records a revision, or answers again what a request with the same key recorded.
     *
     * @param key the writer's name for this request, looked up before the precondition
     * @param precondition read only when there is something to record
     */
    Revision record(
            Caller caller,
            Project project,
            RawJson body,
            @Nullable String key,
            Supplier<Precondition> precondition) {
        if (key == null) {
            Submission submission = reviewed(project, body, precondition.get());
            Revision made =
                    inTransaction(() -> append(caller, project, submission, precondition.get()));
            meters.recorded(made);
            return made;
        }
        IdempotencyKey named =
                new IdempotencyKey(caller.organisation(), caller.recordedBy(), project.id(), key);
        String bodyHash = Sha256.hex(body.bytes());
        AtomicBoolean repeated = new AtomicBoolean();
        Revision answered =
                inTransaction(
                        () -> {
                            if (!writer.tryLockKey(named)) {
                                throw LedgerProblem.stillRunning();
                            }
                            Optional<LedgerWriter.Recorded> before = writer.recorded(named);
                            if (before.isPresent()) {
                                repeated.set(true);
                                return again(project, before.get(), bodyHash);
                            }
                            Precondition required = precondition.get();
                            Submission submission = reviewed(project, body, required);
                            Revision made = append(caller, project, submission, required);
                            writer.insert(named, bodyHash, made.number());
                            return made;
                        });
        if (!repeated.get()) {
            meters.recorded(answered);
        }
        return answered;
    }

    private Revision again(Project project, LedgerWriter.Recorded before, String bodyHash) {
        if (!before.bodyHash().equals(bodyHash)) {
            throw LedgerProblem.keyReused();
        }
        return store.revision(project, before.number())
                .orElseThrow(() -> new IllegalStateException("The key's revision is not there"));
    }

    /** Refuses a stale writer before the work of a review; {@link #append} decides for good. */
    private Submission reviewed(Project project, RawJson body, Precondition precondition) {
        precondition.require(store.head(project));
        return Submission.of(body.tree(), engine);
    }

    private Revision append(
            Caller caller, Project project, Submission submission, Precondition precondition) {
        writer.lockForAppending(project);
        Head head = store.head(project);
        precondition.require(head);
        Revision unsealed =
                new Revision(
                        head.size() + 1,
                        "",
                        head.hash(),
                        submission.author(),
                        caller.recordedBy(),
                        submission.reason(),
                        engine.version(),
                        Instants.now(clock),
                        submission.verdict(),
                        submission.document().shell().hash(),
                        submission.result().shell().hash());
        Revision revision = unsealed.sealed(project, submission.bays());
        writer.insertMissing(project.organisation(), submission.contents());
        verdicts.insertMissing(project.organisation(), submission.results());
        writer.insert(project, revision, submission.bays());
        return revision;
    }

    private Revision inTransaction(Supplier<Revision> work) {
        try {
            Revision made = transaction.execute(status -> work.get());
            if (made == null) {
                throw new IllegalStateException("A transaction without a revision");
            }
            return made;
        } catch (DuplicateKeyException forked) {
            // The table's own guard, should two writers ever pass the lock.
            throw LedgerProblem.preconditionFailed();
        }
    }
}
