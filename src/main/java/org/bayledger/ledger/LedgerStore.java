package org.bayledger.ledger;

import java.nio.ByteBuffer;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The ledger's SQL: it selects and inserts; the login it runs under can do no more. */
@Component
class LedgerStore {

    private static final String REVISION_COLUMNS =
            """
            number, hash, previous_hash, author, recorded_by, reason, engine_version, recorded_at,
            verdict, document_shell, result_shell
            """;

    private static final int BATCH = 500;

    private final JdbcTemplate batches;
    private final JdbcClient database;

    LedgerStore(JdbcTemplate batches) {
        this.batches = batches;
        this.database = JdbcClient.create(batches);
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
                .param("createdAt", utc(project.createdAt()))
                .param("createdBy", project.createdBy())
                .update();
    }

    Optional<Project> project(String organisation, UUID id) {
        return database.sql(
                        """
                        SELECT organisation, project_id, name, created_at, created_by
                        FROM ledger.project
                        WHERE organisation = :organisation AND project_id = :id
                        """)
                .param("organisation", organisation)
                .param("id", id)
                .query(LedgerStore::project)
                .optional();
    }

    /** Projects in the order of their creation, from after a given one. */
    List<Project> projects(String organisation, Instant createdAfter, UUID idAfter, int count) {
        return database.sql(
                        """
                        SELECT organisation, project_id, name, created_at, created_by
                        FROM ledger.project
                        WHERE organisation = :organisation
                          AND (created_at, project_id) > (:createdAfter, :idAfter)
                        ORDER BY created_at, project_id
                        LIMIT :count
                        """)
                .param("organisation", organisation)
                .param("createdAfter", utc(createdAfter))
                .param("idAfter", idAfter)
                .param("count", count)
                .query(LedgerStore::project)
                .list();
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
                .query((row, number) -> new Recorded(hash(row, "body_hash"), row.getInt("number")))
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

    Head head(Project project) {
        return newest(project)
                .map(newest -> new Head(newest.number(), newest.hash(), newest.recordedAt()))
                .orElseGet(() -> new Head(0, project.genesisHash(), null));
    }

    Optional<Revision> newest(Project project) {
        return database.sql(
                        "SELECT "
                                + REVISION_COLUMNS
                                + """
                                FROM ledger.revision
                                WHERE organisation = :organisation AND project_id = :id
                                ORDER BY number DESC LIMIT 1
                                """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .query(LedgerStore::revision)
                .optional();
    }

    Optional<Revision> revision(Project project, int number) {
        return revisions(project, number - 1, 1).stream()
                .filter(revision -> revision.number() == number)
                .findFirst();
    }

    /** Revisions in the order of their numbers, from after a given one. */
    List<Revision> revisions(Project project, int numberAfter, int count) {
        return database.sql(
                        "SELECT "
                                + REVISION_COLUMNS
                                + """
                                FROM ledger.revision
                                WHERE organisation = :organisation AND project_id = :id
                                  AND number > :after
                                ORDER BY number LIMIT :count
                                """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .param("after", numberAfter)
                .param("count", count)
                .query(LedgerStore::revision)
                .list();
    }

    /** The hashes of a revision's bays, in their order. */
    List<Manifest.Bay> bays(Project project, int number) {
        return database.sql(
                        """
                        SELECT bay_id, input_hash, result_hash FROM ledger.revision_bay
                        WHERE organisation = :organisation AND project_id = :id
                          AND number = :number
                        ORDER BY position
                        """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .param("number", number)
                .query(
                        (row, index) ->
                                new Manifest.Bay(
                                        row.getString("bay_id"),
                                        hash(row, "input_hash"),
                                        hash(row, "result_hash")))
                .list();
    }

    /** Whether a revision's bays are numbered from 0 without a gap. */
    boolean positionsAreWhole(Project project, int number, int count) {
        return database.sql(
                        """
                        SELECT count(*) = :count AND coalesce(max(position), -1) = :count - 1
                        FROM ledger.revision_bay
                        WHERE organisation = :organisation AND project_id = :id
                          AND number = :number
                        """)
                .param("organisation", project.organisation())
                .param("id", project.id())
                .param("number", number)
                .param("count", count)
                .query(Boolean.class)
                .single();
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
                .param("recordedAt", utc(revision.recordedAt()))
                .param("verdict", revision.verdict())
                .param("documentShell", Sha256.bytes(revision.documentShell()))
                .param("resultShell", Sha256.bytes(revision.resultShell()))
                .update();
        List<Object[]> rows = new ArrayList<>();
        for (int position = 0; position < bays.size(); position++) {
            Manifest.Bay bay = bays.get(position);
            rows.add(
                    new Object[] {
                        project.organisation(),
                        project.id(),
                        revision.number(),
                        position,
                        bay.id(),
                        Sha256.bytes(bay.input()),
                        Sha256.bytes(bay.result())
                    });
        }
        batches.batchUpdate(
                """
                INSERT INTO ledger.revision_bay (organisation, project_id, number, position,
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
        for (List<byte[]> some : batches(hashes)) {
            existing.addAll(
                    database.sql(
                                    """
                                    SELECT hash FROM ledger.content
                                    WHERE organisation = :organisation AND hash IN (:hashes)
                                    """)
                            .param("organisation", organisation)
                            .param("hashes", some)
                            .query((row, number) -> hash(row, "hash"))
                            .list());
        }
        return existing;
    }

    /** Stored bytes by the hash they are stored under, which only a verification recomputes. */
    Map<String, byte[]> contents(String organisation, Collection<String> hashes) {
        Map<String, byte[]> found = new HashMap<>();
        for (List<byte[]> some : batches(new HashSet<>(hashes))) {
            database.sql(
                            """
                            SELECT hash, bytes FROM ledger.content
                            WHERE organisation = :organisation AND hash IN (:hashes)
                            """)
                    .param("organisation", organisation)
                    .param("hashes", some)
                    .query(
                            row -> {
                                found.put(hash(row, "hash"), row.getBytes("bytes"));
                            });
        }
        return found;
    }

    private static List<List<byte[]>> batches(Collection<String> hashes) {
        List<byte[]> all = hashes.stream().map(Sha256::bytes).toList();
        List<List<byte[]>> batches = new ArrayList<>();
        for (int from = 0; from < all.size(); from += BATCH) {
            batches.add(all.subList(from, Math.min(from + BATCH, all.size())));
        }
        return batches;
    }

    private static Project project(ResultSet row, int number) throws SQLException {
        return new Project(
                row.getString("organisation"),
                row.getObject("project_id", UUID.class),
                row.getString("name"),
                instant(row, "created_at"),
                row.getString("created_by"));
    }

    private static Revision revision(ResultSet row, int number) throws SQLException {
        return new Revision(
                row.getInt("number"),
                hash(row, "hash"),
                hash(row, "previous_hash"),
                row.getString("author"),
                row.getString("recorded_by"),
                row.getString("reason"),
                row.getString("engine_version"),
                instant(row, "recorded_at"),
                row.getString("verdict"),
                hash(row, "document_shell"),
                hash(row, "result_shell"));
    }

    private static String hash(ResultSet row, String column) throws SQLException {
        return Sha256.hexOf(row.getBytes(column));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }

    /** 64 bits of a hash over the parts; a collision only makes two writers wait or try again. */
    private static long lockKey(String... parts) {
        return ByteBuffer.wrap(Sha256.digest(CanonicalJson.bytes(List.of((Object[]) parts))))
                .getLong();
    }
}
