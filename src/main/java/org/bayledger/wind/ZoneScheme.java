package org.bayledger.wind;

import java.util.List;

/** How a standard divides a wall into zones from an outside corner of the building inward. */
public enum ZoneScheme {
    /** ASCE/SEI 7: zone 5 of width a at outside corners, zone 4 beyond (from memory). */
    ASCE("5", "4"),
    /** EN 1991-1-4 Fig. 7.5: A to e/5, B to e, C beyond (from memory). */
    EN("A", "B", "C");

    /** Where zone B ends, in widths of zone A: e over e/5. */
    private static final double B_ENDS_AT = 5;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> inward;

    ZoneScheme(String... inward) {
        this.inward = List.of(inward);
    }

    /** The scheme of a standard. */
    public static ZoneScheme of(WindStandard standard) {
        return standard.isAsce() ? ASCE : EN;
    }

    /** Names of the zones from a corner inward. */
    public List<String> inward() {
        return inward;
    }

    /** Name of the zone away from all corners. */
    public String middle() {
        return inward.get(inward.size() - 1);
    }

    /**
     * The zones with their widths.
     *
     * @param outermost width of the outermost zone, m: a of ASCE/SEI 7, e/5 of EN 1991-1-4
     */
    public CornerZones cornerZones(double outermost) {
        return new CornerZones(
                this == ASCE
                        ? List.of(outermost, Double.POSITIVE_INFINITY)
                        : List.of(outermost, B_ENDS_AT * outermost, Double.POSITIVE_INFINITY),
                inward);
    }

    /**
     * Area for which a member's pressure is read, m2: ASCE/SEI 7, span times the larger of the
     * tributary width and a third of the span (26.2, from memory); EN 1991-1-4, the loaded area.
     *
     * @param span span of the member, m
     * @param tributaryWidth width of wall that loads it, m
     */
    public double effectiveWindArea(double span, double tributaryWidth) {
        return span * (this == ASCE ? Math.max(tributaryWidth, span / 3) : tributaryWidth);
    }
}
