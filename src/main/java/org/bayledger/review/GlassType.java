package org.bayledger.review;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.Pattern;
import org.bayledger.check.Faults;
import org.bayledger.glass.SealedUnit;
import org.bayledger.glazing.GlassBuildUp;
import org.jspecify.annotations.Nullable;

/**
 * A glass build-up that bays and lites name.
 *
 * @param id its name in this document
 * @param buildUp panes and cavities
 * @param sealedUnit how its units were sealed and where they stand, for the sealed-cavity model
 *     beside the practice; absent: the model is not run
 */
public record GlassType(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        @JsonUnwrapped GlassBuildUp buildUp,
        @Nullable SealedUnit sealedUnit) {

    public GlassType {
        Faults faults = new Faults();
        if (sealedUnit != null) {
            sealedUnit.fits(buildUp, "/sealedUnit", faults);
        }
        faults.throwIfAny();
    }
}
