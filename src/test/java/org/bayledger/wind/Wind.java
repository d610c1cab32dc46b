package org.bayledger.wind;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;

/** Builds requests as callers do, from JSON. */
@NullMarked
final class Wind {

    static final double FOOT = 0.3048;
    static final double PSF = 47.88025898;

    /** A tall office building in the suburbs: the brief's own example. */
    static final String TALL =
            """
            {"standard":"ASCE_7_16","basicWindSpeed":"120 mph","exposureCategory":"B",
             "meanRoofHeight":"160 ft","leastHorizontalDimension":"100 ft","roofSlope":"0 deg",
             "enclosureClassification":"ENCLOSED","groundElevation":"0 ft",
             "topographicFactor":1.0,"designBasis":"STRENGTH","riskCategory":"II"}""";

    /** A low building on open ground. */
    static final String LOW =
            """
            {"standard":"ASCE_7_10","basicWindSpeed":"115 mph","exposureCategory":"C",
             "meanRoofHeight":"25 ft","leastHorizontalDimension":"100 ft","roofSlope":"5 deg",
             "enclosureClassification":"ENCLOSED","topographicFactor":1.0,
             "designBasis":"ALLOWABLE_STRESS","riskCategory":"II"}""";

    /** A slab of flats in suburban terrain. */
    static final String EN =
            """
            {"standard":"EN_1991_1_4","basicWindSpeed":"26 m/s","terrainCategory":"III",
             "meanRoofHeight":"40 m","leastHorizontalDimension":"20 m","crosswindBreadth":"30 m",
             "topographicFactor":1.0}""";

    private Wind() {}

    /** The site of a JSON text with some properties replaced; null takes one out. */
    static Site site(String json, String... changes) {
        return Binder.bind(changed(json, changes), Site.class);
    }

    static SitePressures pressures(String json, String... changes) {
        return SitePressures.of(site(json, changes));
    }

    /** A request for components, as a JSON array, on the site of a JSON text. */
    static WindRequest request(String json, String components, String... changes) {
        Map<String, Object> tree = changed(json, changes);
        tree.put("components", tree("{\"a\":" + components + "}").get("a"));
        return Binder.bind(tree, WindRequest.class);
    }

    static WindResult run(WindRequest request) {
        return WindCheck.run(request, new Reporting(UnitSystem.US, TraceLevel.ALL));
    }

    /** Changes in pairs of name and JSON value. */
    private static Map<String, Object> changed(String json, String... changes) {
        Map<String, Object> tree = tree(json);
        for (int i = 0; i < changes.length; i += 2) {
            tree.putAll(tree("{\"" + changes[i] + "\":" + changes[i + 1] + "}"));
        }
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String json) {
        Object tree = StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
        if (tree == null) {
            throw new IllegalArgumentException(json);
        }
        return new HashMap<>((Map<String, Object>) tree);
    }
}
