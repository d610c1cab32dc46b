package org.bayledger.platform;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import tools.jackson.databind.ObjectWriter;

/** One example of each kind of problem, for the contract. */
final class ProblemExamples {

    private static final String PATH = "/v1/checks/glass";
    private static final String PROJECT =
            "/v1/projects/3f8a54a5-0b6e-4d0e-9a55-2f0a2b8f7a10/revisions";
    private static final ObjectWriter WRITER =
            tools.jackson.databind.json.JsonMapper.shared().writer();
    private static final JsonMapper READER = JsonMapper.builder().build();

    private ProblemExamples() {}

    static JsonNode of(ProblemKind kind) {
        try {
            return READER.readTree(WRITER.writeValueAsString(problem(kind)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Problem problem(ProblemKind kind) {
        return switch (kind) {
            case MALFORMED_REQUEST ->
                    withErrors(
                            kind,
                            new Problem.ErrorEntry(
                                    "/width",
                                    "'psf' is the wrong unit here; give a number with one of the"
                                            + " units mm, cm, m, in, ft, or 13'-6 1/2\""),
                            new Problem.ErrorEntry(
                                    "/load/positve",
                                    "unknown property; known here: positive, negative, basis"));
            case OUT_OF_RANGE ->
                    withErrors(
                            kind, new Problem.ErrorEntry("/load/positive", "must not be negative"));
            case INTERNAL_SERVER_ERROR ->
                    Problem.of(
                            kind,
                            "The service failed; it keeps the details under reference"
                                    + " 6f1c2f0e-5a0b-4c59-9d0e-1c7a1f3c2b11",
                            PATH);
            case NOT_FOUND,
                    CONFLICT,
                    PRECONDITION_FAILED,
                    PRECONDITION_REQUIRED,
                    SERVICE_UNAVAILABLE ->
                    Problem.of(kind, kind.meaning(), PROJECT);
            default -> Problem.of(kind, kind.meaning(), PATH);
        };
    }

    private static Problem withErrors(ProblemKind kind, Problem.ErrorEntry... errors) {
        String count = errors.length == 1 ? "1 fault" : errors.length + " faults";
        return new Problem(
                kind.type().toString(),
                kind.title(),
                kind.status(),
                count + "; see errors.",
                PATH,
                List.of(errors));
    }
}
