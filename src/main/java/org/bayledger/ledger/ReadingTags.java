package org.bayledger.ledger;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.http.server.ServletServerHttpRequest;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/**
 * Weak entity tags of what is made from recorded revisions: sheets, drawings, take-offs, topics and
 * comparisons. A revision never changes, so that its hash, today's engine and what was asked for
 * name the answer, and who has it already is told so before it is made again. Weak, because the
 * server compresses these; a strong tag would stop it.
 */
@ControllerAdvice
class ReadingTags implements HandlerInterceptor, ResponseBodyAdvice<Object>, WebMvcConfigurer {

    private static final String TAG = ReadingTags.class.getName();
    private static final Pattern OF_A_REVISION =
            Pattern.compile("/v1/projects/([^/]+)/revisions/([^/]+)/[^/]+");
    private static final Pattern OF_TWO = Pattern.compile("/v1/projects/([^/]+)/comparisons");

    /** Digits of a hash that are enough for a tag. */
    private static final int DIGITS = 32;

    private final Ledger ledger;
    private final Engine engine;

    ReadingTags(Ledger ledger, Engine engine) {
        this.ledger = ledger;
        this.engine = engine;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).addPathPatterns("/v1/projects/**");
    }

    @Override
    public boolean preHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (!"GET".equals(request.getMethod()) && !"HEAD".equals(request.getMethod())) {
            return true;
        }
        String tag = tag(request).orElse(null);
        if (tag == null) {
            return true;
        }
        if (request.getHeader(HttpHeaders.IF_NONE_MATCH) != null
                && new ServletWebRequest(request, response).checkNotModified(tag)) {
            return false;
        }
        request.setAttribute(TAG, tag);
        return true;
    }

    /** What names the answer; nothing where a revision is not there, which the answer will say. */
    private Optional<String> tag(HttpServletRequest request) {
        List<String> parts = new ArrayList<>();
        try {
            Matcher one = OF_A_REVISION.matcher(request.getRequestURI());
            Matcher two = OF_TWO.matcher(request.getRequestURI());
            if (one.matches()) {
                Project project = ledger.project(Caller.current(), one.group(1));
                parts.add(ledger.revision(project, one.group(2)).hash());
            } else if (two.matches()) {
                Project project = ledger.project(Caller.current(), two.group(1));
                for (String side : List.of("base", "head")) {
                    String number = request.getParameter(side);
                    parts.add(ledger.revision(project, number == null ? "" : number).hash());
                }
            } else {
                return Optional.empty();
            }
        } catch (ErrorResponseException notThere) {
            return Optional.empty();
        }
        parts.add(engine.version());
        parts.add(request.getRequestURI());
        parts.add(String.valueOf(request.getQueryString()));
        parts.add(String.valueOf(request.getHeader(HttpHeaders.ACCEPT)));
        byte[] all = String.join("\n", parts).getBytes(StandardCharsets.UTF_8);
        return Optional.of("W/\"" + Sha256.hex(all).substring(0, DIGITS) + "\"");
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
        if (request instanceof ServletServerHttpRequest servlet
                && servlet.getServletRequest().getAttribute(TAG) instanceof String tag
                && !MediaType.APPLICATION_PROBLEM_JSON.isCompatibleWith(type)) {
            response.getHeaders().setETag(tag);
            response.getHeaders().add(HttpHeaders.VARY, HttpHeaders.ACCEPT);
            // kept by who asked alone, and asked for again each time
            response.getHeaders().setCacheControl("private, no-cache");
        }
        return body;
    }
}
