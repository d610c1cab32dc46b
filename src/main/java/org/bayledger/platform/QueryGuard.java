package org.bayledger.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.bayledger.check.Faults;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;

/**
 * Refuses query parameters that an endpoint of this service does not declare, that are given twice
 * or empty: a misspelt {@code unit=US} must not pass for an answer in the default units.
 */
final class QueryGuard implements HandlerInterceptor {

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
        Map<String, Boolean> known = declared(method);
        Faults faults = new Faults();
        request.getParameterMap()
                .forEach(
                        (name, values) -> {
                            Boolean repeatable = known.get(name);
                            if (repeatable == null) {
                                faults.malformed("", unknown(name, known));
                            } else if (values.length > 1 && !repeatable) {
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

    private static String unknown(String name, Map<String, Boolean> known) {
        String shown = name.length() > 40 ? name.substring(0, 40) + "..." : name;
        return "unknown query parameter "
                + shown
                + (known.isEmpty()
                        ? "; none is known here"
                        : "; known here: " + String.join(", ", known.keySet()));
    }

    /** The names of the declared query parameters, and whether each may be given several times. */
    private static Map<String, Boolean> declared(HandlerMethod method) {
        Map<String, Boolean> names = new TreeMap<>();
        for (MethodParameter parameter : method.getMethodParameters()) {
            RequestParam declared = parameter.getParameterAnnotation(RequestParam.class);
            if (declared != null) {
                Class<?> type = parameter.getParameterType();
                String name =
                        declared.value().isEmpty()
                                ? parameter.getParameter().getName()
                                : declared.value();
                names.put(name, type.isArray() || Collection.class.isAssignableFrom(type));
            }
        }
        return names;
    }
}
