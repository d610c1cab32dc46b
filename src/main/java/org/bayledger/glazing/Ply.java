package org.bayledger.glazing;

import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * One sheet of a laminated pane.
 *
 * @param nominalThickness nominal thickness, m: one of the table of {@link NominalThickness}
 */
public record Ply(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE)
                double nominalThickness) {

    /** Refuses a thickness that is not on the table. */
    public Ply {
        if (NominalThickness.find(nominalThickness) == null) {
            throw FaultsException.outOfRange("/nominalThickness", NominalThickness.refusal());
        }
    }
}
