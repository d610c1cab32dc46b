package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bayledger.check.Answer;
import org.bayledger.check.AnswerModule;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

class ReviewTest {

    @Test
    void demo() throws IOException {
        for (int n = 1; n <= 2; n++) {
            ReviewDocument document =
                    Binder.bind(
                            StrictJson.read(
                                    Files.readAllBytes(
                                            Path.of("demo-seed/quillmoor-library-" + n + ".json"))),
                            ReviewDocument.class);
            ReviewResult result =
                    Review.run(document, new Reporting(UnitSystem.US, TraceLevel.GOVERNING));
            JsonMapper mapper =
                    JsonMapper.builder()
                            .addModule(new AnswerModule())
                            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                            .build();
            Files.writeString(
                    Path.of("/tmp/demo" + n + ".out.json"),
                    mapper.writerWithDefaultPrettyPrinter()
                            .writeValueAsString(new Answer<>(UnitSystem.US, result)));
            assertThat(result.bays()).hasSize(5);
        }
    }
}
