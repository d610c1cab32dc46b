package org.bayledger.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.transaction.TransactionException;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.NoHandlerFoundException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.springframework.web.servlet.resource.NoResourceFoundException;
import org.springframework.web.util.DisconnectedClientHelper;

/** Every fault as an RFC 9457 problem with all its errors, each with its JSON pointer. */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);

    @ExceptionHandler
    ResponseEntity<Object> faults(FaultsException refused, HttpServletRequest request) {
        ProblemKind kind =
                refused.malformed() ? ProblemKind.MALFORMED_REQUEST : ProblemKind.OUT_OF_RANGE;
        int shown = refused.faults().size();
        String count = refused.count() == 1 ? "1 fault" : refused.count() + " faults";
        String where =
                shown < refused.count()
                        ? "; the first " + shown + " are in errors."
                        : "; see errors.";
        return answer(
                new Problem(
                        kind.type().toString(),
                        kind.title(),
                        kind.status(),
                        count + where,
                        request.getRequestURI(),
                        refused.faults().stream().map(Problem.ErrorEntry::of).toList()),
                HttpHeaders.EMPTY);
    }

    /**
     * What the database could not do now; the cause in one line, without a stack trace. An answer
     * that has begun, such as an export, can't become a problem any more: the container gets the
     * failure and cuts the connection, so that nobody takes what came for all of it.
     */
    @ExceptionHandler({
        DataAccessResourceFailureException.class,
        TransientDataAccessException.class,
        RecoverableDataAccessException.class,
        TransactionException.class
    })
    ResponseEntity<Object> unavailable(
            RuntimeException cause, HttpServletRequest request, HttpServletResponse response) {
        LOG.warn("the database does not answer: {}", cause.toString());
        if (response.isCommitted()) {
            throw cause;
        }
        HttpHeaders headers = new HttpHeaders();
        headers.set(HttpHeaders.RETRY_AFTER, "5");
        return answer(
                Problem.of(
                        ProblemKind.SERVICE_UNAVAILABLE,
                        "The database can't be reached, or is too busy to answer; try again in a few"
                                + " seconds.",
                        request.getRequestURI()),
                headers);
    }

    /**
     * What nobody foresaw: logged with a reference that the answer repeats, and nothing more said.
     * A caller who hung up is not told, and a container's own complaint about the request line is
     * the caller's.
     */
    @ExceptionHandler
    @Nullable ResponseEntity<Object> unforeseen(
            Exception cause, HttpServletRequest request, HttpServletResponse response)
            throws Exception {
        if (DisconnectedClientHelper.isClientDisconnectedException(cause)) {
            LOG.debug("the caller hung up", cause);
            return null;
        }
        if (response.isCommitted()) {
            throw cause;
        }
        if (isUnreadable(cause)) {
            return answer(
                    Problem.of(
                            ProblemKind.MALFORMED_REQUEST,
                            "The query, a header field or the body of the request can't be decoded.",
                            null),
                    HttpHeaders.EMPTY);
        }
        return failure(cause, request.getRequestURI());
    }

    /** What can't be decoded, has control characters in a header or has too many parameters. */
    private static boolean isUnreadable(Exception cause) {
        return cause instanceof RequestRejectedException
                || cause instanceof org.apache.tomcat.util.http.InvalidParameterException
                || cause instanceof org.apache.coyote.BadRequestException
                || (cause instanceof IOException
                        && cause.getCause() instanceof org.apache.coyote.BadRequestException);
    }

    private static ResponseEntity<Object> failure(Exception cause, @Nullable String path) {
        String reference = UUID.randomUUID().toString();
        LOG.error("unforeseen failure {}", reference, cause);
        return answer(
                Problem.of(
                        ProblemKind.INTERNAL_SERVER_ERROR,
                        "The service failed; it keeps the details under reference " + reference,
                        path),
                HttpHeaders.EMPTY);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException unreadable,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        boolean missing =
                String.valueOf(unreadable.getMessage())
                        .startsWith("Required request body is missing");
        ProblemDetail problem =
                ProblemDetail.forStatusAndDetail(
                        status,
                        missing
                                ? "The body is missing; send one JSON object."
                                : "The body could not be read.");
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
        if (response == null || !(response.getBody() instanceof ProblemDetail problem)) {
            return response;
        }
        String path =
                request instanceof ServletWebRequest servlet
                        ? servlet.getRequest().getRequestURI()
                        : null;
        if (status.value() == ProblemKind.INTERNAL_SERVER_ERROR.status()) {
            return failure(cause, path);
        }
        return answer(problem(cause, problem, path), headers);
    }

    private static Problem problem(Exception cause, ProblemDetail problem, @Nullable String path) {
        ProblemKind kind = ProblemKind.of(problem.getStatus());
        URI type = problem.getType();
        String own = type == null ? "about:blank" : type.toString();
        boolean ownType = !"about:blank".equals(own);
        String detail = detail(cause, problem);
        return new Problem(
                ownType ? own : kind.type().toString(),
                ownType ? String.valueOf(problem.getTitle()) : kind.title(),
                problem.getStatus(),
                detail,
                path,
                errors(problem, detail));
    }

    private static String detail(Exception cause, ProblemDetail problem) {
        if (cause instanceof NoResourceFoundException || cause instanceof NoHandlerFoundException) {
            return "There is nothing at this path; /v3/api-docs.yaml and /swagger-ui.html list all"
                    + " that there is.";
        }
        if (cause instanceof TypeMismatchException mismatch) {
            String name =
                    mismatch instanceof MethodArgumentTypeMismatchException argument
                            ? argument.getName()
                            : String.valueOf(mismatch.getPropertyName());
            return "query parameter " + name + " must be " + accepted(mismatch.getRequiredType());
        }
        if (cause instanceof MissingServletRequestParameterException missing) {
            return "query parameter " + missing.getParameterName() + " is required";
        }
        if (cause instanceof HttpRequestMethodNotSupportedException method) {
            String[] supported = method.getSupportedMethods();
            return method.getMethod()
                    + " does nothing at this path; it takes "
                    + (supported == null ? "none" : String.join(", ", supported))
                    + ".";
        }
        if (cause instanceof HttpMediaTypeNotAcceptableException unacceptable) {
            String types = types(unacceptable.getSupportedMediaTypes());
            return types.isEmpty()
                    ? "The Accept header can't be read."
                    : "Accept names no media type of this answer; it comes as " + types + ".";
        }
        if (cause instanceof HttpMediaTypeNotSupportedException unsupported) {
            MediaType sent = unsupported.getContentType();
            String accepted = types(unsupported.getSupportedMediaTypes());
            return accepted.isEmpty()
                    ? "The Content-Type can't be read."
                    : "The body must be sent with Content-Type: "
                            + accepted
                            + (accepted.contains("json") ? ", in UTF-8" : "")
                            + (sent == null
                                    ? "; it came without one."
                                    : "; it came as " + sent + ".");
        }
        String detail = problem.getDetail();
        return detail == null ? ProblemKind.of(problem.getStatus()).meaning() : detail;
    }

    private static String accepted(@Nullable Class<?> type) {
        if (type != null && type.isEnum()) {
            return "one of " + constants(type);
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        return type != null && (type.isPrimitive() || Number.class.isAssignableFrom(type))
                ? "a whole number of no more than nine digits"
                : "a text that can be read";
    }

    /** Media types without parameters, each once. */
    private static String types(List<MediaType> types) {
        return types.stream()
                .map(type -> new MediaType(type.getType(), type.getSubtype()).toString())
                .distinct()
                .collect(Collectors.joining(" or "));
    }

    private static String constants(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
    }

    private static List<Problem.ErrorEntry> errors(ProblemDetail problem, String detail) {
        if (problem.getProperties() != null
                && problem.getProperties().get("errors") instanceof List<?> errors
                && errors.stream().allMatch(Fault.class::isInstance)) {
            return errors.stream().map(Fault.class::cast).map(Problem.ErrorEntry::of).toList();
        }
        return List.of(new Problem.ErrorEntry("", detail));
    }

    private static ResponseEntity<Object> answer(Problem problem, HttpHeaders headers) {
        return ResponseEntity.status(problem.status())
                .headers(headers)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }
}
