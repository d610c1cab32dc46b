package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bayledger.check.StrictJson;
import org.bayledger.ledger.LedgerClient.Answer;
import org.bayledger.platform.TestDatabase;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.json.JsonMapper;

/** A downloaded export is enough to verify a project, and shows every change made to it. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(StandInReview.class)
class ExportTest {

    private static final TestDatabase DATABASE = TestDatabase.create();
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final int SIZE = 4;

    @LocalServerPort private int port;
    @TempDir private Path folder = Path.of("");

    private LedgerClient client = new LedgerClient(0);
    private String project = "";
    private List<String> lines = List.of();

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeEach
    void anExportOfFourRevisions() {
        client = new LedgerClient(port);
        project = client.newProject();
        String etag = client.get(project).etag();
        for (int i = 1; i <= SIZE; i++) {
            // the second bay stays as it is; the fourth revision goes back to the first
            String document =
                    "{\"name\":\"Bibliothèque \\ud83c\\udfd7 \\\"%d\\\"\",\"bays\":[{\"id\":\"N-01\",\"load\":0.%d},{\"id\":\"N-02\",\"load\":0.5}]}"
                            .formatted(i % 2, i == SIZE ? 1 : i);
            etag = client.record(project, document, "If-Match: " + etag).etag();
        }
        Answer export = client.get(project + "/export");
        assertThat(export.status()).isEqualTo(200);
        assertThat(export.header("content-type")).isEqualTo("application/x-ndjson");
        assertThat(export.header("content-disposition"))
                .isEqualTo(
                        "attachment; filename=\""
                                + project.substring(project.lastIndexOf('/') + 1)
                                + ".ndjson\"");
        assertThat(export.body()).endsWith("}\n");
        lines = List.of(export.body().split("\n"));
    }

    @Test
    void theVerifierRunsFromItsSourceOnADownloadedExport() throws IOException {
        Answer checkpoint = client.get(project + "/checkpoint");
        String head = checkpoint.text("/headHash");
        Path export = file(lines);
        ExportVerifier.Finding found = ExportVerifier.launch(export, "4", head);
        assertThat(found.code()).as(found.output()).isZero();
        assertThat(found.output())
                .startsWith("intact: 4 revisions, head " + head)
                .contains("The held checkpoint lies on this chain.");

        ExportVerifier.Finding cut =
                ExportVerifier.launch(file(lines.subList(0, lines.size() - 1)));
        assertThat(cut.code()).isEqualTo(1);
        assertThat(cut.output()).startsWith("broken at revision 5: the export was cut off");

        assertThat(ExportVerifier.run(file(lines), "5", head).firstBroken()).isEqualTo(5);
        assertThat(ExportVerifier.run(file(lines), "3", head).firstBroken()).isEqualTo(3);
        assertThat(ExportVerifier.run(file(lines)).output()).contains("No held checkpoint");
        assertThat(ExportVerifier.run(file(lines), "4").code()).isEqualTo(2);
        assertThat(ExportVerifier.run(file(lines), "4", "x").code()).isEqualTo(2);
        assertThat(ExportVerifier.run(folder.resolve("nothing")).code()).isEqualTo(2);
        assertThat(ExportVerifier.run(file(List.of())).code()).isEqualTo(2);
    }

    @Test
    void everythingRecordedCanBeRebuiltFromItByteForByte() {
        Map<String, String> contents = new HashMap<>();
        List<Map<?, ?>> manifests = new ArrayList<>();
        for (Map<?, ?> line : lines.stream().map(ExportTest::tree).toList()) {
            String text = Trees.text(line, "text");
            if (Trees.text(line, "type").equals("content")) {
                assertThat(contents.put(Trees.text(line, "hash"), text)).as("once").isNull();
            } else if (Trees.text(line, "type").equals("revision")) {
                manifests.add(tree(text));
            }
        }
        assertThat(manifests).hasSize(SIZE);
        // two shells of the document and one of the results; three of one bay and one of the other
        assertThat(contents).hasSize(2 + 1 + 2 * (3 + 1));
        for (int i = 0; i < SIZE; i++) {
            String revision = client.get(project + "/revisions/" + (i + 1)).body();
            assertThat(revision)
                    .contains(",\"document\":" + rebuilt(manifests.get(i), "document", contents))
                    .contains(",\"result\":" + rebuilt(manifests.get(i), "result", contents));
        }
    }

    /** By the published words: the bays, with commas between, in the shell's empty list. */
    private static String rebuilt(Map<?, ?> manifest, String kind, Map<String, String> contents) {
        String bays =
                Trees.list(manifest, "bays").stream()
                        .map(bay -> Trees.text(bay, kind.equals("document") ? "input" : kind))
                        .map(contents::get)
                        .collect(Collectors.joining(","));
        String shell = String.valueOf(contents.get(Trees.text(manifest, kind + "Shell")));
        return shell.replaceFirst(
                "\"bays\":\\[]",
                java.util.regex.Matcher.quoteReplacement("\"bays\":[" + bays + "]"));
    }

    @Test
    void everyFieldOfEveryLineIsVerified() {
        for (int index = 0; index < lines.size(); index++) {
            Map<String, @Nullable Object> line = new LinkedHashMap<>();
            tree(lines.get(index)).forEach((name, value) -> line.put((String) name, value));
            for (String name : List.copyOf(line.keySet())) {
                Object value = line.get(name);
                String what = "line " + (index + 1) + ", " + name;
                for (Object other : others(value)) {
                    Map<String, @Nullable Object> changed = new LinkedHashMap<>(line);
                    changed.put(name, other);
                    assertFound(what + ": " + other, index, changed);
                }
                Map<String, @Nullable Object> without = new LinkedHashMap<>(line);
                without.remove(name);
                assertFound(what + " missing", index, without);
            }
            line.put("surplus", 1);
            assertFound("line " + (index + 1) + " with more", index, line);
        }
    }

    private static List<@Nullable Object> others(@Nullable Object value) {
        List<@Nullable Object> others = new ArrayList<>();
        if (value instanceof String text) {
            char first = text.charAt(0);
            others.add((first == 'a' ? 'b' : 'a') + text.substring(1));
            others.add(text + " ");
            others.add(text.substring(1));
            others.add(text.replaceFirst("\"load\":0", "\"load\":1").replace("local", "locale"));
            others.removeIf(value::equals);
        } else {
            others.add(7);
        }
        others.add(null);
        others.add(List.of());
        return others;
    }

    private void assertFound(String what, int index, Map<String, @Nullable Object> changed) {
        List<String> mutated = new ArrayList<>(lines);
        mutated.set(index, JSON.writeValueAsString(changed));
        ExportVerifier.Finding found = ExportVerifier.run(file(mutated));
        assertThat(found.code()).as("%s: %s", what, found.output()).isIn(1, 2);
        if (found.code() == 1) {
            assertThat(found.firstBroken()).as("%s: %s", what, found.output()).isIn(owners(index));
        } else {
            assertThat(found.output()).as(what).startsWith("unreadable at line ");
        }
    }

    /** The revision that a line belongs to: of a content the next, of the end the last. */
    private Set<Integer> owners(int index) {
        int before = (int) lines.subList(0, index).stream().filter(ExportTest::revision).count();
        if (type(index).equals("end")) {
            // a size can be said too small, too large, or the head of another revision
            return Set.of(1, before, before + 1);
        }
        return Set.of(before + 1);
    }

    private static boolean revision(String line) {
        return line.startsWith("{\"type\":\"revision\"");
    }

    private String type(int index) {
        return Trees.text(tree(lines.get(index)), "type");
    }

    @Test
    void everyLineThatIsTakenOutDoubledOrMovedIsFound() {
        for (int index = 0; index < lines.size(); index++) {
            List<String> without = new ArrayList<>(lines);
            without.remove(index);
            assertBroken("without line " + (index + 1), index, without);
            List<String> twice = new ArrayList<>(lines);
            twice.add(index, lines.get(index));
            ExportVerifier.Finding found = ExportVerifier.run(file(twice));
            assertThat(found.code())
                    .as("line %d twice: %s", index + 1, found.output())
                    .isPositive();
            if (index + 1 < lines.size()
                    && !(type(index).equals("content") && type(index + 1).equals("content"))) {
                List<String> swapped = new ArrayList<>(lines);
                Collections.swap(swapped, index, index + 1);
                assertThat(ExportVerifier.run(file(swapped)).code())
                        .as("line %d after the next", index + 1)
                        .isPositive();
            }
        }
        List<String> surplus = new ArrayList<>(lines);
        surplus.add(lines.get(1));
        assertThat(ExportVerifier.run(file(surplus)).firstBroken()).isEqualTo(SIZE + 1);
        String other = "{\"type\":\"content\",\"hash\":\"%s\",\"text\":\"{}\"}";
        surplus = new ArrayList<>(lines);
        surplus.add(1, other.formatted(Sha256.hex("{}".getBytes(UTF_8))));
        assertThat(ExportVerifier.run(file(surplus)).firstBroken()).isEqualTo(1);
    }

    private void assertBroken(String what, int index, List<String> mutated) {
        ExportVerifier.Finding found = ExportVerifier.run(file(mutated));
        if (index == 0) {
            assertThat(found.code()).as(what).isEqualTo(2);
            return;
        }
        assertThat(found.code()).as("%s: %s", what, found.output()).isEqualTo(1);
        int revision = type(index).equals("end") ? SIZE + 1 : owners(index).iterator().next();
        assertThat(found.firstBroken()).as("%s: %s", what, found.output()).isEqualTo(revision);
    }

    @Test
    void aBodyThatIsNoJsonIsUnreadable() throws IOException {
        Set<String> said = new HashSet<>();
        for (String bad :
                List.of(
                        "",
                        "x",
                        "{",
                        "[1]",
                        "{\"type\":\"project\"} {}",
                        "{\"type\":\"project\",\"type\":\"project\"}",
                        "{\"type\":\"pro\\ject\"}",
                        "{\"type\":\"\\ud800\"}",
                        "{\"type\":\"\\u00g0\"}",
                        "{\"type\":01}",
                        "{\"type\":tru}",
                        "{\"type\":\"a\tb\"}",
                        "[".repeat(100),
                        lines.get(0).replace("bayledger-export-1", "bayledger-export-2"))) {
            List<String> mutated = new ArrayList<>(lines);
            mutated.set(0, bad);
            ExportVerifier.Finding found = ExportVerifier.run(file(mutated));
            assertThat(found.code()).as("%s: %s", bad, found.output()).isEqualTo(2);
            assertThat(found.output()).startsWith("unreadable at line 1: ");
            said.add(found.output());
        }
        assertThat(said).hasSizeGreaterThan(8);
        Path notUtf8 = folder.resolve("latin");
        Files.write(notUtf8, new byte[] {'{', (byte) 0xe9, '}'});
        assertThat(ExportVerifier.run(notUtf8).code()).isEqualTo(2);
        assertThat(Pattern.compile("org\\.bayledger").matcher(source()).find())
                .as("the verifier uses nothing of the service")
                .isFalse();
    }

    private static String source() throws IOException {
        return Files.readString(ExportVerifier.SOURCE);
    }

    @Test
    void anEmptyProjectAndAnUnknownOne() {
        String empty = client.newProject();
        Answer export = client.get(empty + "/export");
        assertThat(export.body().split("\n")).hasSize(2);
        ExportVerifier.Finding found = ExportVerifier.run(file(List.of(export.body().split("\n"))));
        assertThat(found.output()).startsWith("intact: 0 revisions, head ");
        assertThat(client.get("/v1/projects/N-01/export").status()).isEqualTo(404);
        assertThat(client.get(empty + "/export", "Accept: text/csv").status()).isEqualTo(406);
    }

    private static Map<?, ?> tree(String json) {
        return (Map<?, ?>) java.util.Objects.requireNonNull(StrictJson.read(json.getBytes(UTF_8)));
    }

    private Path file(List<String> content) {
        try {
            Path file = folder.resolve("export.ndjson");
            Files.writeString(file, content.isEmpty() ? "" : String.join("\n", content) + "\n");
            return file;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
