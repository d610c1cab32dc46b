package org.bayledger.seals;

import java.math.BigDecimal;
import java.math.MathContext;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;

/**
 * The words of preparation, weather and cure: the sealant maker's numbers where they were given,
 * and "as the sealant maker directs" where not. The rest is common practice, no source.
 */
final class SealPractice {

    private static final String MAKER = "as the sealant maker directs";

    private final Reporting reporting;

    SealPractice(Reporting reporting) {
        this.reporting = reporting;
    }

    String preparation(Sealant sealant) {
        String solvent =
                sealant.solvent() == null
                        ? "the solvent the sealant maker names"
                        : sealant.solvent();
        String dry =
                sealant.dryTime() == null
                        ? "let it dry " + MAKER
                        : "let it dry for " + duration(sealant.dryTime());
        String seal =
                sealant.sealWithin() == null
                        ? "seal within the time the sealant maker allows after cleaning"
                        : "seal within " + duration(sealant.sealWithin()) + " of cleaning";
        return "Wipe both metals with "
                + solvent
                + " on one cloth and dry them with a second, clean one before it evaporates; "
                + dry
                + "; "
                + seal
                + ", else clean again (common practice).";
    }

    String primer(Sealant sealant) {
        Boolean primer = sealant.primer();
        if (primer == null) {
            return "Prime where the sealant maker directs.";
        }
        return primer
                ? "Prime both surfaces and let the primer dry " + MAKER + "."
                : "No primer, by the sealant maker's word.";
    }

    String weather(Sealant sealant) {
        Double low = sealant.minimumSurfaceTemperature();
        Double high = sealant.maximumSurfaceTemperature();
        String limits;
        if (low == null && high == null) {
            limits = "at the temperatures that the sealant maker allows";
        } else if (high == null) {
            limits =
                    "at %s or above, and no hotter than the sealant maker allows"
                            .formatted(of(low));
        } else if (low == null) {
            limits =
                    "at %s or below, and no colder than the sealant maker allows"
                            .formatted(of(high));
        } else {
            limits = "from %s to %s".formatted(of(low), of(high));
        }
        return "Metal dry and free of frost, dew and rain (common practice), " + limits + ".";
    }

    String tooling(Sealant sealant) {
        return sealant.toolingTime() == null
                ? "Tool before a skin forms, " + MAKER + "."
                : "Tool within " + duration(sealant.toolingTime()) + " of placing.";
    }

    String cure(Sealant sealant) {
        return sealant.cureTime() == null
                ? "No water before the sealant has cured, " + MAKER + "."
                : "No water for " + duration(sealant.cureTime()) + " after sealing.";
    }

    private String of(@org.jspecify.annotations.Nullable Double kelvin) {
        return kelvin == null ? "" : reporting.text(Dimension.TEMPERATURE, kelvin);
    }

    /** A time in the largest unit of which it holds one: {@code 90 s} as {@code 1.5 min}. */
    private static String duration(double seconds) {
        String[] symbols = {"d", "h", "min"};
        double[] units = {86_400, 3600, 60};
        for (int i = 0; i < units.length; i++) {
            if (seconds >= units[i]) {
                return number(seconds / units[i]) + " " + symbols[i];
            }
        }
        return number(seconds) + " s";
    }

    private static String number(double value) {
        return new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
    }
}
