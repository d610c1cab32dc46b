package org.bayledger.platform;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bayledger.check.Binder;
import org.bayledger.check.RawJson;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.web.ErrorResponseException;

/**
 * Reads a JSON body into one of the service's request records, or keeps it raw beside its tree:
 * strictly, within the size limit, and with every fault reported at once.
 */
final class RequestReader implements HttpMessageConverter<Object> {

    private final int maxBytes;
    private final Workload workload;

    RequestReader(int maxBytes, Workload workload) {
        this.maxBytes = maxBytes;
        this.workload = workload;
    }

    @Override
    public boolean canRead(Class<?> type, @Nullable MediaType mediaType) {
        return (type == RawJson.class
                        || (type.isRecord() && type.getName().startsWith("org.bayledger.")))
                && MediaType.APPLICATION_JSON.equalsTypeAndSubtype(mediaType);
    }

    @Override
    public boolean canWrite(Class<?> type, @Nullable MediaType mediaType) {
        return false;
    }

    @Override
    public List<MediaType> getSupportedMediaTypes() {
        return List.of(MediaType.APPLICATION_JSON);
    }

    @Override
    public Object read(Class<? extends Object> type, HttpInputMessage input) throws IOException {
        requireUtf8(input.getHeaders());
        if (input.getHeaders().getContentLength() > maxBytes) {
            throw tooLarge();
        }
        byte[] body = input.getBody().readNBytes(maxBytes + 1);
        if (body.length > maxBytes) {
            throw tooLarge();
        }
        workload.bodyArrived();
        return type == RawJson.class
                ? RawJson.read(body)
                : Binder.bind(StrictJson.read(body), type);
    }

    @Override
    public void write(Object value, @Nullable MediaType type, HttpOutputMessage output) {
        throw new IllegalStateException("reads only");
    }

    private static void requireUtf8(HttpHeaders headers) {
        MediaType type = headers.getContentType();
        Charset charset = type == null ? null : type.getCharset();
        String encoding = headers.getFirst(HttpHeaders.CONTENT_ENCODING);
        boolean encoded = encoding != null && !"identity".equalsIgnoreCase(encoding.strip());
        if (encoded || (charset != null && !charset.equals(StandardCharsets.UTF_8))) {
            throw refused(
                    HttpStatus.UNSUPPORTED_MEDIA_TYPE,
                    "The body must be JSON in UTF-8 without a content encoding.");
        }
    }

    private ErrorResponseException tooLarge() {
        return refused(
                HttpStatus.CONTENT_TOO_LARGE,
                "The body is larger than the "
                        + maxBytes
                        + " bytes that are taken here; send the job in several documents.");
    }

    private static ErrorResponseException refused(HttpStatus status, String detail) {
        return new ErrorResponseException(
                status, ProblemDetail.forStatusAndDetail(status, detail), null);
    }
}
