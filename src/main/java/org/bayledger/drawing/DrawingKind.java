package org.bayledger.drawing;

/** What a drawing shows. */
public enum DrawingKind {
    /** An elevation with its wind zones, bays and design pressures of both signs. */
    WIND_ZONES,
    /**
     * A bay with the setting blocks of its lites, dimensioned, with the notes for the shop
     * drawings.
     */
    SETTING_BLOCKS,
    /** A bay's frame with its joints by type and step, and what they are sealed before. */
    INTERNAL_SEALS,
    /**
     * A horizontal of a bay as it bends under its lite, for each place that the blocks may take.
     */
    DEFLECTED_HORIZONTAL,
    /** The greatest spans of a section under the pressures and spacings of an elevation. */
    SPAN_CHART;

    /** Whether it is of one bay, which then has to be named. */
    boolean ofBay() {
        return this == SETTING_BLOCKS || this == INTERNAL_SEALS || this == DEFLECTED_HORIZONTAL;
    }
}
