package org.bayledger.wind;

import static org.bayledger.wind.Imperial.MPH;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.jspecify.annotations.Nullable;

/** What a person has to decide or know before wall pressures of a site are used. */
final class SiteFindings {

    /** Height above which a wind-tunnel test is called for, m (common practice, no source). */
    static final double WIND_TUNNEL_HEIGHT = 120;

    /**
     * Least basic wind speed at which a hurricane-prone place can be a wind-borne debris region
     * (ASCE/SEI 7-16, 26.12.3.1, and the editions beside it; from memory).
     */
    static final double DEBRIS_SPEED = 130 * MPH;

    /** Below this the maps of ASCE/SEI 7-10 and later have nothing (from memory). */
    private static final double LEAST_MAPPED_SPEED = 85 * MPH;

    /** Above this a 10 min mean is unusual; it may be a gust (common practice, no source). */
    private static final double UNUSUAL_MEAN_SPEED = 45;

    private SiteFindings() {}

    static List<Finding> of(Site site) {
        List<Finding> findings = new ArrayList<>();
        topography(site, findings);
        height(site, findings);
        speed(site, findings);
        if (site.standard().isAsce()) {
            debris(site, findings);
            groundElevation(site, findings);
        } else {
            notUsed(findings, site.roofSlope(), "roofSlope", site.standard());
            notUsed(findings, site.groundElevation(), "groundElevation", site.standard());
            findings.add(
                    Finding.note(
                            "RECOMMENDED_VALUES",
                            "/standard",
                            "EN 1991-1-4 is used with its recommended values. The National Annex"
                                    + " may set other profiles, coefficients and reference"
                                    + " heights."));
        }
        if (site.standard() == WindStandard.ASCE_7_22) {
            findings.add(
                    Finding.note(
                            "TORNADO_LOADS_NOT_COVERED",
                            "/standard",
                            "ASCE/SEI 7-22 chapter 32 asks for tornado loads on buildings of Risk"
                                    + " Category III and IV in tornado-prone regions. They are not part"
                                    + " of these pressures."));
        }
        return List.copyOf(findings);
    }

    private static void topography(Site site, List<Finding> findings) {
        if (site.topographicFactor() == null) {
            findings.add(
                    Finding.action(
                            "TOPOGRAPHY_NOT_STATED",
                            "/topographicFactor",
                            "No topographic factor was given. The pressures hold on flat ground"
                                    + " only; on a hill, ridge or escarpment they are greater. State the"
                                    + " factor, 1 for flat ground."));
        }
    }

    private static void height(Site site, List<Finding> findings) {
        if (site.meanRoofHeight() > WIND_TUNNEL_HEIGHT) {
            findings.add(
                    Finding.action(
                            "WIND_TUNNEL",
                            "/meanRoofHeight",
                            "The building is taller than 120 m (394 ft). Pressures on its cladding"
                                    + " call for a wind-tunnel test; those given here are the standard's"
                                    + " for a building of regular shape."));
        }
    }

    private static void speed(Site site, List<Finding> findings) {
        if (site.standard().isAsce()
                && Imperial.lessThan(site.basicWindSpeed(), LEAST_MAPPED_SPEED)) {
            findings.add(
                    Finding.note(
                            "BASIC_WIND_SPEED_UNUSUAL",
                            "/basicWindSpeed",
                            "The basic wind speed is below those mapped in ASCE/SEI 7-10 and later."
                                    + " Make sure that it is the strength-level 3 s gust for the"
                                    + " building's risk category and not a mean or an older"
                                    + " edition's speed."));
        }
        if (!site.standard().isAsce() && site.basicWindSpeed() > UNUSUAL_MEAN_SPEED) {
            findings.add(
                    Finding.note(
                            "BASIC_WIND_SPEED_UNUSUAL",
                            "/basicWindSpeed",
                            "The basic wind velocity is high for a 10 min mean. Make sure that it is"
                                    + " not a gust speed."));
        }
    }

    private static void debris(Site site, List<Finding> findings) {
        Boolean inRegion = site.windborneDebrisRegion();
        if (Boolean.TRUE.equals(inRegion)) {
            findings.add(
                    Finding.action(
                            "WIND_BORNE_DEBRIS",
                            "/windborneDebrisRegion",
                            "The site lies in a wind-borne debris region. Show that the glazing is"
                                    + " impact-resistant or protected; otherwise it counts as openings"
                                    + " and the enclosure classification may not hold."));
        } else if (inRegion == null && Imperial.atMost(DEBRIS_SPEED, site.basicWindSpeed())) {
            findings.add(
                    Finding.action(
                            "DEBRIS_REGION_NOT_STATED",
                            "/windborneDebrisRegion",
                            "The basic wind speed reaches 130 mph and it was not stated whether the"
                                    + " site lies in a wind-borne debris region, which bears on the"
                                    + " glazing and on the enclosure classification."));
        }
    }

    private static void groundElevation(Site site, List<Finding> findings) {
        if (site.standard() == WindStandard.ASCE_7_10) {
            notUsed(findings, site.groundElevation(), "groundElevation", site.standard());
        } else if (site.groundElevation() == null) {
            findings.add(
                    Finding.info(
                            "GROUND_ELEVATION_FACTOR_1",
                            "/groundElevation",
                            "No ground elevation was given; a ground elevation factor of 1 is"
                                    + " permitted in all cases."));
        }
    }

    private static void notUsed(
            List<Finding> findings, @Nullable Double value, String name, WindStandard standard) {
        if (value != null) {
            findings.add(
                    Finding.info(
                            "INPUT_NOT_USED",
                            "/" + name,
                            "The rules of " + standard + " for walls do not use this input."));
        }
    }

    static List<Finding> ofHeight(Site site, double height, String pointer, String what) {
        if (Imperial.atMost(height, site.meanRoofHeight())) {
            return List.of();
        }
        return List.of(
                Finding.action(
                        "ABOVE_ROOF",
                        pointer,
                        what
                                + " stands higher than the roof. A parapet has wind on both faces and"
                                + " load cases of its own, which are not covered: work it out apart. The"
                                + " pressures given are those of a wall at that height."));
    }
}
