package org.bayledger.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authorization.AuthorityAuthorizationDecision;
import org.springframework.security.authorization.AuthorizationDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.jwt.JwtValidationException;
import org.springframework.security.oauth2.server.resource.InvalidBearerTokenException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import tools.jackson.databind.json.JsonMapper;

/** Refuses requests before they reach an endpoint, with a problem and with what RFC 6750 asks. */
final class SecurityProblems implements AuthenticationEntryPoint, AccessDeniedHandler {

    private static final String CHALLENGE = "Bearer";

    private final JsonMapper json;

    SecurityProblems(JsonMapper json) {
        this.json = json;
    }

    @Override
    public void commence(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException cause)
            throws IOException {
        if (cause instanceof Tokens.IssuerAwayException) {
            response.setHeader(HttpHeaders.RETRY_AFTER, "5");
            answer(
                    request,
                    response,
                    ProblemKind.SERVICE_UNAVAILABLE,
                    "The token can't be checked, because the keys of its issuer can't be had; try"
                            + " again in a few seconds.");
            return;
        }
        boolean none = !(cause instanceof OAuth2AuthenticationException);
        response.setHeader(
                HttpHeaders.WWW_AUTHENTICATE,
                none ? CHALLENGE : CHALLENGE + " error=\"invalid_token\"");
        answer(
                request,
                response,
                ProblemKind.AUTHENTICATION_REQUIRED,
                none
                        ? "The request has no token; send it as Authorization: Bearer with the"
                                + " token of the service's issuer."
                        : "The token is not accepted. " + reason(cause));
    }

    @Override
    public void handle(
            HttpServletRequest request, HttpServletResponse response, AccessDeniedException cause)
            throws IOException {
        String needed =
                cause instanceof AuthorizationDeniedException denied
                                && denied.getAuthorizationResult()
                                        instanceof AuthorityAuthorizationDecision decision
                        ? decision.getAuthorities().stream()
                                .map(authority -> Scope.ofAuthority(authority.getAuthority()))
                                .collect(Collectors.joining(" "))
                        : "";
        response.setHeader(
                HttpHeaders.WWW_AUTHENTICATE,
                CHALLENGE
                        + " error=\"insufficient_scope\""
                        + (needed.isEmpty() ? "" : ", scope=\"" + needed + "\""));
        answer(
                request,
                response,
                ProblemKind.INSUFFICIENT_SCOPE,
                needed.isEmpty()
                        ? ProblemKind.INSUFFICIENT_SCOPE.meaning()
                        : "The token does not have the scope " + needed + ", which this needs.");
    }

    /** Writes a problem where no endpoint and no converter is at hand. */
    void answer(
            HttpServletRequest request,
            HttpServletResponse response,
            ProblemKind kind,
            String detail)
            throws IOException {
        byte[] body = json.writeValueAsBytes(Problem.of(kind, detail, request.getRequestURI()));
        response.setStatus(kind.status());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        response.setContentLength(body.length);
        response.getOutputStream().write(body);
    }

    /** What is wrong with a token, without anything of the token itself. */
    private static String reason(AuthenticationException cause) {
        if (cause.getCause() instanceof JwtValidationException invalid) {
            return invalid.getErrors().stream()
                    .map(OAuth2Error::getDescription)
                    .collect(Collectors.joining(" "));
        }
        return cause instanceof InvalidBearerTokenException
                ? "It can't be read, or it is not signed by the issuer that this service trusts."
                : "It can't be read, or there are several.";
    }
}
