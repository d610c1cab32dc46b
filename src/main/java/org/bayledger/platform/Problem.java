package org.bayledger.platform;

import java.util.List;
import org.bayledger.check.Fault;
import org.jspecify.annotations.Nullable;

/**
 * A problem as RFC 9457 has it, with all its errors at once.
 *
 * @param type what kind of problem it is: a path of this service where the kind is described
 * @param title the kind in a few words
 * @param status the HTTP status
 * @param detail this occurrence in a sentence
 * @param instance path of the request
 * @param errors every single error found, the first hundred at most
 */
record Problem(
        String type,
        String title,
        int status,
        @Nullable String detail,
        @Nullable String instance,
        List<ErrorEntry> errors) {

    /**
     * One error of a problem.
     *
     * @param pointer where in the body, as a JSON pointer (RFC 6901); empty for the whole body or
     *     for something outside it
     * @param detail what is wrong and what is accepted
     */
    record ErrorEntry(String pointer, String detail) {

        static ErrorEntry of(Fault fault) {
            return new ErrorEntry(fault.pointer(), fault.detail());
        }
    }

    Problem {
        errors = List.copyOf(errors);
    }

    static Problem of(ProblemKind kind, String detail, @Nullable String instance) {
        return new Problem(
                kind.type().toString(),
                kind.title(),
                kind.status(),
                detail,
                instance,
                List.of(new ErrorEntry("", detail)));
    }
}
