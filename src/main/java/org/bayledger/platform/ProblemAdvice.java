package org.bayledger.platform;

import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;

/** Every fault as an RFC 9457 problem with all its errors, each with its JSON pointer. */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);

    /** One error of a problem, as the contract shows it. */
    record ErrorEntry(String pointer, String detail) {

        static ErrorEntry of(Fault fault) {
            return new ErrorEntry(fault.pointer(), fault.detail());
        }
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> faults(FaultsException refused) {
        ProblemDetail problem;
        if (refused.malformed()) {
            problem = ProblemDetail.forStatus(HttpStatus.BAD_REQUEST);
            problem.setType(URI.create("/problems/malformed-request"));
            problem.setTitle("The request can't be read");
        } else {
            problem = ProblemDetail.forStatus(HttpStatus.UNPROCESSABLE_CONTENT);
            problem.setType(URI.create("/problems/out-of-range"));
            problem.setTitle("The request lies outside what the rules cover");
        }
        int count = refused.faults().size();
        problem.setDetail(count == 1 ? "1 fault; see errors." : count + " faults; see errors.");
        problem.setProperty("errors", refused.faults().stream().map(ErrorEntry::of).toList());
        return ResponseEntity.status(problem.getStatus())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    /**
     * What nobody foresaw: logged with a reference that the answer repeats, and nothing more said.
     */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> unforeseen(Exception unforeseen) {
        String reference = UUID.randomUUID().toString();
        LOG.error("unforeseen failure {}", reference, unforeseen);
        ProblemDetail problem =
                ProblemDetail.forStatusAndDetail(
                        HttpStatus.INTERNAL_SERVER_ERROR,
                        "The service failed; it keeps the details under reference " + reference);
        problem.setType(URI.create("/problems/internal-server-error"));
        problem.setProperty("errors", List.of());
        return ResponseEntity.status(problem.getStatus())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException unreadable,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        ProblemDetail problem =
                ProblemDetail.forStatusAndDetail(status, "The body could not be read.");
        return handleExceptionInternal(unreadable, problem, headers, status, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleExceptionInternal(
            Exception cause,
            @Nullable Object body,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        ResponseEntity<Object> response =
                super.handleExceptionInternal(cause, body, headers, status, request);
        if (response != null && response.getBody() instanceof ProblemDetail problem) {
            if (problem.getType() == null || "about:blank".equals(problem.getType().toString())) {
                problem.setType(URI.create("/problems/" + slug(status)));
            }
            if (problem.getProperties() == null || !problem.getProperties().containsKey("errors")) {
                problem.setProperty("errors", errors(cause, problem));
            }
        }
        return response;
    }

    private static List<ErrorEntry> errors(Exception cause, ProblemDetail problem) {
        if (cause instanceof MethodArgumentTypeMismatchException mismatch) {
            Class<?> type = mismatch.getRequiredType();
            String accepted =
                    type != null && type.isEnum()
                            ? "must be one of " + List.of(type.getEnumConstants())
                            : "is not what is accepted there";
            return List.of(new ErrorEntry("", mismatch.getName() + " " + accepted));
        }
        String detail = problem.getDetail();
        return detail == null ? List.of() : List.of(new ErrorEntry("", detail));
    }

    private static String slug(HttpStatusCode status) {
        HttpStatus known = HttpStatus.resolve(status.value());
        return known == null
                ? Integer.toString(status.value())
                : known.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
