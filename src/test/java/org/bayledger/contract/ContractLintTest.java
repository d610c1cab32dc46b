package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A linter that knows OpenAPI finds nothing in the contract; its rules: src/test/node/redocly.yaml.
 */
class ContractLintTest {

    @BeforeEach
    void needsTheLinter() throws Exception {
        Node.require();
    }

    @Test
    void findsNothingInTheContract() throws Exception {
        assertThat(problems(Contract.FILE)).isEmpty();
    }

    @Test
    void findsWhatIsPlanted() throws Exception {
        ObjectNode contract = (ObjectNode) new YAMLMapper().readTree(Contract.FILE);
        ObjectNode operation = (ObjectNode) contract.at("/paths/~1v1~1checks~1glass/post");
        operation.remove("summary");
        operation.remove("security");
        ((ObjectNode) operation.at("/requestBody/content/application~1json/example"))
                .put("surplus", 1);
        ((ObjectNode) operation.at("/responses/200/content/application~1json/schema"))
                .put("$ref", "#/components/schemas/Nothing");
        Path planted = Node.FOLDER.resolve("planted.json");
        Files.writeString(planted, contract.toString());
        assertThat(problems(planted))
                .extracting(problem -> problem.replaceFirst(":.*", ""))
                .contains(
                        "operation-summary",
                        "security-defined",
                        "no-invalid-media-type-examples",
                        "no-unresolved-refs");
    }

    private static List<String> problems(Path contract) throws Exception {
        Node.Run run =
                Node.script(
                        "node_modules/@redocly/cli/bin/cli.js",
                        "lint",
                        "--config=redocly.yaml",
                        "--format=json",
                        "--max-problems=1000",
                        contract.toAbsolutePath().toString());
        assertThat(run.output()).as(run.toString()).startsWith("{");
        List<String> problems = new ArrayList<>();
        for (JsonNode problem : JsonMapper.shared().readTree(run.output()).get("problems")) {
            problems.add(
                    "%s: %s (%s)"
                            .formatted(
                                    problem.get("ruleId").asString(),
                                    problem.get("message").asString(),
                                    problem.at("/location/0/pointer").asString()));
        }
        return problems;
    }
}
