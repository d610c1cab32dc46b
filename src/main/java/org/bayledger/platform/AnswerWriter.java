package org.bayledger.platform;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import org.bayledger.check.Answer;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes answers as JSON: a small one at once and with its length, a large one as it is made, so
 * that it never stands in memory as text.
 */
final class AnswerWriter implements HttpMessageConverter<Answer<?>> {

    /** What is still one piece: checks are, reviews of more than a bay or two are not. */
    private static final int SMALL = 64 * 1024;

    private final JsonMapper json;

    AnswerWriter(JsonMapper json) {
        this.json = json;
    }

    @Override
    public boolean canRead(Class<?> type, @Nullable MediaType mediaType) {
        return false;
    }

    @Override
    public boolean canWrite(Class<?> type, @Nullable MediaType mediaType) {
        return type == Answer.class && MediaType.APPLICATION_JSON.isCompatibleWith(mediaType);
    }

    @Override
    public List<MediaType> getSupportedMediaTypes() {
        return List.of(MediaType.APPLICATION_JSON);
    }

    @Override
    public Answer<?> read(Class<? extends Answer<?>> type, HttpInputMessage input) {
        throw new IllegalStateException("writes only");
    }

    @Override
    public void write(Answer<?> answer, @Nullable MediaType type, HttpOutputMessage output)
            throws IOException {
        output.getHeaders().setContentType(MediaType.APPLICATION_JSON);
        Body body = new Body(output);
        json.writeValue(body, answer);
        body.finish();
    }

    /** Holds back what is written while it is small. */
    private static final class Body extends OutputStream {

        private final HttpOutputMessage output;
        private byte[] held = new byte[SMALL / 4];
        private int size;
        private @Nullable OutputStream open;

        Body(HttpOutputMessage output) {
            this.output = output;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            if (open == null && size + length > SMALL) {
                open = output.getBody();
                open.write(held, 0, size);
            }
            if (open != null) {
                open.write(bytes, offset, length);
                return;
            }
            if (size + length > held.length) {
                held = Arrays.copyOf(held, SMALL);
            }
            System.arraycopy(bytes, offset, held, size, length);
            size += length;
        }

        void finish() throws IOException {
            if (open == null) {
                output.getHeaders().setContentLength(size);
                open = output.getBody();
                open.write(held, 0, size);
            }
            open.flush();
        }
    }
}
