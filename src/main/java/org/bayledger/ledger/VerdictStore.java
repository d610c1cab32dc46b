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

    /** Digests by the hashes of their results. */
    static final String STORED =
            """
            SELECT result_hash, bytes FROM ledger.result_verdicts
            WHERE organisation = :organisation AND result_hash IN (:hashes)
            """;

    private static final int BATCH = 500;

    /** Results that are in memory at once. */
    private static final int AT_ONCE = 10;

    private final JdbcTemplate batches;
    private final JdbcClient database;
    private final LedgerStore store;

    VerdictStore(JdbcTemplate batches, LedgerStore store) {
        this.batches = batches;
        this.database = JdbcClient.create(batches);
        this.store = store;
    }

    /**
     * Stores digests of bays' results that have none yet, always in the order of the results'
     * hashes.
     */
    void insertMissing(String organisation, Collection<Content> results) {
        Map<String, Content> missing = new TreeMap<>();
        results.forEach(result -> missing.put(result.hash(), result));
        missing.keySet().removeAll(stored(organisation, List.copyOf(missing.keySet())).keySet());
        batches.batchUpdate(
                """
                INSERT INTO ledger.result_verdicts (organisation, result_hash, bytes)
                VALUES (?, ?, ?) ON CONFLICT (organisation, result_hash) DO NOTHING
                """,
                missing.values().parallelStream()
                        .map(
                                result ->
                                        new Object[] {
                                            organisation,
                                            Sha256.bytes(result.hash()),
                                            ItemDigest.digest(result.bytes())
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

    /** The checks in bays' results in short, by the hash of the results. */
    Map<String, List<ItemDigest>> digests(String organisation, Collection<String> results) {
        Map<String, List<ItemDigest>> found = new HashMap<>();
        stored(organisation, results)
                .forEach(
                        (hash, digest) -> {
                            List<ItemDigest> items = ItemDigest.read(digest);
                            if (items != null) {
                                found.put(hash, items);
                            }
                        });
        List<String> others =
                results.stream().distinct().filter(hash -> !found.containsKey(hash)).toList();
        for (int from = 0; from < others.size(); from += AT_ONCE) {
            List<String> some = others.subList(from, Math.min(from + AT_ONCE, others.size()));
            Map<String, byte[]> contents = store.contents(organisation, some);
            for (String hash : some) {
                found.put(hash, ItemDigest.of(Wholes.content(contents, hash)));
            }
        }
        return found;
    }

    /** Digests as they are stored, by the hash of the results. */
    Map<String, byte[]> stored(String organisation, Collection<String> results) {
        Map<String, byte[]> found = new HashMap<>();
        List<byte[]> all = new HashSet<>(results).stream().map(Sha256::bytes).toList();
        for (int from = 0; from < all.size(); from += BATCH) {
            database.sql(STORED)
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
