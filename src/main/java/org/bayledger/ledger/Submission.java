package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.bayledger.check.Binder;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;

/**
 * A request to record a revision, reviewed and taken apart, ready to be chained.
 *
 * @param author as claimed
 * @param reason why
 * @param verdict the review's
 * @param document the document's parts
 * @param result the results' parts, bay for bay
 */
record Submission(String author, String reason, String verdict, Parts document, Parts result) {

    private static final String DOCUMENT = "/document";

    /**
     * Reviews a request's document.
     *
     * @param body the request's tree
     * @throws FaultsException with everything that is wrong with it
     */
    static Submission of(@Nullable Object body, Engine engine) {
        Faults faults = new Faults();
        CanonicalJson.requireExactNumbers(body, "", faults);
        RevisionRequest request = request(body, faults);
        Map<?, ?> document = document(body, faults);
        Supplier<Reviewed> review = document == null ? null : review(document, engine, faults);
        faults.throwIfAny();
        if (request == null || document == null || review == null) {
            throw new IllegalStateException("nothing read and nothing wrong");
        }
        Reviewed result = review.get();
        Parts documentParts = Parts.of(document);
        Parts resultParts = result.parts();
        if (!ids(documentParts).equals(ids(resultParts))) {
            throw new IllegalStateException("The results are not of the document's bays");
        }
        return new Submission(
                request.author(), request.reason(), result.verdict(), documentParts, resultParts);
    }

    private static @Nullable RevisionRequest request(@Nullable Object body, Faults faults) {
        try {
            return Binder.bind(body, RevisionRequest.class);
        } catch (FaultsException refused) {
            faults.addAll("", refused.faults());
            return null;
        }
    }

    private static @Nullable Map<?, ?> document(@Nullable Object body, Faults faults) {
        Object document = Trees.get(body, "document");
        if (document != null && !(document instanceof Map<?, ?>)) {
            faults.malformed(DOCUMENT, "must be a JSON object");
        }
        return document instanceof Map<?, ?> object ? object : null;
    }

    private static @Nullable Supplier<Reviewed> review(
            Map<?, ?> document, Engine engine, Faults faults) {
        try {
            return engine.review().apply(document);
        } catch (FaultsException refused) {
            faults.addAll(DOCUMENT, refused.faults());
            return null;
        }
    }

    private static List<String> ids(Parts parts) {
        return parts.bays().stream().map(Parts.Bay::id).toList();
    }

    /** Everything to be stored. */
    List<Content> contents() {
        List<Content> contents = new ArrayList<>();
        for (Parts parts : List.of(document, result)) {
            contents.add(parts.shell());
            parts.bays().forEach(bay -> contents.add(bay.content()));
        }
        return contents;
    }

    /** The results of each bay. */
    List<Content> results() {
        return result.bays().stream().map(Parts.Bay::content).toList();
    }

    /** The hashes of the bays, for the manifest. */
    List<Manifest.Bay> bays() {
        List<Manifest.Bay> bays = new ArrayList<>();
        for (int i = 0; i < document.bays().size(); i++) {
            bays.add(
                    new Manifest.Bay(
                            document.bays().get(i).id(),
                            document.bays().get(i).content().hash(),
                            result.bays().get(i).content().hash()));
        }
        return bays;
    }
}
