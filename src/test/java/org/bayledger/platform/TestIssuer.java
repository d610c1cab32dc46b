package org.bayledger.platform;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JOSEObjectType;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.JWSSigner;
import com.nimbusds.jose.crypto.MACSigner;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.PlainJWT;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.function.Consumer;

/** An issuer of tokens with a key of its own, on this machine; its discovery can be away. */
final class TestIssuer implements AutoCloseable {

    static final String AUDIENCE = "bayledger-under-test";

    private final HttpServer server;
    private final RSAKey key;
    private volatile boolean away;

    TestIssuer() throws IOException, JOSEException {
        key = new RSAKeyGenerator(2048).keyID("one").generate();
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        serve(
                "/.well-known/openid-configuration",
                "{\"issuer\":\"%s\",\"jwks_uri\":\"%s/keys\",\"subject_types_supported\":[\"public\"]}"
                        .formatted(name(), name()));
        serve("/keys", new JWKSet(key.toPublicJWK()).toString());
        server.start();
    }

    private void serve(String path, String json) {
        server.createContext(
                path,
                exchange -> {
                    byte[] body = json.getBytes(StandardCharsets.UTF_8);
                    exchange.getResponseHeaders().set("Content-Type", "application/json");
                    exchange.sendResponseHeaders(away ? 500 : 200, body.length);
                    exchange.getResponseBody().write(body);
                    exchange.close();
                });
    }

    /** The issuer as tokens name it. */
    String name() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    RSAKey key() {
        return key;
    }

    void away(boolean isAway) {
        away = isAway;
    }

    /** A token that is good for an hour. */
    String token(String organisation, String... scopes) throws JOSEException {
        return token(organisation, claims -> claims.claim("scope", String.join(" ", scopes)));
    }

    /** A token with something else about it. */
    String token(String organisation, Consumer<JWTClaimsSet.Builder> change) throws JOSEException {
        return signed(
                claims(organisation, change),
                new JWSHeader.Builder(JWSAlgorithm.RS256)
                        .keyID("one")
                        .type(new JOSEObjectType("at+jwt"))
                        .build(),
                new RSASSASigner(key));
    }

    JWTClaimsSet claims(String organisation, Consumer<JWTClaimsSet.Builder> change) {
        JWTClaimsSet.Builder claims =
                new JWTClaimsSet.Builder()
                        .issuer(name())
                        .audience(AUDIENCE)
                        .subject("reviewer-7")
                        .claim("org", organisation)
                        .claim("scope", "bayledger.read")
                        .expirationTime(Date.from(Instant.now().plusSeconds(3600)));
        change.accept(claims);
        return claims.build();
    }

    /** The same claims under another key that has the same name. */
    String forged(JWTClaimsSet claims) throws JOSEException {
        RSAKey other = new RSAKeyGenerator(2048).keyID("one").generate();
        return signed(
                claims,
                new JWSHeader.Builder(JWSAlgorithm.RS256).keyID("one").build(),
                new RSASSASigner(other));
    }

    /** Signed with the public key's bytes as if they were a shared secret. */
    String confused(JWTClaimsSet claims) throws JOSEException {
        return signed(
                claims,
                new JWSHeader(JWSAlgorithm.HS256),
                new MACSigner(key.toRSAPublicKey().getEncoded()));
    }

    static String unsigned(JWTClaimsSet claims) {
        return new PlainJWT(claims).serialize();
    }

    private static String signed(JWTClaimsSet claims, JWSHeader header, JWSSigner signer)
            throws JOSEException {
        SignedJWT token = new SignedJWT(header, claims);
        token.sign(signer);
        return token.serialize();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
