package org.bayledger.drawing;

import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewDocument;
import org.bayledger.wind.Site;
import org.bayledger.wind.WindStandard;

/** Words that several drawings share. */
final class Wording {

    private Wording() {}

    /** Where the wind pressures of a document come from. */
    static String source(ReviewDocument document, UnitSystem units) {
        Site site = document.site();
        if (site == null) {
            return "none: the document gives no site";
        }
        String ground =
                site.exposureCategory() != null
                        ? ", exposure " + site.exposureCategory()
                        : ", terrain " + site.terrainCategory();
        return name(site.standard())
                + ", basic wind speed "
                + Quantity.of(Dimension.SPEED, site.basicWindSpeed()).text(units)
                + ground;
    }

    private static String name(WindStandard standard) {
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
