package org.bayledger.glass;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Finding;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** Requests to the glass check as JSON, for its tests. */
@NullMarked
final class GlassRequests {

    static final Reporting SI = new Reporting(UnitSystem.SI, TraceLevel.ALL);
    static final String GUST =
            "{\"positive\":\"1.8 kPa\",\"negative\":\"-1.8 kPa\",\"duration\":\"3 s\"}";

    private GlassRequests() {}

    static String pane(String thickness, String treatment) {
        return "{\"nominalThickness\":\"%s\",\"heatTreatment\":\"%s\"}"
                .formatted(thickness, treatment);
    }

    static String laminate(String first, String second, String film, String treatment) {
        return """
        {"plies":[{"nominalThickness":"%s"},{"nominalThickness":"%s"}],
         "interlayer":%s,"heatTreatment":"%s"}"""
                .formatted(first, second, film, treatment);
    }

    /** A lite on four edges; more holds further members, each with a comma before it. */
    static String lite(String width, String height, List<String> panes, String load, String more) {
        List<String> cavities = new ArrayList<>();
        for (int i = 1; i < panes.size(); i++) {
            cavities.add("{\"width\":\"12 mm\"}");
        }
        return """
        {"practice":"ASTM_E1300","width":"%s","height":"%s","supportedEdges":"FOUR",
         "glass":{"panes":[%s],"cavities":[%s]},"load":%s%s}"""
                .formatted(
                        width,
                        height,
                        String.join(",", panes),
                        String.join(",", cavities),
                        load,
                        more);
    }

    static String lite(String width, String height, String pane) {
        return lite(width, height, List.of(pane), GUST, "");
    }

    static @Nullable Object tree(String json) {
        return StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    static GlassRequest bind(String json) {
        return Binder.bind(tree(json), GlassRequest.class);
    }

    static GlassResult run(String json) {
        return GlassCheck.run(bind(json), SI);
    }

    /** The answer after a remedy's changes were made in the request. */
    static GlassResult after(String json, Remedy remedy) {
        Object tree = tree(json);
        for (Remedy.Change change : remedy.changes()) {
            put(tree, change.pointer(), change.to());
        }
        return GlassCheck.run(Binder.bind(tree, GlassRequest.class), SI);
    }

    private static void put(@Nullable Object tree, String pointer, Object to) {
        String[] names = pointer.substring(1).split("/", -1);
        Object at = tree;
        for (int i = 0; i < names.length - 1; i++) {
            at =
                    at instanceof List<?> list
                            ? list.get(Integer.parseInt(names[i]))
                            : members(at).get(names[i]);
        }
        if (members(at).replace(names[names.length - 1], to) == null) {
            throw new AssertionError("nothing to change at " + pointer);
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> members(@Nullable Object object) {
        if (object instanceof Map<?, ?> map) {
            return (Map<String, Object>) map;
        }
        throw new AssertionError("no object there");
    }

    static List<String> codes(GlassResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }
}
