package org.bayledger.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.bayledger.check.Binder;
import org.bayledger.check.StrictJson;
import org.bayledger.quantity.UnitSystem;

/** Review documents that are drawn in the tests, and their drawings. */
final class Walls {

    private Walls() {}

    @SuppressWarnings("unchecked")
    static Map<String, Object> demo() {
        try {
            return (Map<String, Object>)
                    StrictJson.read(
                            Files.readAllBytes(Path.of("demo-seed/quillmoor-library-1.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> tree(String json) {
        return (Map<String, Object>)
                StrictJson.read(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    }

    /** One elevation of a size, full of bays of a size, on the demo's site. */
    static Map<String, Object> wall(
            int width, int height, int columns, int rows, int bayWidth, int bayHeight) {
        Map<String, Object> document = demo();
        site(document).put("meanRoofHeight", height + " ft");
        document.put(
                "elevations",
                List.of(
                        tree(
                                ("{'id':'N','width':'%d ft','height':'%d ft','base':'0 ft',"
                                                + "'cornerAtLeft':true,'cornerAtRight':true}")
                                        .formatted(width, height))));
        List<Object> bays = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                bays.add(
                        tree(
                                ("{'id':'N-%02d%02d','elevation':'N','offset':'%d ft','sill':'%d"
                                                + " ft','columns':['%d ft','%d"
                                                + " ft'],'rows':['3 ft','%d ft'],"
                                                + "'glassType':'G1'}")
                                        .formatted(
                                                row,
                                                column,
                                                column * bayWidth,
                                                row * bayHeight,
                                                bayWidth / 2,
                                                bayWidth - bayWidth / 2,
                                                bayHeight - 3)));
            }
        }
        document.put("bays", bays);
        return document;
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> site(Map<String, Object> document) {
        return (Map<String, Object>) document.get("site");
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> element(Map<String, Object> tree, String name, int index) {
        return ((List<Map<String, Object>>) tree.get(name)).get(index);
    }

    /** A request for the wind zones of elevation N, edited. */
    static DrawingRequest request(
            Map<String, Object> document, Consumer<Map<String, Object>> edit) {
        Map<String, Object> request = new LinkedHashMap<>();
        request.put("document", document);
        request.put("drawing", "WIND_ZONES");
        request.put("elevation", "N");
        edit.accept(request);
        return Binder.bind(request, DrawingRequest.class);
    }

    static DrawingRequest request(Map<String, Object> document) {
        return request(document, request -> {});
    }

    static byte[] svg(DrawingRequest request, UnitSystem units) {
        return Drawings.draw(request, units, "Engine of the tests");
    }

    static Drawn drawn(Map<String, Object> document) {
        return Drawn.of(svg(request(document), UnitSystem.US));
    }
}
