package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bayledger.check.Fault;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalJsonTest {

    /** Samples of RFC 8785, 3.2.2 and 3.2.3 (from memory). */
    @Test
    void writesTheRfcsExample() {
        String posted =
                """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }""";
        assertThat(canonical(posted))
                .isEqualTo(
                        "{\"literals\":[null,true,false],"
                                + "\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    @ParameterizedTest
    @CsvSource({"'{\"b\":1,\"a\":2}', '{\"a\":2,\"b\":1}'", "'{ \"a\" : [ ] }', '{\"a\":[]}'"})
    void sortsAndStrips(String posted, String expected) {
        assertThat(canonical(posted)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "1.0",
                "1.50",
                "0.1",
                "1e21",
                "1e-7",
                "9007199254740992",
                "1.7976931348623157e308"
            })
    void acceptsNumbersThatKeepTheirValue(String number) {
        Faults faults = new Faults();
        CanonicalJson.requireExactNumbers(tree("{\"n\":" + number + "}"), "", faults);
        assertThat(faults.size()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"9007199254740993", "12345678901234567890", "0.12345678901234567890"})
    void refusesNumbersThatWouldChange(String number) {
        Faults faults = new Faults();
        CanonicalJson.requireExactNumbers(tree("{\"a/b\":[" + number + "]}"), "/document", faults);
        assertThatThrownBy(faults::throwIfAny)
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly("/document/a~1b/0"));
    }

    @Test
    void refusesNumbersThatNoDoubleReaches() {
        Faults faults = new Faults();
        CanonicalJson.requireExactNumbers(new java.math.BigDecimal("1e400"), "/n", faults);
        assertThat(faults.size()).isEqualTo(1);
    }

    /** Whatever the shell holds, putting the bays back gives the canonical bytes of the whole. */
    @Test
    void splicingRebuildsTheExactBytes() {
        Random random = new Random(20260305);
        for (int i = 0; i < 500; i++) {
            StringBuilder json = new StringBuilder("{");
            json.append("\"").append(random.nextBoolean() ? "a" : "z").append("\":");
            json.append(
                    List.of(
                                    "{\"bays\":[]}",
                                    "\"\\\"bays\\\":[]\"",
                                    "[[\"bays\",{\"bays\":[{}]}]]",
                                    "\"\\\\\"",
                                    "\"bays\"",
                                    "-1.5e-9")
                            .get(random.nextInt(6)));
            json.append(",\"bays\":[");
            int bays = random.nextInt(4);
            for (int bay = 0; bay < bays; bay++) {
                json.append(bay == 0 ? "" : ",")
                        .append("{\"z\":\"\\\"bays\\\":[é]\",\"bays\":[1],\"id\":\"N-")
                        .append(bay)
                        .append("\"}");
            }
            json.append("]}");
            Map<?, ?> tree = (Map<?, ?>) tree(json.toString());
            Parts parts = Parts.of(tree);
            assertThat(parts.bays()).hasSize(bays);
            byte[] joined =
                    Parts.join(
                            parts.shell().bytes(),
                            parts.bays().stream().map(bay -> bay.content().bytes()).toList());
            assertThat(new String(joined, UTF_8)).isEqualTo(canonical(json.toString()));
        }
    }

    @Test
    void aDocumentWithoutBaysIsAllShell() {
        Parts parts = Parts.of((Map<?, ?>) tree("{\"bays\":null,\"name\":\"x\"}"));
        assertThat(parts.bays()).isEmpty();
        assertThat(new String(Parts.join(parts.shell().bytes(), List.of()), UTF_8))
                .isEqualTo("{\"bays\":null,\"name\":\"x\"}");
        assertThatThrownBy(() -> Parts.join("{}".getBytes(UTF_8), List.of(new byte[] {'1'})))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static String canonical(String json) {
        return new String(CanonicalJson.bytes(tree(json)), UTF_8);
    }

    private static @Nullable Object tree(String json) {
        return StrictJson.read(json.getBytes(UTF_8));
    }
}
