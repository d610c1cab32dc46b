package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a revision's hash is over. The format is published and never changes: another format gets
 * another version tag, so that an old revision verifies for ever.
 *
 * @param version tag of this format
 * @param organisation whose project it is
 * @param projectId the project
 * @param number 1 for the first revision
 * @param previousHash hash of the revision before, or the project's genesis hash
 * @param author as claimed in the request
 * @param recordedBy as authenticated
 * @param reason why it was recorded
 * @param engineVersion what computed the results
 * @param recordedAt when, to the microsecond, always with six decimals
 * @param documentShell hash of the document without its bays
 * @param resultShell hash of the results without their bays
 * @param bays the bays in their order
 */
record Manifest(
        String version,
        String organisation,
        String projectId,
        int number,
        String previousHash,
        String author,
        String recordedBy,
        String reason,
        String engineVersion,
        String recordedAt,
        String documentShell,
        String resultShell,
        List<Bay> bays) {

    static final String VERSION = "bayledger-revision-1";

    /**
     * A bay of the manifest.
     *
     * @param id the bay's identifier
     * @param input hash of its input
     * @param result hash of its results
     */
    record Bay(String id, String input, String result) {}

    Manifest {
        bays = List.copyOf(bays);
    }

    /** The manifest's canonical bytes. */
    byte[] canonical() {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("version", version);
        tree.put("organisation", organisation);
        tree.put("projectId", projectId);
        tree.put("number", BigDecimal.valueOf(number));
        tree.put("previousHash", previousHash);
        tree.put("author", author);
        tree.put("recordedBy", recordedBy);
        tree.put("reason", reason);
        tree.put("engineVersion", engineVersion);
        tree.put("recordedAt", recordedAt);
        tree.put("documentShell", documentShell);
        tree.put("resultShell", resultShell);
        tree.put("bays", bays.stream().map(Manifest::tree).toList());
        return CanonicalJson.bytes(tree);
    }

    private static Map<String, Object> tree(Bay bay) {
        return Map.of("id", bay.id(), "input", bay.input(), "result", bay.result());
    }

    /** The revision's hash. */
    String hash() {
        return Sha256.hex(canonical());
    }
}
