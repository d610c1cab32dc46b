package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A TypeScript client generated from the contract compiles strictly and plays the demo. */
@RunningService
class TypeScriptClientTest {

    @LocalServerPort private int port;

    @Test
    void compilesAndPlaysTheDemo() throws Exception {
        Node.require();
        Node.Run compiled = Node.script("node_modules/typescript/bin/tsc", "--project", ".");
        assertThat(compiled.exit()).as(compiled.toString()).isZero();
        Node.Run played =
                Node.script(
                        "out/demo.js",
                        "http://127.0.0.1:" + port,
                        Path.of("demo-seed").toAbsolutePath().toString());
        assertThat(played.exit()).as(played.toString()).isZero();
        JsonNode outcome = JsonMapper.shared().readTree(played.output());
        assertThat(outcome.get("verdicts").toString()).isEqualTo("[\"EXCEEDED\",\"SATISFIED\"]");
        assertThat(outcome.get("chained").asBoolean()).isTrue();
        assertThat(outcome.get("stale").asInt()).isEqualTo(412);
        // what tells the two documents apart and nothing else: the client lost none of them
        assertThat(outcome.get("changedInputs").toString())
                .isEqualTo("[\"/bays/2/retention\",\"/bays/3/mullion/section\"]");
        assertThat(outcome.get("intact").asBoolean()).isTrue();
        assertThat(outcome.get("size").asInt()).isEqualTo(2);
        double expected = GeneratedClientTest.deflectionOfTheMember();
        assertThat(outcome.at("/deflection/unit").asString()).isEqualTo("in");
        assertThat(outcome.at("/deflection/value").asDouble())
                .isCloseTo(expected, within(expected * 1e-4));
    }
}
