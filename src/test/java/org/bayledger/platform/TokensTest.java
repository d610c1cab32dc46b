package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jwt.JWTClaimsSet;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPairGenerator;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.bayledger.BayledgerApplication;
import org.bayledger.ledger.Caller;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.http.HttpMethod;
import org.springframework.mock.env.MockEnvironment;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.oauth2.jwt.BadJwtException;
import org.springframework.security.oauth2.jwt.Jwt;

/** What is configured decides whose tokens are trusted, and half a configuration is refused. */
class TokensTest {

    private static final String JWT = "spring.security.oauth2.resourceserver.jwt.";
    private static final String ISSUER = "https://issuer.example/bayledger";
    private static final String SECRET = "a secret of more than thirty-two characters";

    private static MockEnvironment environment(String... properties) {
        MockEnvironment environment = new MockEnvironment();
        for (int i = 0; i < properties.length; i += 2) {
            environment.setProperty(properties[i], properties[i + 1]);
        }
        return environment;
    }

    private static MockEnvironment named(String... properties) {
        return environment(properties)
                .withProperty(JWT + "issuer-uri", ISSUER)
                .withProperty(JWT + "audiences", "bayledger,other-name");
    }

    @Test
    void aDevelopmentTokenIsTakenByTheServiceWithTheSameSecret() {
        MockEnvironment environment =
                named(TokenSettings.SECRET, SECRET, TokenSettings.ORGANISATION, "tenant");
        String token =
                DevelopmentToken.make(
                        Map.of("org", "demo", "scopes", "bayledger.check,bayledger.read"),
                        environment,
                        Instant.now());
        Tokens tokens = new Tokens(TokenSettings.of(environment).orElseThrow());
        Jwt read = tokens.decode(token);
        assertThat(tokens.caller(read).getPrincipal())
                .isEqualTo(new Caller("demo", ISSUER + " developer"));
        assertThat(tokens.caller(read).getAuthorities())
                .extracting(GrantedAuthority::getAuthority)
                .contains("SCOPE_bayledger.check", "SCOPE_bayledger.read")
                .doesNotContain("SCOPE_bayledger.record");
        assertThat(Duration.between(Instant.now(), read.getExpiresAt())).isPositive();

        Tokens others =
                new Tokens(
                        TokenSettings.of(named(TokenSettings.SECRET, "another " + SECRET))
                                .orElseThrow());
        assertThatThrownBy(() -> others.decode(token)).isInstanceOf(BadJwtException.class);
        String old =
                DevelopmentToken.make(
                        Map.of("org", "demo", "hours", "1"),
                        environment,
                        Instant.now().minusSeconds(7200));
        assertThatThrownBy(() -> tokens.decode(old)).hasMessageContaining("expired");
    }

    @Test
    void eachOperationHasItsScope() {
        String project = "/v1/projects/{projectId}";
        String revision = project + "/revisions/{number}";
        for (HttpMethod method : List.of(HttpMethod.GET, HttpMethod.HEAD)) {
            assertThat(Scope.of(method, "/v1/projects")).isEqualTo(Scope.READ);
            assertThat(Scope.of(method, project)).isEqualTo(Scope.READ);
            assertThat(Scope.of(method, revision + "/drawings")).isEqualTo(Scope.READ);
            assertThat(Scope.of(method, project + "/comparisons")).isEqualTo(Scope.READ);
            assertThat(Scope.of(method, project + "/history")).isEqualTo(Scope.READ);
            assertThat(Scope.of(method, project + "/verification")).isEqualTo(Scope.AUDIT);
            assertThat(Scope.of(method, project + "/checkpoint")).isEqualTo(Scope.AUDIT);
            assertThat(Scope.of(method, project + "/export")).isEqualTo(Scope.AUDIT);
        }
        assertThat(Scope.of(HttpMethod.POST, "/v1/projects")).isEqualTo(Scope.RECORD);
        assertThat(Scope.of(HttpMethod.POST, project + "/revisions")).isEqualTo(Scope.RECORD);
        assertThat(Scope.of(HttpMethod.DELETE, project)).isEqualTo(Scope.RECORD);
        assertThat(Scope.of(HttpMethod.POST, "/v1/reviews")).isEqualTo(Scope.CHECK);
        assertThat(Scope.of(HttpMethod.POST, "/v1/checks/glass")).isEqualTo(Scope.CHECK);
        assertThat(Scope.of(HttpMethod.GET, "/actuator/prometheus")).isEqualTo(Scope.METRICS);
    }

