package org.bayledger.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * How many long calculations go on at once: the others wait a while and are then asked to come
 * back, so that the service stays answerable under load.
 *
 * <p>A request holds its place from when its body has arrived until its answer begins to be
 * written, so that nobody keeps others out by sending or reading slowly.
 */
@RestControllerAdvice
final class Workload implements HandlerInterceptor, ResponseBodyAdvice<Object> {

    private static final String PLACE = Workload.class.getName();

    /** What can take long: everything that reviews, draws, tabulates or verifies. */
    private static final List<PathPattern> LONG =
            List.of(
                            "/v1/reviews",
                            "/v1/drawings",
                            "/v1/system-selections",
                            "/v1/span-tables",
                            "/v1/imports/**",
                            "/v1/take-offs/**",
                            "/v1/projects/*/comparisons",
                            "/v1/projects/*/verification",
                            "/v1/projects/*/history")
                    .stream()
                    .map(PathPatternParser.defaultInstance::parse)
                    .toList();

    private static final PathPattern REVISIONS =
            PathPatternParser.defaultInstance.parse("/v1/projects/*/revisions");

    /** Drawings, sheets and take-offs of a revision. */
    private static final PathPattern OF_A_REVISION =
            PathPatternParser.defaultInstance.parse("/v1/projects/*/revisions/*/*/**");

    private final Semaphore places;
    private final Duration wait;

    /**
     * @param atOnce how many long calculations at once; 0: two for each processor
     * @param wait how long a request waits for its place
     */
    Workload(
            @Value("${bayledger.limits.calculations-at-once:0}") int atOnce,
            @Value("${bayledger.limits.calculation-wait:10s}") Duration wait) {
        this.places =
                new Semaphore(
                        atOnce > 0 ? atOnce : 2 * Runtime.getRuntime().availableProcessors(), true);
        this.wait = wait;
    }

    /** A request without a body takes its place at once. */
    @Override
    public boolean preHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (!"POST".equals(request.getMethod())) {
            enter(request);
        }
        return true;
    }

    /** The request that this thread answers has been received whole. */
    void bodyArrived() {
        if (RequestContextHolder.getRequestAttributes()
                instanceof ServletRequestAttributes attributes) {
            enter(attributes.getRequest());
        }
    }

    private void enter(HttpServletRequest request) {
        if (!isLong(request)) {
            return;
        }
        try {
            if (places.tryAcquire(wait.toMillis(), TimeUnit.MILLISECONDS)) {
                request.setAttribute(PLACE, true);
                return;
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
        String detail =
                "The service has as many long calculations to do as it takes on at once; try again"
                        + " in a few seconds.";
        ErrorResponseException busy =
                new ErrorResponseException(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE, detail),
                        null);
        busy.getHeaders().set(HttpHeaders.RETRY_AFTER, "5");
        throw busy;
    }

    private static boolean isLong(HttpServletRequest request) {
        PathContainer path = PathContainer.parsePath(request.getRequestURI());
        return LONG.stream().anyMatch(pattern -> pattern.matches(path))
                || OF_A_REVISION.matches(path)
                || (REVISIONS.matches(path) && "POST".equals(request.getMethod()));
    }

    private void leave(HttpServletRequest request) {
        if (request.getAttribute(PLACE) != null) {
            request.removeAttribute(PLACE);
            places.release();
        }
    }

    @Override
    public boolean supports(
            MethodParameter returned, Class<? extends HttpMessageConverter<?>> converter) {
        return true;
    }

    @Override
    public @Nullable Object beforeBodyWrite(
            @Nullable Object body,
            MethodParameter returned,
            MediaType type,
            Class<? extends HttpMessageConverter<?>> converter,
            ServerHttpRequest request,
            ServerHttpResponse response) {
        if (request instanceof org.springframework.http.server.ServletServerHttpRequest servlet) {
            leave(servlet.getServletRequest());
        }
        return body;
    }

    @Override
    public void afterCompletion(
            HttpServletRequest request,
            HttpServletResponse response,
            Object handler,
            @Nullable Exception cause) {
        leave(request);
    }
}
