package org.bayledger.check;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.metadata.PropertyDescriptor;
import java.lang.reflect.InvocationTargetException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.QuantityFormatException;
import org.bayledger.quantity.QuantityParser;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.jspecify.annotations.Nullable;

/**
 * Builds request records from a JSON tree and reports every fault of the tree at once.
 *
 * <p>A component is required unless it is {@code @Nullable}; null is the same as absent; a property
 * that no component names is refused. Doubles marked {@link Measured} are read from quantities with
 * units. Jakarta Validation constraints on components are applied. A record whose parts are all
 * sound is built, and what its constructor refuses is reported below its pointer.
 */
public final class Binder {

    /** Most characters that a text in a request may have. */
    public static final int MAX_TEXT = 2000;

    @SuppressWarnings("resource") // one factory for the life of the class
    private static final Validator VALIDATOR =
            Validation.byDefaultProvider()
                    .configure()
                    .messageInterpolator(new ParameterMessageInterpolator())
                    .buildValidatorFactory()
                    .getValidator();

    /** Components of a record on which there are constraints: asking about others costs most. */
    private static final ClassValue<Set<String>> CONSTRAINED =
            new ClassValue<>() {
                @Override
                protected Set<String> computeValue(Class<?> type) {
                    return VALIDATOR
                            .getConstraintsForClass(type)
                            .getConstrainedProperties()
                            .stream()
                            .map(PropertyDescriptor::getPropertyName)
                            .collect(Collectors.toUnmodifiableSet());
                }
            };

    private final Faults faults = new Faults();

    private Binder() {}

    /**
     * The record that a tree stands for.
     *
     * @param tree maps, lists, strings, {@link BigDecimal}, booleans and nulls
     * @param type the record
     * @throws FaultsException with every fault found
     */
    public static <R> R bind(@Nullable Object tree, Class<R> type) {
        Binder binder = new Binder();
        Object bound = binder.object(tree, type, "");
        binder.faults.throwIfAny();
        if (bound == null) {
            throw new IllegalStateException("nothing bound and nothing wrong: " + type);
        }
        return type.cast(bound);
    }

    private @Nullable Object object(@Nullable Object tree, Class<?> type, String pointer) {
        if (!(tree instanceof Map<?, ?> properties)) {
            faults.malformed(pointer, "must be a JSON object");
            return null;
        }
        Shape shape = Shape.of(type);
        for (Object name : properties.keySet()) {
            if (!shape.names().contains(name)) {
                faults.malformed(Pointer.child(pointer, String.valueOf(name)), shape.unknown());
            }
        }
        return build(properties, type, pointer);
    }

    private @Nullable Object build(Map<?, ?> properties, Class<?> type, String pointer) {
        Shape shape = Shape.of(type);
        int before = faults.size();
        @Nullable Object[] arguments = new @Nullable Object[shape.parts().size()];
        for (int i = 0; i < arguments.length; i++) {
            Shape.Part part = shape.parts().get(i);
            if (part.unwrapped()) {
                boolean absent =
                        part.optional()
                                && Shape.of(part.type()).names().stream()
                                        .allMatch(name -> properties.get(name) == null);
                arguments[i] = absent ? null : build(properties, part.type(), pointer);
                continue;
            }
            Object raw = properties.get(part.name());
            if (raw == null) {
                if (!part.optional()) {
                    faults.malformed(
                            Pointer.child(pointer, part.name()), "is required" + hint(part));
                }
                continue;
            }
            String at = Pointer.child(pointer, part.name());
            int sound = faults.size();
            arguments[i] = part.list() ? list(raw, part, at) : value(raw, part, at);
            if (faults.size() == sound) {
                constraints(type, part, arguments[i], at);
            }
        }
        return faults.size() == before ? construct(shape, arguments, pointer) : null;
    }

