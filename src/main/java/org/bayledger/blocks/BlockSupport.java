package org.bayledger.blocks;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What the setting blocks rest on. A property of the member that is left out leaves its deflection
 * undetermined; a sill that is shimmed has none of them.
 *
 * @param kind whether the blocks rest on a member that bends or on a sill that is shimmed
 * @param span distance between the member's supports, m, the glass centered on it
 * @param secondMomentOfArea of the member, m4, for bending in the plane of the wall
 * @param elasticModulus of the member, Pa
 * @param massPerLength of the member, kg/m; without it the member's own weight is left out, and
 *     said so
 */
public record BlockSupport(
        Kind kind,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 30)
                @Nullable Double span,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double secondMomentOfArea,
        @Measured(value = Dimension.STRESS, sign = Measured.Sign.POSITIVE)
                @Nullable Double elasticModulus,
        @Measured(value = Dimension.LINE_MASS, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double massPerLength) {

    /** What is under the blocks. */
    public enum Kind {
        /** A horizontal that spans freely and bends under the lite. */
        MEMBER,
        /** A sill on the slab that is shimmed under each block. */
        SHIMMED_SILL
    }

    public BlockSupport {
        if (kind == Kind.SHIMMED_SILL) {
            Faults faults = new Faults();
            String detail = "belongs to a MEMBER; a SHIMMED_SILL does not span";
            faults.require(span == null, "/span", detail);
            faults.require(secondMomentOfArea == null, "/secondMomentOfArea", detail);
            faults.require(elasticModulus == null, "/elasticModulus", detail);
            faults.require(massPerLength == null, "/massPerLength", detail);
            faults.throwIfAny();
        }
    }
}
