package org.bayledger.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

/** Against the canonicalizer of the authors of RFC 8785. */
class CanonicalizerTest {

    private static final JsonMapper MAPPER = JsonMapper.shared();

    private final Random random = new Random(8785);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                " { \"b\" : [ 1 , 2.50 , -0 , 0.0 ] , \"a\" : { } } ",
                "[1e21,1e20,123456789012345678,1E-7,0.000001,0.0000012,0.00000012,-1.5e-300]",
                "[0.1,0.30000000000000004,100,1e2,12345678901234.5,1234567890.123456,4.35,-12.5]",
                "[\"\\u0000\\u001f\\b\\t\\n\\f\\r\\\"\\\\/\\u007f\\u0080\\u20ac\\ud83d\\ude00\"]",
                "{\"\\u20ac\":1,\"\\r\":2,\"\\ud83d\\ude00\":3,\"\\ufb33\":4,\"1\":5,\"\":6}",
                "{\"z\":{\"b\":null,\"a\":true},\"y\":false}"
            })
    void writesWhatTheReferenceWrites(String json) throws IOException {
        same(json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void writesRandomTreesAndTheDemoAsTheReferenceDoes() throws IOException {
        for (int i = 0; i < 3000; i++) {
            // the reference takes an object or a list
            same(MAPPER.writeValueAsBytes(List.of(tree(4))));
        }
        for (int revision = 1; revision <= 2; revision++) {
            same(Files.readAllBytes(Path.of("demo-seed/quillmoor-library-" + revision + ".json")));
        }
    }

    @Test
    void refusesAPropertyTwiceAndNumbersThatNoDoubleHolds() {
        for (String json :
                List.of(
                        "{\"a\":1,\"b\":2,\"a\":1}",
                        "{\"a\":1,\"a\":1}",
                        "[1e999]",
                        "[1][2]",
                        "",
                        "[1",
                        "[1,]",
                        "{\"a\" 1}",
                        "{a:1}",
                        "{1:1}",
                        "nul",
                        "truth",
                        "\"open",
                        "\"a\tb\"")) {
            assertThatThrownBy(() -> CanonicalJson.bytes(json.getBytes(StandardCharsets.UTF_8)))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    private static void same(byte[] json) throws IOException {
        assertThat(new String(CanonicalJson.bytes(json), StandardCharsets.UTF_8))
                .isEqualTo(
                        new String(
                                new JsonCanonicalizer(json).getEncodedUTF8(),
                                StandardCharsets.UTF_8));
    }

    private Object tree(int depth) {
        int kind = random.nextInt(depth == 0 ? 5 : 7);
        return switch (kind) {
            case 0 -> random.nextBoolean();
            case 1 ->
                    new BigDecimal(random.nextInt(2_000_000) - 1_000_000)
                            .movePointLeft(random.nextInt(14));
            case 2 -> random.nextGaussian() * Math.pow(10, random.nextInt(50) - 25);
            case 3 -> random.nextLong() >> random.nextInt(64);
            case 4 -> text();
            case 5 -> {
                Map<String, Object> object = new LinkedHashMap<>();
                for (int i = random.nextInt(6); i > 0; i--) {
                    object.put(text(), tree(depth - 1));
                }
                yield object;
            }
            default -> {
                List<Object> list = new ArrayList<>();
                for (int i = random.nextInt(5); i > 0; i--) {
                    list.add(tree(depth - 1));
                }
                yield list;
            }
        };
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(7); i > 0; i--) {
            int place = random.nextInt(4);
            text.appendCodePoint(
                    place == 0
                            ? random.nextInt(0x80)
                            : place == 1
                                    ? 0x80 + random.nextInt(0x700)
                                    : place == 2
                                            ? 0x1f600 + random.nextInt(64)
                                            : 'a' + random.nextInt(26));
        }
        return text.toString();
    }
}
