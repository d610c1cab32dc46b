package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.mechanics.PlaneArea;
import org.bayledger.mechanics.PolygonRing;

/**
 * Properties of a section computed from its outline; x along the wall, y along the depth. Wind
 * bends it about x, weight about y, each through the centroid.
 *
 * <p>A section without an axis of symmetry bends askew where nothing holds it: its deflection in
 * the direction of the load is that of Ix - Ixy2/Iy and its stress that of unsymmetrical bending,
 * (Iy y - Ixy x) M / (Ix Iy - Ixy2) (Timoshenko, Strength of Materials). The lesser of held and
 * free counts. Torsion and warping constants do not follow from an outline and are not computed.
 *
 * @param area area and moments
 * @param inertia second moment of area under wind, m4
 * @param modulus section modulus under wind, m3, the lesser of both fibres
 * @param deadInertia second moment of area under weight, m4
 * @param deadModulus section modulus under weight, m3
 */
record SectionOutline(
        PlaneArea area, double inertia, double modulus, double deadInertia, double deadModulus) {

    /** Share of sqrt(Ix Iy) below which a product of inertia is rounding. */
    private static final double ASKEW = 1e-6;

    /** Share of the square of the outline's size below which an area is none. */
    private static final double NO_AREA = 1e-9;

    static SectionOutline of(List<OutlineRing> outline) {
        PolygonRing outer =
                outline.stream().filter(ring -> !ring.isHole()).findFirst().orElseThrow().ring();
        List<PolygonRing> holes =
                outline.stream().filter(OutlineRing::isHole).map(OutlineRing::ring).toList();
        PlaneArea area = PlaneArea.of(outer, holes);
        PlaneArea turned = area.transposed();
        PolygonRing turnedOuter = outer.transposed();
        return new SectionOutline(
                area,
                inertia(area),
                modulus(area, outer),
                inertia(turned),
                modulus(turned, turnedOuter));
    }

    /** Whether wind makes the section move sideways as well. */
    boolean askew() {
        return Math.abs(area.product()) > ASKEW * Math.sqrt(area.aboutX() * area.aboutY());
    }

    private static double inertia(PlaneArea area) {
        return area.aboutX() - area.product() * area.product() / area.aboutY();
    }

    private static double modulus(PlaneArea area, PolygonRing outer) {
        double held = area.aboutX() / area.greatestY(outer);
        double free = 1 / area.stressPerMomentAboutX(outer);
        return Math.min(held, free);
    }

    /** Refuses lines that bound no section, with pointers below the outline. */
    static void require(List<OutlineRing> outline, Faults faults) {
        int before = faults.size();
        List<PolygonRing> rings = new ArrayList<>();
        int outer = -1;
        for (int i = 0; i < outline.size(); i++) {
            PolygonRing ring = outline.get(i).ring();
            rings.add(ring);
            requireSimple(outline.get(i), ring, "/outline/" + i, faults);
            if (!outline.get(i).isHole()) {
                faults.require(
                        outer < 0,
                        "/outline/" + i,
                        "is a second outer boundary; the metal of a section is one piece. Give the"
                                + " halves of a split section in halves, the parts of a thermally"
                                + " broken one in thermalBreak, and mark a hollow with hole");
                outer = i;
            }
        }
        faults.require(
                outer >= 0, "/outline", "has no outer boundary: one ring must not be a hole");
        if (faults.size() > before) {
            return;
        }
        for (int i = 0; i < rings.size(); i++) {
            if (i == outer) {
                continue;
            }
            faults.require(
                    !rings.get(outer).meets(rings.get(i)) && rings.get(outer).holds(rings.get(i)),
                    "/outline/" + i,
                    "is a hole that does not lie inside the outer boundary");
            for (int j = 0; j < i; j++) {
                boolean apart =
                        j == outer
                                || (!rings.get(i).meets(rings.get(j))
                                        && !rings.get(i).holds(rings.get(j))
                                        && !rings.get(j).holds(rings.get(i)));
                faults.require(
                        apart, "/outline/" + i, "is a hole that overlaps the hole /outline/" + j);
            }
        }
    }

    private static void requireSimple(
            OutlineRing given, PolygonRing ring, String pointer, Faults faults) {
        double size = 0;
        for (OutlinePoint point : given.points()) {
            OutlinePoint first = given.points().get(0);
            size = Math.max(size, Math.hypot(point.x() - first.x(), point.y() - first.y()));
        }
        if (ring.area() <= NO_AREA * size * size) {
            faults.outOfRange(pointer, "encloses no area");
            return;
        }
        int n = given.points().size();
        for (int i = 0; i < n; i++) {
            if (given.points().get(i).equals(given.points().get((i + 1) % n))) {
                faults.outOfRange(
                        pointer + "/points/" + (i + 1) % n,
                        "repeats the corner before it; the last corner is joined to the first"
                                + " without repeating it");
                return;
            }
        }
        int crossing = ring.firstCrossingEdge();
        faults.require(
                crossing < 0,
                pointer + "/points/" + Math.max(0, crossing),
                "begins an edge that crosses or touches another edge of the same ring");
    }
}
