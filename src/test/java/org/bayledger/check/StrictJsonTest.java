package org.bayledger.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reader's own limits; what they look like over HTTP is in the contract's tests. */
class StrictJsonTest {

    private static Object read(String json) {
        return StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void readsATreeInItsOrder() {
        assertThat(read("{\"b\":[1,-2.50,true,null],\"a\":{\"\u00e9\":\"\\ud83d\\ude00\"}}"))
                .isInstanceOfSatisfying(
                        Map.class,
                        tree -> {
                            assertThat(tree.keySet().toString()).isEqualTo("[b, a]");
                            assertThat(tree.get("b").toString())
                                    .isEqualTo("[1, -2.50, true, null]");
                            assertThat(tree.get("a").toString()).isEqualTo("{\u00e9=\ud83d\ude00}");
                        });
        assertThat(read("0.1")).isEqualTo(new BigDecimal("0.1"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{\"a\":{\"b\":1,\"b\":2}}; /a/b; twice",
                "[{\"x~y/z\":1,\"x~y/z\":2}]; /0/x~0y~1z; twice",
                "{\"a\":[1,1e401]}; /a/1; too large or too small",
                "{\"a\":[1,1e-402]}; /a/1; too large or too small",
                "{\"a\":0e999999999}; /a; too large or too small",
                "{\"a\":\"\\udc00\\ud800\"}; /a; surrogate",
                "{\"a\":01}; ``; not valid JSON at line 1",
            })
    void pointsAtTheFault(String json, String pointer, String detail) {
        assertThatThrownBy(() -> read(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.malformed()).isTrue();
                            assertThat(refused.faults().get(0).pointer()).isEqualTo(pointer);
                            assertThat(refused.faults().get(0).detail()).contains(detail);
                        });
    }

    @Test
    void nestsAsDeepAsDocumentsNeedAndNoDeeper() {
        assertThat(read("[".repeat(32) + "]".repeat(32))).isNotNull();
        assertThatThrownBy(() -> read("[".repeat(33) + "]".repeat(33)))
                .hasMessageContaining("nesting at most 32 deep");
    }

    @Test
    void countsValues() {
        String most = "[" + "1,".repeat(999_998) + "1]";
        assertThat((List<?>) read(most)).hasSize(999_999);
        assertThatThrownBy(() -> read("[" + most + ",1]")).hasMessageContaining("1000000 values");
    }

    @Test
    void keepsAHundredFaultsAndCountsTheRest() {
        StringBuilder json = new StringBuilder("{\"a\":1");
        for (int i = 0; i < 500; i++) {
            json.append(",\"a\":1");
        }
        assertThatThrownBy(() -> read(json + "}"))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.count()).isEqualTo(500);
                            assertThat(refused.faults()).hasSize(100);
                        });
    }
}
