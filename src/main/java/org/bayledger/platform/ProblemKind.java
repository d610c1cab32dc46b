package org.bayledger.platform;

import java.net.URI;
import java.util.Locale;

/**
 * The kinds of problem that the service answers with: one table for the answers, the contract and
 * the pages behind the problems' type.
 */
enum ProblemKind {
    /** The request can't be read. */
    MALFORMED_REQUEST(
            400,
            "The request can't be read",
            "The body, the query or the request line is not what the contract describes: syntax,"
                    + " shape, an unknown or repeated name, a unit of the wrong dimension, not a"
                    + " number. Each entry of errors says where and what is accepted there."),
    /** Nobody knows who is asking. */
    AUTHENTICATION_REQUIRED(
            401,
            "A token is needed",
            "The service has to know who is asking. Send Authorization: Bearer with a token of the"
                    + " issuer that the service trusts, made for this service and not expired."),
    /** The token allows something else. */
    INSUFFICIENT_SCOPE(
            403,
            "The token does not allow this",
            "The token is accepted but does not have the scope that this operation needs; the"
                    + " WWW-Authenticate header names it."),
    /** Nothing is there. */
    NOT_FOUND(
            404,
            "There is nothing here",
            "The path is none of the contract's, or names something that does not exist or is not"
                    + " yours to see."),
    /** Another method is needed. */
    METHOD_NOT_ALLOWED(
            405,
            "The method is not allowed here",
            "The path exists but not with this method; the Allow header lists the methods it has."),
    /** No such representation. */
    NOT_ACCEPTABLE(
            406,
            "No such representation",
            "The Accept header names no media type in which this answer can be given."),
    /** Conflicts with what is going on. */
    CONFLICT(
            409,
            "The request conflicts with one that is still running",
            "A request with the same Idempotency-Key has not finished. Try again after a while."),
    /** Precondition failed. */
    PRECONDITION_FAILED(
            412,
            "The precondition is stale",
            "If-Match or If-None-Match does not describe the current state; somebody else has"
                    + " written meanwhile. Nothing was changed. Read the current state, look at"
                    + " what has changed, and try again."),
    /** Body too large. */
    CONTENT_TOO_LARGE(
            413,
            "The body is too large",
            "The body is larger than the service accepts; the detail names the limit."),
    /** Request line too long. */
    URI_TOO_LONG(414, "The request line is too long", "The path and query are too long."),
    /** Wrong media type. */
    UNSUPPORTED_MEDIA_TYPE(
            415,
            "The media type is not supported",
            "Send application/json in UTF-8, without a content encoding."),
    /** Meant for another service. */
    MISDIRECTED_REQUEST(
            421,
            "The request is meant for another host",
            "A service that is open to its own machine alone answers only under the names of that"
                    + " machine: localhost, 127.0.0.1 and [::1]."),
    /** Outside the rules. */
    OUT_OF_RANGE(
            422,
            "The request lies outside what the rules cover",
            "The request can be read, but asks for something outside the validity of the rules, or"
                    + " contradicts itself. Each entry of errors says where and what is accepted"
                    + " there."),
    /** An Idempotency-Key used again for another body. */
    IDEMPOTENCY_KEY_REUSED(
            422,
            "The Idempotency-Key has recorded another body",
            "A key stands for one request. The same key with the same body is answered as it was"
                    + " the first time; another body needs a key of its own. Nothing was"
                    + " recorded."),
    /** Precondition required. */
    PRECONDITION_REQUIRED(
            428,
            "A precondition is required",
            "Writing needs If-Match with the current ETag, or If-None-Match: * for the first"
                    + " revision, so that nobody overwrites what they have not seen."),
    /** Header fields too large. */
    REQUEST_HEADER_FIELDS_TOO_LARGE(
            431, "The header fields are too large", "The request's header fields are too large."),
    /** The service failed. */
    INTERNAL_SERVER_ERROR(
            500,
            "The service failed",
            "An error of the service, not of the request. The detail holds a reference under which"
                    + " the service's log keeps what happened."),
    /** Not a way of sending that HTTP/1.1 servers know. */
    NOT_IMPLEMENTED(
            501,
            "The transfer coding is not known",
            "The request is sent in a way that the service does not know."),
    /** Not now. */
    SERVICE_UNAVAILABLE(
            503,
            "The service can't answer now",
            "Something that the service needs, such as its database, can't be reached, or it has as"
                    + " much work as it can do. Try again after the time that Retry-After"
                    + " names."),
    /** Another HTTP. */
    HTTP_VERSION_NOT_SUPPORTED(
            505, "The HTTP version is not supported", "Send the request in HTTP/1.1.");

    private final int status;
    private final String title;
    private final String meaning;

    ProblemKind(int status, String title, String meaning) {
        this.status = status;
        this.title = title;
        this.meaning = meaning;
    }

    int status() {
        return status;
    }

    String title() {
        return title;
    }

    String meaning() {
        return meaning;
    }

    /** The last part of the problem's type. */
    String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The problem's type, a path of this service. */
    URI type() {
        return URI.create("/problems/" + slug());
    }

    /**
     * The kind of a status, the more common one where it has two; for one without a kind of its
     * own, that of its class.
     *
     * @param status an HTTP status from 400
     */
    static ProblemKind of(int status) {
        for (ProblemKind kind : values()) {
            if (kind.status == status) {
                return kind;
            }
        }
        return status >= 500 ? INTERNAL_SERVER_ERROR : MALFORMED_REQUEST;
    }
}
