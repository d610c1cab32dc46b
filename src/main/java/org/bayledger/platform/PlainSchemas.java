package org.bayledger.platform;

import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.math.BigDecimal;
import java.net.URI;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;

/** Schemas of plain values, and what the constraints of jakarta.validation add to a schema. */
final class PlainSchemas {

    private static final Map<Class<?>, String> TYPES =
            Map.ofEntries(
                    Map.entry(String.class, "string"),
                    Map.entry(Instant.class, "string"),
                    Map.entry(URI.class, "string"),
                    Map.entry(UUID.class, "string"),
                    Map.entry(double.class, "number"),
                    Map.entry(Double.class, "number"),
                    Map.entry(BigDecimal.class, "number"),
                    Map.entry(int.class, "integer"),
                    Map.entry(Integer.class, "integer"),
                    Map.entry(long.class, "integer"),
                    Map.entry(Long.class, "integer"),
                    Map.entry(boolean.class, "boolean"),
                    Map.entry(Boolean.class, "boolean"));

    private static final Map<Class<?>, String> FORMATS =
            Map.of(
                    Instant.class, "date-time",
                    URI.class, "uri-reference",
                    UUID.class, "uuid",
                    double.class, "double",
                    Double.class, "double",
                    int.class, "int32",
                    Integer.class, "int32",
                    long.class, "int64",
                    Long.class, "int64");

    private PlainSchemas() {}

    /** The schema of a class that is no record and no enum; anything at all for one not known. */
    static Schema<?> of(Class<?> type) {
        Schema<?> schema = new JsonSchema();
        String name = TYPES.get(type);
        if (name != null) {
            schema.typesItem(name).format(FORMATS.get(type));
        }
        return schema;
    }

    /** Adds what a constraint says. */
    static void constrain(Schema<?> schema, Annotation annotation) {
        boolean array = schema.getTypes() != null && schema.getTypes().contains("array");
        if (annotation instanceof Size size) {
            atLeast(schema, array, size.min());
            if (size.max() < Integer.MAX_VALUE && array) {
                schema.maxItems(size.max());
            } else if (size.max() < Integer.MAX_VALUE) {
                schema.maxLength(size.max());
            }
        } else if (annotation instanceof NotEmpty) {
            atLeast(schema, array, 1);
        } else if (annotation instanceof NotBlank) {
            atLeast(schema, array, 1);
            schema.pattern("\\S");
        } else if (annotation instanceof Pattern pattern) {
            schema.pattern("^(?:" + pattern.regexp() + ")$");
        } else if (annotation instanceof Min min) {
            schema.minimum(BigDecimal.valueOf(min.value()));
        } else if (annotation instanceof Max max) {
            schema.maximum(BigDecimal.valueOf(max.value()));
        } else if (annotation instanceof DecimalMin min) {
            BigDecimal bound = new BigDecimal(min.value());
            schema.setMinimum(min.inclusive() ? bound : null);
            schema.setExclusiveMinimumValue(min.inclusive() ? null : bound);
        } else if (annotation instanceof DecimalMax max) {
            BigDecimal bound = new BigDecimal(max.value());
            schema.setMaximum(max.inclusive() ? bound : null);
            schema.setExclusiveMaximumValue(max.inclusive() ? null : bound);
        } else if (annotation instanceof Positive) {
            schema.setExclusiveMinimumValue(BigDecimal.ZERO);
        } else if (annotation instanceof PositiveOrZero) {
            schema.minimum(BigDecimal.ZERO);
        }
    }

    private static void atLeast(Schema<?> schema, boolean array, int least) {
        if (least > 0 && array) {
            schema.minItems(least);
        } else if (least > 0) {
            schema.minLength(least);
        }
    }
}
