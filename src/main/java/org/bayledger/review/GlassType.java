package org.bayledger.review;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.Pattern;
import org.bayledger.glazing.GlassBuildUp;

/**
 * A glass build-up that bays and lites name.
 *
 * @param id its name in this document
 * @param buildUp panes and cavities
 */
public record GlassType(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        @JsonUnwrapped GlassBuildUp buildUp) {}
