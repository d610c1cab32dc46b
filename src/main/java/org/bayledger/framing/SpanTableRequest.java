package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The greatest spans of a section.
 *
 * @param section the section
 * @param pressures rows of the table: pressures in either direction, Pa
 * @param basis level of the pressures; absent: ALLOWABLE_STRESS
 * @param spacings columns of the table: spacings of the members, m
 * @param arrangement how many equal spans a member has; absent: SINGLE
 * @param deflectionRule published rule for deflection; absent: IBC
 * @param greatestSpan span beyond which the table does not go, m; absent: 12 m
 */
public record SpanTableRequest(
        Section section,
        @Size(min = 1, max = 50)
                @Measured(value = Dimension.PRESSURE, sign = Sign.POSITIVE, max = 50e3)
                List<Double> pressures,
        @Nullable LoadBasis basis,
        @Size(min = 1, max = 50)
                @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                List<Double> spacings,
        @Nullable SpanArrangement arrangement,
        @Nullable DeflectionRule deflectionRule,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, min = 0.1, max = 30)
                @Nullable Double greatestSpan) {

    private static final double USUAL_GREATEST = 12;

    public SpanTableRequest {
        pressures = List.copyOf(pressures);
        spacings = List.copyOf(spacings);
        Faults faults = new Faults();
        Reinforcement steel = section.reinforcement();
        faults.require(
                steel == null || (steel.from() == null && steel.to() == null),
                "/section/reinforcement",
                "must run the whole length in a table of spans: leave out from and to");
        LateralBuckling lateral = section.lateralBuckling();
        faults.require(
                lateral == null || lateral.bracePoints() == null,
                "/section/lateralBuckling/bracePoints",
                "have no place in a table of spans; give unbracedLength");
        faults.throwIfAny();
    }

    /** Span beyond which the table does not go, m. */
    double greatest() {
        return greatestSpan == null ? USUAL_GREATEST : greatestSpan;
    }

    /** How many equal spans. */
    public int spans() {
        return (arrangement == null ? SpanArrangement.SINGLE : arrangement).spans();
    }
}
