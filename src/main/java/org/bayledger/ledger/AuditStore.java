package org.bayledger.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The SQL by which a chain is walked, and one bay followed through it. */
@Component
class AuditStore {

    /** Where a bay stood, from which revision on, and from which on something else stood there. */
    static final String STANDINGS =
            """
            SELECT number, result_hash, (
                SELECT min(later.number) FROM ledger.bay_change later
                WHERE later.organisation = :organisation AND later.project_id = :id
                  AND later.place = bay_change.place AND later.number > bay_change.number)
                AS replaced
            FROM ledger.bay_change
            WHERE organisation = :organisation AND project_id = :id AND bay_id = :bay
            ORDER BY number
            """;

    /** Revisions by their numbers. */
    static final String NUMBERED =
            "SELECT "
                    + Rows.REVISION_COLUMNS
                    + """
                    FROM ledger.revision
                    WHERE organisation = :organisation AND project_id = :id AND number IN (:numbers)
                    """;

    private final JdbcClient database;

    AuditStore(JdbcClient database) {
        this.database = database;
    }

    /**
     * A row that says what stands at a place of the list of bays from a revision on.
     *
     * @param number number of the revision
     * @param place 0 for the first
     * @param bay the bay, or null where the list no longer reaches the place
     */
    record BayChange(int number, int place, Manifest.@Nullable Bay bay) {}

    /** Number at which a page of revisions ends; the end of the range where none follow. */
    int endOfPage(Project project, int after, int to, int count) {
        return between(
                        project,
                        """
                        SELECT coalesce(max(number), :to) FROM (
                            SELECT number FROM ledger.revision
                            WHERE organisation = :organisation AND project_id = :id
                              AND number > :after AND number <= :to
                            ORDER BY number LIMIT :count) AS page
                        """,
                        after,
                        to)
                .param("count", count)
                .query(Integer.class)
                .single();
    }

    /** Whether after a number bays are laid down for revisions that are not there. */
    boolean hasStrayChangesAfter(Project project, int number) {
        return of(
                        project,
                        """
                        SELECT EXISTS (
                            SELECT 1 FROM ledger.bay_change stray
                            WHERE organisation = :organisation AND project_id = :id
                              AND number > :after
                              AND NOT EXISTS (
                                SELECT 1 FROM ledger.revision
                                WHERE organisation = :organisation AND project_id = :id
                                  AND revision.number = stray.number))
                        """)
                .param("after", number)
                .query(Boolean.class)
                .single();
    }

    /** Every row of revisions in a range of numbers, whatever the tables once forbade. */
    List<Revision> revisions(Project project, int after, int to) {
        return between(
                        project,
                        "SELECT "
                                + Rows.REVISION_COLUMNS
                                + """
                                FROM ledger.revision
                                WHERE organisation = :organisation AND project_id = :id
                                  AND number > :after AND number <= :to
                                ORDER BY number
                                """,
                        after,
                        to)
                .query(Rows::revision)
                .list();
    }

    /** Every row of what changed in the lists of bays, in a range of numbers. */
    List<BayChange> changes(Project project, int after, int to) {
        return between(
                        project,
                        """
                        SELECT number, place, bay_id, input_hash, result_hash
                        FROM ledger.bay_change
                        WHERE organisation = :organisation AND project_id = :id
                          AND number > :after AND number <= :to
                        ORDER BY number, place
                        """,
                        after,
                        to)
                .query(
                        (row, index) ->
                                new BayChange(
                                        row.getInt("number"),
                                        row.getInt("place"),
                                        row.getString("bay_id") == null
                                                ? null
                                                : Rows.bay(row, index)))
                .list();
    }

    /** Where a bay stood. */
    List<Standing> standings(Project project, String bay) {
        return of(project, STANDINGS)
                .param("bay", bay)
                .query(
                        (row, index) ->
                                new Standing(
                                        row.getInt("number"),
                                        Rows.hash(row, "result_hash"),
                                        row.getObject("replaced", Integer.class)))
                .list();
    }

    /**
     * A bay at a place.
     *
     * @param number revision from which on it stood there with these results
     * @param result hash of its results
     * @param replaced revision from which on something else stood there; null where nothing did
     */
    record Standing(int number, String result, @Nullable Integer replaced) {}

    /** Revisions by their numbers; those that are not there are left out. */
    Map<Integer, Revision> numbered(Project project, Collection<Integer> numbers) {
        Map<Integer, Revision> found = new HashMap<>();
        if (!numbers.isEmpty()) {
            of(project, NUMBERED)
                    .param("numbers", numbers)
                    .query(Rows::revision)
                    .list()
                    .forEach(revision -> found.put(revision.number(), revision));
        }
        return found;
    }

    private JdbcClient.StatementSpec between(Project project, String sql, int after, int to) {
        return of(project, sql).param("after", after).param("to", to);
    }

    private JdbcClient.StatementSpec of(Project project, String sql) {
        return database.sql(sql)
                .param("organisation", project.organisation())
                .param("id", project.id());
    }
}
