package org.bayledger.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import org.bayledger.check.Faults;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.MethodParameter;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Refuses query parameters that an endpoint of this service does not declare, that are given twice
 * or empty: a misspelt {@code unit=US} must not pass for an answer in the default units.
 */
final class QueryGuard implements HandlerInterceptor {

    private final ObjectProvider<RequestMappingHandlerMapping> mapping;

    QueryGuard(ObjectProvider<RequestMappingHandlerMapping> mapping) {
        this.mapping = mapping;
    }

    @Override
    public boolean preHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (!(handler instanceof HandlerMethod method)
                || !method.getBeanType().getName().startsWith("org.bayledger.")) {
            return true;
        }
        if (request.getParameterMap().isEmpty()) {
            return true;
        }
        Map<String, MethodParameter> known = Variants.declared(method);
        Faults faults = new Faults();
        request.getParameterMap()
                .forEach(
                        (name, values) -> {
                            MethodParameter declared = known.get(name);
                            if (declared == null) {
                                faults.malformed("", unknown(name, known, method));
                            } else if (values.length > 1 && !isRepeatable(declared)) {
                                faults.malformed("", "query parameter " + name + " is given twice");
                            } else if (!isClean(values)) {
                                faults.malformed(
                                        "",
                                        "query parameter "
                                                + name
                                                + " is empty, or begins or ends in blanks or"
                                                + " control characters");
                            }
                        });
        faults.throwIfAny();
        return true;
    }

    /** Enum conversion would trim a value, so that a stray character passed for the default. */
    private static boolean isClean(String[] values) {
        return Arrays.stream(values)
                .allMatch(value -> !value.isEmpty() && value.equals(value.trim()));
    }

    private String unknown(String name, Map<String, MethodParameter> known, HandlerMethod method) {
        String elsewhere =
                Variants.typesWith(new Variants(mapping.getObject()).beside(method), name);
        if (!elsewhere.isEmpty()) {
            return "query parameter " + name + " goes only with Accept: " + elsewhere;
        }
        String shown = name.length() > 40 ? name.substring(0, 40) + "..." : name;
        return "unknown query parameter "
                + shown
                + (known.isEmpty()
                        ? "; none is known here"
                        : "; known here: " + String.join(", ", known.keySet()));
    }

    private static boolean isRepeatable(MethodParameter parameter) {
        Class<?> type = parameter.getParameterType();
        return type.isArray() || Collection.class.isAssignableFrom(type);
    }
}
