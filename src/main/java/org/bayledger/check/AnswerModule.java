package org.bayledger.check;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.Version;
import tools.jackson.core.io.SerializedString;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.Annotated;
import tools.jackson.databind.introspect.AnnotatedClass;
import tools.jackson.databind.introspect.NopAnnotationIntrospector;
import tools.jackson.databind.introspect.VisibilityChecker;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Writes answers: an {@link Answer} as its body, a {@link Quantity} and a {@link Measured} double
 * as {@code {"value":..,"unit":..}} in the answer's units (SI where there is no answer around it).
 */
public final class AnswerModule extends SimpleModule {

    private static final long serialVersionUID = 1L;

    private static final SerializedString VALUE = new SerializedString("value");
    private static final SerializedString UNIT = new SerializedString("unit");
    private static final SerializedString SYMBOL = new SerializedString("symbol");
    private static final SerializedString MEANING = new SerializedString("meaning");
    private static final SerializedString FORMULA = new SerializedString("formula");
    private static final SerializedString SOURCE = new SerializedString("source");

    public AnswerModule() {
        super("bayledger-answers", Version.unknownVersion());
        addSerializer(new AnswerSerializer());
        addSerializer(new QuantitySerializer());
        addSerializer(new StepSerializer());
        addSerializer(Double.class, new NumberSerializer());
        addSerializer(double.class, new NumberSerializer());
    }

    @Override
    public void setupModule(SetupContext context) {
        super.setupModule(context);
        context.insertAnnotationIntrospector(new MeasuredIntrospector());
    }

    private static void write(
            double si, Dimension dimension, JsonGenerator out, SerializationContext context) {
        UnitSystem units = units(context);
        Quantity quantity = Quantity.of(dimension, si);
        boolean sorted = isSorted(context);
        out.writeStartObject();
        if (sorted) {
            unit(quantity, units, out);
        }
        out.writeName(VALUE);
        out.writeNumber(quantity.digits(units));
        if (!sorted) {
            unit(quantity, units, out);
        }
        out.writeEndObject();
    }

    private static void unit(Quantity quantity, UnitSystem units, JsonGenerator out) {
        out.writeName(UNIT);
        out.writeString(quantity.unit(units));
    }

    /** Whether properties are to come by their names, as they are recorded. */
    private static boolean isSorted(SerializationContext context) {
        return context.isEnabled(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY);
    }

    private static UnitSystem units(SerializationContext context) {
        return context.getAttribute(UnitSystem.class) instanceof UnitSystem units
                ? units
                : UnitSystem.SI;
    }

    @SuppressWarnings("rawtypes")
    private static final class AnswerSerializer extends StdSerializer<Answer> {

        AnswerSerializer() {
            super(Answer.class);
        }

        @Override
        public void serialize(Answer answer, JsonGenerator out, SerializationContext context) {
            context.setAttribute(UnitSystem.class, answer.units());
            context.writeValue(out, answer.body());
        }
    }

    /**
     * What most of an answer is made of. Its words are nearly always the engine's own, the same in
     * every answer, and are kept as the bytes that JSON has for them.
     */
    private static final class StepSerializer extends StdSerializer<TraceStep> {

        /** More than the engine has; what callers named must not fill the memory. */
        private static final int MOST_WORDS = 4000;

        private static final Map<String, SerializedString> WORDS = new ConcurrentHashMap<>();

        StepSerializer() {
            super(TraceStep.class);
        }

        @Override
        public void serialize(TraceStep step, JsonGenerator out, SerializationContext context) {
            out.writeStartObject();
            if (isSorted(context)) {
                words(FORMULA, step.formula(), out);
                words(MEANING, step.meaning(), out);
                words(SOURCE, step.source(), out);
                words(SYMBOL, step.symbol(), out);
                value(step, out, context);
            } else {
                words(SYMBOL, step.symbol(), out);
                words(MEANING, step.meaning(), out);
                value(step, out, context);
                words(FORMULA, step.formula(), out);
                words(SOURCE, step.source(), out);
            }
            out.writeEndObject();
        }

        private static void value(TraceStep step, JsonGenerator out, SerializationContext context) {
            out.writeName(VALUE);
            write(step.value().si(), step.value().dimension(), out, context);
        }

        private static void words(SerializedString name, String text, JsonGenerator out) {
            out.writeName(name);
            SerializedString known = WORDS.get(text);
            if (known == null && WORDS.size() < MOST_WORDS) {
                known = new SerializedString(text);
                WORDS.put(text, known);
            }
            if (known == null) {
                out.writeString(text);
            } else {
                out.writeString(known);
            }
        }
    }

    private static final class QuantitySerializer extends StdSerializer<Quantity> {

        QuantitySerializer() {
            super(Quantity.class);
        }

        @Override
        public void serialize(Quantity value, JsonGenerator out, SerializationContext context) {
            write(value.si(), value.dimension(), out, context);
        }
    }

    /** Writes a pure number to the digits that a computed quantity carries. */
    private static final class NumberSerializer extends StdSerializer<Double> {

        NumberSerializer() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializationContext context) {
            out.writeNumber(Quantity.number(value).digits(UnitSystem.SI));
        }
    }

    private static final class MeasuredSerializer extends StdSerializer<Double> {

        private final Dimension dimension;

        MeasuredSerializer(Dimension dimension) {
            super(Double.class);
            this.dimension = dimension;
        }

        @Override
        public void serialize(Double si, JsonGenerator out, SerializationContext context) {
            write(si, dimension, out, context);
        }
    }

    private static final class MeasuredIntrospector extends NopAnnotationIntrospector {

        private static final long serialVersionUID = 1L;

        /** A record is its components: what its methods conclude from them is no part of it. */
        @Override
        public VisibilityChecker findAutoDetectVisibility(
                MapperConfig<?> config, AnnotatedClass annotated, VisibilityChecker checker) {
            return annotated.getRawType().isRecord()
                    ? checker.withIsGetterVisibility(JsonAutoDetect.Visibility.NONE)
                    : checker;
        }

        @Override
        public @Nullable Object findSerializer(MapperConfig<?> config, Annotated annotated) {
            Measured measured = annotated.getAnnotation(Measured.class);
            return measured == null || annotated.getRawType() == java.util.List.class
                    ? null
                    : new MeasuredSerializer(measured.value());
        }

        @Override
        public @Nullable Object findContentSerializer(MapperConfig<?> config, Annotated annotated) {
            Measured measured = annotated.getAnnotation(Measured.class);
            return measured != null && annotated.getRawType() == java.util.List.class
                    ? new MeasuredSerializer(measured.value())
                    : null;
        }
    }
}
