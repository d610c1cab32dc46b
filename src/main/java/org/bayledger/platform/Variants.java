package org.bayledger.platform;

import io.swagger.v3.oas.annotations.Hidden;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.core.MethodParameter;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * The representations of each operation: one has the words of the contract, others of the same path
 * and method, which springdoc would take for operations of their own, are hidden from it.
 */
final class Variants {

    /**
     * One representation.
     *
     * @param method what makes it
     * @param hidden whether springdoc passes it over
     * @param types media types, without parameters
     */
    record Variant(HandlerMethod method, boolean hidden, List<String> types) {

        /** Its query parameters by name. */
        Map<String, MethodParameter> query() {
            return declared(method);
        }
    }

    private final Map<RequestMappingInfo, HandlerMethod> handlers;

    Variants(RequestMappingHandlerMapping mapping) {
        this.handlers = mapping.getHandlerMethods();
    }

    /** The query parameters that a handler declares, by name. */
    static Map<String, MethodParameter> declared(HandlerMethod method) {
        Map<String, MethodParameter> names = new TreeMap<>();
        for (MethodParameter parameter : method.getMethodParameters()) {
            RequestParam declared = parameter.getParameterAnnotation(RequestParam.class);
            if (declared != null) {
                names.put(
                        declared.value().isEmpty()
                                ? parameter.getParameter().getName()
                                : declared.value(),
                        parameter);
            }
        }
        return names;
    }

    /** All representations of an operation, the one that the contract has words for first. */
    List<Variant> of(String path, String method) {
        return handlers.entrySet().stream()
                .filter(entry -> entry.getKey().getPatternValues().contains(path))
                .filter(
                        entry ->
                                entry.getKey()
                                        .getMethodsCondition()
                                        .getMethods()
                                        .contains(RequestMethod.valueOf(method)))
                .map(entry -> variant(entry.getKey(), entry.getValue()))
                .sorted(
                        Comparator.comparing(Variant::hidden)
                                .thenComparing(variant -> variant.method().getMethod().getName()))
                .toList();
    }

    /** All representations of the operation that a handler makes one of. */
    List<Variant> beside(HandlerMethod handler) {
        List<Variant> all = new ArrayList<>();
        handlers.forEach(
                (mapping, method) -> {
                    if (method.getMethod().equals(handler.getMethod())) {
                        for (String path : mapping.getPatternValues()) {
                            mapping.getMethodsCondition()
                                    .getMethods()
                                    .forEach(verb -> all.addAll(of(path, verb.name())));
                        }
                    }
                });
        return all;
    }

    /** Media types of the representations that take a query parameter, in words. */
    static String typesWith(List<Variant> variants, String parameter) {
        Set<String> types = new LinkedHashSet<>();
        variants.stream()
                .filter(variant -> variant.query().containsKey(parameter))
                .forEach(variant -> types.addAll(variant.types()));
        return String.join(" or ", types);
    }

    private static Variant variant(RequestMappingInfo mapping, HandlerMethod method) {
        boolean hidden =
                AnnotatedElementUtils.hasAnnotation(method.getMethod(), Hidden.class)
                        || AnnotatedElementUtils.hasAnnotation(method.getBeanType(), Hidden.class);
        return new Variant(
                method,
                hidden,
                mapping.getProducesCondition().getProducibleMediaTypes().stream()
                        .map(type -> new MediaType(type.getType(), type.getSubtype()).toString())
                        .toList());
    }
}
