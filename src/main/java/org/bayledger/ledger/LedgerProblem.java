package org.bayledger.ledger;

import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;

/** The ledger's refusals, each with its own problem type. */
final class LedgerProblem {

    private LedgerProblem() {}

    static ErrorResponseException unknownProject() {
        return problem(
                HttpStatus.NOT_FOUND,
                "unknown-project",
                "No such project",
                "There is no project with this identifier.");
    }

    static ErrorResponseException unknownRevision() {
        return problem(
                HttpStatus.NOT_FOUND,
                "unknown-revision",
                "No such revision",
                "The project has no revision with this number.");
    }

    static ErrorResponseException preconditionRequired() {
        return problem(
                HttpStatus.PRECONDITION_REQUIRED,
                "precondition-required",
                "A precondition is required",
                "Send If-Match with the ETag of the project's newest revision, or If-None-Match: *"
                        + " for its first, so that nobody's revision is passed over unseen.");
    }

    static ErrorResponseException preconditionFailed() {
        return problem(
                HttpStatus.PRECONDITION_FAILED,
                "stale-precondition",
                "Another revision came first",
                "The project's newest revision is not the one that the precondition names; nothing"
                        + " was recorded. Read the project, look at what changed, and send its"
                        + " ETag.");
    }

    static ErrorResponseException keyReused() {
        return problem(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "idempotency-key-reused",
                "The Idempotency-Key was used before",
                "This Idempotency-Key has recorded another body; nothing was recorded. Use a new"
                        + " key.");
    }

    static ErrorResponseException stillRunning() {
        return problem(
                HttpStatus.CONFLICT,
                "idempotency-key-in-use",
                "The same request is still running",
                "A request with this Idempotency-Key is still running. Send it again later; it will"
                        + " be answered as the first one was.");
    }

    private static ErrorResponseException problem(
            HttpStatus status, String type, String title, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setType(URI.create("/problems/" + type));
        problem.setTitle(title);
        return new ErrorResponseException(status, problem, null);
    }
}
