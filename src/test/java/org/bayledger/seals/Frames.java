package org.bayledger.seals;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** Frames for the tests, as trees that a test may change before they are bound. */
@NullMarked
final class Frames {

    static final Reporting SI = new Reporting(UnitSystem.SI, TraceLevel.ALL);
    static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);

    private Frames() {}

    /** A frame of two columns and three rows, 10 ft by 13 ft, with everything given. */
    static Map<String, @Nullable Object> two() {
        return tree(
                """
                {"drainage":"PRESSURE_EQUALIZED","columns":["5 ft","5 ft"],
                 "rows":["3 ft","8 ft","2 ft"],"splices":["11'-6\\""],"stackJoints":[],
                 "bead":{"width":"0.25 in","depth":"0.25 in"},
                 "perimeterBead":{"width":"0.5 in","depth":"0.25 in"},
                 "pressurePlateLength":"10 ft","fastenersPerHorizontalEnd":2,
                 "perimeterFastenerSpacing":"18 in","jointCovers":3,"anchorPenetrations":6,
                 "continuousEdges":[],"endDamHeight":"1.5 in",
                 "load":{"positive":"30 psf","negative":"-35 psf"}}""");
    }

    @SuppressWarnings("unchecked")
    static Map<String, @Nullable Object> tree(String json) {
        Object tree = StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
        return new LinkedHashMap<>((Map<String, @Nullable Object>) tree);
    }

    static Map<String, @Nullable Object> with(
            Map<String, @Nullable Object> tree, String property, @Nullable Object value) {
        Map<String, @Nullable Object> changed = new LinkedHashMap<>(tree);
        changed.put(property, value instanceof Integer whole ? new BigDecimal(whole) : value);
        return changed;
    }

    static SealsResult run(Map<String, @Nullable Object> tree) {
        return run(tree, SI);
    }

    static SealsResult run(Map<String, @Nullable Object> tree, Reporting reporting) {
        return SealsCheck.run(Binder.bind(tree, SealsRequest.class), reporting);
    }

    static SealJoint joint(SealsResult result, JointType type) {
        return result.joints().stream().filter(j -> j.type() == type).findFirst().orElseThrow();
    }

    static int count(SealsResult result, JointType type) {
        return joint(result, type).count();
    }

    static List<String> codes(SealsResult result) {
        return result.outcome().findings().stream().map(f -> f.code()).toList();
    }
}
