package org.bayledger.ledger;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The SQL by which rows are added, and what keeps two writers apart. Rows are never changed. */
@Component
class LedgerWriter {

    private final JdbcTemplate batches;
    private final JdbcClient database;
    private final LedgerStore store;

    LedgerWriter(JdbcTemplate batches, JdbcClient database, LedgerStore store) {
        this.batches = batches;
        this.database = database;
        this.store = store;
    }

    /** Waits until no other transaction appends to the project; held until this one ends. */
    void lockForAppending(Project project) {
        database.sql("SELECT pg_advisory_xact_lock(:key)")
                .param("key", lockKey("append", project.organisation(), project.id().toString()))
                .query((row, number) -> "")
                .single();
    }

    /** Takes an idempotency key for this transaction, or says that another one has it. */
    boolean tryLockKey(IdempotencyKey key) {
        return database.sql("SELECT pg_try_advisory_xact_lock(:key)")
                .param(
                        "key",
                        lockKey(
                                "key",
                                key.organisation(),
                                key.recordedBy(),
                                key.projectId().toString(),
                                key.key()))
                .query(Boolean.class)
                .single();
    }

    /** 64 bits of a hash over the parts; a collision only makes two writers wait or try again. */
    private static long lockKey(String... parts) {
        return ByteBuffer.wrap(Sha256.digest(CanonicalJson.bytes(List.of((Object[]) parts))))
                .getLong();
    }

    /** What a key recorded: the hash of the request's body and the revision's number. */
    record Recorded(String bodyHash, int number) {}

    Optional<Recorded> recorded(IdempotencyKey key) {
        return database.sql(
                        """
                        SELECT body_hash, number FROM ledger.idempotency
                        WHERE organisation = :organisation AND recorded_by = :recordedBy
                          AND project_id = :projectId AND key = :key
                        """)
                .param("organisation", key.organisation())
                .param("recordedBy", key.recordedBy())
                .param("projectId", key.projectId())
                .param("key", key.key())
                .query(
                        (row, index) ->
                                new Recorded(Rows.hash(row, "body_hash"), row.getInt("number")))
                .optional();
    }

    void insert(IdempotencyKey key, String bodyHash, int number) {
        database.sql(
                        """
                        INSERT INTO ledger.idempotency
                            (organisation, recorded_by, project_id, key, body_hash, number)
                        VALUES (:organisation, :recordedBy, :projectId, :key, :bodyHash, :number)
                        """)
                .param("organisation", key.organisation())
                .param("recordedBy", key.recordedBy())
                .param("projectId", key.projectId())
                .param("key", key.key())
                .param("bodyHash", Sha256.bytes(bodyHash))
                .param("number", number)
                .update();
    }

    void insert(Project project) {
        database.sql(
                        """
                        INSERT INTO ledger.project
                            (organisation, project_id, name, created_at, created_by)
                        VALUES (:organisation, :id, :name, :createdAt, :createdBy)
                        """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .param("name", project.name())
                .param("createdAt", Rows.utc(project.createdAt()))
                .param("createdBy", project.createdBy())
                .update();
    }

    void insert(Project project, Revision revision, List<Manifest.Bay> bays) {
        database.sql(
                        """
                        INSERT INTO ledger.revision (organisation, project_id, number,
                            previous_hash, hash, author, recorded_by, reason, engine_version,
                            recorded_at, verdict, document_shell, result_shell)
                        VALUES (:organisation, :id, :number, :previousHash, :hash, :author,
                            :recordedBy, :reason, :engineVersion, :recordedAt, :verdict,
                            :documentShell, :resultShell)
                        """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .param("number", revision.number())
                .param("previousHash", Sha256.bytes(revision.previousHash()))
                .param("hash", Sha256.bytes(revision.hash()))
                .param("author", revision.author())
                .param("recordedBy", revision.recordedBy())
                .param("reason", revision.reason())
                .param("engineVersion", revision.engineVersion())
                .param("recordedAt", Rows.utc(revision.recordedAt()))
                .param("verdict", revision.verdict())
                .param("documentShell", Sha256.bytes(revision.documentShell()))
                .param("resultShell", Sha256.bytes(revision.resultShell()))
                .update();
        insertChanges(project, revision.number(), bays);
    }

    /** Writes down the places at which not the same stands as in the revision before. */
    private void insertChanges(Project project, int number, List<Manifest.Bay> bays) {
        List<Manifest.Bay> before = store.bays(project, number - 1);
        List<@Nullable Object[]> rows = new ArrayList<>();
        for (int place = 0; place < Math.max(before.size(), bays.size()); place++) {
            Manifest.Bay bay = place < bays.size() ? bays.get(place) : null;
            if (bay == null || place >= before.size() || !bay.equals(before.get(place))) {
                rows.add(
                        new @Nullable Object[] {
                            project.organisation(),
                            project.id(),
                            number,
                            place,
                            bay == null ? null : bay.id(),
                            bay == null ? null : Sha256.bytes(bay.input()),
                            bay == null ? null : Sha256.bytes(bay.result())
                        });
            }
        }
        batches.batchUpdate(
                """
                INSERT INTO ledger.bay_change (organisation, project_id, number, place,
                    bay_id, input_hash, result_hash)
                VALUES (?, ?, ?, ?, ?, ?, ?)
                """,
                rows);
    }

    /**
     * Stores what is not stored yet. Always in the order of the hashes, so that two transactions
     * that store the same content wait for each other in one direction only.
     */
    void insertMissing(String organisation, Collection<Content> contents) {
        TreeMap<String, Content> missing = new TreeMap<>();
        contents.forEach(content -> missing.put(content.hash(), content));
        missing.keySet().removeAll(existing(organisation, missing.keySet()));
        batches.batchUpdate(
                """
                INSERT INTO ledger.content (organisation, hash, bytes) VALUES (?, ?, ?)
                ON CONFLICT (organisation, hash) DO NOTHING
                """,
                missing.values().stream()
                        .map(
                                content ->
                                        new Object[] {
                                            organisation,
                                            Sha256.bytes(content.hash()),
                                            content.bytes()
                                        })
                        .toList());
    }

    private Set<String> existing(String organisation, Collection<String> hashes) {
        Set<String> existing = new HashSet<>();
        for (List<byte[]> some : Rows.batches(hashes)) {
            existing.addAll(
                    database.sql(
                                    """
                                    SELECT hash FROM ledger.content
                                    WHERE organisation = :organisation AND hash IN (:hashes)
                                    """)
                            .param("organisation", organisation)
                            .param("hashes", some)
                            .query((row, index) -> Rows.hash(row, "hash"))
                            .list());
        }
        return existing;
    }
}
