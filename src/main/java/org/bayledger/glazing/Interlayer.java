package org.bayledger.glazing;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The film between two plies; where there are more than two plies, the same film between each two.
 *
 * @param material what it is made of
 * @param thickness nominal thickness of the film, m
 * @param temperature temperature of the film under the design load, K; absent: 50 degC, the
 *     practice's for wind, with a finding
 * @param shearModulus shear modulus of the film at that temperature and for the duration of the
 *     design load, Pa, as its maker gives it; absent: the table's for the material, from 20 degC up
 */
public record Interlayer(
        InterlayerMaterial material,
        @Measured(
                        value = Dimension.LENGTH,
                        sign = Measured.Sign.POSITIVE,
                        min = 0.25e-3,
                        max = 6e-3)
                double thickness,
        @Measured(value = Dimension.TEMPERATURE, min = 223.15) @Nullable Double temperature,
        @Measured(value = Dimension.STRESS, sign = Measured.Sign.POSITIVE, min = 1e3, max = 1e9)
                @Nullable Double shearModulus) {

    /** Mass per area, kg/m2. */
    double areaMass() {
        return material.density() * thickness;
    }
}
