package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.bayledger.quantity.Quantity;
import org.bayledger.review.Bay;
import org.bayledger.review.BayResult;
import org.bayledger.review.ElevationZones;
import org.bayledger.review.ElevationZones.HeightBand;
import org.bayledger.review.ElevationZones.ZoneRectangle;
import org.bayledger.review.ReviewItem;
import org.bayledger.review.ReviewResult;
import org.bayledger.review.ReviewResult.Component;
import org.bayledger.review.ReviewResult.WindRow;
import org.jspecify.annotations.Nullable;

/**
 * What a drawing of an elevation shows, taken from the review of its document.
 *
 * @param wall the elevation with its zones
 * @param kinds names of all zones of the document, those of the greatest suction last; their places
 *     choose their patterns, so that a zone looks the same on every elevation
 * @param bands bands of height from the base up, those with the same pressures as one
 * @param bays the bays on it
 * @param withoutPressure items on it for which no pressure was found, by bay
 */
record ElevationPicture(
        ElevationZones wall,
        List<String> kinds,
        List<Band> bands,
        List<Bay> bays,
        Map<String, List<String>> withoutPressure) {

    /** The review's word for an item that stands higher than the standard reaches. */
    private static final String NOT_COVERED = "WIND_NOT_COVERED_AT_THIS_HEIGHT";

    /**
     * A band of height.
     *
     * @param from level of its lower edge, m
     * @param to level of its upper edge, m
     * @param rows the pressures in it
     */
    record Band(double from, double to, List<Row> rows) {}

    /**
     * Pressures of one zone in a band.
     *
     * @param zone name of the zone
     * @param strips where it lies
     * @param pressures the review's rows, by kind of component
     */
    record Row(String zone, List<ReviewResult.Strip> strips, Map<Component, WindRow> pressures) {

        /** Whether another says the same. */
        private boolean same(Row other) {
            return zone.equals(other.zone)
                    && strips.equals(other.strips)
                    && pressures.keySet().equals(other.pressures.keySet())
                    && pressures.keySet().stream()
                            .allMatch(kind -> same(pressures.get(kind), other.pressures.get(kind)));
        }

        private static boolean same(@Nullable WindRow one, @Nullable WindRow other) {
            return one != null
                    && other != null
                    && Objects.equals(one.positive(), other.positive())
                    && Objects.equals(one.negative(), other.negative())
                    && one.effectiveWindArea().equals(other.effectiveWindArea())
                    && one.basis() == other.basis()
                    && one.source() == other.source();
        }
    }

    static ElevationPicture of(DrawingRequest request, ReviewResult result) {
        ElevationZones wall =
                result.elevationZones().stream()
                        .filter(zones -> zones.elevation().equals(request.elevation()))
                        .findFirst()
                        .orElseThrow();
        return new ElevationPicture(
                wall, kinds(result), bands(wall), request.bays(), without(request, result));
    }

    private static List<String> kinds(ReviewResult result) {
        Map<String, Double> suction = new TreeMap<>();
        for (ElevationZones wall : result.elevationZones()) {
            for (ZoneRectangle zone : wall.zones()) {
                if (zone.zone() != null) {
                    suction.putIfAbsent(zone.zone(), 0.0);
                }
            }
            for (WindRow row : wall.pressures()) {
                Quantity away = row.negative();
                suction.merge(row.zone(), away == null ? 0.0 : away.si(), Math::min);
            }
        }
        return suction.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static List<Band> bands(ElevationZones wall) {
        List<Band> bands = new ArrayList<>();
        for (HeightBand band : wall.bands()) {
            Map<List<Object>, Row> rows = new LinkedHashMap<>();
            for (WindRow row : wall.pressures()) {
                if (row.band().from().equals(band.from())) {
                    rows.computeIfAbsent(
                                    List.of(row.zone(), row.strips()),
                                    key -> new Row(row.zone(), row.strips(), new TreeMap<>()))
                            .pressures()
                            .put(row.component(), row);
                }
            }
            add(bands, new Band(band.from().si(), band.to().si(), List.copyOf(rows.values())));
        }
        return List.copyOf(bands);
    }

    /** Adds a band, or makes the one below it higher where it says the same. */
    private static void add(List<Band> bands, Band next) {
        int last = bands.size() - 1;
        if (last >= 0 && same(bands.get(last).rows(), next.rows())) {
            bands.set(last, new Band(bands.get(last).from(), next.to(), next.rows()));
        } else {
            bands.add(next);
        }
    }

    private static boolean same(List<Row> rows, List<Row> others) {
        boolean same = rows.size() == others.size();
        for (int i = 0; same && i < rows.size(); i++) {
            same = rows.get(i).same(others.get(i));
        }
        return same;
    }

    private static Map<String, List<String>> without(DrawingRequest request, ReviewResult result) {
        Map<String, List<String>> without = new LinkedHashMap<>();
        List<Bay> bays = request.document().bays();
        for (int i = 0; i < bays.size(); i++) {
            BayResult bay = result.bays().get(i);
            if (!bays.get(i).elevation().equals(request.elevation())) {
                continue;
            }
            for (ReviewItem item : bay.items()) {
                if (hasNoPressure(item)) {
                    without.computeIfAbsent(bay.id(), id -> new ArrayList<>()).add(item.id());
                }
            }
        }
        return without;
    }

    private static boolean hasNoPressure(ReviewItem item) {
        ReviewItem.Wind wind = item.wind();
        return wind != null
                ? wind.positive() == null || wind.negative() == null
                : item.findings().stream().anyMatch(said -> said.code().equals(NOT_COVERED));
    }

    /** The rows of all bands, from the top of the wall down. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int i = bands.size() - 1; i >= 0; i--) {
            rows.addAll(bands.get(i).rows());
        }
        return rows;
    }

    /** Names of the zones on this elevation. */
    List<String> shown() {
        return kinds.stream()
                .filter(kind -> wall.zones().stream().anyMatch(zone -> kind.equals(zone.zone())))
                .toList();
    }

    /** The pattern of a zone. */
    Hatch hatch(String zone) {
        return Hatch.of(kinds.indexOf(zone));
    }

    double width() {
        return wall.width().si();
    }

    double base() {
        return wall.base().si();
    }

    double top() {
        return wall.top().si();
    }

    /** Level from which the wall is drawn: the ground, or a base that is far above it. */
    double foot() {
        return base() > top() - base() ? base() : 0;
    }
}
