package org.bayledger.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.Size;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

@NullMarked
class BinderTest {

    record Size2(
            @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                    double width,
            @Measured(Dimension.LENGTH) @Nullable Double height) {
        public Size2 {
            if (height != null && height > width) {
                throw FaultsException.outOfRange("/height", "must not exceed width");
            }
        }
    }

    record Sample(
            @JsonUnwrapped Size2 size,
            Verdict verdict,
            @Size(max = 2) @Measured(Dimension.PRESSURE) List<Double> pressures,
            @Nullable Load load,
            @Nullable Integer count) {}

    private static Sample bind(String json) {
        return Binder.bind(StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), Sample.class);
    }

    @Test
    void readsQuantitiesInEveryForm() {
        Sample sample =
                bind(
                        """
                        {"width":"13'-6 1/2\\"","height":{"value":1,"unit":"ft"},"verdict":"EXCEEDED",
                         "pressures":["1 psf","-2.5 kPa"],"load":{"positive":"30 psf","negative":null},
                         "count":3.0}""");
        assertThat(sample.size().width()).isCloseTo(162.5 * 0.0254, within(1e-12));
        assertThat(sample.size().height()).isCloseTo(0.3048, within(1e-12));
        assertThat(sample.pressures()).hasSize(2).contains(-2500.0);
        assertThat(sample.load()).isNotNull();
        assertThat(sample.count()).isEqualTo(3);
    }

    @Test
    void reportsEveryFaultAtOnce() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"11 m","verdict":"GOOD","pressures":["1 mph",null,3],
                                         "nonsense":1,"load":{"positive":"-3 psf"},"count":1.5}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/nonsense",
                                                "/width",
                                                "/verdict",
                                                "/pressures/0",
                                                "/pressures/1",
                                                "/pressures/2",
                                                "/load/positive",
                                                "/count"));
    }

    @Test
    void constraintsAndConstructorsAreTheLastGuard() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"1 m","height":"2 m","verdict":"EXCEEDED",
                                         "pressures":["1 Pa","1 Pa","1 Pa"]}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isFalse();
                            assertThat(e.faults())
                                    .extracting(Fault::pointer)
                                    .containsExactlyInAnyOrder("/height", "/pressures");
                        });
    }

    @Test
    void writesAnswersInTheUnitsAskedFor() {
        JsonMapper mapper =
                JsonMapper.builder()
                        .addModule(new AnswerModule())
                        .disable(
                                tools.jackson.databind.MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                        .build();
        record Result(@JsonUnwrapped Size2 size, Quantity force, double ratio) {}
        String json =
                mapper.writeValueAsString(
                        new Answer<>(
                                UnitSystem.US,
                                new Result(
                                        new Size2(0.0254, null),
                                        Quantity.of(Dimension.FORCE, 4.4482216152605),
                                        1.0 / 3)));
        assertThat(json)
                .isEqualTo(
                        """
                        {"width":{"value":1,"unit":"in"},"height":null,"force":{"value":1,"unit":"lbf"},"ratio":0.333333}""");
    }
}
