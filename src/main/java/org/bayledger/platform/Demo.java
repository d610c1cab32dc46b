package org.bayledger.platform;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bayledger.ledger.FirstProject;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.core.env.Environment;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * Loads the demo scenario into an embedded database that holds no project yet, and prints what to
 * try once the service answers.
 */
@Component
@ConditionalOnWebApplication
class Demo implements ApplicationRunner {

    private final FirstProject first;
    private final JsonMapper json;
    private final Environment environment;
    private final ServerProperties server;
    private final boolean enabled;

    /**
     * @param enabled whether the demo scenario is wanted; where it is not said, it is wanted in the
     *     service's own database while the service is open, and nowhere else
     */
    Demo(
            FirstProject first,
            JsonMapper json,
            Environment environment,
            ServerProperties server,
            ObjectProvider<EmbeddedDatabase> embedded,
            SecurityConfiguration security,
            @Value("${bayledger.demo.enabled:#{null}}") @Nullable Boolean enabled) {
        this.first = first;
        this.json = json;
        this.environment = environment;
        this.server = server;
        this.enabled =
                enabled != null ? enabled : security.isOpen() && embedded.getIfAvailable() != null;
    }

    @Override
    public void run(ApplicationArguments arguments) throws IOException {
        Welcome welcome = new Welcome(address());
        if (enabled) {
            List<FirstProject.Issue> issues =
                    List.of(
                            issue("quillmoor-library-1.json", "Issued for review"),
                            issue(
                                    "quillmoor-library-2.json",
                                    "Corner mullions of level 7 strengthened; retention of N-203"
                                            + " called out"));
            String name = json.readTree(issues.get(0).document()).path("name").asString();
            first.recordIfEmpty(name, issues);
            first.read(issues.size())
                    .filter(project -> project.name().equals(name))
                    .filter(project -> project.results().size() == issues.size())
                    .ifPresent(
                            project ->
                                    welcome.add(
                                            project.id(),
                                            name,
                                            project.results().stream()
                                                    .map(json::readTree)
                                                    .toList()));
        }
        System.out.print(welcome.text());
        System.out.flush();
    }

    private static FirstProject.Issue issue(String file, String reason) throws IOException {
        String document =
                new ClassPathResource("demo-seed/" + file)
                        .getContentAsString(StandardCharsets.UTF_8);
        return new FirstProject.Issue("project engineer", reason, document);
    }

    private String address() {
        InetAddress address = server.getAddress();
        String host =
                address == null || address.isAnyLocalAddress()
                        ? "127.0.0.1"
                        : address.getHostAddress();
        return "http://" + host + ":" + environment.getProperty("local.server.port");
    }
}
