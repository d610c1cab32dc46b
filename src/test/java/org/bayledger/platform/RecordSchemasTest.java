package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.type.TypeFactory;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.Schema;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Answer;
import org.bayledger.check.Measured;
import org.bayledger.check.Verdict;
import org.bayledger.platform.RecordSchemas.Direction;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the contract says of a record, for requests and for answers. */
@NullMarked
class RecordSchemasTest {

    /**
     * A piece.
     *
     * @param width its width, m
     * @param verdict what is thought of it
     */
    record Piece(
            @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                    double width,
            @Nullable Verdict verdict) {}

    /**
     * A whole.
     *
     * @param piece its first piece
     * @param others the {@code next} pieces
     * @param name what it is called
     * @param count how many; see {@link Piece#width}
     * @param loads pressures on it, Pa
     * @param ratio a number
     * @param force what it carries, N
     */
    record Whole(
            @JsonUnwrapped Piece piece,
            @Size(min = 1, max = 5) List<Piece> others,
            @NotBlank @Size(max = 40) String name,
            @Min(1) @Nullable Integer count,
            @Measured(Dimension.PRESSURE) @Nullable List<Double> loads,
            @DecimalMin(value = "0", inclusive = false) double ratio,
            @Nullable Quantity force) {}

    private static JavaType type(Class<?> type) {
        return TypeFactory.defaultInstance().constructType(type);
    }

    private static String json(Map<String, Schema<?>> components, String name) {
        return Json31.mapper().valueToTree(components.get(name)).toString();
    }

    @Test
    void requestsAreClosedMeasuredAndConstrained() {
        RecordSchemas schemas = new RecordSchemas();
        schemas.of(type(Whole.class), Direction.REQUEST);
        Map<String, Schema<?>> components = schemas.components();
        assertThat(components.keySet())
                .containsExactly(
                        "NumberInput", "Piece", "Quantity", "QuantityInput", "Verdict", "Whole");
        assertThat(json(components, "Whole"))
                .contains("\"additionalProperties\":false")
                .contains("\"required\":[\"name\",\"others\",\"ratio\",\"width\"]")
                .contains(
                        "\"width\":{\"$ref\":\"#/components/schemas/QuantityInput\",\"description\":"
                                + "\"Its width. Units: mm, cm, m, in, ft, or feet and inches."
                                + " Greater than zero. At most 10000 mm (393.7 in).\"}")
                .contains(
                        "\"minItems\":1",
                        "\"maxItems\":5",
                        "\"maxLength\":40",
                        "\"pattern\":\"\\\\S\"")
                .contains("\"count\":{\"type\":[\"integer\",\"null\"]", "\"minimum\":1")
                .contains("\"exclusiveMinimum\":0")
                .contains("\"loads\":{\"type\":[\"array\",\"null\"]")
                .contains("How many; see width.", "The next pieces.", "A number.");
        assertThat(json(components, "Verdict"))
                .contains("\"enum\":[\"SATISFIED\",\"UNDETERMINED\",\"EXCEEDED\"]")
                .contains("`EXCEEDED`: A limit is exceeded.");
    }

    @Test
    void answersAreOpenAndTheirEnumsMayGrow() {
        RecordSchemas schemas = new RecordSchemas();
        JavaType answer =
                TypeFactory.defaultInstance().constructParametricType(Answer.class, Whole.class);
        assertThat(schemas.of(answer, Direction.ANSWER).get$ref())
                .isEqualTo("#/components/schemas/Whole");
        Map<String, Schema<?>> components = schemas.components();
        assertThat(components.keySet()).doesNotContain("Verdict");
        assertThat(json(components, "Whole"))
                .doesNotContain("additionalProperties", "maxItems", "enum")
                .contains("\"width\":{\"$ref\":\"#/components/schemas/Quantity\"")
                .contains(
                        "\"force\":{\"anyOf\":[{\"$ref\":\"#/components/schemas/Quantity\"},{\"type\":\"null\"}]")
                .contains("More values may come; today:");
    }

    @Test
    void aRecordThatGoesBothWaysHasTwoSchemas() {
        RecordSchemas schemas = new RecordSchemas();
        schemas.of(type(Piece.class), Direction.REQUEST);
        assertThat(schemas.of(type(Piece.class), Direction.ANSWER).get$ref())
                .endsWith("/PieceInAnswer");
        Map<String, Schema<?>> components = schemas.components();
        assertThat(json(components, "Piece")).contains("QuantityInput", "additionalProperties");
        assertThat(json(components, "PieceInAnswer"))
                .doesNotContain("QuantityInput", "additionalProperties");
    }

    @Test
    void twoRecordsMayNotShareAName() {
        RecordSchemas schemas = new RecordSchemas();
        schemas.of(type(Piece.class), Direction.REQUEST);
        assertThatThrownBy(() -> schemas.of(type(Other.Piece.class), Direction.REQUEST))
                .hasMessageContaining("the contract can't call two types Piece");
    }

    interface Other {
        record Piece(String name) {}
    }
}
