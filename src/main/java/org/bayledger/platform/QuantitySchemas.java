package org.bayledger.platform;

import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import org.bayledger.check.Measured;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.UnitSystem;

/** How the contract writes quantities. */
final class QuantitySchemas {

    private static final Reporting SI = new Reporting(UnitSystem.SI, TraceLevel.ALL);
    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);

    private QuantitySchemas() {}

    /** A quantity as answers give it. */
    static Schema<?> quantity() {
        Schema<Object> schema = new JsonSchema();
        schema.addType("object");
        schema.setDescription(
                "A quantity with its unit. The query parameter units chooses the units of computed"
                        + " values.");
        schema.addProperty("value", PlainSchemas.of(double.class).description("The number."));
        schema.addProperty(
                "unit",
                PlainSchemas.of(String.class).description("Symbol of the unit, case-sensitive."));
        schema.setRequired(List.of("value", "unit"));
        schema.setAdditionalProperties(false);
        return schema;
    }

    /** A quantity as requests may give it. */
    static Schema<?> input() {
        Schema<Object> schema = new JsonSchema();
        schema.setDescription(
                "A quantity: a text such as \"120 mph\", \"2.4 kPa\" or, for a length,"
                        + " \"13'-6 1/2\\\"\"; or an object with value and unit, as answers give"
                        + " it.");
        schema.setOneOf(
                List.of(
                        PlainSchemas.of(String.class).minLength(1).maxLength(64),
                        new JsonSchema().$ref("#/components/schemas/Quantity")));
        return schema;
    }

    /**
     * A quantity without a dimension as requests may give it. A number in quotation marks is taken
     * as well but not promised: generated clients in Java could not tell it from a number.
     */
    static Schema<?> number() {
        Schema<Object> schema = new JsonSchema();
        schema.setDescription(
                "A number: as it is, or as an object with value and the unit 1, as answers give"
                        + " it.");
        schema.setOneOf(
                List.of(
                        PlainSchemas.of(double.class),
                        new JsonSchema().$ref("#/components/schemas/Quantity")));
        return schema;
    }

    /** Which units and values are accepted for a quantity. */
    static String accepted(Measured measured) {
        Dimension dimension = measured.value();
        List<String> symbols = dimension.symbols();
        StringBuilder text = new StringBuilder();
        if (dimension != Dimension.NONE) {
            text.append("Units: ").append(String.join(", ", symbols));
            text.append(
                    symbols.contains("ft") && symbols.contains("in")
                            ? ", or feet and inches."
                            : ".");
        }
        text.append(
                switch (measured.sign()) {
                    case ANY -> "";
                    case POSITIVE -> " Greater than zero.";
                    case NOT_NEGATIVE -> " Zero or greater.";
                    case NOT_POSITIVE -> " Zero or smaller.";
                });
        if (Double.isFinite(measured.min())) {
            text.append(" At least ").append(bound(dimension, measured.min())).append('.');
        }
        if (Double.isFinite(measured.max())) {
            text.append(" At most ").append(bound(dimension, measured.max())).append('.');
        }
        return text.toString().strip();
    }

    private static String bound(Dimension dimension, double si) {
        String metric = SI.text(dimension, si);
        String customary = US.text(dimension, si);
        return metric.equals(customary) ? metric : metric + " (" + customary + ")";
    }
}
