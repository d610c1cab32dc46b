package org.bayledger.ledger;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Recomputes every hash of a chain from the stored bytes. */
@Component
class Verifier {

    /** Contents that are held in memory at once. */
    private static final int AT_ONCE = 100;

    private final LedgerStore store;
    private final AuditStore audit;
    private final VerdictStore verdicts;

    Verifier(LedgerStore store, AuditStore audit, VerdictStore verdicts) {
        this.store = store;
        this.audit = audit;
        this.verdicts = verdicts;
    }

    /** Verifies a whole chain. */
    Verification verify(Project project) {
        Head head = store.head(project);
        Optional<Verification.Fault> fault = new Walk(project, head.size(), null).firstFault();
        return answer(head, fault.orElse(null), null);
    }

    /**
     * Verifies a whole chain and holds it against a checkpoint that was kept elsewhere, which is
     * what shows a truncated or wholly rewritten chain.
     */
    Verification verify(Project project, int size, String headHash) {
        Head head = store.head(project);
        Walk walk = new Walk(project, head.size(), size);
        Verification.Fault fault = walk.firstFault().orElse(null);
        boolean held = headHash.equals(walk.hashAtHeldSize);
        if (fault == null && !held) {
            fault =
                    size > head.size()
                            ? new Verification.Fault(
                                    head.size() + 1,
                                    "revision "
                                            + (head.size() + 1)
                                            + " is missing: the held"
                                            + " checkpoint was taken at "
                                            + size
                                            + " revisions")
                            : new Verification.Fault(
                                    size,
                                    "the chain does not have the held checkpoint's head at size "
                                            + size
                                            + ": this revision or an earlier one was"
                                            + " replaced");
        }
        return answer(head, fault, new Verification.HeldCheckpoint(size, headHash, held));
    }

    private static Verification answer(
            Head head,
            Verification.@Nullable Fault fault,
            Verification.@Nullable HeldCheckpoint checkpoint) {
        return new Verification(
                fault == null,
                head.size(),
                head.hash(),
                fault == null ? null : fault.number(),
                fault == null ? null : fault.reason(),
                checkpoint);
    }

    /** One walk along a chain. */
    private final class Walk {

        private final Project project;
        private final int end;
        private final @Nullable Integer heldSize;

        /** Content whose bytes were hashed already in this walk. */
        private final Set<String> sound = new HashSet<>();

        private @Nullable String hashAtHeldSize;

        Walk(Project project, int end, @Nullable Integer heldSize) {
            this.project = project;
            this.end = end;
            this.heldSize = heldSize;
        }

        Optional<Verification.Fault> firstFault() {
            String expectedPrevious = project.genesisHash();
            noteHead(0, expectedPrevious);
            int number = 0;
            for (Chain chain = new Chain(audit, project, end); chain.hasNext(); ) {
                Chain.Link link = chain.next();
                Verification.Fault fault = faultOf(link, number, expectedPrevious);
                if (fault != null) {
                    return Optional.of(fault);
                }
                number++;
                expectedPrevious = link.revision().hash();
                noteHead(number, expectedPrevious);
            }
            return audit.hasStrayChangesAfter(project, end)
                    ? Optional.of(
                            new Verification.Fault(
                                    end + 1, "bays are laid down for it, but it was not recorded"))
                    : Optional.empty();
        }

        private Verification.@Nullable Fault faultOf(
                Chain.Link link, int before, String expectedPrevious) {
            int number = link.revision().number();
            if (number > before + 1) {
                return new Verification.Fault(before + 1, "the revision is missing");
            }
            if (number <= before) {
                return new Verification.Fault(
                        Math.max(number, 1),
                        "a second row has its number, or one before the first");
            }
            String reason = reasonAgainst(link, expectedPrevious);
            return reason == null ? null : new Verification.Fault(number, reason);
        }

        private void noteHead(int size, String hash) {
            if (heldSize != null && heldSize == size) {
                hashAtHeldSize = hash;
            }
        }

        private @Nullable String reasonAgainst(Chain.Link link, String expectedPrevious) {
            Revision revision = link.revision();
            if (!revision.previousHash().equals(expectedPrevious)) {
                return "its previousHash is not the hash of what comes before it";
            }
            if (link.fault() != null) {
                return link.fault();
            }
            if (!link.manifest(project).hash().equals(revision.hash())) {
                return "its hash is not that of its manifest";
            }
            String unsound = unsoundContent(revision, link.bays());
            return unsound != null ? unsound : verdictDiffers(revision);
        }

        private @Nullable String unsoundContent(Revision revision, List<Manifest.Bay> bays) {
            Set<String> wanted = new LinkedHashSet<>();
            wanted.add(revision.documentShell());
            wanted.add(revision.resultShell());
            bays.forEach(bay -> wanted.add(bay.input()));
            Set<String> results =
                    bays.stream().map(Manifest.Bay::result).collect(Collectors.toSet());
            wanted.addAll(results);
            wanted.removeAll(sound);
            List<String> all = List.copyOf(wanted);
            for (int from = 0; from < all.size(); from += AT_ONCE) {
                List<String> some = all.subList(from, Math.min(from + AT_ONCE, all.size()));
                String unsound = unsoundAmong(some, results);
                if (unsound != null) {
                    return unsound;
                }
            }
            return null;
        }

        private @Nullable String unsoundAmong(List<String> wanted, Set<String> results) {
            Map<String, byte[]> stored = store.contents(project.organisation(), wanted);
            Map<String, byte[]> digests = verdicts.stored(project.organisation(), wanted);
            for (String hash : wanted) {
                byte[] bytes = stored.get(hash);
                if (bytes == null) {
                    return "content " + hash + " is missing";
                }
                if (!Sha256.hex(bytes).equals(hash)) {
                    return "the bytes stored as content " + hash + " have another hash";
                }
                byte[] digest = digests.get(hash);
                if (digest != null
                        && results.contains(hash)
                        && !Arrays.equals(digest, ItemDigest.digest(bytes))
                        && !Arrays.equals(
                                digest,
                                ItemVerdict.digest(ItemVerdict.of(StrictJson.read(bytes))))) {
                    return "the verdicts stored in short for results "
                            + hash
                            + " are not those in the results";
                }
            }
            sound.addAll(wanted);
            return null;
        }

        /**
         * The verdict column serves lists; what counts is the results, which are under the hash.
         */
        private @Nullable String verdictDiffers(Revision revision) {
            byte[] shell =
                    store.contents(project.organisation(), List.of(revision.resultShell()))
                            .get(revision.resultShell());
            return shell != null
                            && StrictJson.read(shell) instanceof Map<?, ?> result
                            && revision.verdict().equals(String.valueOf(result.get("verdict")))
                    ? null
                    : "its verdict is not the one in its results";
        }
    }
}
