package org.bayledger.platform;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.interfaces.RSAPublicKey;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.crypto.SecretKey;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.security.oauth2.server.resource.autoconfigure.OAuth2ResourceServerProperties;
import org.springframework.core.env.Environment;
import org.springframework.core.io.Resource;
import org.springframework.security.converter.RsaKeyConverters;
import org.springframework.util.StringUtils;

/**
 * Whose tokens the service trusts. Without a key of its own it asks the issuer for its keys.
 *
 * @param issuer who makes them; stands in every token and in every revision
 * @param audiences names of this service; a token has to name one of them
 * @param organisationClaim claim of a token that names the caller's organisation
 * @param algorithms how the issuer signs, where the keys are asked for; empty: RS256, or what the
 *     issuer's keys are for
 * @param jwkSetUri where the issuer's keys are
 * @param publicKey the issuer's one key
 * @param secret a secret that the issuer shares, for development
 */
record TokenSettings(
        String issuer,
        List<String> audiences,
        String organisationClaim,
        List<String> algorithms,
        @Nullable String jwkSetUri,
        @Nullable RSAPublicKey publicKey,
        @Nullable SecretKey secret) {

    static final String SECRET = "bayledger.authentication.secret";
    static final String SECRET_FILE = "bayledger.authentication.secret-file";
    static final String ORGANISATION = "bayledger.authentication.organisation-claim";

    /** What an operator has to set, for the messages of a refused start. */
    static final String ADVICE =
            "Set SPRING_SECURITY_OAUTH2_RESOURCESERVER_JWT_ISSUER_URI to the issuer of the tokens"
                    + " and SPRING_SECURITY_OAUTH2_RESOURCESERVER_JWT_AUDIENCES to the name that"
                    + " they call this service by. Where the keys can't be had from the issuer's"
                    + " discovery document, set one of"
                    + " SPRING_SECURITY_OAUTH2_RESOURCESERVER_JWT_JWK_SET_URI,"
                    + " SPRING_SECURITY_OAUTH2_RESOURCESERVER_JWT_PUBLIC_KEY_LOCATION (a PEM file,"
                    + " file:/...), or for development BAYLEDGER_AUTHENTICATION_SECRET or"
                    + " BAYLEDGER_AUTHENTICATION_SECRET_FILE.";

    private static final String PREFIX = "spring.security.oauth2.resourceserver";
    private static final int SECRET_BYTES = 32;
    private static final int RSA_BITS = 2048;

    TokenSettings {
        audiences = List.copyOf(audiences);
        algorithms = List.copyOf(algorithms);
    }

    /**
     * What is configured; empty where nothing of it is.
     *
     * @throws StartupRefusedException where only a part of it is, or it contradicts itself
     */
    static Optional<TokenSettings> of(Environment environment) {
        OAuth2ResourceServerProperties properties =
                Binder.get(environment).bindOrCreate(PREFIX, OAuth2ResourceServerProperties.class);
        OAuth2ResourceServerProperties.Jwt jwt = properties.getJwt();
        if (StringUtils.hasText(properties.getOpaquetoken().getIntrospectionUri())) {
            throw new StartupRefusedException(
                    "Opaque tokens are configured, and the service reads signed ones (JWT) only.",
                    "Take out " + PREFIX + ".opaquetoken. " + ADVICE);
        }
        String issuer = jwt.getIssuerUri();
        String keys = text(jwt.getJwkSetUri());
        String secret = secret(environment);
        Resource publicKey = jwt.getPublicKeyLocation();
        List<String> audiences =
                jwt.getAudiences().stream()
                        .filter(StringUtils::hasText)
                        .map(String::strip)
                        .toList();
        long given = Stream.of(keys, secret, publicKey).filter(key -> key != null).count();
        boolean named = StringUtils.hasText(issuer);
        if (!named && audiences.isEmpty() && given == 0) {
            return Optional.empty();
        }
        if (!named || issuer == null || issuer.chars().anyMatch(Character::isWhitespace)) {
            throw new StartupRefusedException(
                    "Authentication is configured in part: it is not said who issues the tokens.",
                    ADVICE);
        }
        if (audiences.isEmpty()) {
            throw new StartupRefusedException(
                    "Authentication is configured in part: without an audience, tokens that were"
                            + " made for another service would pass here.",
                    ADVICE);
        }
        if (given > 1) {
            throw new StartupRefusedException(
                    "Authentication is configured with several keys; it has to be one.", ADVICE);
        }
        return Optional.of(
                new TokenSettings(
                        issuer,
                        audiences,
                        environment.getProperty(ORGANISATION, "org"),
                        algorithms(environment),
                        keys,
                        publicKey == null ? null : publicKey(publicKey),
                        secret == null ? null : secretKey(secret)));
    }

    /** The algorithms that are set; the property's own default is not a setting. */
    private static List<String> algorithms(Environment environment) {
        return Binder.get(environment)
                .bind(PREFIX + ".jwt.jws-algorithms", String[].class)
                .map(List::of)
                .orElse(List.of());
    }

    private static @Nullable String text(@Nullable String value) {
        return StringUtils.hasText(value) ? value : null;
    }

    private static @Nullable String secret(Environment environment) {
        String file = text(environment.getProperty(SECRET_FILE));
        if (file == null) {
            return text(environment.getProperty(SECRET));
        }
        try {
            return Files.readString(Path.of(file), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new StartupRefusedException(
                    "The file of the tokens' secret, " + file + ", can't be read.",
                    "Set BAYLEDGER_AUTHENTICATION_SECRET_FILE to a file that the service's user can"
                            + " read.");
        }
    }

    private static SecretKey secretKey(String secret) {
        byte[] bytes = secret.getBytes(StandardCharsets.UTF_8);
        if (bytes.length < SECRET_BYTES) {
            throw new StartupRefusedException(
                    "The tokens' secret is too short to sign with (HS256).",
                    "Give it at least "
                            + SECRET_BYTES
                            + " random characters, such as those of: openssl rand -base64 48");
        }
        return new SecretKeySpec(bytes, "HmacSHA256");
    }

    private static RSAPublicKey publicKey(Resource location) {
        try (InputStream in = location.getInputStream()) {
            RSAPublicKey key = RsaKeyConverters.x509().convert(in);
            if (key != null && key.getModulus().bitLength() >= RSA_BITS) {
                return key;
            }
        } catch (IOException | RuntimeException notAKey) {
            // told below, like a key that is too short
        }
        throw new StartupRefusedException(
                "The issuer's public key can't be read from " + location.getDescription() + ".",
                "Give a PEM file that begins with BEGIN PUBLIC KEY and holds an RSA key of at least "
                        + RSA_BITS
                        + " bits, and set its location as file:/path/to/key.pem.");
    }
}
