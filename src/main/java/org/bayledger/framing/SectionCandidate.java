package org.bayledger.framing;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A section that could be chosen.
 *
 * @param id its name in the answer
 * @param depth its depth at right angles to the wall, m; of two equally heavy ones the shallower
 *     comes first
 * @param section its properties; massPerLength puts the lightest first
 */
public record SectionCandidate(
        @NotBlank @Size(max = 80) String id,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE) @Nullable Double depth,
        Section section) {}
