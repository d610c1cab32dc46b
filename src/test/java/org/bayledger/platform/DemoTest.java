package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.bayledger.BayledgerApplication;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The demo scenario is there after the first start, once, and fits a screen. */
@ExtendWith(OutputCaptureExtension.class)
class DemoTest {

    @TempDir static Path folder;

    @Test
    void isLoadedOnceAndPrintedOnEveryStart(CapturedOutput output) throws Exception {
        JsonNode before = startAndReadProjects();
        List<String> first = screen(output.getOut());
        JsonNode after = startAndReadProjects();
        List<String> second = screen(output.getOut().substring(output.getOut().indexOf(END)));

        assertThat(before.path("items").size()).isEqualTo(1);
        assertThat(before.at("/items/0/head/size").asInt()).isEqualTo(2);
        assertThat(after).isEqualTo(before);

        assertThat(first).hasSizeLessThan(40).allMatch(line -> line.length() <= 100);
        assertThat(first).allMatch(line -> line.chars().allMatch(c -> c >= ' ' && c < 127));
        assertThat(second).isEqualTo(first);
        String id = before.at("/items/0/projectId").asString();
        assertThat(first)
                .contains("http://127.0.0.1:PORT/swagger-ui.html")
                .contains("http://127.0.0.1:PORT/v1/projects/" + id + "/revisions/1")
                .anyMatch(line -> line.contains("framing") && line.contains("N-701/mullion/2 EXC"))
                .anyMatch(line -> line.matches(" *bay N-701 +EXCEEDED +SATISFIED"))
                .anyMatch(line -> line.contains("N-202/lite/2-2: Set two setting blocks"));
    }

    private static final String END = "Results support, and never replace";

    /** The lines that were printed, with whatever port it was. */
    private static List<String> screen(String out) {
        int start = out.indexOf("Bayledger answers");
        return out.substring(start, out.indexOf(END, start))
                .replaceAll("127\\.0\\.0\\.1:\\d+", "127.0.0.1:PORT")
                .lines()
                .toList();
    }

    private static JsonNode startAndReadProjects() throws IOException, InterruptedException {
        try (ConfigurableApplicationContext service =
                new SpringApplicationBuilder(BayledgerApplication.class)
                        .run(
                                "--server.port=0",
                                "--bayledger.embedded-database.directory=" + folder)) {
            URI projects =
                    URI.create(
                            "http://127.0.0.1:"
                                    + service.getEnvironment().getProperty("local.server.port")
                                    + "/v1/projects");
            return JsonMapper.shared()
                    .readTree(
                            HttpClient.newHttpClient()
                                    .send(
                                            HttpRequest.newBuilder(projects).build(),
                                            HttpResponse.BodyHandlers.ofString())
                                    .body());
        }
    }
}
