package org.bayledger.platform;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.bayledger.ledger.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.http.client.SimpleClientHttpRequestFactory;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.oauth2.core.DelegatingOAuth2TokenValidator;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.core.OAuth2TokenValidator;
import org.springframework.security.oauth2.core.OAuth2TokenValidatorResult;
import org.springframework.security.oauth2.jose.jws.MacAlgorithm;
import org.springframework.security.oauth2.jose.jws.SignatureAlgorithm;
import org.springframework.security.oauth2.jwt.BadJwtException;
import org.springframework.security.oauth2.jwt.Jwt;
import org.springframework.security.oauth2.jwt.JwtDecoder;
import org.springframework.security.oauth2.jwt.JwtDecoderInitializationException;
import org.springframework.security.oauth2.jwt.JwtException;
import org.springframework.security.oauth2.jwt.JwtTimestampValidator;
import org.springframework.security.oauth2.jwt.JwtTypeValidator;
import org.springframework.security.oauth2.jwt.NimbusJwtDecoder;
import org.springframework.security.oauth2.jwt.SupplierJwtDecoder;
import org.springframework.security.oauth2.server.resource.authentication.JwtGrantedAuthoritiesConverter;
import org.springframework.security.web.authentication.preauth.PreAuthenticatedAuthenticationToken;
import org.springframework.web.client.RestTemplate;

/** Reads the tokens of the configured issuer: signature, time, audience, and who it speaks of. */
final class Tokens {

    /** An issuer that does not answer must not hold up callers for long. */
    private static final Duration ISSUER_ANSWERS_WITHIN = Duration.ofSeconds(3);

    /** Names that go into the ledger: they can be stored, and read on a screen. */
    private static final Pattern NAME = Pattern.compile("(?=.*\\S)\\P{C}{1,200}");

    private final TokenSettings settings;
    private final JwtDecoder decoder;
    private final JwtGrantedAuthoritiesConverter scopes = new JwtGrantedAuthoritiesConverter();

    Tokens(TokenSettings settings) {
        this.settings = settings;
        this.decoder = decoder();
    }

    /** The issuer's keys can't be had now; nothing is known of the token. */
    static final class IssuerAwayException extends AuthenticationException {

        IssuerAwayException(Throwable cause) {
            super("The issuer's keys can't be had", cause);
        }
    }

    /** The token that a text is, where it can be trusted. */
    Jwt decode(String token) {
        try {
            return decoder.decode(token);
        } catch (BadJwtException refused) {
            throw refused;
        } catch (JwtException | JwtDecoderInitializationException away) {
            throw new IssuerAwayException(away);
        }
    }

    /** The caller that a token speaks of, with what it allows. */
    AbstractAuthenticationToken caller(Jwt token) {
        Caller caller =
                new Caller(
                        String.valueOf(token.getClaimAsString(settings.organisationClaim())),
                        settings.issuer() + " " + token.getSubject());
        return new PreAuthenticatedAuthenticationToken(caller, "", scopes.convert(token));
    }

    private JwtDecoder decoder() {
        if (settings.secret() != null) {
            return validated(
                    NimbusJwtDecoder.withSecretKey(settings.secret())
                            .macAlgorithm(MacAlgorithm.HS256)
                            .validateType(false)
                            .build());
        }
        if (settings.publicKey() != null) {
            return validated(
                    NimbusJwtDecoder.withPublicKey(settings.publicKey())
                            .signatureAlgorithm(SignatureAlgorithm.RS256)
                            .validateType(false)
                            .build());
        }
        // asked for with the first token, so that the service starts while the issuer is away
        return new SupplierJwtDecoder(() -> validated(asked().validateType(false).build()));
    }

    private NimbusJwtDecoder.JwkSetUriJwtDecoderBuilder asked() {
        SimpleClientHttpRequestFactory http = new SimpleClientHttpRequestFactory();
        http.setConnectTimeout(ISSUER_ANSWERS_WITHIN);
        http.setReadTimeout(ISSUER_ANSWERS_WITHIN);
        RestTemplate client = new RestTemplate(http);
        NimbusJwtDecoder.JwkSetUriJwtDecoderBuilder builder =
                settings.jwkSetUri() == null
                        ? NimbusJwtDecoder.withIssuerLocation(settings.issuer())
                        : NimbusJwtDecoder.withJwkSetUri(settings.jwkSetUri());
        List<SignatureAlgorithm> algorithms =
                settings.algorithms().stream().map(Tokens::algorithm).toList();
        if (!algorithms.isEmpty()) {
            builder.jwsAlgorithms(set -> set.addAll(algorithms));
        }
        return builder.restOperations(client);
    }

    private static SignatureAlgorithm algorithm(String name) {
        SignatureAlgorithm algorithm = SignatureAlgorithm.from(name);
        if (algorithm == null) {
            throw new StartupRefusedException(
                    "Tokens can't be signed with '" + name + "'.",
                    "Set SPRING_SECURITY_OAUTH2_RESOURCESERVER_JWT_JWS_ALGORITHMS to some of RS256,"
                            + " RS384, RS512, ES256, ES384, ES512, PS256, PS384, PS512.");
        }
        return algorithm;
    }

    private JwtDecoder validated(NimbusJwtDecoder decoder) {
        JwtTypeValidator type = new JwtTypeValidator("JWT", "at+jwt");
        type.setAllowEmpty(true);
        decoder.setJwtValidator(
                new DelegatingOAuth2TokenValidator<>(
                        List.of(
                                new JwtTimestampValidator(),
                                type,
                                rule(
                                        "It does not say when it expires (exp).",
                                        token -> token.getExpiresAt() != null),
                                rule(
                                        "Its issuer (iss) is not the one that this service trusts.",
                                        token ->
                                                settings.issuer()
                                                        .equals(token.getClaimAsString("iss"))),
                                rule(
                                        "It is not meant for this service (aud).",
                                        token ->
                                                token.getAudience() != null
                                                        && !Collections.disjoint(
                                                                token.getAudience(),
                                                                settings.audiences())),
                                rule(
                                        "It does not say who it is for (sub), in at most 200"
                                                + " characters that can be printed.",
                                        token -> isName(token.getClaim("sub"))),
                                rule(
                                        "It does not name an organisation ("
                                                + settings.organisationClaim()
                                                + "), in at most 200 characters that can be"
                                                + " printed.",
                                        token ->
                                                isName(
                                                        token.getClaim(
                                                                settings.organisationClaim()))))));
        return decoder;
    }

    private static boolean isName(@Nullable Object claim) {
        return claim instanceof String name && NAME.matcher(name).matches();
    }

    private static OAuth2TokenValidator<Jwt> rule(String sentence, Predicate<Jwt> holds) {
        OAuth2TokenValidatorResult refused =
                OAuth2TokenValidatorResult.failure(
                        new OAuth2Error("invalid_token", sentence, null));
        return token -> holds.test(token) ? OAuth2TokenValidatorResult.success() : refused;
    }
}
