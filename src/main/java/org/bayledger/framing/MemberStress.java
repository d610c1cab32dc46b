package org.bayledger.framing;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Bending stress of a member against the caller's allowable one.
 *
 * @param bending greatest bending stress about the axis of the request, Pa; null without a section
 *     modulus
 * @param utilization that and the concurrent one over the allowable; null where it was not checked
 * @param requiredModulus least section modulus, m3; null where it was not checked or no section
 *     modulus would do
 */
record MemberStress(
        @Nullable Double bending, @Nullable Double utilization, @Nullable Double requiredModulus) {

    /**
     * The bending stress of a member.
     *
     * @param moment greatest bending moment, N m
     * @param trace receives the steps
     * @param unchecked receives what was missing, so that the stress was not checked
     */
    static MemberStress of(
            FramingRequest request, double moment, Trace trace, List<Finding> unchecked) {
        Section section = request.section();
        boolean wind = request.axis() == Axis.WIND;
        Double modulus = wind ? section.sectionModulus() : section.deadLoadSectionModulus();
        Double allowable = section.allowableBendingStress();
        String name = wind ? "sectionModulus" : "deadLoadSectionModulus";
        if (modulus == null) {
            unchecked.add(
                    Finding.action(
                            "STRESS_NOT_CHECKED",
                            "/section/" + name,
                            "Bending stress is not checked: the section modulus about this"
                                    + " axis was not given."));
        }
        if (allowable == null) {
            unchecked.add(
                    Finding.action(
                            "STRESS_NOT_CHECKED",
                            "/section/allowableBendingStress",
                            "Bending stress is not checked: no allowable bending stress was"
                                    + " given."));
        }
        if (modulus == null) {
            return new MemberStress(null, null, null);
        }
        double bending = moment / modulus;
        trace.step("S", "section modulus", Dimension.SECTION_MODULUS, modulus, "input", "input");
        trace.step("f", "bending stress", Dimension.STRESS, bending, "M / S", "beam theory");
        if (allowable == null) {
            return new MemberStress(bending, null, null);
        }
        double concurrent =
                request.concurrentBendingStress() == null ? 0 : request.concurrentBendingStress();
        trace.step(
                "F",
                "allowable bending stress",
                Dimension.STRESS,
                allowable,
                "input; no one-third increase for wind",
                "input");
        double utilization = (bending + concurrent) / allowable;
        trace.step(
                "(f + f2)/F",
                "bending stress with that of the other axis, over the allowable",
                Dimension.NONE,
                utilization,
                "linear sum of the stresses about both axes",
                "common practice, no source");
        Double required = concurrent < allowable ? moment / (allowable - concurrent) : null;
        return new MemberStress(bending, utilization, required);
    }
}
