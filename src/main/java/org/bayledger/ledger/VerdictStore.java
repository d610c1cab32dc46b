package org.bayledger.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bayledger.check.StrictJson;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The SQL of the verdicts' digests: read, or made from the results where one is not stored. */
@Component
class VerdictStore {

    private static final int BATCH = 500;

    private final JdbcTemplate batches;
    private final JdbcClient database;
    private final LedgerStore store;

    VerdictStore(JdbcTemplate batches, LedgerStore store) {
        this.batches = batches;
        this.database = JdbcClient.create(batches);
        this.store = store;
    }

    /** Stores digests that are not stored yet, always in the order of their results' hashes. */
    void insertMissing(String organisation, Map<String, byte[]> digests) {
        Map<String, byte[]> missing = new TreeMap<>(digests);
        missing.keySet().removeAll(stored(organisation, digests.keySet()).keySet());
        batches.batchUpdate(
                """
                INSERT INTO ledger.result_verdicts (organisation, result_hash, bytes)
                VALUES (?, ?, ?) ON CONFLICT (organisation, result_hash) DO NOTHING
                """,
                missing.entrySet().stream()
                        .map(
                                digest ->
                                        new Object[] {
                                            organisation,
                                            Sha256.bytes(digest.getKey()),
                                            digest.getValue()
                                        })
                        .toList());
    }

    /** The verdicts of bays' results, by the hash of the results. */
    Map<String, List<ItemVerdict>> verdicts(String organisation, Collection<String> results) {
        Map<String, List<ItemVerdict>> found = new HashMap<>();
        stored(organisation, results)
                .forEach((hash, digest) -> found.put(hash, ItemVerdict.read(digest)));
        Set<String> others = new HashSet<>(results);
        others.removeAll(found.keySet());
        store.contents(organisation, others)
                .forEach(
                        (hash, result) -> found.put(hash, ItemVerdict.of(StrictJson.read(result))));
        return found;
    }

    /** Digests as they are stored, by the hash of the results. */
    Map<String, byte[]> stored(String organisation, Collection<String> results) {
        Map<String, byte[]> found = new HashMap<>();
        List<byte[]> all = new HashSet<>(results).stream().map(Sha256::bytes).toList();
        for (int from = 0; from < all.size(); from += BATCH) {
            database.sql(
                            """
                            SELECT result_hash, bytes FROM ledger.result_verdicts
                            WHERE organisation = :organisation AND result_hash IN (:hashes)
                            """)
                    .param("organisation", organisation)
                    .param("hashes", all.subList(from, Math.min(from + BATCH, all.size())))
                    .query(
                            row -> {
                                found.put(
                                        Sha256.hexOf(row.getBytes("result_hash")),
                                        row.getBytes("bytes"));
                            });
        }
        return found;
    }
}
