package org.bayledger.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

class AnswerModuleTest {

    private final JsonMapper json =
            JsonMapper.builder()
                    .addModule(new AnswerModule())
                    .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                    .build();
    private final JsonMapper sorted =
            json.rebuild().enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

    /** Also the second time, when its words are known, and beyond the words that are kept. */
    @Test
    void aStepIsWrittenWhateverItsWordsHold() {
        for (int i = 0; i < 10_000; i++) {
            String words = "\"" + i % 5_000 + "\" \\ \u0001 \u00fc \u2264 \ud83d\ude00";
            TraceStep step =
                    new TraceStep(
                            "M" + words,
                            "moment " + words,
                            Quantity.of(Dimension.MOMENT, -1234.5),
                            "w L^2 / 8 " + words,
                            "statics " + words);

            JsonNode read =
                    json.readTree(json.writeValueAsBytes(new Answer<>(UnitSystem.SI, step)));

            assertThat(read.propertyNames())
                    .containsExactly("symbol", "meaning", "value", "formula", "source");
            assertThat(List.of("symbol", "meaning", "formula", "source"))
                    .extracting(name -> read.path(name).asString())
                    .containsExactly(step.symbol(), step.meaning(), step.formula(), step.source());
            assertThat(read.path("value")).hasToString("{\"value\":-1.2345,\"unit\":\"kN*m\"}");

            JsonNode recorded =
                    json.readTree(sorted.writeValueAsBytes(new Answer<>(UnitSystem.SI, step)));
            assertThat(recorded).isEqualTo(read);
            assertThat(recorded.propertyNames())
                    .containsExactly("formula", "meaning", "source", "symbol", "value");
            assertThat(recorded.path("value").propertyNames()).containsExactly("unit", "value");
        }
    }
}
