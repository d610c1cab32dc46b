package org.bayledger.platform;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.bayledger.platform.RunningCopy.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Configuration;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** What the service needs is away or taken: it says so soon, and goes on when it is back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FaultsTest {

    private final TestDatabase database = TestDatabase.create();
    private RunningCopy service;

    /**
     * Tells when a request has reached the endpoints, before its body is read, and keeps its answer
     * in the container until the graceful stop no longer counts it.
     */
    @Configuration
    static class Gate
            implements WebMvcConfigurer, WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

        static final CountDownLatch REACHED = new CountDownLatch(1);

        @Override
        public void customize(TomcatServletWebServerFactory factory) {
            factory.addEngineValves(
                    new ValveBase(true) {
                        @Override
                        public void invoke(Request request, Response response)
                                throws IOException, ServletException {
                            getNext().invoke(request, response);
                            if (isTheOne(request)) {
                                gracefulStops().forEach(FaultsTest::join);
                            }
                        }
                    });
        }

        private static List<Thread> gracefulStops() {
            return Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().equals("tomcat-shutdown"))
                    .toList();
        }

        private static boolean isTheOne(HttpServletRequest request) {
            return "here".equals(request.getHeader("X-Request-Id"));
        }

        @Override
        public void addInterceptors(InterceptorRegistry registry) {
            registry.addInterceptor(
                    new HandlerInterceptor() {
                        @Override
                        public boolean preHandle(
                                HttpServletRequest request,
                                HttpServletResponse response,
                                Object handler) {
                            if (isTheOne(request)) {
                                REACHED.countDown();
                            }
                            return true;
                        }
                    });
        }
    }

    @BeforeAll
    void start() {
        service =
                new RunningCopy(
                        List.of(Gate.class),
                        database,
                        "spring.datasource.hikari.maximum-pool-size=1",
                        "spring.datasource.hikari.connection-timeout=500",
                        "bayledger.limits.calculations-at-once=1",
                        "bayledger.limits.calculation-wait=0ms");
    }

    @AfterAll
    void stop() {
        service.close();
    }

    @Test
    @Order(1)
    void saysSoonThatEveryConnectionIsTaken() throws Exception {
        String project = service.post("/v1/projects", "{\"name\":\"Library\"}").header("Location");
        try (Connection held = service.context().getBean(DataSource.class).getConnection()) {
            assertThat(held.isValid(1)).isTrue();
            unavailable(service.get("/v1/projects"));
            unavailable(service.post("/v1/projects", "{\"name\":\"Other\"}"));
            String revision =
                    "{\"author\":\"a\",\"reason\":\"r\",\"document\":%s}"
                            .formatted(example("review"));
            unavailable(
                    service.post(
                            project + "/revisions",
                            revision,
                            "If-None-Match: *",
                            "Idempotency-Key: once"));
            // what needs no database goes on
            assertThat(service.post("/v1/checks/framing", example("checkFraming")).status())
                    .isEqualTo(200);
        }
        assertThat(service.get("/v1/projects").json().path("items").size()).isEqualTo(1);
        assertThat(service.get(project).json().at("/head/size").asInt()).isZero();
    }

    @Test
    @Order(2)
    void saysThatTheDatabaseIsAwayAndGoesOnWhenItIsBack() throws Exception {
        allowConnections(false);
        unavailable(service.get("/v1/projects"));
        unavailable(service.post("/v1/projects", "{\"name\":\"Other\"}"));
        assertThat(service.get("/actuator/health/readiness").status()).isEqualTo(503);
        assertThat(service.get("/actuator/health/liveness").status()).isEqualTo(200);

        allowConnections(true);
        assertThat(service.get("/v1/projects").status()).isEqualTo(200);
        Answer ready = service.get("/actuator/health/readiness");
        assertThat(ready.status()).isEqualTo(200);
        assertThat(ready.body()).isEqualTo("{\"status\":\"UP\"}");
    }

    @Test
    @Order(3)
    void takesOnNoMoreLongCalculationsThanItCanDo() throws Exception {
        Workload workload = service.context().getBean(Workload.class);
        MockHttpServletRequest running = new MockHttpServletRequest("POST", "/v1/reviews");
        RequestContextHolder.setRequestAttributes(new ServletRequestAttributes(running));
        try {
            workload.bodyArrived();
        } finally {
            RequestContextHolder.resetRequestAttributes();
        }
        Answer busy = service.post("/v1/reviews", example("review"));
        unavailable(busy);
        assertThat(busy.json().path("detail").asString()).contains("as many long calculations");
        // short ones go on, and what is wrong with a body is said by whoever reads it
        assertThat(service.post("/v1/checks/framing", example("checkFraming")).status())
                .isEqualTo(200);
        workload.afterCompletion(running, new MockHttpServletResponse(), this, null);

        // every answer, good or bad, gives its place back
        for (int i = 0; i < 3; i++) {
            assertThat(service.post("/v1/reviews", example("review")).status()).isEqualTo(200);
            assertThat(service.post("/v1/reviews", "{").status()).isEqualTo(400);
            assertThat(service.get("/v1/projects/none/verification").status()).isEqualTo(404);
            assertThat(service.post("/v1/reviews?units=x", example("review")).status())
                    .isEqualTo(400);
        }
    }

    @Test
    @Order(4)
    void finishesWhatItHasBegunBeforeItStops() throws Exception {
        byte[] body = example("checkFraming").getBytes(UTF_8);
        int port = service.port();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream()
                    .write(
                            ("POST /v1/checks/framing HTTP/1.1\r\nHost: localhost\r\n"
                                            + "X-Request-Id: here\r\n"
                                            + "Content-Type: application/json\r\n"
                                            + "Content-Length: "
                                            + body.length
                                            + "\r\n\r\n")
                                    .getBytes(UTF_8));
            socket.getOutputStream().write(body, 0, 10);
            assertThat(Gate.REACHED.await(60, TimeUnit.SECONDS)).isTrue();

            CompletableFuture<Void> stopped = CompletableFuture.runAsync(service::close);
            await().until(() -> refusesConnections(port));
            assertThat(stopped).isNotDone();
            socket.getOutputStream().write(body, 10, body.length - 10);
            String answer = new String(socket.getInputStream().readAllBytes(), UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 200").contains("\"verdict\"");
            stopped.get(60, TimeUnit.SECONDS);
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean refusesConnections(int port) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return !socket.isConnected();
        } catch (ConnectException refused) {
            return true;
        }
    }

    private static void unavailable(Answer answer) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(503);
        assertThat(answer.header("Retry-After")).isEqualTo("5");
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.body())
                .contains("/problems/service-unavailable")
                .doesNotContain("Hikari", "SQL", "Exception");
    }

    private void allowConnections(boolean allowed) throws SQLException {
        String url = database.url();
        String name = url.substring(url.lastIndexOf('/') + 1);
        TestDatabase server =
                new TestDatabase(
                        url.replaceFirst("/[^/]*$", "/postgres"),
                        database.superuser(),
                        database.superuserPassword());
        try (Connection connection = server.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("ALTER DATABASE " + name + " ALLOW_CONNECTIONS " + allowed);
            if (!allowed) {
                statement.execute(
                        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '"
                                + name
                                + "'");
            }
        }
    }

    private static String example(String operation) throws IOException {
        return Files.readString(
                Path.of("src/main/resources/contract/" + operation + ".request.json"));
    }
}
