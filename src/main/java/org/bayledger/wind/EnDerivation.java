package org.bayledger.wind;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums of {@link EnWalls} step by step, so that a person can redo them. */
final class EnDerivation {

    private static final String PRESSURE_CLAUSE = "EN 1991-1-4:2005, Table 7.1 (from memory)";
    private static final String PARAPET_CLAUSE =
            "EN 1991-1-4:2005, 7.4.1 and Table 7.9 (from memory)";

    private final EnWalls walls;
    private final Site site;
    private final Trace trace;

    EnDerivation(EnWalls walls, Trace trace) {
        this.walls = walls;
        this.trace = trace;
        site = walls.site;
    }

    void ofBuilding() {
        walls.profile.explain(trace);
        if (site.parapetHeight() != null) {
            trace.step(
                    "hp",
                    "height of the parapet, the upper part of h",
                    Dimension.DISTANCE,
                    site.parapetHeight(),
                    "input",
                    "input");
        }
        trace.step(
                "d",
                "least horizontal dimension, taken as the depth",
                Dimension.DISTANCE,
                site.leastHorizontalDimension(),
                "input",
                "input");
        trace.step(
                "b",
                "greatest horizontal dimension, taken as the breadth",
                Dimension.DISTANCE,
                walls.breadth,
                "input",
                "input");
        trace.step(
                "h/d",
                "height over depth",
                Dimension.NONE,
                walls.slenderness(),
                "h over the least horizontal dimension",
                PRESSURE_CLAUSE);
        trace.step(
                "e",
                "measure of the end zones: A to e/5, B to e",
                Dimension.DISTANCE,
                walls.e,
                "min(b, 2 h)",
                "EN 1991-1-4:2005, Fig. 7.5 (from memory)");
        trace.step(
                "cpe,E",
                "external coefficient with wind from behind (zone E)",
                Dimension.NONE,
                walls.leeward,
                "-0.3 at h/d 0.25, -0.5 at 1, -0.7 at 5, straight between",
                PRESSURE_CLAUSE);
    }

    void ofComponent(String what, List<String> zones, double area, double height) {
        double ze = walls.referenceHeight(height);
        String beside = height > site.meanRoofHeight() ? "qp(ze)" : "qp(h)";
        trace.step(
                "A",
                what + ": loaded area",
                Dimension.AREA,
                area,
                "span times tributary width, or as given",
                "EN 1991-1-4:2005, 7.2.1 (from memory)");
        trace.step(
                "ze",
                what + ": reference height with wind onto the face",
                Dimension.DISTANCE,
                ze,
                "b up to b, h below the top, the component's top between and above the roof; h"
                        + " where h <= b",
                "EN 1991-1-4:2005, Fig. 7.4 (from memory)");
        walls.profile.explainAt(trace, "ze", what + ": ", ze);
        trace.step(
                "cpe,D",
                what + ": external coefficient with wind onto the face (zone D)",
                Dimension.NONE,
                walls.windward.at(area),
                walls.windward.words("m2", 1) + ", read on h/d" + walls.windward.remark(area),
                PRESSURE_CLAUSE);
        boolean parapet = walls.parapet(height) == WallRules.Parapet.COVERED;
        if (!parapet) {
            trace.step(
                    "w+",
                    what + ": pressure toward the wall, characteristic",
                    Dimension.PRESSURE,
                    walls.wallToward(area, height),
                    "qp(ze) cpe,D + 0.3 " + beside,
                    "EN 1991-1-4:2005, 5.2 and 7.2.9(6) (from memory)");
        }
        for (String zone : zones) {
            trace.step(
                    "cpe," + zone,
                    what + ": external coefficient in zone " + zone,
                    Dimension.NONE,
                    EnWalls.side(zone).at(area),
                    EnWalls.side(zone).words("m2", 1) + EnWalls.side(zone).remark(area),
                    PRESSURE_CLAUSE);
            if (parapet) {
                explainParapet(what, zone, area, height);
            } else {
                trace.step(
                        "w-",
                        what + ": pressure away from the wall in zone " + zone + ", characteristic",
                        Dimension.PRESSURE,
                        walls.wallAway(zone, area, height),
                        beside + " (min(cpe," + zone + "; cpe,E) - 0.2)",
                        "EN 1991-1-4:2005, 5.2 and 7.2.9(6) (from memory)");
            }
        }
    }

    private void explainParapet(String what, String zone, double area, double height) {
        ZonePressure pressure = walls.pressure(zone, area, height);
        trace.step(
                "cp,net",
                what + ": net coefficient of the parapet in zone " + zone + ", either sign",
                Dimension.NONE,
                walls.parapetCoefficient(zone),
                "solid, with return corners; 2.1 to 0.3 hp from the corner, 1.8 to 2 hp, 1.4 to 4"
                        + " hp, then 1.2",
                PARAPET_CLAUSE);
        trace.step(
                "w+",
                what + ": pressure toward the wall on the parapet in zone " + zone,
                Dimension.PRESSURE,
                pressure.positive(),
                "max(qp(h) cp,net, qp(ze) cpe,D + 0.3 qp(h)), characteristic",
                PARAPET_CLAUSE);
        trace.step(
                "w-",
                what + ": pressure away from the wall on the parapet in zone " + zone,
                Dimension.PRESSURE,
                pressure.negative(),
                "-max(qp(h) cp,net, qp(h) (0.2 - min(cpe," + zone + "; cpe,E))), characteristic",
                PARAPET_CLAUSE);
    }
}
