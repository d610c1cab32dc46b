package org.bayledger.check;

import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A wind pressure on the wall with both signs and its basis.
 *
 * @param positive pressure toward the wall, Pa, zero or greater; null where it was not called out
 * @param negative pressure away from the wall, Pa, zero or smaller; null where it was not called
 *     out
 * @param basis level of the pressures; ALLOWABLE_STRESS where absent
 */
public record Load(
        @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double positive,
        @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.NOT_POSITIVE)
                @Nullable Double negative,
        @Nullable LoadBasis basis) {

    /** ASD load factor on wind (ASCE/SEI 7-16 section 2.4.1), from memory. */
    public static final double ALLOWABLE_STRESS_FACTOR = 0.6;

    /**
     * The pressures at the level at which glass, allowable stresses and deflections are checked.
     *
     * <p>A strength-level wind load is multiplied by 0.6 here and nowhere else; characteristic
     * values of EN 1991 and allowable-stress values pass unchanged.
     *
     * @param trace receives the step
     */
    public AllowableLoad allowable(Trace trace) {
        double factor = basis == LoadBasis.STRENGTH ? ALLOWABLE_STRESS_FACTOR : 1.0;
        String formula =
                switch (basis == null ? LoadBasis.ALLOWABLE_STRESS : basis) {
                    case STRENGTH -> "0.6 W, applied once where the load enters";
                    case ALLOWABLE_STRESS -> "input, already at allowable-stress level";
                    case CHARACTERISTIC -> "input, characteristic value, no factor applied";
                };
        String source =
                basis == LoadBasis.STRENGTH ? "ASCE/SEI 7-16, 2.4.1 (from memory)" : "input";
        Double toward = positive == null ? null : positive * factor;
        Double away = negative == null ? null : negative * factor;
        if (toward != null) {
            trace.step(
                    "p+", "pressure toward the wall", Dimension.PRESSURE, toward, formula, source);
        }
        if (away != null) {
            trace.step(
                    "p-", "pressure away from the wall", Dimension.PRESSURE, away, formula, source);
        }
        return new AllowableLoad(toward, away);
    }
}
