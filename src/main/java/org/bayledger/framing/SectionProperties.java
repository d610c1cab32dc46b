package org.bayledger.framing;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The properties of a section as a member of given supports works with it.
 *
 * @param inertia second moment of area under wind, m4
 * @param modulus section modulus under wind, m3, or null where it was not given
 * @param origin how both were found, for the trace
 * @param source where that comes from
 * @param composite how the parts of a thermally broken section work together, or null
 * @param outline properties of the outline, or null
 */
record SectionProperties(
        double inertia,
        @Nullable Double modulus,
        String origin,
        String source,
        ThermalBreak.@Nullable Composite composite,
        @Nullable SectionOutline outline) {

    /** Share of the length within which a support stands at an end. */
    private static final double AT_END = 1e-6;

    static SectionProperties of(
            Section section, double length, List<Double> supports, List<Double> hinges) {
        ThermalBreak parts = section.thermalBreak();
        List<SectionHalf> halves = section.halves();
        if (section.outline() != null) {
            SectionOutline outline = SectionOutline.of(section.outline());
            return new SectionProperties(
                    outline.inertia(),
                    outline.modulus(),
                    outline.askew() ? "from the outline, bent askew" : "from the outline",
                    "integrals over the polygon",
                    null,
                    outline);
        }
        if (halves != null) {
            // both bend alike: M_i = M I_i / I, and the half whose S_i / I_i is less yields first
            double sum = halves.stream().mapToDouble(SectionHalf::secondMomentOfArea).sum();
            double modulus =
                    halves.stream()
                            .mapToDouble(
                                    half -> half.sectionModulus() * sum / half.secondMomentOfArea())
                            .min()
                            .orElseThrow();
            return new SectionProperties(
                    sum, modulus, "sum of both halves, min(S_i I / I_i)", "statics", null, null);
        }
        if (parts != null) {
            boolean one = oneSpan(length, supports, hinges);
            ThermalBreak.Composite composite =
                    one ? parts.onOneSpan(length, section.modulusOfElasticity()) : parts.bounds();
            return new SectionProperties(
                    composite.inertia(),
                    composite.modulus(),
                    one
                            ? "I,s (1 - nu) / (1 - nu beta) of both parts"
                            : "both parts apart, a bound: the formula for parts joined in shear"
                                    + " holds for one span",
                    "EN 14024:2004, annex C (from memory)",
                    composite,
                    null);
        }
        Double given = section.secondMomentOfArea();
        return new SectionProperties(
                given == null ? 0 : given, section.sectionModulus(), "input", "input", null, null);
    }

    static SectionProperties of(FramingRequest request) {
        return of(request.section(), request.length(), request.supports(), request.splices());
    }

    private static boolean oneSpan(double length, List<Double> supports, List<Double> hinges) {
        return hinges.isEmpty()
                && supports.size() == 2
                && supports.get(0) <= AT_END * length
                && supports.get(1) >= (1 - AT_END) * length;
    }

    /**
     * The second moment of area about the axis of a request, m4.
     *
     * @param trace receives the steps
     * @param unknown receives what is not known of the section
     */
    double inertia(FramingRequest request, Trace trace, List<Finding> unknown) {
        Section section = request.section();
        Double dead = section.deadLoadInertia();
        double counts = inertia;
        if (request.axis() == Axis.DEAD) {
            if (dead == null) {
                unknown.add(
                        Finding.action(
                                "SECOND_MOMENT_OF_AREA_TAKEN_FOR_DEAD_LOAD",
                                "/section/deadLoadSecondMomentOfArea",
                                "No deadLoadSecondMomentOfArea was given: the deflection is that"
                                        + " with secondMomentOfArea, which holds for wind and may"
                                        + " be several times greater than that of bending parallel"
                                        + " to the wall."));
            } else {
                counts = dead;
            }
        }
        boolean input = request.axis() == Axis.DEAD && outline == null;
        trace.step(
                "I",
                "second moment of area",
                Dimension.SECOND_MOMENT_OF_AREA,
                counts,
                input ? "input" : origin,
                input ? "input" : source);
        boolean given = section.elasticModulus() != null;
        trace.step(
                "E",
                "modulus of elasticity",
                Dimension.STRESS,
                section.modulusOfElasticity(),
                given ? "input" : "that of the alloy",
                given ? "input" : "Aluminum Design Manual 2015, table A.3.1 (from memory)");
        boolean weighs = request.deadLoad() != null && !section.worksAsGiven(Axis.DEAD);
        if (!section.worksAsGiven(request.axis()) || weighs) {
            unknown.add(
                    Finding.action(
                            "COMPOSITE_ACTION_NOT_STATED",
                            "/section/compositeProperties",
                            "A thermally broken or split section works only partly as one. State"
                                    + " that the properties are those of the parts as they work"
                                    + " together, from test or calculation."));
        }
        return counts;
    }

    /** What was computed from the outline, or null. */
    FramingResult.@Nullable Computed computed() {
        if (outline == null) {
            return null;
        }
        Dimension second = Dimension.SECOND_MOMENT_OF_AREA;
        return new FramingResult.Computed(
                Quantity.of(Dimension.SECTION_AREA, outline.area().area()),
                Quantity.of(Dimension.LENGTH, outline.area().centroidX()),
                Quantity.of(Dimension.LENGTH, outline.area().centroidY()),
                Quantity.of(second, outline.area().aboutX()),
                Quantity.of(second, outline.area().aboutY()),
                Quantity.of(second, outline.area().product()),
                Quantity.of(second, outline.inertia()),
                Quantity.of(Dimension.SECTION_MODULUS, outline.modulus()),
                Quantity.of(second, outline.deadInertia()),
                Quantity.of(Dimension.SECTION_MODULUS, outline.deadModulus()));
    }
}
