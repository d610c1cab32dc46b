package org.bayledger.platform;

import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bayledger.platform.Variants.Variant;
import org.springframework.core.MethodParameter;

/**
 * Puts all representations of an operation into the contract, and which parameters go with which.
 */
final class VariantsInContract {

    private VariantsInContract() {}

    static void add(Operation operation, List<Variant> variants) {
        if (variants.size() < 2) {
            return;
        }
        List<Parameter> parameters =
                operation.getParameters() == null
                        ? new ArrayList<>()
                        : new ArrayList<>(operation.getParameters());
        for (Variant variant : variants) {
            if (variant.hidden()) {
                operation
                        .getResponses()
                        .forEach((status, response) -> add(status, response, variant));
                for (Map.Entry<String, MethodParameter> query : variant.query().entrySet()) {
                    if (parameters.stream().noneMatch(p -> p.getName().equals(query.getKey()))) {
                        parameters.add(parameter(query.getKey(), query.getValue()));
                    }
                }
            }
        }
        parameters.stream()
                .filter(parameter -> "query".equals(parameter.getIn()))
                .filter(
                        parameter ->
                                !variants.stream()
                                        .allMatch(v -> v.query().containsKey(parameter.getName())))
                .forEach(parameter -> limit(parameter, variants));
        operation.setParameters(parameters);
    }

    private static void add(String status, ApiResponse response, Variant variant) {
        if (status.startsWith("2")) {
            Content content = response.getContent();
            for (String type : variant.types()) {
                StringSchema text = new StringSchema();
                // what is no text has a format that says so
                content.addMediaType(
                        type,
                        new MediaType()
                                .schema(
                                        type.startsWith("text/") || type.endsWith("+xml")
                                                ? text
                                                : text.format("binary")));
            }
        }
    }

    private static Parameter parameter(String name, MethodParameter declared) {
        io.swagger.v3.oas.annotations.Parameter words =
                declared.getParameterAnnotation(io.swagger.v3.oas.annotations.Parameter.class);
        StringSchema schema = new StringSchema();
        Object[] constants = declared.getParameterType().getEnumConstants();
        if (constants == null) {
            throw new IllegalStateException(
                    "query parameter " + name + " of a hidden representation is no enum");
        }
        Arrays.stream(constants).map(String::valueOf).forEach(schema::addEnumItem);
        return new Parameter()
                .name(name)
                .in("query")
                .required(false)
                .description(words == null ? null : words.description())
                .schema(schema);
    }

    private static void limit(Parameter parameter, List<Variant> variants) {
        String words = parameter.getDescription() == null ? "" : parameter.getDescription();
        parameter.setDescription(
                words
                        + (words.contains("\n") ? "\n\n" : " ")
                        + "Goes only with Accept: "
                        + Variants.typesWith(variants, parameter.getName())
                        + ".");
    }
}
