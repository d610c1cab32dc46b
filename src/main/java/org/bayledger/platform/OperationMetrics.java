package org.bayledger.platform;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import io.swagger.v3.oas.annotations.Operation;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.bayledger.check.Answer;
import org.bayledger.check.Outcome;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.http.server.ServletServerHttpRequest;
import org.springframework.util.ReflectionUtils;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/** Times every operation of the contract, by what it found and how it was answered. */
@RestControllerAdvice
final class OperationMetrics implements HandlerInterceptor, ResponseBodyAdvice<Object> {

    private static final String START = OperationMetrics.class.getName() + ".start";
    private static final String VERDICT = OperationMetrics.class.getName() + ".verdict";
    private static final String NONE = "NONE";

    /** What gives the verdict of a record, looked for once. */
    private static final ClassValue<Optional<Method>> VERDICTS =
            new ClassValue<>() {
                @Override
                protected Optional<Method> computeValue(Class<?> type) {
                    return Stream.ofNullable(type.getRecordComponents())
                            .flatMap(Arrays::stream)
                            .filter(
                                    component ->
                                            component.getName().equals("verdict")
                                                    || component.getType() == Outcome.class)
                            .map(RecordComponent::getAccessor)
                            .peek(ReflectionUtils::makeAccessible)
                            .findFirst();
                }
            };

    private final MeterRegistry registry;

    OperationMetrics(MeterRegistry registry) {
        this.registry = registry;
    }

    @Override
    public boolean preHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler) {
        request.setAttribute(START, Timer.start(registry));
        return true;
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
        if (request instanceof ServletServerHttpRequest servlet) {
            Object verdict = verdict(body instanceof Answer<?> answer ? answer.body() : body);
            if (verdict != null) {
                servlet.getServletRequest().setAttribute(VERDICT, verdict.toString());
            }
        }
        return body;
    }

    @Override
    public void afterCompletion(
            HttpServletRequest request,
            HttpServletResponse response,
            Object handler,
            @Nullable Exception cause) {
        Operation operation =
                handler instanceof HandlerMethod method
                        ? method.getMethodAnnotation(Operation.class)
                        : null;
        if (operation != null && request.getAttribute(START) instanceof Timer.Sample sample) {
            Object verdict = request.getAttribute(VERDICT);
            sample.stop(
                    Timer.builder("bayledger.operations")
                            .description("Operations of the contract, by verdict and status")
                            .tag("operation", operation.operationId())
                            .tag("verdict", verdict == null ? NONE : verdict.toString())
                            .tag("status", Integer.toString(response.getStatus()))
                            .register(registry));
        }
    }

    /** The verdict of a result: one of its components, or that of its outcome. */
    private static @Nullable Object verdict(@Nullable Object result) {
        if (result instanceof Outcome outcome) {
            return outcome.verdict();
        }
        Object value =
                result == null
                        ? null
                        : VERDICTS.get(result.getClass())
                                .map(accessor -> ReflectionUtils.invokeMethod(accessor, result))
                                .orElse(null);
        return value instanceof Outcome outcome ? outcome.verdict() : value;
    }
}
