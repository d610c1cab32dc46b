package org.bayledger.ledger;

import java.net.URI;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;

/** The ledger's refusals, each with the advice that goes with it. */
final class LedgerProblem {

    /** How many of what there is an advice names. */
    private static final int NAMED = 20;

    /** How much of what was asked for an answer repeats. */
    private static final int SHOWN = 100;

    private LedgerProblem() {}

    static ErrorResponseException unknownProject() {
        return problem(
                HttpStatus.NOT_FOUND,
                "There is no project with this identifier; GET /v1/projects lists those that there are.");
    }

    static ErrorResponseException unknownRevision() {
        return problem(
                HttpStatus.NOT_FOUND,
                "The project has no revision with this number; GET .../revisions of the project lists"
                        + " those that there are, 1 for the first.");
    }

    /**
     * @param newest bays of the newest revision
     */
    static ErrorResponseException unknownBay(String bay, List<String> newest) {
        return problem(
                HttpStatus.NOT_FOUND,
                "No revision of the project has a bay %s. %s"
                        .formatted(
                                shown(bay),
                                newest.isEmpty()
                                        ? "Its newest revision has none."
                                        : "Bays of its newest revision: " + some(newest)));
    }

    /**
     * @param known the items that there were
     */
    static ErrorResponseException unknownItem(String bay, String item, List<String> known) {
        return problem(
                HttpStatus.NOT_FOUND,
                "Bay %s has an item %s in no revision. Items of the bay: %s"
                        .formatted(shown(bay), shown(item), some(known)));
    }

    /**
     * @param known the checks that there were
     */
    static ErrorResponseException unknownCheck(String item, String check, List<String> known) {
        return problem(
                HttpStatus.NOT_FOUND,
                "%s has no check %s in any revision. Its checks: %s"
                        .formatted(shown(item), shown(check), some(known)));
    }

    private static String shown(String asked) {
        return asked.length() > SHOWN ? asked.substring(0, SHOWN) + "..." : asked;
    }

    private static String some(List<String> names) {
        String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        return names.size() > NAMED
                ? first + " and " + (names.size() - NAMED) + " more."
                : first + ".";
    }

    static ErrorResponseException preconditionRequired() {
        return problem(
                HttpStatus.PRECONDITION_REQUIRED,
                "Send If-Match with the ETag of the project's newest revision, or If-None-Match: *"
                        + " for its first, so that nobody's revision is passed over unseen.");
    }

    static ErrorResponseException preconditionFailed() {
        return problem(
                HttpStatus.PRECONDITION_FAILED,
                "The project's newest revision is not the one that the precondition names; nothing"
                        + " was recorded. Read the project, look at what changed, and send its"
                        + " ETag.");
    }

    static ErrorResponseException keyReused() {
        ErrorResponseException reused =
                problem(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "This Idempotency-Key has recorded another body; nothing was recorded. Use a"
                                + " new key.");
        // 422 has another kind of its own: a body outside the rules
        reused.setType(URI.create("/problems/idempotency-key-reused"));
        reused.setTitle("The Idempotency-Key has recorded another body");
        return reused;
    }

    static ErrorResponseException stillRunning() {
        return problem(
                HttpStatus.CONFLICT,
                "A request with this Idempotency-Key is still running. Send it again later; it will"
                        + " be answered as the first one was.");
    }

    private static ErrorResponseException problem(HttpStatus status, String detail) {
        return new ErrorResponseException(
                status, ProblemDetail.forStatusAndDetail(status, detail), null);
    }
}
