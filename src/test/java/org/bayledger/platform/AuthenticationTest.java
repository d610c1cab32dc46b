package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.nimbusds.jwt.JWTClaimsSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.bayledger.contract.Contract;
import org.bayledger.platform.RunningCopy.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.http.HttpMethod;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** With an issuer configured, every operation asks who is asking and what they may do. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AuthenticationTest {

    private static final String[] ALL =
            Arrays.stream(Scope.values()).map(Scope::text).toArray(String[]::new);

    /** An operation of the contract, its path with variables in braces. */
    private record Operation(String method, String path) {}

    private final TestDatabase database = TestDatabase.create();
    private TestIssuer issuer;
    private RunningCopy service;
    private String ours;
    private String project;

    @BeforeAll
    void start() throws Exception {
        issuer = new TestIssuer();
        issuer.away(true);
        service =
                new RunningCopy(
                        database,
                        "spring.security.oauth2.resourceserver.jwt.issuer-uri=" + issuer.name(),
                        "spring.security.oauth2.resourceserver.jwt.audiences="
                                + TestIssuer.AUDIENCE,
                        "server.address=0.0.0.0",
                        "management.endpoints.web.exposure.include=health,metrics,prometheus,env");
        ours = "Authorization: Bearer " + issuer.token("Quillmoor", ALL);

        // the issuer is away as long as it is: nobody is let in, nothing hangs
        Answer early = service.get("/v1/projects", ours);
        assertThat(early.status()).isEqualTo(503);
        assertThat(early.header("Retry-After")).isEqualTo("5");
        isProblem(early, "keys of its issuer can't be had");
        issuer.away(false);

        Answer created = service.post("/v1/projects", "{\"name\":\"Library\"}", ours);
        assertThat(created.status()).isEqualTo(201);
        project = created.header("Location");
        String body =
                "{\"author\":\"A. Claimed\",\"reason\":\"first\",\"document\":%s}"
                        .formatted(example("review"));
        Answer recorded = service.post(project + "/revisions", body, ours, "If-None-Match: *");
        assertThat(recorded.status()).isEqualTo(201);
    }

    @AfterAll
    void stop() {
        service.close();
        issuer.close();
    }

    @Test
    void recordsWhoTheTokenSpeaksOfBesideTheAuthorThatIsClaimed() throws Exception {
        JsonNode revision = service.get(project + "/revisions/1", ours).json();
        assertThat(revision.at("/recordedBy").asString()).isEqualTo(issuer.name() + " reviewer-7");
        assertThat(revision.at("/author").asString()).isEqualTo("A. Claimed");
        // both are under the hash
        assertThat(revision.at("/manifest/recordedBy").asString())
                .isEqualTo(issuer.name() + " reviewer-7");
        assertThat(revision.at("/manifest/author").asString()).isEqualTo("A. Claimed");
        assertThat(revision.at("/manifest/organisation").asString()).isEqualTo("Quillmoor");
    }

    /** Every operation that the contract has, also those that are still to come. */
    @Test
    void asksForATokenAndForItsScopeInEveryOperation() throws Exception {
        List<String> asked = new ArrayList<>();
        for (Operation operation : operations()) {
            String name = operation.method() + " " + operation.path();
            Scope needed = Scope.of(HttpMethod.valueOf(operation.method()), operation.path());
            String path = path(operation.path());
            String body = operation.method().equals("POST") ? "{}" : null;

            Answer nobody = service.send(operation.method(), path, body);
            assertThat(nobody.status()).as(name).isEqualTo(401);
            assertThat(nobody.header("WWW-Authenticate")).isEqualTo("Bearer");
            isProblem(nobody, "no token");

            String others =
                    "Authorization: Bearer "
                            + issuer.token(
                                    "Quillmoor",
                                    Arrays.stream(ALL)
                                            .filter(scope -> !scope.equals(needed.text()))
                                            .toArray(String[]::new));
            Answer refused = service.send(operation.method(), path, body, others);
            assertThat(refused.status()).as(name).isEqualTo(403);
            assertThat(refused.header("WWW-Authenticate"))
                    .contains("insufficient_scope", "scope=\"" + needed.text() + "\"");
            isProblem(refused, "scope " + needed.text());

            String own = "Authorization: Bearer " + issuer.token("Quillmoor", needed.text());
            assertThat(service.send(operation.method(), path, body, own).status())
                    .as(name)
                    .isNotIn(401, 403, 404, 500);
            asked.add(name);
        }
        assertThat(asked).hasSizeGreaterThan(15);
    }

    @Test
    void showsNobodyAnotherOrganisationsProjects() throws Exception {
        String theirs = "Authorization: Bearer " + issuer.token("Another", ALL);
        String nobodys = "Authorization: Bearer " + issuer.token("local", ALL);
        int seen = 0;
        for (Operation operation : operations()) {
            if (!operation.path().contains("{projectId}")) {
                continue;
            }
            String path = path(operation.path());
            String body =
                    operation.method().equals("POST")
                            ? "{\"author\":\"a\",\"reason\":\"r\",\"document\":%s}"
                                    .formatted(example("review"))
                            : null;
            for (String other : List.of(theirs, nobodys)) {
                Answer answer =
                        service.send(operation.method(), path, body, other, "If-None-Match: *");
                assertThat(answer.status()).as(operation.toString()).isEqualTo(404);
                isProblem(answer, "");
            }
            assertThat(
                            service.send(operation.method(), path, body, ours, "If-None-Match: *")
                                    .status())
                    .as(operation.toString())
                    .isNotEqualTo(404);
            seen++;
        }
        assertThat(seen).isGreaterThan(6);
        assertThat(service.get("/v1/projects", theirs).json().path("items").isEmpty()).isTrue();
        assertThat(service.get("/v1/projects", ours).json().path("items").size()).isEqualTo(1);
    }

    @Test
    void refusesTokensThatCantBeTrusted() throws Exception {
        Instant now = Instant.now();
        refused("expired", c -> c.expirationTime(Date.from(now.minusSeconds(120))));
        refused("(exp)", c -> c.expirationTime(null));
        refused("before", c -> c.notBeforeTime(Date.from(now.plusSeconds(600))));
        refused("(aud)", c -> c.audience("another-service"));
        refused("(aud)", c -> c.audience((String) null));
        refused("(iss)", c -> c.issuer("http://127.0.0.1:1"));
        refused("(iss)", c -> c.issuer(null));
        refused("(sub)", c -> c.subject(null));
        refused("(sub)", c -> c.subject("\u0000"));
        refused("(sub)", c -> c.subject("a\r\nb"));
        refused("(org)", c -> c.claim("org", null));
        refused("(org)", c -> c.claim("org", " "));
        refused("(org)", c -> c.claim("org", List.of("Quillmoor")));

        JWTClaimsSet good = issuer.claims("Quillmoor", c -> {});
        refused("not signed by", TestIssuer.unsigned(good));
        refused("not signed by", issuer.forged(good));
        refused("not signed by", issuer.confused(good));
        String token = issuer.token("Quillmoor", ALL);
        int payload = token.indexOf('.') + 1;
        char changed = token.charAt(payload + 20) == 'A' ? 'B' : 'A';
        refused("", token.substring(0, payload + 20) + changed + token.substring(payload + 21));
        refused("", token.substring(0, token.lastIndexOf('.') + 1));
        refused("", "nonsense");

        // a token belongs in the header field, nowhere else
        assertThat(service.get("/v1/projects?access_token=" + token).status()).isEqualTo(401);
    }

    private void refused(String why, Consumer<JWTClaimsSet.Builder> change) throws Exception {
        refused(why, issuer.token("Quillmoor", change));
    }

    private void refused(String why, String token) throws Exception {
        Answer answer = service.get("/v1/projects", "Authorization: Bearer " + token);
        assertThat(answer.status()).as("%s: %s", why, answer.body()).isEqualTo(401);
        assertThat(answer.header("WWW-Authenticate")).contains("error=\"invalid_token\"");
        isProblem(answer, why);
        assertThat(answer.body()).doesNotContain("Exception", "nimbus", token);
    }

    @Test
    void showsTheContractAndHealthToEverybodyAndNothingElse() throws Exception {
        for (String open :
                List.of(
                        "/",
                        "/problems",
                        "/problems/insufficient-scope",
                        "/v3/api-docs",
                        "/v3/api-docs.yaml",
                        "/swagger-ui/index.html",
                        "/actuator/health",
                        "/actuator/health/liveness",
                        "/actuator/health/readiness")) {
            assertThat(service.get(open).status()).as(open).isEqualTo(200);
        }
        for (String closed : List.of("/nothing", "/actuator", "/actuator/env", "/v1/nothing")) {
            assertThat(service.get(closed).status()).as(closed).isEqualTo(401);
            assertThat(service.get(closed, ours).status()).as(closed).isEqualTo(404);
        }
        assertThat(service.get("/login").status()).isEqualTo(401);
        assertThat(service.get("/v1/projects", ours).header("Set-Cookie")).isEmpty();
        assertThat(service.get("/actuator/health").body()).doesNotContain("PostgreSQL", "jdbc");
    }

    @Test
    void measuresOperationsByVerdictForThoseWhoMaySeeIt() throws Exception {
        service.get(project + "/verification", ours);
        String[] metrics = {"Authorization: Bearer " + issuer.token("Ops", "bayledger.metrics")};
        String[] reader = {"Authorization: Bearer " + issuer.token("Ops", "bayledger.read")};
        assertThat(service.get("/actuator/prometheus").status()).isEqualTo(401);
        assertThat(service.get("/actuator/prometheus", reader).status()).isEqualTo(403);
        assertThat(service.get("/actuator/metrics", metrics).status()).isEqualTo(200);
        String figures = service.get("/actuator/prometheus", metrics).body();
        assertThat(figures)
                .containsPattern(
                        "bayledger_operations_seconds_count\\{operation=\"recordRevision\","
                                + "status=\"201\",verdict=\"[A-Z]+\"} 1")
                .containsPattern(
                        "bayledger_operations_seconds_count\\{operation=\"verifyProject\","
                                + "status=\"200\",verdict=\"NONE\"}")
                .containsPattern("bayledger_ledger_revisions_total\\{verdict=\"[A-Z]+\"} 1.0")
                .contains("bayledger_ledger_verification_failures_total 0.0");
    }

    @Test
    void logsEveryRequestUnderItsIdentifierAndNoSecret() throws Exception {
        String token = issuer.token("Quillmoor", ALL);
        String forged = issuer.forged(issuer.claims("x", c -> {}));
        try (Listened log = new Listened("org.bayledger", "org.springframework.security")) {
            Answer given =
                    service.get(
                            "/v1/projects?limit=7",
                            "Authorization: Bearer " + token,
                            "X-Request-Id: trace-1.of_7");
            assertThat(given.header("X-Request-Id")).isEqualTo("trace-1.of_7");
            Answer refused =
                    service.get(
                            "/v1/projects",
                            "Authorization: Bearer " + forged,
                            "X-Request-Id: {\"a\":1}");
            String made = refused.header("X-Request-Id");
            assertThat(made).matches("[0-9a-f-]{36}");

            await().untilAsserted(
                            () ->
                                    assertThat(log.lines())
                                            .anyMatch(
                                                    line ->
                                                            line.matches(
                                                                    "trace-1.of_7 GET /v1/projects"
                                                                            + " answered 200 after"
                                                                            + " \\d+ ms"))
                                            .anyMatch(
                                                    line ->
                                                            line.startsWith(
                                                                    made
                                                                            + " GET /v1/projects"
                                                                            + " answered 401")));
            assertThat(log.lines())
                    .filteredOn(line -> !line.startsWith("trace-1.of_7 ") && !line.startsWith(made))
                    .as("lines of these requests without their identifier")
                    .isEmpty();
            assertThat(String.join("\n", log.lines()))
                    .doesNotContain(token)
                    .doesNotContain(token.substring(token.lastIndexOf('.') + 1))
                    .doesNotContain(forged.substring(forged.lastIndexOf('.') + 1))
                    .doesNotContain(TestDatabase.PASSWORD)
                    .doesNotContain("limit=7 answered");
        }
    }

    private static void isProblem(Answer answer, String detail) {
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.json().path("detail").asString()).contains(detail);
        assertThat(answer.json().path("status").asInt()).isEqualTo(answer.status());
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
    }

    /** Every operation of the committed contract. */
    private static List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        YAMLMapper.shared()
                .readTree(Contract.FILE.toFile())
                .path("paths")
                .forEachEntry(
                        (path, methods) ->
                                methods.forEachEntry(
                                        (method, operation) ->
                                                operations.add(
                                                        new Operation(
                                                                method.toUpperCase(Locale.ROOT),
                                                                path))));
        return operations;
    }

    /** A path of this test's project, with a query that its operation accepts. */
    private String path(String template) {
        String path =
                template.replace("/v1/projects/{projectId}", project).replace("{number}", "1");
        if (path.endsWith("/comparisons")) {
            return path + "?base=1&head=1";
        }
        if (path.endsWith("/history")) {
            return path + "?bay=N-01";
        }
        if (path.endsWith("/take-offs")) {
            return path + "?takeOff=GLASS";
        }
        return path.endsWith("/drawings") && path.contains("/revisions/")
                ? path + "?drawing=WIND_ZONES&elevation=N"
                : path;
    }

    private static String example(String operation) throws IOException {
        return Files.readString(
                Path.of("src/main/resources/contract/" + operation + ".request.json"));
    }
}