    @Test
    void theSecretMayBeAFile(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("secret"), SECRET + "\n");
        MockEnvironment byFile = named(TokenSettings.SECRET_FILE, file.toString());
        assertThat(TokenSettings.of(byFile).orElseThrow().secret())
                .isEqualTo(
                        TokenSettings.of(named(TokenSettings.SECRET, SECRET))
                                .orElseThrow()
                                .secret());
        refuses(named(TokenSettings.SECRET_FILE, folder.resolve("none").toString()), "be read");
    }

    @Test
    void anIssuersOneKeyIsEnough(@TempDir Path folder) throws Exception {
        try (TestIssuer issuer = new TestIssuer()) {
            Path file = pem(folder, issuer.key().toRSAPublicKey().getEncoded());
            Tokens tokens =
                    new Tokens(
                            TokenSettings.of(
                                            environment(
                                                    JWT + "issuer-uri",
                                                    issuer.name(),
                                                    JWT + "audiences",
                                                    TestIssuer.AUDIENCE,
                                                    JWT + "public-key-location",
                                                    "file:" + file))
                                    .orElseThrow());
            assertThat(tokens.decode(issuer.token("a", "bayledger.read")).getSubject())
                    .isEqualTo("reviewer-7");
            JWTClaimsSet claims = issuer.claims("a", c -> {});
            for (String forged :
                    new String[] {
                        issuer.forged(claims), issuer.confused(claims), TestIssuer.unsigned(claims)
                    }) {
                assertThatThrownBy(() -> tokens.decode(forged)).isInstanceOf(BadJwtException.class);
            }
        }
        KeyPairGenerator small = KeyPairGenerator.getInstance("RSA");
        small.initialize(1024);
        Path weak = pem(folder, small.generateKeyPair().getPublic().getEncoded());
        refuses(named(JWT + "public-key-location", "file:" + weak), "public key");
        refuses(named(JWT + "public-key-location", "file:" + folder.resolve("x")), "public key");
    }

    @Test
    void aSetOfKeysMayHaveItsOwnAddress() throws Exception {
        try (TestIssuer issuer = new TestIssuer()) {
            MockEnvironment environment =
                    environment(
                            JWT + "issuer-uri",
                            issuer.name(),
                            JWT + "audiences",
                            TestIssuer.AUDIENCE,
                            JWT + "jwk-set-uri",
                            issuer.name() + "/keys",
                            JWT + "jws-algorithms",
                            "RS256");
            String token = issuer.token("a", "bayledger.read");
            assertThat(new Tokens(TokenSettings.of(environment).orElseThrow()).decode(token))
                    .isNotNull();
            Tokens strict =
                    new Tokens(
                            TokenSettings.of(
                                            environment.withProperty(
                                                    JWT + "jws-algorithms", "ES256"))
                                    .orElseThrow());
            assertThatThrownBy(() -> strict.decode(token)).isInstanceOf(BadJwtException.class);
        }
    }

    @Test
    void halfAConfigurationIsRefused() {
        assertThat(TokenSettings.of(environment())).isEmpty();
        assertThat(TokenSettings.of(environment(JWT + "issuer-uri", ""))).isEmpty();
        assertThat(TokenSettings.of(named())).isPresent();
        refuses(environment(TokenSettings.SECRET, SECRET), "not said who issues");
        refuses(environment(JWT + "audiences", "a"), "not said who issues");
        refuses(environment(JWT + "issuer-uri", ISSUER), "without an audience");
        refuses(environment(JWT + "issuer-uri", "a b", JWT + "audiences", "a"), "who issues");
        refuses(named(TokenSettings.SECRET, "short"), "too short");
        refuses(
                named(TokenSettings.SECRET, SECRET, JWT + "jwk-set-uri", ISSUER + "/keys"),
                "several keys");
        refuses(
                named(
                        "spring.security.oauth2.resourceserver.opaquetoken.introspection-uri",
                        ISSUER),
                "Opaque tokens");
    }

    @Test
    void isOpenOnLoopbackAlone() {
        for (String address : List.of("127.0.0.1", "::1", "localhost")) {
            SecurityConfiguration.refuseToBeOpenToOthers(environment("server.address", address));
        }
        assertThat(new SecurityConfiguration(environment()).isOpen()).isTrue();
        assertThat(new SecurityConfiguration(named()).isOpen()).isFalse();
        SecurityConfiguration.refuseToBeOpenToOthers(named());
        SecurityConfiguration.refuseToBeOpenToOthers(named("server.address", "0.0.0.0"));

        refusesToStart(environment(), "server.address is not set");
        for (String address : List.of("", "0.0.0.0", "::", "192.0.2.1")) {
            refusesToStart(environment("server.address", address), "server.address");
        }
        String[] management = {"server.address", "127.0.0.1", "management.server.port", "8081"};
        refusesToStart(environment(management), "management.server.address");
        SecurityConfiguration.refuseToBeOpenToOthers(
                environment(management).withProperty("management.server.address", "127.0.0.1"));
    }

    /** The start itself, and early enough that nothing is left behind. */
    @Test
    void refusesBeforeAnythingIsStarted(@TempDir Path folder) {
        SpringApplicationBuilder service =
                new SpringApplicationBuilder(BayledgerApplication.class)
                        .registerShutdownHook(false);
        assertThatThrownBy(
                        () ->
                                service.run(
                                        "--server.port=0",
                                        "--server.address=0.0.0.0",
                                        "--bayledger.embedded-database.directory=" + folder))
                .isInstanceOf(StartupRefusedException.class);
        assertThat(folder).isEmptyDirectory();
    }

    private static void refusesToStart(MockEnvironment environment, String why) {
        assertThatThrownBy(() -> SecurityConfiguration.refuseToBeOpenToOthers(environment))
                .isInstanceOfSatisfying(
                        StartupRefusedException.class,
                        refused ->
                                assertThat(refused.action())
                                        .contains("SERVER_ADDRESS=127.0.0.1")
                                        .contains("JWT_ISSUER_URI")
                                        .contains("JWT_AUDIENCES"))
                .hasMessageContaining(why)
                .hasMessageContaining("no authentication is configured");
    }

    @Test
    void theCommandSaysWhatItNeeds() {
        String[] told = command("dev-token", "--org", "demo");
        assertThat(told[0]).isEmpty();
        assertThat(told[1]).contains("No secret is configured", "BAYLEDGER_AUTHENTICATION_SECRET");
        assertThat(command("dev-token", "--organisation", "demo")[1]).contains("usage: dev-token");
        assertThat(command("dev-token", "--org")[1]).contains("usage: dev-token");
        MockEnvironment environment = named(TokenSettings.SECRET, SECRET);
        for (Map<String, String> wrong :
                List.of(
                        Map.<String, String>of(),
                        Map.of("org", "demo", "scopes", "everything"),
                        Map.of("org", "demo", "hours", "721"),
                        Map.of("org", "demo", "hours", "0"))) {
            assertThatThrownBy(() -> DevelopmentToken.make(wrong, environment, Instant.now()))
                    .isInstanceOfSatisfying(
                            StartupRefusedException.class,
                            refused -> assertThat(refused.action()).contains("usage: dev-token"));
        }
    }

    /** What the command prints, on standard output and as errors. */
    private static String[] command(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code =
                DevelopmentToken.run(
                        arguments,
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(code).isEqualTo(1);
        return new String[] {
            out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8)
        };
    }

    private static void refuses(MockEnvironment environment, String why) {
        assertThatThrownBy(() -> TokenSettings.of(environment))
                .isInstanceOf(StartupRefusedException.class)
                .hasMessageContaining(why);
    }

    private static Path pem(Path folder, byte[] key) throws java.io.IOException, JOSEException {
        return Files.writeString(
                folder.resolve("key.pem"),
                "-----BEGIN PUBLIC KEY-----\n"
                        + Base64.getMimeEncoder().encodeToString(key)
                        + "\n-----END PUBLIC KEY-----\n");
    }
}
