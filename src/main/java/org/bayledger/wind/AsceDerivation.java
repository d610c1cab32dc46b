package org.bayledger.wind;

import java.util.List;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums of {@link AsceWalls} step by step, so that a person can redo them. */
final class AsceDerivation {

    private final AsceWalls walls;
    private final Site site;
    private final AsceEdition edition;
    private final Trace trace;

    AsceDerivation(AsceWalls walls, Trace trace) {
        this.walls = walls;
        this.trace = trace;
        site = walls.site;
        edition = walls.edition;
    }

    private String wallSource() {
        return edition.wallSource(walls.low);
    }

    private void input(String symbol, String meaning, Dimension dimension, double si) {
        trace.step(symbol, meaning, dimension, si, "input", "input");
    }

    void ofBuilding() {
        walls.velocity.explain(trace);
        trace.step(
                "GCpi",
                "internal pressure coefficient, either sign",
                Dimension.NONE,
                walls.internal,
                "+-, of a building " + site.enclosureClassification(),
                edition.internalSource());
        input("h", "mean roof height", Dimension.DISTANCE, site.meanRoofHeight());
        if (site.roofSlope() != null) {
            input("theta", "slope of the roof", Dimension.ANGLE, site.roofSlope());
        }
        walls.velocity.explainAt(trace, "Kh", "qh", "", "h", site.meanRoofHeight());
        input(
                "B",
                "least horizontal dimension",
                Dimension.DISTANCE,
                site.leastHorizontalDimension());
        trace.step(
                "a",
                "width of the end zones",
                Dimension.DISTANCE,
                walls.zoneWidth(),
                walls.low
                        ? "min(0.1 B, 0.4 h), at least 0.04 B and 3 ft; wide low buildings of 7-16"
                                + " and 7-22 at most 0.8 h"
                        : "0.1 B, at least 3 ft",
                wallSource());
        if (site.parapetHeight() != null) {
            input("hp", "height of the parapet", Dimension.DISTANCE, site.parapetHeight());
        }
        Double factor = site.serviceabilityFactor();
        Serviceability choice = site.serviceability();
        if (factor != null && choice != null) {
            Double speed = choice.windSpeed();
            if (speed != null) {
                input("Vs", "serviceability wind speed", Dimension.SPEED, speed);
            }
            trace.step(
                    "f,s",
                    "share of the strength-level pressure for deflection limits only",
                    Dimension.NONE,
                    factor,
                    speed == null ? "input" : "(Vs/V)^2",
                    "the caller's choice: " + choice.reason());
        }
    }

    void ofComponent(String what, List<String> zones, double area, double height) {
        String prefix = what + ": ";
        boolean above = walls.aboveRoof(height);
        trace.step(
                "A",
                prefix + "effective wind area",
                Dimension.AREA,
                area,
                "span times max(tributary width, span / 3), or as given",
                edition.cite("26.2"));
        double at = walls.shownHeight(height, area);
        if (!walls.low || above) {
            input("z", prefix + "height of its top", Dimension.DISTANCE, height);
            boolean top = at == height;
            if (!top) {
                trace.step(
                        "z,foot",
                        prefix + "its foot, where the wind is stronger on this hill",
                        Dimension.DISTANCE,
                        at,
                        "z - sqrt(3 A), not under 0",
                        "the span is at most sqrt(3 A), " + edition.cite("26.2"));
            }
            walls.velocity.explainAt(trace, "Kz", "q", prefix, top ? "its top" : "its foot", at);
        }
        wall(prefix, zones, area, height, above);
        if (walls.inParapet(height)) {
            parapet(prefix, zones, area, height);
        }
    }

    private static String line(AreaLine line, double area) {
        return line.words("ft2", Imperial.SQUARE_FOOT) + line.remark(area);
    }

    private String limits() {
        return ", at least 16 psf"
                + (site.basis() == LoadBasis.ALLOWABLE_STRESS ? "; then 0.6 W" : "");
    }

    private String kd() {
        return edition.directionalityInVelocityPressure() ? "" : "Kd ";
    }

    private String pressureSource(String source) {
        return source + "; 30.2.2; 2.4.1";
    }

    private void wall(
            String prefix, List<String> zones, double area, double height, boolean above) {
        String source = wallSource();
        String reduction =
                walls.figures.reduced() ? ", 10 % less for a roof slope of at most 10 degrees" : "";
        String outside = above && walls.away(height) > walls.atRoof ? "q" : "qh";
        boolean parapet = walls.inParapet(height);
        trace.step(
                "GCp+",
                prefix + "external coefficient toward the wall",
                Dimension.NONE,
                walls.figures.toward(area),
                line(walls.figures.towardLine(), area) + reduction,
                source);
        if (!parapet) {
            trace.step(
                    "p+",
                    prefix + "pressure toward the wall, " + site.basis(),
                    Dimension.PRESSURE,
                    walls.pressure(zones.get(0), area, height).positive(),
                    kd()
                            + (walls.low || above ? outside + " (GCp + GCpi)" : "(q GCp + qh GCpi)")
                            + limits(),
                    pressureSource(source));
        }
        for (String zone : zones) {
            trace.step(
                    "GCp-",
                    prefix + "external coefficient in zone " + zone,
                    Dimension.NONE,
                    walls.figures.away(zone, area),
                    line(walls.figures.awayLine(zone), area) + reduction,
                    source);
            if (!parapet) {
                trace.step(
                        "p-",
                        prefix
                                + "pressure away from the wall in zone "
                                + zone
                                + ", "
                                + site.basis(),
                        Dimension.PRESSURE,
                        walls.pressure(zone, area, height).negative(),
                        kd() + outside + " (GCp - GCpi)" + limits(),
                        pressureSource(source));
            }
        }
    }

    private void parapet(String prefix, List<String> zones, double area, double height) {
        String source = edition.parapetSource();
        double top =
                site.meanRoofHeight() + (site.parapetHeight() == null ? 0 : site.parapetHeight());
        walls.velocity.explainAt(trace, "Kp", "qp", prefix, "the top of the parapet", top);
        AreaLine roof = walls.figures.roofLine();
        trace.step(
                "GCp,r",
                prefix + "external coefficient of the roof behind the parapet",
                Dimension.NONE,
                roof.at(area),
                line(roof, area) + ", of roof zone 3, or 2 from a parapet of 3 ft",
                source);
        trace.step(
                "p+",
                prefix + "pressure toward the wall on the parapet, " + site.basis(),
                Dimension.PRESSURE,
                walls.pressure(zones.get(0), area, height).positive(),
                kd() + "qp (GCp+ - GCp,r), not under the wall's own" + limits(),
                pressureSource(source));
        for (String zone : zones) {
            trace.step(
                    "p-",
                    prefix
                            + "pressure away from the wall on the parapet in zone "
                            + zone
                            + ", "
                            + site.basis(),
                    Dimension.PRESSURE,
                    walls.pressure(zone, area, height).negative(),
                    kd() + "qp (GCp- - GCp+), not under the wall's own" + limits(),
                    pressureSource(source));
        }
    }
}
