package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.junit.jupiter.api.Test;

/** Closed forms of handbooks; sizes in inches, which cancel. */
class SectionOutlineTest {

    private static OutlineRing ring(boolean hole, double... xy) {
        OutlinePoint[] points = new OutlinePoint[xy.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new OutlinePoint(xy[2 * i], xy[2 * i + 1]);
        }
        return new OutlineRing(Arrays.asList(points), hole);
    }

    private static OutlineRing box(boolean hole, double x, double y, double width, double depth) {
        return ring(hole, x, y, x + width, y, x + width, y + depth, x, y + depth);
    }

    /** b h^3 / 12 and b h^2 / 6, wherever the origin lies and in either sense of rotation. */
    @Test
    void rectangle() {
        SectionOutline outline = SectionOutline.of(List.of(box(false, 7, -3, 2, 5)));
        assertThat(outline.area().area()).isCloseTo(10, within(1e-12));
        assertThat(outline.area().centroidX()).isCloseTo(8, within(1e-12));
        assertThat(outline.area().centroidY()).isCloseTo(-0.5, within(1e-12));
        assertThat(outline.inertia()).isCloseTo(2 * 125.0 / 12, within(1e-11));
        assertThat(outline.modulus()).isCloseTo(2 * 25.0 / 6, within(1e-11));
        assertThat(outline.deadInertia()).isCloseTo(5 * 8.0 / 12, within(1e-11));
        assertThat(outline.deadModulus()).isCloseTo(5 * 4.0 / 6, within(1e-11));
        SectionOutline turned = SectionOutline.of(List.of(ring(false, 7, -3, 7, 2, 9, 2, 9, -3)));
        assertThat(turned.inertia()).isCloseTo(outline.inertia(), within(1e-11));
    }

    /** Tube 2.5 x 6 with walls of 0.125: (B H^3 - b h^3) / 12. */
    @Test
    void tube() {
        SectionOutline tube =
                SectionOutline.of(
                        List.of(box(false, 0, 0, 2.5, 6), box(true, 0.125, 0.125, 2.25, 5.75)));
        double inertia = (2.5 * 216 - 2.25 * Math.pow(5.75, 3)) / 12;
        assertThat(tube.inertia()).isCloseTo(inertia, within(1e-9));
        assertThat(tube.modulus()).isCloseTo(inertia / 3, within(1e-9));
        assertThat(tube.askew()).isFalse();
    }

    /**
     * Box 4 x 6 with a hole of 1 x 2 off its middle, run round in either sense: centroid and second
     * moments of the box less those of the hole, each moved by its distance (Steiner).
     */
    @Test
    void holeOffTheMiddleMovesTheCentroid() {
        double area = 24 - 2;
        double x = (24 * 2 - 2 * 3) / area;
        double y = (24 * 3 - 2 * 4.5) / area;
        double inertia = 72 + 24 * Math.pow(3 - y, 2) - (8.0 / 12 + 2 * Math.pow(4.5 - y, 2));
        double product = 24 * (2 - x) * (3 - y) - 2 * (3 - x) * (4.5 - y);
        OutlineRing hole = box(true, 2.5, 3.5, 1, 2);
        OutlineRing turned = ring(true, 2.5, 3.5, 2.5, 5.5, 3.5, 5.5, 3.5, 3.5);
        for (OutlineRing each : List.of(hole, turned)) {
            SectionOutline outline = SectionOutline.of(List.of(box(false, 0, 0, 4, 6), each));
            assertThat(outline.area().area()).isCloseTo(area, within(1e-12));
            assertThat(outline.area().centroidX()).isCloseTo(x, within(1e-12));
            assertThat(outline.area().centroidY()).isCloseTo(y, within(1e-12));
            assertThat(outline.area().aboutX()).isCloseTo(inertia, within(1e-10));
            assertThat(outline.area().product()).isCloseTo(product, within(1e-10));
        }
    }

