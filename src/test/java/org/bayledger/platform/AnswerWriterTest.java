package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bayledger.check.Answer;
import org.bayledger.check.AnswerModule;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.springframework.http.MediaType;
import org.springframework.mock.http.MockHttpOutputMessage;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

class AnswerWriterTest {

    private final JsonMapper json = JsonMapper.builder().addModule(new AnswerModule()).build();
    private final MockHttpOutputMessage output = new MockHttpOutputMessage();

    @Test
    void aSmallAnswerSaysHowLongItIs() throws IOException {
        Answer<?> answer = new Answer<>(UnitSystem.US, lengths(1_000));

        new AnswerWriter(json).write(answer, MediaType.APPLICATION_JSON, output);

        assertThat(output.getBodyAsBytes()).isEqualTo(json.writeValueAsBytes(answer));
        assertThat(output.getHeaders().getContentLength())
                .isEqualTo(output.getBodyAsBytes().length)
                .isGreaterThan(16_384);
        assertThat(output.getHeaders().getContentType()).isEqualTo(MediaType.APPLICATION_JSON);
    }

    @Test
    void aLargeAnswerIsSentAsItIsMade() throws IOException {
        Answer<?> answer = new Answer<>(UnitSystem.SI, lengths(100_000));

        new AnswerWriter(json).write(answer, MediaType.APPLICATION_JSON, output);

        assertThat(output.getBodyAsBytes()).isEqualTo(json.writeValueAsBytes(answer));
        assertThat(output.getHeaders().getContentLength()).isNegative();
    }

    /** What fails while it is still small is answered as a problem, not with half an answer. */
    @Test
    void nothingIsSentOfASmallAnswerThatFails() {
        List<Object> endless = new ArrayList<>();
        endless.add(List.of(1.5, endless));
        Answer<?> answer = new Answer<>(UnitSystem.SI, endless);

        assertThatThrownBy(
                        () ->
                                new AnswerWriter(json)
                                        .write(answer, MediaType.APPLICATION_JSON, output))
                .isInstanceOf(JacksonException.class);
        assertThat(output.getBodyAsBytes()).isEmpty();
    }

    private static List<Quantity> lengths(int count) {
        return Collections.nCopies(count, Quantity.of(Dimension.LENGTH, 1.23456789));
    }
}