    private @Nullable Object construct(Shape shape, @Nullable Object[] arguments, String pointer) {
        try {
            return shape.constructor().newInstance(arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof FaultsException refused) {
                faults.addAll(pointer, refused.faults());
                return null;
            }
            if (e.getCause() instanceof IllegalArgumentException refused) {
                faults.outOfRange(pointer, String.valueOf(refused.getMessage()));
                return null;
            }
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private @Nullable List<@Nullable Object> list(Object raw, Shape.Part part, String pointer) {
        if (!(raw instanceof List<?> elements)) {
            faults.malformed(pointer, "must be a JSON array");
            return null;
        }
        List<@Nullable Object> values = new ArrayList<>(elements.size());
        for (int i = 0; i < elements.size(); i++) {
            Object element = elements.get(i);
            if (element == null) {
                faults.malformed(Pointer.child(pointer, i), "must not be null");
            } else {
                values.add(value(element, part, Pointer.child(pointer, i)));
            }
        }
        return values;
    }

    private @Nullable Object value(Object raw, Shape.Part part, String pointer) {
        Class<?> type = part.type();
        if (part.measured() != null) {
            return quantity(raw, part.measured(), pointer);
        }
        if (type.isRecord()) {
            return object(raw, type, pointer);
        }
        if (type.isEnum()) {
            return constant(raw, type, pointer);
        }
        if (type == String.class) {
            return text(raw, pointer);
        }
        if (type == double.class || type == Double.class) {
            return number(raw, pointer);
        }
        if (type == int.class || type == Integer.class) {
            return whole(raw, pointer);
        }
        if (type == boolean.class || type == Boolean.class) {
            if (raw instanceof Boolean) {
                return raw;
            }
            faults.malformed(pointer, "must be true or false");
            return null;
        }
        return raw;
    }

    private @Nullable Double quantity(Object raw, Measured measured, String pointer) {
        Dimension dimension = measured.value();
        try {
            double si;
            if (raw instanceof String text) {
                si = QuantityParser.parse(text, dimension);
            } else if (raw instanceof Map<?, ?> object) {
                if (!object.keySet().equals(Set.of("value", "unit"))
                        || !(object.get("value") instanceof BigDecimal value)
                        || !(object.get("unit") instanceof String unit)) {
                    faults.malformed(
                            pointer,
                            "must be a quantity such as {\"value\": 12, \"unit\": \"ft\"}");
                    return null;
                }
                si = QuantityParser.parse(value.doubleValue(), unit, dimension);
            } else if (raw instanceof BigDecimal value && dimension == Dimension.NONE) {
                si = QuantityParser.parse(value.doubleValue(), "1", dimension);
            } else {
                String example = "such as \"12 " + dimension.symbols().get(0) + "\"";
                faults.malformed(pointer, "must be a quantity with a unit, " + example);
                return null;
            }
            return bounded(si, measured, pointer);
        } catch (QuantityFormatException e) {
            faults.malformed(pointer, String.valueOf(e.getMessage()));
            return null;
        }
    }

    private Double bounded(double si, Measured measured, String pointer) {
        Dimension dimension = measured.value();
        boolean signed =
                switch (measured.sign()) {
                    case ANY -> true;
                    case POSITIVE -> si > 0;
                    case NOT_NEGATIVE -> si >= 0;
                    case NOT_POSITIVE -> si <= 0;
                };
        if (!signed) {
            faults.outOfRange(
                    pointer,
                    switch (measured.sign()) {
                        case POSITIVE -> "must be greater than zero";
                        case NOT_NEGATIVE -> "must not be negative";
                        default -> "must not be positive";
                    });
        } else if (dimension.isAbsurd(si)) {
            faults.outOfRange(pointer, "is too large to be meant");
        } else if (si < measured.min()) {
            faults.outOfRange(pointer, "must be at least " + bound(dimension, measured.min()));
        } else if (si > measured.max()) {
            faults.outOfRange(pointer, "must be at most " + bound(dimension, measured.max()));
        }
        return si;
    }

    private static String bound(Dimension dimension, double si) {
        String metric =
                new Reporting(org.bayledger.quantity.UnitSystem.SI, TraceLevel.ALL)
                        .text(dimension, si);
        String customary =
                new Reporting(org.bayledger.quantity.UnitSystem.US, TraceLevel.ALL)
                        .text(dimension, si);
        return metric.equals(customary) ? metric : metric + " (" + customary + ")";
    }

    private @Nullable Object constant(Object raw, Class<?> type, String pointer) {
        for (Object constant : type.getEnumConstants()) {
            if (((Enum<?>) constant).name().equals(raw)) {
                return constant;
            }
        }
        String given = raw instanceof String text && text.length() <= 40 ? text : "";
        faults.malformed(
                pointer,
                (given.isBlank() ? "" : "'" + given + "' is not known here; ")
                        + "must be one of "
                        + constants(type));
        return null;
    }

    private static String constants(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> ((Enum<?>) constant).name())
                .collect(Collectors.joining(", "));
    }

    private @Nullable String text(Object raw, String pointer) {
        if (!(raw instanceof String text)) {
            faults.malformed(pointer, "must be a string");
            return null;
        }
        if (text.length() > MAX_TEXT) {
            faults.outOfRange(pointer, "must have at most " + MAX_TEXT + " characters");
        } else if (text.chars()
                .anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t')) {
            faults.malformed(pointer, "must not hold control characters");
        }
        return text;
    }

    private @Nullable Double number(Object raw, String pointer) {
        if (raw instanceof BigDecimal number && Double.isFinite(number.doubleValue())) {
            return number.doubleValue();
        }
        faults.malformed(pointer, "must be a finite number without a unit");
        return null;
    }

    private @Nullable Integer whole(Object raw, String pointer) {
        if (raw instanceof BigDecimal number
                && number.doubleValue() == Math.rint(number.doubleValue())
                && Math.abs(number.doubleValue()) <= Integer.MAX_VALUE) {
            return (int) number.doubleValue();
        }
        faults.malformed(pointer, "must be a whole number");
        return null;
    }

    private static String hint(Shape.Part part) {
        if (part.measured() != null) {
            return "; units: " + String.join(", ", part.measured().value().symbols());
        }
        return part.type().isEnum() ? "; one of " + constants(part.type()) : "";
    }

    private void constraints(Class<?> type, Shape.Part part, @Nullable Object value, String at) {
        if (!CONSTRAINED.get(type).contains(part.name())) {
            return;
        }
        for (ConstraintViolation<?> violation : VALIDATOR.validateValue(type, part.name(), value)) {
            StringBuilder pointer = new StringBuilder(at);
            for (Path.Node node : violation.getPropertyPath()) {
                if (node.getIndex() != null) {
                    pointer.append('/').append(node.getIndex());
                }
            }
            faults.outOfRange(pointer.toString(), violation.getMessage());
        }
    }
}
