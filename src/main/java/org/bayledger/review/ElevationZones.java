package org.bayledger.review;

import java.util.List;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The wind zones of one elevation, to be drawn and to be read: where each zone lies and, for each
 * band of height, its pressures of both signs. Places are seen from outside, measured from the
 * elevation's left edge; levels are above the building datum.
 *
 * @param elevation name of the elevation
 * @param width its width
 * @param base level of its base
 * @param top level of its highest part's top
 * @param zoneWidth width of the outermost end zone; null where it is not known
 * @param profile its parts of different heights from left to right
 * @param edges outside and re-entrant corners, and free edges above a lower roof
 * @param zones rectangles that fill the profile without overlaps, each of one zone
 * @param bands bands of height from the base up
 * @param pressures design pressures for every band, every zone that exists in it and every kind of
 *     component, whether a bay stands there or not
 */
public record ElevationZones(
        String elevation,
        Quantity width,
        Quantity base,
        Quantity top,
        @Nullable Quantity zoneWidth,
        List<ProfilePart> profile,
        List<WallEdge> edges,
        List<ZoneRectangle> zones,
        List<HeightBand> bands,
        List<ReviewResult.WindRow> pressures) {

    public ElevationZones {
        profile = List.copyOf(profile);
        edges = List.copyOf(edges);
        zones = List.copyOf(zones);
        bands = List.copyOf(bands);
        pressures = List.copyOf(pressures);
    }

    /**
     * A part of the profile.
     *
     * @param from its left edge
     * @param to its right edge
     * @param top level of its top
     */
    public record ProfilePart(Quantity from, Quantity to, Quantity top) {}

    /**
     * A vertical edge of the wall.
     *
     * @param at where it stands
     * @param bottom level at which it begins
     * @param top level at which it ends
     * @param kind OUTSIDE for an outside corner, and for a free edge above a lower roof, which
     *     counts as one; REENTRANT where the walls fold inward
     */
    public record WallEdge(Quantity at, Quantity bottom, Quantity top, Corner.Kind kind) {}

    /**
     * A rectangle of one zone.
     *
     * @param from its left edge
     * @param to its right edge
     * @param bottom level of its lower edge
     * @param top level of its upper edge
     * @param zone zone of the standard; null where the width of the zones is not known, so that
     *     nobody can say which one it is
     */
    public record ZoneRectangle(
            Quantity from, Quantity to, Quantity bottom, Quantity top, @Nullable String zone) {}

    /**
     * A band of height.
     *
     * @param from level of its lower edge
     * @param to level of its upper edge
     */
    public record HeightBand(Quantity from, Quantity to) {}
}
