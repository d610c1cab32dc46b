package org.bayledger.ledger;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The SQL by which projects, revisions and their content are read. */
@Component
class LedgerStore {

    /** Revisions in the order of their numbers, from after a given one. */
    static final String REVISIONS =
            "SELECT "
                    + Rows.REVISION_COLUMNS
                    + """
                    FROM ledger.revision
                    WHERE organisation = :organisation AND project_id = :id AND number > :after
                    ORDER BY number LIMIT :count
                    """;

    /** The last revision. */
    static final String NEWEST =
            "SELECT "
                    + Rows.REVISION_COLUMNS
                    + """
                    FROM ledger.revision
                    WHERE organisation = :organisation AND project_id = :id
                    ORDER BY number DESC LIMIT 1
                    """;

    /** What stands at each place as of a revision: one step into the index for each place. */
    static final String BAYS =
            """
            SELECT standing.bay_id, standing.input_hash, standing.result_hash
            FROM generate_series(0, (
                SELECT max(place) FROM ledger.bay_change
                WHERE organisation = :organisation AND project_id = :id)) AS at(place)
            CROSS JOIN LATERAL (
                SELECT bay_id, input_hash, result_hash FROM ledger.bay_change
                WHERE organisation = :organisation AND project_id = :id
                  AND bay_change.place = at.place AND number <= :number
                ORDER BY number DESC LIMIT 1) AS standing
            WHERE standing.bay_id IS NOT NULL
            ORDER BY at.place
            """;

    /** Stored bytes by their hashes. */
    static final String CONTENTS =
            """
            SELECT hash, bytes FROM ledger.content
            WHERE organisation = :organisation AND hash IN (:hashes)
            """;

    /** Projects in the order of their creation, from after a given one. */
    static final String PROJECTS =
            """
            SELECT organisation, project_id, name, created_at, created_by
            FROM ledger.project
            WHERE organisation = :organisation
              AND (created_at, project_id) > (:createdAfter, :idAfter)
            ORDER BY created_at, project_id
            LIMIT :count
            """;

    private final JdbcClient database;

    LedgerStore(JdbcClient database) {
        this.database = database;
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
                .query(Rows::project)
                .optional();
    }

    /** Projects in the order of their creation, from after a given one. */
    List<Project> projects(String organisation, Instant createdAfter, UUID idAfter, int count) {
        return database.sql(PROJECTS)
                .param("organisation", organisation)
                .param("createdAfter", Rows.utc(createdAfter))
                .param("idAfter", idAfter)
                .param("count", count)
                .query(Rows::project)
                .list();
    }

    Head head(Project project) {
        return newest(project)
                .map(newest -> new Head(newest.number(), newest.hash(), newest.recordedAt()))
                .orElseGet(() -> new Head(0, project.genesisHash(), null));
    }

    private Optional<Revision> newest(Project project) {
        return of(project, NEWEST).query(Rows::revision).optional();
    }

    Optional<Revision> revision(Project project, int number) {
        return revisions(project, number - 1, 1).stream()
                .filter(revision -> revision.number() == number)
                .findFirst();
    }

    /** Revisions in the order of their numbers, from after a given one. */
    List<Revision> revisions(Project project, int numberAfter, int count) {
        return of(project, REVISIONS)
                .param("after", numberAfter)
                .param("count", count)
                .query(Rows::revision)
                .list();
    }

    /** The bays of a revision, in their order. */
    List<Manifest.Bay> bays(Project project, int number) {
        return of(project, BAYS).param("number", number).query(Rows::bay).list();
    }

    private JdbcClient.StatementSpec of(Project project, String sql) {
        return database.sql(sql)
                .param("organisation", project.organisation())
                .param("id", project.id());
    }

    /** Stored bytes by the hash they are stored under, which only a verification recomputes. */
    Map<String, byte[]> contents(String organisation, Collection<String> hashes) {
        Map<String, byte[]> found = new HashMap<>();
        for (List<byte[]> some : Rows.batches(new HashSet<>(hashes))) {
            database.sql(CONTENTS)
                    .param("organisation", organisation)
                    .param("hashes", some)
                    .query(
                            row -> {
                                found.put(Rows.hash(row, "hash"), row.getBytes("bytes"));
                            });
        }
        return found;
    }
}