    /** I of two flanges 4 x 0.5 and a web 5 x 0.25: (B H^3 - (B - t) h^3) / 12; Iy likewise. */
    @Test
    void doublySymmetricI() {
        SectionOutline i =
                SectionOutline.of(
                        List.of(
                                ring(
                                        false, -2, 0, 2, 0, 2, 0.5, 0.125, 0.5, 0.125, 5.5, 2, 5.5,
                                        2, 6, -2, 6, -2, 5.5, -0.125, 5.5, -0.125, 0.5, -2, 0.5)));
        assertThat(i.inertia()).isCloseTo((4 * 216 - 3.75 * 125) / 12, within(1e-9));
        assertThat(i.deadInertia())
                .isCloseTo((2 * 0.5 * 64 + 5 * Math.pow(0.25, 3)) / 12, within(1e-9));
    }

    /**
     * Angle 4 x 4 x 1/2. AISC manual, L4x4x1/2 with its fillets: A 3.75, x 1.18, Ix 5.52, rz 0.776
     * in. About an axis parallel to a leg, Ix = (I1 + I2) / 2 and |Ixy| = (I1 - I2) / 2.
     */
    @Test
    void equalAngleBendsAskew() {
        SectionOutline angle =
                SectionOutline.of(List.of(ring(false, 0, 0, 4, 0, 4, 0.5, 0.5, 0.5, 0.5, 4, 0, 4)));
        assertThat(angle.area().area()).isCloseTo(3.75, within(1e-12));
        assertThat(angle.area().centroidX()).isCloseTo(1.18, within(0.005));
        assertThat(angle.area().aboutX()).isCloseTo(5.52, Percentage.withPercentage(1));
        double least = angle.area().aboutX() - Math.abs(angle.area().product());
        assertThat(least).isCloseTo(3.75 * 0.776 * 0.776, Percentage.withPercentage(2));
        assertThat(angle.askew()).isTrue();
        double great = angle.area().aboutX() + Math.abs(angle.area().product());
        // free bending under a load along y: 1/I = cos2/I1 + sin2/I2 with axes at 45 degrees
        assertThat(angle.inertia()).isCloseTo(1 / (0.5 / great + 0.5 / least), within(1e-9));
        // free bending: sigma = M r (s1 / J1 + s2 / J2) on principal axes at 45 degrees, r = cos 45
        double one = angle.area().aboutX() + angle.area().product();
        double other = angle.area().aboutX() - angle.area().product();
        double c = angle.area().centroidX();
        double most = 0;
        double[][] corners = {{0, 0}, {4, 0}, {4, 0.5}, {0.5, 0.5}, {0.5, 4}, {0, 4}};
        for (double[] corner : corners) {
            double x = corner[0] - c;
            double y = corner[1] - c;
            most = Math.max(most, Math.abs((x + y) / 2 / one + (y - x) / 2 / other));
        }
        double held = angle.area().aboutX() / (4 - c);
        assertThat(1 / most).isLessThan(held);
        assertThat(angle.modulus()).isCloseTo(1 / most, within(1e-9));
    }

    @Test
    void linesThatBoundNoSectionAreRefusedWithTheirPlace() {
        refused("/outline/0/points/0", ring(false, 0, 0, 2, 2.5, 2, 0, 0, 2));
        refused("/outline/0", ring(false, 0, 0, 1, 0, 2, 0));
        refused("/outline/1", box(false, 0, 0, 2, 2), box(true, 1, 1, 2, 0.5));
        refused("/outline/1", box(false, 0, 0, 2, 2), box(true, 3, 3, 1, 1));
        refused("/outline/1", box(false, 0, 0, 2, 2), box(false, 3, 3, 1, 1));
        refused("/outline", box(true, 0, 0, 2, 2));
        refused(
                "/outline/2",
                box(false, 0, 0, 4, 4),
                box(true, 1, 1, 2, 2),
                box(true, 1.5, 1.5, 0.5, 0.5));
        refused("/outline/0/points/2", ring(false, 0, 0, 2, 0, 2, 0, 2, 2));
    }

    private static void refused(String pointer, OutlineRing... rings) {
        assertThatThrownBy(
                        () ->
                                new Section(
                                        null,
                                        7e10,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        List.of(rings),
                                        null,
                                        null,
                                        null,
                                        null,
                                        null))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isFalse();
                            assertThat(e.faults()).extracting(Fault::pointer).contains(pointer);
                        });
    }
}
