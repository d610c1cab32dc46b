package org.bayledger.wind;

import java.util.List;
import org.bayledger.check.Trace;

/** The rules of one standard for the walls of one building. */
sealed interface WallRules permits AsceWalls, EnWalls {

    /** A zone at the corners of an elevation and the distance from the corner at which it ends. */
    record EndZone(String zone, double endsAt) {}

    /** What a component's height says of a parapet. */
    enum Parapet {
        /** It stands below one, or there is none. */
        NONE,
        /** It stands above the roof, and no parapet that reaches so high was given. */
        NOT_GIVEN,
        /** It stands in a parapet whose load cases these rules do not cover. */
        NOT_COVERED,
        /** It stands in a parapet, and its pressures are those of the parapet. */
        COVERED
    }

    /** What a component's height, m, says of a parapet. */
    Parapet parapet(double height);

    /** Zones from a corner inward, each but the last with its end, m. */
    List<EndZone> endZones();

    /** Velocity pressure at the roof, Pa. */
    double velocityPressureAtRoof();

    /** Effective wind area, m2, of a member of a span and a tributary width, m. */
    double effectiveWindArea(double span, double tributaryWidth);

    /** Pressure in a zone for an effective wind area, m2, and a height of the top, m. */
    ZonePressure pressure(String zone, double area, double height);

    /** The steps that hold for the whole building. */
    void explain(Trace trace);

    /** The steps of one component. */
    void explain(Trace trace, String what, List<String> zones, double area, double height);
}
