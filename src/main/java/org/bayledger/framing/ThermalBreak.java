package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Two metal parts of a section, joined by a thermal break that yields in shear, as they bend under
 * wind.
 *
 * @param outerArea area of the outer metal part, m2
 * @param outerSecondMomentOfArea second moment of area of that part about its own centroid, m4
 * @param outerSectionModulus least section modulus of that part about its own centroid, m3
 * @param innerArea area of the inner metal part, m2
 * @param innerSecondMomentOfArea second moment of area of that part about its own centroid, m4
 * @param innerSectionModulus least section modulus of that part about its own centroid, m3
 * @param centroidDistance distance between the centroids of both parts, m
 * @param shearStiffness shear force per length over slip of the break, c of EN 14024, Pa (N/mm2 is
 *     MPa)
 * @param allowableShearFlow allowable shear per length of the break, N/m; without it the shear in
 *     the break is not checked
 */
public record ThermalBreak(
        @Measured(value = Dimension.SECTION_AREA, sign = Sign.POSITIVE) double outerArea,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                double outerSecondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                double outerSectionModulus,
        @Measured(value = Dimension.SECTION_AREA, sign = Sign.POSITIVE) double innerArea,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                double innerSecondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                double innerSectionModulus,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 2) double centroidDistance,
        @Measured(value = Dimension.STRESS, sign = Sign.NOT_NEGATIVE) double shearStiffness,
        @Measured(value = Dimension.LINE_LOAD, sign = Sign.POSITIVE)
                @Nullable Double allowableShearFlow) {

    /**
     * How both parts work together.
     *
     * @param inertia effective second moment of area, m4
     * @param modulus moment over greatest stress, m3
     * @param shearFlowPerShear shear per length of the break over shear force, 1/m
     */
    record Composite(double inertia, double modulus, double shearFlowPerShear) {}

    /**
     * On one span between two ends that turn freely, under a load spread over it: I,ef = I,s (1 -
     * nu) / (1 - nu beta), beta = lambda2 / (pi2 + lambda2), lambda2 = a2 c L2 / (E I,s nu (1 -
     * nu)), nu the share of I,s that the distance of the parts brings (EN 14024:2004, annex C; from
     * memory). Each part bends with the curvature of the whole and carries the force that the break
     * brings in; both are added in its farthest fibre.
     *
     * @param span L, m
     * @param elasticModulus E, Pa
     */
    Composite onOneSpan(double span, double elasticModulus) {
        double nu = joined() / rigid();
        double lambda2 =
                centroidDistance
                        * centroidDistance
                        * shearStiffness
                        * span
                        * span
                        / (elasticModulus * rigid() * nu * (1 - nu));
        double beta = lambda2 / (Math.PI * Math.PI + lambda2);
        double effective = rigid() * (1 - nu) / (1 - nu * beta);
        return composite(effective, (1 - apart() / effective) / centroidDistance);
    }

    /**
     * Bounds for any other member: stiffness and stress as if the parts were not joined, shear in
     * the break as if they were joined rigidly.
     */
    Composite bounds() {
        return composite(apart(), (1 - apart() / rigid()) / centroidDistance);
    }

    private Composite composite(double effective, double shearFlowPerShear) {
        double force = (1 - apart() / effective) / centroidDistance;
        double outer =
                force / outerArea + outerSecondMomentOfArea / effective / outerSectionModulus;
        double inner =
                force / innerArea + innerSecondMomentOfArea / effective / innerSectionModulus;
        return new Composite(effective, 1 / Math.max(outer, inner), shearFlowPerShear);
    }

    private double apart() {
        return outerSecondMomentOfArea + innerSecondMomentOfArea;
    }

    private double joined() {
        return outerArea
                * innerArea
                / (outerArea + innerArea)
                * centroidDistance
                * centroidDistance;
    }

    private double rigid() {
        return apart() + joined();
    }
}
