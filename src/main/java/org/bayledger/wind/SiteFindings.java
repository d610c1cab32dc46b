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
            riskCategory(site, findings);
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
        tornado(site, findings);
        serviceability(site, findings);
        return List.copyOf(findings);
    }

    private static void topography(Site site, List<Finding> findings) {
        Topography hill = site.topography();
        if (hill != null) {
            onHill(site, hill, findings);
        } else if (site.topographicFactor() == null) {
            findings.add(
                    Finding.action(
                            "TOPOGRAPHY_NOT_STATED",
                            "/topographicFactor",
                            "No topographic factor was given. The pressures hold on flat ground"
                                    + " only; on a hill, ridge or escarpment they are greater. State the"
                                    + " factor, 1 for flat ground, or describe the feature in"
                                    + " topography."));
        }
    }

    private static void onHill(Site site, Topography hill, List<Finding> findings) {
        ExposureCategory exposure = site.exposureCategory();
        if (exposure == null) {
            if (!new EnOrography(hill).bigEnough()) {
                findings.add(
                        Finding.info(
                                "TOPOGRAPHY_DOES_NOT_COUNT",
                                "/topography",
                                "The upwind slope is under 0.05: EN 1991-1-4 takes the ground as"
                                        + " flat."));
            }
        } else if (!new AsceHill(hill, exposure).bigEnough()) {
            findings.add(
                    Finding.note(
                            "TOPOGRAPHY_DOES_NOT_COUNT",
                            "/topography",
                            "The feature is lower than "
                                    + (exposure == ExposureCategory.B ? "60 ft" : "15 ft")
                                    + " or flatter than H/Lh 0.2: by ASCE/SEI 7, 26.8.1, the"
                                    + " topographic factor is 1."));
        } else if (hill.isolated() == null) {
            findings.add(
                    Finding.note(
                            "TAKEN_AS_ISOLATED",
                            "/topography/isolated",
                            "It was not stated whether the feature stands alone upwind and is twice"
                                    + " as high as the terrain around it (ASCE/SEI 7, 26.8.1). It is"
                                    + " taken to be so, which is on the safe side; where it is not,"
                                    + " state isolated false."));
        } else if (!hill.isolated()) {
            findings.add(
                    Finding.note(
                            "TOPOGRAPHY_DOES_NOT_COUNT",
                            "/topography/isolated",
                            "The feature is stated not to stand alone: by ASCE/SEI 7, 26.8.1, the"
                                    + " topographic factor is 1. The pressures rest on that"
                                    + " statement."));
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
        if (Boolean.TRUE.equals(site.unusualShape())) {
            findings.add(
                    Finding.action(
                            "UNUSUAL_SHAPE",
                            "/unusualShape",
                            "The building or its site is stated to be unusual. The standard's"
                                    + " pressures are for buildings of regular shape and do not hold"
                                    + " here: take them from a wind-tunnel test or recognised"
                                    + " literature."));
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
                                    + " and the enclosure classification may not hold. Impact itself"
                                    + " is not checked here."));
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

    private static void riskCategory(Site site, List<Finding> findings) {
        if (site.riskCategory() == null) {
            findings.add(
                    Finding.note(
                            "RISK_CATEGORY_NOT_STATED",
                            "/riskCategory",
                            "It was not stated for which risk category the basic wind speed was"
                                    + " mapped. ASCE/SEI 7 has a map for each: make sure that the"
                                    + " speed is the one of this building's category."));
        }
    }

    /** ASCE/SEI 7-22, chapter 32: Risk Category III and IV in tornado-prone regions. */
    private static void tornado(Site site, List<Finding> findings) {
        RiskCategory category = site.riskCategory();
        if (site.standard() == WindStandard.ASCE_7_22
                && category != RiskCategory.I
                && category != RiskCategory.II) {
            findings.add(
                    Finding.note(
                            "TORNADO_LOADS_NOT_COVERED",
                            "/standard",
                            "ASCE/SEI 7-22 chapter 32 asks for tornado loads on buildings of Risk"
                                    + " Category III and IV in tornado-prone regions. They are not part"
                                    + " of these pressures."));
        }
    }

    private static void serviceability(Site site, List<Finding> findings) {
        Double factor = site.serviceabilityFactor();
        Serviceability choice = site.serviceability();
        if (factor == null || choice == null) {
            return;
        }
        String share = String.valueOf(Math.round(factor * 1000) / 1000.0);
        findings.add(
                Finding.note(
                        "SERVICEABILITY_WIND_CHOSEN",
                        "/serviceability",
                        "By the caller's choice deflections are looked at under "
                                + share
                                + " of the strength-level wind. Those pressures are for deflection"
                                + " limits only, never for strength, glass, anchors or water. Reason"
                                + " given: "
                                + choice.reason()));
        if (factor < Serviceability.LEAST_FOR_GLASS) {
            findings.add(
                    Finding.note(
                            "SERVICEABILITY_WIND_NOT_FOR_GLASS_FRAMING",
                            "/serviceability",
                            "Members that support glass are limited under 0.6 of the strength-level"
                                    + " wind (IBC 2021, 1604.3.7), which "
                                    + share
                                    + " falls short of. It can serve members that hold no glass"
                                    + " (IBC 2021 Table 1604.3, note f)."));
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
}
