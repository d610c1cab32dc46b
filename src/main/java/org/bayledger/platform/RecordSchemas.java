package org.bayledger.platform;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.type.TypeFactory;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bayledger.check.Answer;
import org.bayledger.check.Binder;
import org.bayledger.check.JsonOf;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The JSON schemas of request and result records, read off the records themselves: the same
 * components, nullness, quantities and constraints by which bodies are bound and answers written.
 *
 * <p>Requests are closed: unknown properties and enum values are refused. Answers are open: a
 * caller must expect properties and values that are not known yet.
 */
final class RecordSchemas {

    /** Which way a body goes. */
    enum Direction {
        /** From the caller. */
        REQUEST,
        /** To the caller. */
        ANSWER
    }

    private record Key(JavaType type, Direction direction) {}

    private final Map<Key, String> names = new HashMap<>();
    private final Map<String, Key> owners = new HashMap<>();
    private final Deque<Key> pending = new ArrayDeque<>();
    private final Map<String, Schema<?>> components = new TreeMap<>();

    RecordSchemas() {
        components.put("Quantity", QuantitySchemas.quantity());
        components.put("QuantityInput", QuantitySchemas.input());
        components.put("NumberInput", QuantitySchemas.number());
    }

    /**
     * The schema of a value: in place, or a reference to a component. Requests must be asked for
     * before answers, because an answer's record that a request holds too has a name of its own.
     */
    Schema<?> of(JavaType type, Direction direction) {
        Class<?> raw = type.getRawClass();
        if (raw == Answer.class) {
            return of(type.containedType(0), direction);
        }
        if (raw == Quantity.class) {
            return reference("Quantity");
        }
        if (raw.isRecord() || (raw.isEnum() && direction == Direction.REQUEST)) {
            Key key = new Key(type, direction);
            String name = names.get(key);
            if (name == null) {
                name = name(key);
                pending.add(key);
            }
            return reference(name);
        }
        if (raw.isEnum()) {
            return new JsonSchema()
                    .typesItem("string")
                    .description("More values may come; today:\n" + Javadocs.constants(raw));
        }
        if (type.isCollectionLikeType()) {
            return array(of(type.getContentType(), direction));
        }
        if (type.isMapLikeType()) {
            return new JsonSchema()
                    .typesItem("object")
                    .additionalProperties(of(type.getContentType(), direction));
        }
        return PlainSchemas.of(raw);
    }

    /** Every component that was referred to, by name. */
    Map<String, Schema<?>> components() {
        while (!pending.isEmpty()) {
            Key key = pending.remove();
            components.put(
                    String.valueOf(names.get(key)),
                    key.type().isEnumType() ? constants(key.type()) : object(key));
        }
        return components;
    }

    private String name(Key key) {
        String name = simpleName(key.type());
        if (key.direction() == Direction.ANSWER
                && names.containsKey(new Key(key.type(), Direction.REQUEST))) {
            name += "InAnswer";
        }
        Key other = owners.putIfAbsent(name, key);
        if (other != null) {
            throw new IllegalStateException(
                    "the contract can't call two types %s: %s and %s; rename one"
                            .formatted(name, other.type(), key.type()));
        }
        names.put(key, name);
        return name;
    }

