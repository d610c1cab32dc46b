package org.bayledger.anchorage;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The bracket by which an anchor is bolted to the structure. Under weight and suction it turns
 * about one of its edges, which presses on the structure: about its lower edge on the face of a
 * slab, about the outer edge of the slab on top of it.
 *
 * @param mounting where it sits
 * @param eccentricity from the line of the mullion's weight to the face of the slab, horizontal, m
 * @param leverArm from the bolts in tension to the edge about which the bracket turns under weight
 *     and suction, along the slab's surface, m
 * @param windLeverArm from the line of the wind force to that edge, vertical, m
 * @param oppositeLeverArm from the bolts in tension to the opposite edge of the bracket, about
 *     which wind may turn it the other way, m; needed on top of a slab, and on its face where wind
 *     does not act at the level of the bolts
 * @param boltCount bolts that share the shear
 * @param tensionBoltCount bolts at the lever arm, that share the tension
 * @param pryingFactor by which prying of the bracket raises the tension of its bolts; 1 says that
 *     it is stiff enough for none
 * @param allowableBoltTension what one bolt may take in tension, N, allowable-stress level
 * @param allowableBoltShear what one bolt may take in shear, N, allowable-stress level
 */
public record Bracket(
        Mounting mounting,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 5)
                double eccentricity,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, min = 0.001, max = 5)
                double leverArm,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 5)
                double windLeverArm,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, min = 0.001, max = 5)
                @Nullable Double oppositeLeverArm,
        @Min(1) @Max(100) int boltCount,
        @Min(1) @Max(100) int tensionBoltCount,
        @DecimalMin("1") @DecimalMax("5") @Nullable Double pryingFactor,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double allowableBoltTension,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double allowableBoltShear) {

    /** Where a bracket sits, and so what weight and wind do to its bolts. */
    public enum Mounting {
        /** On the edge of the slab, bolts level: suction pulls at them, weight shears them. */
        FACE_OF_SLAB,
        /**
         * On top of the slab, bolts upright: wind shears them, weight and wind turn the bracket.
         */
        TOP_OF_SLAB
    }

    public Bracket {
        if (tensionBoltCount > boltCount) {
            throw FaultsException.outOfRange(
                    "/tensionBoltCount", "must not be more than boltCount, which counts all bolts");
        }
    }

    Bracket withAllowables(double tension, double shear) {
        return new Bracket(
                mounting,
                eccentricity,
                leverArm,
                windLeverArm,
                oppositeLeverArm,
                boltCount,
                tensionBoltCount,
                pryingFactor,
                tension,
                shear);
    }
}
