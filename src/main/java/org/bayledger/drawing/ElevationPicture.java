package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bayledger.review.Bay;
import org.bayledger.review.BayResult;
import org.bayledger.review.Elevation;
import org.bayledger.review.ReviewItem;
import org.bayledger.review.ReviewResult;
import org.bayledger.review.ReviewResult.WindRow;

/**
 * What a drawing of an elevation shows, taken from the review of its document.
 *
 * @param face the elevation
 * @param zones where its wind zones lie, from left to right
 * @param kinds names of all zones of the document, those of the greatest suction last; their places
 *     choose their patterns, so that a zone looks the same on every elevation
 * @param rows design pressures of each zone, in the order of the schedule
 * @param bays the bays on it
 * @param withoutPressure items on it for which no pressure was found, by bay
 */
record ElevationPicture(
        Elevation face,
        List<Zone> zones,
        List<String> kinds,
        List<Row> rows,
        List<Bay> bays,
        Map<String, List<String>> withoutPressure) {

    /** The review's word for an item that stands higher than the standard reaches. */
    private static final String NOT_COVERED = "WIND_NOT_COVERED_AT_THIS_HEIGHT";

    /**
     * A stretch of wall in one zone, m.
     *
     * @param name name of the zone
     * @param from distance of its left edge from the elevation's left edge
     * @param to distance of its right edge
     * @param bottom level of its lower edge
     * @param top level of its upper edge
     */
    record Zone(String name, double from, double to, double bottom, double top) {}

    /**
     * Pressures of one zone.
     *
     * @param zone name of the zone
     * @param pressures the schedule's rows, by kind of component
     */
    record Row(String zone, Map<ReviewResult.Component, WindRow> pressures) {}

    static ElevationPicture of(DrawingRequest request, ReviewResult result) {
        Elevation face = request.face();
        Map<String, Row> rows = new LinkedHashMap<>();
        Map<String, List<Zone>> zones = new LinkedHashMap<>();
        for (WindRow row : result.windSchedule()) {
            if (row.elevation().equals(face.id())) {
                rows.computeIfAbsent(row.zone(), zone -> new Row(zone, new LinkedHashMap<>()))
                        .pressures()
                        .put(row.component(), row);
                zones.computeIfAbsent(row.zone(), zone -> zones(face, row));
            }
        }
        return new ElevationPicture(
                face,
                zones.values().stream()
                        .flatMap(List::stream)
                        .sorted(Comparator.comparingDouble(Zone::from))
                        .toList(),
                kinds(result),
                List.copyOf(rows.values()),
                request.bays(),
                withoutPressure(request, result));
    }

    private static List<String> kinds(ReviewResult result) {
        Map<String, Double> suction = new TreeMap<>();
        result.windSchedule()
                .forEach(row -> suction.merge(row.zone(), row.negative().si(), Math::min));
        return suction.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static List<Zone> zones(Elevation face, WindRow row) {
        return row.strips().stream()
                .map(
                        strip ->
                                new Zone(
                                        row.zone(),
                                        strip.from().si(),
                                        strip.to().si(),
                                        face.base(),
                                        face.base() + face.height()))
                .toList();
    }

    private static Map<String, List<String>> withoutPressure(
            DrawingRequest request, ReviewResult result) {
        Map<String, List<String>> without = new LinkedHashMap<>();
        List<Bay> bays = request.document().bays();
        for (int i = 0; i < bays.size(); i++) {
            BayResult bay = result.bays().get(i);
            if (bays.get(i).elevation().equals(request.elevation())) {
                for (ReviewItem item : bay.items()) {
                    if (item.findings().stream().anyMatch(f -> f.code().equals(NOT_COVERED))) {
                        without.computeIfAbsent(bay.id(), id -> new ArrayList<>()).add(item.id());
                    }
                }
            }
        }
        return without;
    }

    /** Names of the zones on this elevation. */
    List<String> shown() {
        return kinds.stream()
                .filter(kind -> zones.stream().anyMatch(zone -> zone.name().equals(kind)))
                .toList();
    }

    /** The pattern of a zone. */
    Hatch hatch(String zone) {
        return Hatch.of(kinds.indexOf(zone));
    }

    /** Level of the top, m. */
    double top() {
        return face.base() + face.height();
    }
}
