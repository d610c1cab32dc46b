package org.bayledger.review;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * For each kind of component of an elevation the smallest effective wind area and the greatest
 * height, so that no component of the kind sees more in a zone.
 */
final class WindExtremes {

    /** Smallest area, m2, and greatest height, m, of a kind of component. */
    record Extremes(double area, double height) {

        Extremes and(Extremes other) {
            return new Extremes(Math.min(area, other.area), Math.max(height, other.height));
        }
    }

    private final Map<String, Map<ReviewResult.Component, Extremes>> seen = new HashMap<>();
    private final Map<ReviewResult.Component, Extremes> ofAll =
            new EnumMap<>(ReviewResult.Component.class);
    private final double smallestLite;

    WindExtremes(ReviewDocument document, List<BaySummary> bays) {
        double lite = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = document.bays().get(i);
            lite = Math.min(lite, bay.smallestLite());
            bays.get(i)
                    .extremes()
                    .forEach(
                            (kind, own) -> {
                                seen.computeIfAbsent(
                                                bay.elevation(),
                                                name -> new EnumMap<>(ReviewResult.Component.class))
                                        .merge(kind, own, Extremes::and);
                                ofAll.merge(kind, own, Extremes::and);
                            });
        }
        smallestLite = lite;
    }

    /** Adds an item that is a component under wind. */
    static void add(Map<ReviewResult.Component, Extremes> extremes, ReviewItem item) {
        ReviewResult.Component kind = kind(item);
        if (kind != null && item.wind() != null) {
            extremes.merge(
                    kind,
                    new Extremes(item.wind().effectiveWindArea().si(), item.wind().height().si()),
                    Extremes::and);
        }
    }

    /** Those of the components that an elevation has; none where it has none. */
    Map<ReviewResult.Component, Extremes> on(Elevation face) {
        return seen.getOrDefault(face.id(), Map.of());
    }

    /** Those of the whole document's components, as if they stood at an elevation's top. */
    Map<ReviewResult.Component, Extremes> atTop(Elevation face) {
        Map<ReviewResult.Component, Extremes> kinds = new EnumMap<>(ReviewResult.Component.class);
        ofAll.forEach(
                (kind, extremes) -> kinds.put(kind, new Extremes(extremes.area(), face.top())));
        return kinds;
    }

    /**
     * What an elevation's pressures are called out for: its own components, else those of the
     * document, and where none of these saw wind the smallest lite.
     */
    Map<ReviewResult.Component, Extremes> calledOut(Elevation face) {
        Map<ReviewResult.Component, Extremes> kinds = on(face).isEmpty() ? atTop(face) : on(face);
        return kinds.isEmpty()
                ? Map.of(ReviewResult.Component.LITE, new Extremes(smallestLite, face.top()))
                : kinds;
    }

    private static ReviewResult.@Nullable Component kind(ReviewItem item) {
        return switch (item.check()) {
            case "glass" -> ReviewResult.Component.LITE;
            case "framing" ->
                    item.id().contains("/mullion/")
                            ? ReviewResult.Component.MULLION
                            : ReviewResult.Component.HORIZONTAL;
            case "anchorage-movement" -> ReviewResult.Component.ANCHOR;
            default -> null;
        };
    }
}
