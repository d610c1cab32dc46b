package org.bayledger.seals;

import jakarta.validation.constraints.Pattern;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What the maker of a sealant says of it. What is left out is asked for in the sequence "as the
 * sealant maker directs": no number takes its place.
 *
 * @param name what the job calls it, in letters, digits, spaces and . , ( ) -
 * @param solvent what the metal is cleaned with, in the same characters
 * @param dryTime time that the cleaned metal needs to dry, s
 * @param sealWithin longest time from cleaning to sealing, s
 * @param primer whether the metal is primed
 * @param minimumSurfaceTemperature lowest temperature of the metal while it is sealed, K
 * @param maximumSurfaceTemperature highest temperature of the metal while it is sealed, K
 * @param toolingTime time within which the bead is tooled, s
 * @param cureTime time that the bead cures before water may reach it, s
 */
public record Sealant(
        @Pattern(regexp = Sealant.NAME, message = Sealant.NAME_RULE) @Nullable String name,
        @Pattern(regexp = Sealant.NAME, message = Sealant.NAME_RULE) @Nullable String solvent,
        @Measured(value = Dimension.TIME, sign = Measured.Sign.NOT_NEGATIVE, max = 604_800)
                @Nullable Double dryTime,
        @Measured(value = Dimension.TIME, sign = Measured.Sign.POSITIVE, max = 2_592_000)
                @Nullable Double sealWithin,
        @Nullable Boolean primer,
        @Measured(value = Dimension.TEMPERATURE, min = 223.15, max = 373.15)
                @Nullable Double minimumSurfaceTemperature,
        @Measured(value = Dimension.TEMPERATURE, min = 223.15, max = 373.15)
                @Nullable Double maximumSurfaceTemperature,
        @Measured(value = Dimension.TIME, sign = Measured.Sign.POSITIVE, max = 604_800)
                @Nullable Double toolingTime,
        @Measured(value = Dimension.TIME, sign = Measured.Sign.POSITIVE, max = 7_776_000)
                @Nullable Double cureTime) {

    static final String NAME = "[\\p{L}\\p{N}][\\p{L}\\p{N} .,()-]{0,79}";
    static final String NAME_RULE =
            "must have 1 to 80 letters, digits, spaces or . , ( ) - and begin with a letter or"
                    + " digit";

    /** Where nothing was said of a sealant. */
    static final Sealant UNKNOWN =
            new Sealant(null, null, null, null, null, null, null, null, null);

    public Sealant {
        if (dryTime != null && sealWithin != null && dryTime >= sealWithin) {
            throw FaultsException.outOfRange(
                    "/sealWithin", "must be longer than the time that the metal needs to dry");
        }
        if (minimumSurfaceTemperature != null
                && maximumSurfaceTemperature != null
                && minimumSurfaceTemperature >= maximumSurfaceTemperature) {
            throw FaultsException.outOfRange(
                    "/maximumSurfaceTemperature",
                    "must be above the lowest temperature of the metal");
        }
    }
}