    private static String simpleName(JavaType type) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < type.containedTypeCount(); i++) {
            name.append(simpleName(type.containedType(i)));
        }
        Class<?> raw = type.getRawClass();
        Class<?> outer = raw.getDeclaringClass();
        boolean nested = outer != null && outer.isRecord();
        return name.append(nested ? outer.getSimpleName() : "")
                .append(raw.getSimpleName())
                .toString();
    }

    private static Schema<?> constants(JavaType type) {
        Schema<Object> schema = new JsonSchema();
        schema.typesItem("string")
                .description(
                        Javadocs.of(type.getRawClass())
                                + "\n"
                                + Javadocs.constants(type.getRawClass()));
        for (Object constant : type.getRawClass().getEnumConstants()) {
            schema.addEnumItemObject(((Enum<?>) constant).name());
        }
        return schema;
    }

    private Schema<?> object(Key key) {
        Schema<?> schema =
                new JsonSchema()
                        .typesItem("object")
                        .description(Javadocs.of(key.type().getRawClass()));
        addProperties(key, schema);
        if (key.direction() == Direction.REQUEST) {
            schema.additionalProperties(false);
        }
        return schema;
    }

    private void addProperties(Key key, Schema<?> schema) {
        for (RecordComponent component : key.type().getRawClass().getRecordComponents()) {
            JavaType type =
                    TypeFactory.defaultInstance()
                            .resolveMemberType(
                                    component.getGenericType(), key.type().getBindings());
            if (component.getAccessor().isAnnotationPresent(JsonUnwrapped.class)) {
                addProperties(new Key(type, key.direction()), schema);
                continue;
            }
            schema.addProperty(component.getName(), property(component, type, key));
            if (!component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                schema.addRequiredItem(component.getName());
            }
        }
    }

    private Schema<?> property(RecordComponent component, JavaType declared, Key owner) {
        JsonOf json = component.getAnnotation(JsonOf.class);
        if (json != null) {
            JavaType type = TypeFactory.defaultInstance().constructType(json.value());
            Direction kept = json.asPosted() ? Direction.REQUEST : owner.direction();
            return property(component, type, owner, kept);
        }
        return property(component, declared, owner, owner.direction());
    }

    private Schema<?> property(
            RecordComponent component, JavaType type, Key owner, Direction direction) {
        AnnotatedType annotated = component.getAnnotatedType();
        Measured measured = component.getAnnotation(Measured.class);
        Schema<?> schema;
        if (annotated instanceof AnnotatedParameterizedType list && type.isCollectionLikeType()) {
            AnnotatedType element = list.getAnnotatedActualTypeArguments()[0];
            Schema<?> items = element(type.getContentType(), element, measured, direction);
            schema = array(items);
        } else {
            schema = value(type, measured, direction);
        }
        if (direction == Direction.REQUEST) {
            constrain(schema, component.getAccessor().getAnnotations());
        }
        Schema<?> property =
                annotated.isAnnotationPresent(Nullable.class) ? nullable(schema) : schema;
        boolean quantity = measured != null || type.getRawClass() == Quantity.class;
        List<String> sentences = new ArrayList<>();
        sentences.add(Javadocs.of(owner.type().getRawClass(), component.getName(), quantity));
        if (measured != null && direction == Direction.REQUEST) {
            sentences.add(QuantitySchemas.accepted(measured));
        }
        if (schema.getDescription() != null) {
            sentences.add(schema.getDescription());
        }
        sentences.removeIf(String::isEmpty);
        return sentences.isEmpty() ? property : property.description(String.join(" ", sentences));
    }

    private Schema<?> element(
            JavaType type,
            AnnotatedType annotated,
            @Nullable Measured measured,
            Direction direction) {
        Schema<?> items = value(type, measured, direction);
        if (direction == Direction.REQUEST) {
            constrain(items, annotated.getAnnotations());
        }
        return annotated.isAnnotationPresent(Nullable.class) ? nullable(items) : items;
    }

    private Schema<?> value(JavaType type, @Nullable Measured measured, Direction direction) {
        if (measured == null) {
            Schema<?> schema = of(type, direction);
            boolean text = type.hasRawClass(String.class) && direction == Direction.REQUEST;
            return text ? schema.maxLength(Binder.MAX_TEXT) : schema;
        }
        if (direction == Direction.ANSWER) {
            return reference("Quantity");
        }
        if (measured.value() == Dimension.NONE) {
            return reference("NumberInput");
        }
        return reference("QuantityInput");
    }

    private static Schema<?> nullable(Schema<?> schema) {
        Set<String> types = schema.getTypes();
        if (types == null) {
            boolean anything = schema.get$ref() == null && schema.getAnyOf() == null;
            return anything ? schema : anyOf(schema, new JsonSchema().typesItem("null"));
        }
        Set<String> withNull = new LinkedHashSet<>(types);
        withNull.add("null");
        schema.setTypes(withNull);
        return schema;
    }

    private static Schema<?> anyOf(Schema<?> one, Schema<?> other) {
        Schema<Object> schema = new JsonSchema();
        return schema.anyOf(List.of(one, other));
    }

    private static Schema<?> array(Schema<?> items) {
        Schema<Object> schema = new JsonSchema();
        schema.addType("array");
        schema.setItems(items);
        return schema;
    }

    private static Schema<?> reference(String name) {
        return new JsonSchema().$ref("#/components/schemas/" + name);
    }

    private static void constrain(Schema<?> schema, Annotation[] annotations) {
        for (Annotation annotation : annotations) {
            PlainSchemas.constrain(schema, annotation);
        }
    }
}
