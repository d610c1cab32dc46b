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
                    + " number. Each entry of errors says where and what is accepted there.",
            "Look at errors: pointer is the place in the body (RFC 6901; empty for the "
                    + "body as a whole, the query or a header field), detail what is accepted "
                    + "there. All faults are listed at once, so that one correction is enough. The "
                    + "contract at /v3/api-docs.yaml has an example of every request."),
    /** Nobody knows who is asking. */
    AUTHENTICATION_REQUIRED(
            401,
            "A token is needed",
            "The service has to know who is asking. Send Authorization: Bearer with a token of the"
                    + " issuer that the service trusts, made for this service and not expired.",
            "Ask the issuer for a token, and send it with every request. The detail and "
                    + "the WWW-Authenticate header say what was wrong with the one that came."),
    /** The token allows something else. */
    INSUFFICIENT_SCOPE(
            403,
            "The token does not allow this",
            "The token is accepted but does not have the scope that this operation needs; the"
                    + " WWW-Authenticate header names it.",
            "Ask for a token with that scope: bayledger.check for checks and reviews, "
                    + "bayledger.read, bayledger.record and bayledger.audit for the ledger."),
    /** Nothing is there. */
    NOT_FOUND(
            404,
            "There is nothing here",
            "The path is none of the contract's, or names something that does not exist or is not"
                    + " yours to see.",
            "Compare the path with the contract at /v3/api-docs.yaml. GET /v1/projects "
                    + "lists the projects that you may see, GET /v1/projects/{projectId}/revisions "
                    + "the revisions of one."),
    /** Another method is needed. */
    METHOD_NOT_ALLOWED(
            405,
            "The method is not allowed here",
            "The path exists but not with this method; the Allow header lists the methods it has.",
            "Use one of those methods: checks, reviews and drawings are asked for with "
                    + "POST and a body; what was recorded is read with GET, and never changed or "
                    + "deleted."),
    /** No such representation. */
    NOT_ACCEPTABLE(
            406,
            "No such representation",
            "The Accept header names no media type in which this answer can be given; the detail"
                    + " lists those in which it can.",
            "Send one of the media types that the detail lists, or leave Accept out."),
    /** Conflicts with what is going on. */
    CONFLICT(
            409,
            "The request conflicts with one that is still running",
            "A request with the same Idempotency-Key has not finished. Try again after a while.",
            "Wait a second and send the same request with the same key: it is answered as "
                    + "the first one was, and nothing is recorded twice."),
    /** Precondition failed. */
    PRECONDITION_FAILED(
            412,
            "The precondition is stale",
            "If-Match or If-None-Match does not describe the current state; somebody else has"
                    + " written meanwhile. Nothing was changed. Read the current state, look at"
                    + " what has changed, and try again.",
            "GET the project: its ETag is the current state. Compare what was recorded "
                    + "meanwhile (GET .../comparisons?base=...&head=...), put your change on top, "
                    + "and send it with that ETag in If-Match. If-None-Match: * is for the first "
                    + "revision alone."),
    /** Body too large. */
    CONTENT_TOO_LARGE(
            413,
            "The body is too large",
            "The body is larger than the service accepts; the detail names the limit.",
            "Send the job in several documents, or the IFC file of the facade alone; "
                    + "whoever runs the service can raise bayledger.limits.body and "
                    + "bayledger.limits.ifc."),
    /** Request line too long. */
    URI_TOO_LONG(
            414,
            "The request line is too long",
            "The path and query are too long.",
            "Leave out what the contract does not describe; no path and query of it comes "
                    + "near the limit."),
    /** Wrong media type. */
    UNSUPPORTED_MEDIA_TYPE(
            415,
            "The media type is not supported",
            "The body is taken in the media type that the contract names, JSON in UTF-8, without a"
                    + " content encoding; the detail says which came and which is taken.",
            "Name the type in the Content-Type header (curl: -H 'Content-Type: "
                    + "application/json'). An IFC file is sent as application/x-step or model/step."),
    /** Meant for another service. */
    MISDIRECTED_REQUEST(
            421,
            "The request is meant for another host",
            "A service that is open to its own machine alone answers only under the names of that"
                    + " machine: localhost, 127.0.0.1 and [::1].",
            "Use one of these names on the machine itself. To be reached from elsewhere "
                    + "the service has to be started with authentication."),
    /** Outside the rules. */
    OUT_OF_RANGE(
            422,
            "The request lies outside what the rules cover",
            "The request can be read, but asks for something outside the validity of the rules, or"
                    + " contradicts itself. Each entry of errors says where and what is accepted"
                    + " there.",
            "Look at errors: pointer is the place in the body (empty for the request as a "
                    + "whole), detail the range or the condition. Nothing is ever cut down to the "
                    + "nearest allowed value without a word: choose one that is covered, or another "
                    + "method where the detail names one."),
    /** An Idempotency-Key used again for another body. */
    IDEMPOTENCY_KEY_REUSED(
            422,
            "The Idempotency-Key has recorded another body",
            "A key stands for one request. The same key with the same body is answered as it was"
                    + " the first time; another body needs a key of its own. Nothing was"
                    + " recorded.",
            "Take a new key for a new body. To repeat a request, send exactly the body of "
                    + "the first time."),
    /** Precondition required. */
    PRECONDITION_REQUIRED(
            428,
            "A precondition is required",
            "Writing needs If-Match with the current ETag, or If-None-Match: * for the first"
                    + " revision, so that nobody overwrites what they have not seen.",
            "GET the project and send its ETag in If-Match; for a project without a "
                    + "revision send If-None-Match: * instead."),
    /** Header fields too large. */
    REQUEST_HEADER_FIELDS_TOO_LARGE(
            431,
            "The header fields are too large",
            "The request's header fields are too large.",
            "Send fewer or shorter header fields; an access token is usually the longest."),
    /** The service failed. */
    INTERNAL_SERVER_ERROR(
            500,
            "The service failed",
            "An error of the service, not of the request. The detail holds a reference under which"
                    + " the service's log keeps what happened.",
            "Try once more; then tell whoever runs the service the reference, or the "
                    + "X-Request-Id of the answer."),
    /** Not a way of sending that HTTP/1.1 servers know. */
    NOT_IMPLEMENTED(
            501,
            "The transfer coding is not known",
            "The request is sent in a way that the service does not know.",
            "Send the body with a Content-Length, or in chunks (Transfer-Encoding: " + "chunked)."),
    /** Not now. */
    SERVICE_UNAVAILABLE(
            503,
            "The service can't answer now",
            "Something that the service needs, such as its database, can't be reached, or it has as"
                    + " much work as it can do. Try again after the time that Retry-After"
                    + " names.",
            "Wait as long as Retry-After says and send the same request again; give a "
                    + "write an Idempotency-Key, so that it is recorded once."),
    /** Another HTTP. */
    HTTP_VERSION_NOT_SUPPORTED(
            505,
            "The HTTP version is not supported",
            "Send the request in HTTP/1.1.",
            "Every usual client does so by itself.");

    private final int status;
    private final String title;
    private final String meaning;
    private final String advice;

    ProblemKind(int status, String title, String meaning, String advice) {
        this.status = status;
        this.title = title;
        this.meaning = meaning;
        this.advice = advice;
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

    /** What to do about it. */
    String advice() {
        return advice;
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
