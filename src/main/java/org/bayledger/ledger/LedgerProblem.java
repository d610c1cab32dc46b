package org.bayledger.ledger;

import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;

/** The ledger's refusals, each with the advice that goes with it. */
final class LedgerProblem {

    private LedgerProblem() {}

    static ErrorResponseException unknownProject() {
        return problem(HttpStatus.NOT_FOUND, "There is no project with this identifier.");
    }

    static ErrorResponseException unknownRevision() {
        return problem(HttpStatus.NOT_FOUND, "The project has no revision with this number.");
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
