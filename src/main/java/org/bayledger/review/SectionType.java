package org.bayledger.review;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.Pattern;
import org.bayledger.framing.Section;

/**
 * A framing section that mullions and horizontals name.
 *
 * @param id its name in this document
 * @param section its properties
 */
public record SectionType(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        @JsonUnwrapped Section section) {}
