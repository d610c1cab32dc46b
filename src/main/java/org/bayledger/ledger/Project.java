package org.bayledger.ledger;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;

/**
 * A project as it was created; nothing of it changes later.
 *
 * @param organisation whose it is
 * @param id its identifier
 * @param name what its creator called it
 * @param createdAt when, to the microsecond
 * @param createdBy who, as authenticated
 */
record Project(String organisation, UUID id, String name, Instant createdAt, String createdBy) {

    static final String VERSION = "bayledger-project-1";

    /** The canonical bytes that the genesis hash is over: everything stored of the project. */
    byte[] canonical() {
        return CanonicalJson.bytes(
                Map.of(
                        "version", VERSION,
                        "organisation", organisation,
                        "projectId", id.toString(),
                        "name", name,
                        "createdAt", Instants.text(createdAt),
                        "createdBy", createdBy));
    }

    /**
     * What the first revision names as the one before it, and the head of a project that has none.
     * It is over everything stored of the project, so neither can be passed off as another's.
     */
    String genesisHash() {
        return Sha256.hex(canonical());
    }
}
