package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.springframework.stereotype.Component;

/** Rebuilds recorded documents and results, byte for byte, from the content they share. */
@Component
class Wholes {

    private final LedgerStore store;

    Wholes(LedgerStore store) {
        this.store = store;
    }

    /** The canonical bytes of a revision's document. */
    byte[] document(Project project, Revision revision, List<Manifest.Bay> bays) {
        return whole(project, revision.documentShell(), bays, Manifest.Bay::input);
    }

    /** The canonical bytes of a revision's results. */
    byte[] result(Project project, Revision revision, List<Manifest.Bay> bays) {
        return whole(project, revision.resultShell(), bays, Manifest.Bay::result);
    }

    private byte[] whole(
            Project project,
            String shellHash,
            List<Manifest.Bay> bays,
            Function<Manifest.Bay, String> hashOf) {
        List<String> hashes = new ArrayList<>(bays.stream().map(hashOf).toList());
        hashes.add(shellHash);
        Map<String, byte[]> contents = store.contents(project.organisation(), hashes);
        return Parts.join(
                content(contents, shellHash),
                bays.stream().map(bay -> content(contents, hashOf.apply(bay))).toList());
    }

    static byte[] content(Map<String, byte[]> contents, String hash) {
        byte[] bytes = contents.get(hash);
        if (bytes == null) {
            throw new IllegalStateException("Content " + hash + " is missing from the ledger");
        }
        return bytes;
    }
}
