package org.bayledger.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.ZonePressure;
import org.bayledger.wind.ZoneStrip;

/**
 * The schedule of wind pressures: both signs for every zone of every elevation, whether a bay
 * stands there or not.
 *
 * <p>For each kind of component a row takes the smallest effective wind area and the greatest
 * height at which the elevation has one, so that no component of the kind sees more in that zone.
 * An elevation without any takes the smallest areas of the whole document, at its top.
 */
final class WindSchedule {

    /** Smallest area, m2, and greatest height, m, of a kind of component on an elevation. */
    private record Extremes(double area, double height) {

        Extremes and(double otherArea, double otherHeight) {
            return new Extremes(Math.min(area, otherArea), Math.max(height, otherHeight));
        }
    }

    private WindSchedule() {}

    static List<ReviewResult.WindRow> of(ReviewContext context, List<BayResult> results) {
        SitePressures pressures = context.pressures;
        List<ReviewResult.WindRow> rows = new ArrayList<>();
        if (pressures == null) {
            return rows;
        }
        Map<String, EnumMap<ReviewResult.Component, Extremes>> seen = seen(context, results);
        for (Elevation face : context.document.elevations()) {
            Map<ReviewResult.Component, Extremes> kinds = seen.get(face.id());
            if (kinds == null) {
                kinds = ofAll(pressures, face, seen.values());
            }
            Set<String> zones = new LinkedHashSet<>();
            context.strips(face.id()).stream().map(ZoneStrip::zone).sorted().forEach(zones::add);
            for (String zone : zones) {
                kinds.forEach(
                        (kind, extremes) ->
                                rows.add(row(context, pressures, face, zone, kind, extremes)));
            }
        }
        return rows;
    }

    /**
     * The smallest areas of all, at an elevation's top; nothing where the standard ends below it.
     */
    private static EnumMap<ReviewResult.Component, Extremes> ofAll(
            SitePressures pressures,
            Elevation face,
            Collection<EnumMap<ReviewResult.Component, Extremes>> seen) {
        EnumMap<ReviewResult.Component, Extremes> kinds =
                new EnumMap<>(ReviewResult.Component.class);
        double top = face.base() + face.height();
        if (top > pressures.greatestHeight()) {
            return kinds;
        }
        for (EnumMap<ReviewResult.Component, Extremes> other : seen) {
            other.forEach(
                    (kind, extremes) ->
                            kinds.merge(
                                    kind,
                                    new Extremes(extremes.area(), top),
                                    (old, more) -> old.and(more.area(), top)));
        }
        return kinds;
    }

    private static ReviewResult.WindRow row(
            ReviewContext context,
            SitePressures pressures,
            Elevation face,
            String zone,
            ReviewResult.Component kind,
            Extremes extremes) {
        ZonePressure pressure = pressures.pressure(zone, extremes.area(), extremes.height());
        return new ReviewResult.WindRow(
                face.id(),
                zone,
                kind,
                context.strips(face.id()).stream()
                        .filter(strip -> strip.zone().equals(zone))
                        .map(
                                strip ->
                                        new ReviewResult.Strip(
                                                Quantity.of(Dimension.DISTANCE, strip.from()),
                                                Quantity.of(Dimension.DISTANCE, strip.to())))
                        .toList(),
                Quantity.of(Dimension.AREA, extremes.area()),
                Quantity.of(Dimension.DISTANCE, extremes.height()),
                Quantity.of(Dimension.PRESSURE, pressure.positive()),
                Quantity.of(Dimension.PRESSURE, pressure.negative()),
                pressure.basis());
    }

    private static Map<String, EnumMap<ReviewResult.Component, Extremes>> seen(
            ReviewContext context, List<BayResult> results) {
        Map<String, EnumMap<ReviewResult.Component, Extremes>> seen = new java.util.HashMap<>();
        for (int i = 0; i < results.size(); i++) {
            String face = context.document.bays().get(i).elevation();
            for (ReviewItem item : results.get(i).items()) {
                ReviewResult.Component kind = kind(item);
                if (kind == null || item.wind() == null) {
                    continue;
                }
                double area = item.wind().effectiveWindArea().si();
                double height = item.wind().height().si();
                seen.computeIfAbsent(face, name -> new EnumMap<>(ReviewResult.Component.class))
                        .merge(
                                kind,
                                new Extremes(area, height),
                                (old, more) -> old.and(more.area(), more.height()));
            }
        }
        return seen;
    }

    private static ReviewResult.@org.jspecify.annotations.Nullable Component kind(ReviewItem item) {
        if (item.check().equals("glass")) {
            return ReviewResult.Component.LITE;
        }
        if (!item.check().equals("framing")) {
            return null;
        }
        return item.id().contains("/mullion/")
                ? ReviewResult.Component.MULLION
                : ReviewResult.Component.HORIZONTAL;
    }
}
