package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewItem;

/** Review documents with one bay, N-1, made of the demo's parts, and drawings of that bay. */
final class Bays {

    private Bays() {}

    /** A bay of columns and rows in ft on a shimmed sill, edited. */
    static Map<String, Object> bay(
            List<Double> columns, List<Double> rows, Consumer<Map<String, Object>> edit) {
        Map<String, Object> document = Walls.demo();
        Map<String, Object> bay = Walls.element(document, "bays", 1);
        bay.put("id", "N-1");
        bay.put("offset", "0 ft");
        bay.put("sill", "0 ft");
        bay.put("columns", columns.stream().map(width -> width + " ft").toList());
        bay.put("rows", rows.stream().map(height -> height + " ft").toList());
        bay.remove("lites");
        bay.remove("anchors");
        bay.remove("movement");
        bay.put("stackJoints", List.of());
        edit.accept(bay);
        document.put("bays", List.of(bay));
        Walls.element(document, "elevations", 0).put("width", "200 ft");
        return document;
    }

    static Map<String, Object> bay(List<Double> columns, List<Double> rows) {
        return bay(columns, rows, bay -> {});
    }

    /** Three columns, no two alike, with a wide heavy lite in the middle. */
    static Map<String, Object> uneven() {
        return bay(
                List.of(4.0, 10.0, 6.0),
                List.of(3.0, 8.0, 2.5),
                bay ->
                        bay.put(
                                "lites",
                                List.of(Walls.tree("{'column':2,'row':2,'glassType':'G2'}"))));
    }

    /** A weak horizontal and no word on the clearance below. */
    static Map<String, Object> unsettled() {
        Map<String, Object> document = uneven();
        Map<String, Object> bay = Walls.element(document, "bays", 0);
        bay.put("horizontal", Walls.tree("{'section':'H1'}"));
        bay.put("glazingPocket", Walls.tree("{'bite':'0.5 in'}"));
        return document;
    }

    /** Nothing said of glass, sill and seals. */
    static Map<String, Object> bare() {
        return bay(
                List.of(4.0, 6.0),
                List.of(3.0, 8.0),
                bay -> {
                    bay.remove("sillSupport");
                    bay.remove("seals");
                    bay.remove("glassType");
                });
    }

    /** Six columns and twelve rows with splices and a stack joint on a member at the sill. */
    static Map<String, Object> tall() {
        return bay(
                Collections.nCopies(6, 5.0),
                Collections.nCopies(12, 4.0),
                bay -> {
                    bay.put("sillSupport", "MEMBER");
                    bay.put("belowSill", Walls.tree("{'kind':'NONE'}"));
                    seals(bay)
                            .putAll(
                                    Walls.tree(
                                            "{'splices':['13 ft','27 ft'],'stackJoints':['41"
                                                    + " ft'],'jointCovers':3,"
                                                    + "'anchorPenetrations':14}"));
                });
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> seals(Map<String, Object> bay) {
        return (Map<String, Object>) bay.get("seals");
    }

    static Map<String, Map<String, Object>> all() {
        Map<String, Map<String, Object>> all = new LinkedHashMap<>();
        all.put("one lite", bay(List.of(5.0), List.of(8.0)));
        all.put("columns that differ", uneven());
        all.put("blocks that are not settled", unsettled());
        all.put("nothing said", bare());
        all.put("six by twelve", tall());
        all.put("thirty columns", bay(Collections.nCopies(30, 5.0), List.of(1.0, 9.0, 1.0)));
        all.put("one column of twelve", bay(List.of(4.0), Collections.nCopies(12, 6.0)));
        all.put("small lites", bay(Collections.nCopies(25, 1.0), Collections.nCopies(20, 1.0)));
        return all;
    }

    static DrawingRequest request(
            Map<String, Object> document, DrawingKind kind, Consumer<Map<String, Object>> edit) {
        Map<String, Object> request = new LinkedHashMap<>();
        request.put("document", document);
        request.put("drawing", kind.name());
        request.put("elevation", "N");
        if (kind.ofBay()) {
            request.put("bay", "N-1");
        }
        edit.accept(request);
        return Binder.bind(request, DrawingRequest.class);
    }

    static Drawn drawn(Map<String, Object> document, DrawingKind kind, UnitSystem units) {
        return drawn(request(document, kind, request -> {}), units);
    }

    static Drawn drawn(DrawingRequest request, UnitSystem units) {
        return Drawn.of(Walls.svg(request, units));
    }

    /** What the review says of the items of a check, by their names without the bay's. */
    static Map<String, ReviewItem> reviewed(Map<String, Object> document, String check) {
        Map<String, ReviewItem> items = new LinkedHashMap<>();
        DrawingRequest request = request(document, DrawingKind.WIND_ZONES, all -> {});
        Review.run(request.document(), new Reporting(UnitSystem.US, TraceLevel.GOVERNING))
                .bays()
                .get(0)
                .items()
                .stream()
                .filter(item -> item.check().equals(check))
                .forEach(item -> items.put(item.id().substring("N-1/".length()), item));
        return items;
    }

    /** Sums from 0 of numbers. */
    static List<Double> lines(List<Double> parts) {
        List<Double> lines = new ArrayList<>(List.of(0.0));
        parts.forEach(part -> lines.add(lines.get(lines.size() - 1) + part));
        return lines;
    }
}
