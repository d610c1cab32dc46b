package org.bayledger.check;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The shape of a record as a JSON object: its properties in order, read once by reflection.
 *
 * @param constructor the canonical constructor
 * @param parts the components in order
 * @param names all property names of the object, those of unwrapped records included
 * @param unknown what to say of any other property
 */
record Shape(Constructor<?> constructor, List<Part> parts, Set<String> names, String unknown) {

    /**
     * One component of a record.
     *
     * @param name name of the property
     * @param type class of the value, or of the elements of a list
     * @param list whether the value is a list
     * @param optional whether it may be absent
     * @param unwrapped whether its own properties stand in the enclosing object
     * @param measured what a quantity must measure, or null where it is none
     */
    record Part(
            String name,
            Class<?> type,
            boolean list,
            boolean optional,
            boolean unwrapped,
            @Nullable Measured measured) {}

    private static final ClassValue<Shape> SHAPES =
            new ClassValue<>() {
                @Override
                protected Shape computeValue(Class<?> type) {
                    return read(type);
                }
            };

    static Shape of(Class<?> type) {
        return SHAPES.get(type);
    }

    private static Set<String> names(List<Part> parts) {
        Set<String> names = new LinkedHashSet<>();
        for (Part part : parts) {
            if (part.unwrapped()) {
                names.addAll(of(part.type()).names());
            } else {
                names.add(part.name());
            }
        }
        return names;
    }

    private static Shape read(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            List<Part> parts = Arrays.stream(components).map(Shape::part).toList();
            Set<String> names = names(parts);
            String unknown = "unknown property; known here: " + String.join(", ", names);
            return new Shape(constructor, parts, names, unknown);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Part part(RecordComponent component) {
        AnnotatedType annotated = component.getAnnotatedType();
        boolean list = List.class.equals(component.getType());
        Class<?> type = component.getType();
        if (list) {
            AnnotatedType element =
                    ((AnnotatedParameterizedType) annotated).getAnnotatedActualTypeArguments()[0];
            type = raw(element.getType());
        }
        return new Part(
                component.getName(),
                type,
                list,
                annotated.isAnnotationPresent(Nullable.class),
                component.getAccessor().isAnnotationPresent(JsonUnwrapped.class),
                component.getAnnotation(Measured.class));
    }

    private static Class<?> raw(Type type) {
        return type instanceof ParameterizedType parameterized
                ? (Class<?>) parameterized.getRawType()
                : (Class<?>) type;
    }
}
