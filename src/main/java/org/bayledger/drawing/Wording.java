package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.PressureSource;
import org.bayledger.review.ReviewDocument;
import org.bayledger.wind.Site;
import org.bayledger.wind.SpecifiedPressures;
import org.bayledger.wind.WindStandard;

/** Words that several drawings share. */
final class Wording {

    private Wording() {}

    /** Where the pressures of an elevation come from. */
    static String source(ReviewDocument document, PressureTable pressures, UnitSystem units) {
        List<String> sources = new ArrayList<>();
        SpecifiedPressures specified = document.specifiedPressures();
        Site site = document.site();
        if (specified != null && pressures.has(PressureSource.SPECIFIED)) {
            sources.add("specified: " + specified.source());
        }
        if (site != null && pressures.has(PressureSource.COMPUTED)) {
            String ground =
                    site.exposureCategory() != null
                            ? ", exposure " + site.exposureCategory()
                            : ", terrain " + site.terrainCategory();
            sources.add(
                    name(site.standard())
                            + ", basic wind speed "
                            + Quantity.of(Dimension.SPEED, site.basicWindSpeed()).text(units)
                            + ground);
        }
        return sources.isEmpty() ? "nothing: UNDETERMINED" : String.join("; ", sources);
    }

    static String name(WindStandard standard) {
        return switch (standard) {
            case ASCE_7_10 -> "ASCE/SEI 7-10";
            case ASCE_7_16 -> "ASCE/SEI 7-16";
            case ASCE_7_22 -> "ASCE/SEI 7-22";
            case EN_1991_1_4 -> "EN 1991-1-4";
        };
    }

    /** How lengths are written. */
    static String lengths(UnitSystem units) {
        return units == UnitSystem.US ? "feet and inches" : "mm";
    }
}
