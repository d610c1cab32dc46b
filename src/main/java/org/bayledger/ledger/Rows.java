package org.bayledger.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** Reads the rows of the ledger's tables, and writes what goes into them. */
final class Rows {

    /** Everything that {@link #revision} reads. */
    static final String REVISION_COLUMNS =
            """
            revision.number, hash, previous_hash, author, recorded_by, reason, engine_version,
            recorded_at, verdict, document_shell, result_shell
            """;

    private static final int BATCH = 500;

    private Rows() {}

    static Project project(ResultSet row, int index) throws SQLException {
        return new Project(
                row.getString("organisation"),
                row.getObject("project_id", UUID.class),
                row.getString("name"),
                instant(row, "created_at"),
                row.getString("created_by"));
    }

    static Revision revision(ResultSet row, int index) throws SQLException {
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

    static Manifest.Bay bay(ResultSet row, int index) throws SQLException {
        return new Manifest.Bay(
                row.getString("bay_id"), hash(row, "input_hash"), hash(row, "result_hash"));
    }

    /** A hash, in hexadecimal. */
    static String hash(ResultSet row, String column) throws SQLException {
        return Sha256.hexOf(row.getBytes(column));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }

    /** Hashes as the database keeps them, so many at a time that a statement takes them. */
    static List<List<byte[]>> batches(Collection<String> hashes) {
        List<byte[]> all = hashes.stream().map(Sha256::bytes).toList();
        List<List<byte[]>> batches = new ArrayList<>();
        for (int from = 0; from < all.size(); from += BATCH) {
            batches.add(all.subList(from, Math.min(from + BATCH, all.size())));
        }
        return batches;
    }
}
