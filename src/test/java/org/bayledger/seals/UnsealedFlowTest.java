package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.Map;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@NullMarked
class UnsealedFlowTest {

    private static SealsResult missed(String gap, String length) {
        return run(with(two(), "missedJoint", Map.of("gap", gap, "length", length)));
    }

    private static double litresPerMinute(@Nullable Quantity rate) {
        assertThat(rate).isNotNull();
        return rate == null ? Double.NaN : rate.si() * 60_000;
    }

    /**
     * By hand, gap 1 mm, 100 mm long, 1/4 in (6.35 mm) deep, 300 Pa.
     *
     * <p>Water: orifice 0.61 x 1e-4 m2 x sqrt(600/998.2) = 4.729e-5 m3/s = 2.84 L/min; slot 0.1 x
     * 1e-9 x 300 / (12 x 1.002e-3 x 6.35e-3) = 3.93e-4; the orifice governs. Air: orifice 0.61 x
     * 1e-4 x sqrt(600/1.204) = 1.362e-3 m3/s; slot 0.1 x 1e-9 x 300 / (12 x 1.813e-5 x 6.35e-3) =
     * 2.17e-2; the orifice governs. Spray: 5 gal/h on each of 130 ft2 = 650 gal/h = 41.0 L/min.
     */
    @Test
    void oneMillimetreByHand() {
        UnsealedJoint joint = missed("1 mm", "100 mm").unsealedJoint();
        assertThat(joint.illustrative()).isFalse();
        assertThat(litresPerMinute(joint.waterRate())).isCloseTo(2.84, within(0.005));
        assertThat(joint.waterRegime()).isEqualTo(FlowRegime.ORIFICE);
        assertThat(joint.airRate().si()).isCloseTo(1.362e-3, within(1e-6));
        assertThat(joint.airRegime()).isEqualTo(FlowRegime.ORIFICE);
        assertThat(litresPerMinute(joint.spraySupply())).isCloseTo(41.0, within(0.05));
        assertThat(joint.wettedArea().si()).isCloseTo(130 * 0.3048 * 0.3048, within(1e-9));
        // 0.06 cfm on each of 130 ft2 = 7.8 cfm = 3.68 L/s
        assertThat(joint.allowedAir().si()).isCloseTo(3.681e-3, within(1e-6));
    }

    /**
     * 0.2 mm by hand: slot 0.1 x 8e-12 x 300 / (12 x 1.002e-3 x 6.35e-3) = 3.143e-6 m3/s, below the
     * orifice's 9.46e-6. Threshold 2 x 0.0728 / 2e-4 = 728 Pa, above 300 Pa: it wets by wicking.
     * Air: slot 0.1 x 8e-12 x 300 / (12 x 1.813e-5 x 6.35e-3) = 1.737e-4 m3/s, below the orifice's
     * 2.72e-4.
     */
    @Test
    void aHairlineStillWets() {
        SealsResult result = missed("0.2 mm", "100 mm");
        UnsealedJoint joint = result.unsealedJoint();
        assertThat(joint.capillaryThreshold().si()).isCloseTo(728, within(1e-9));
        assertThat(joint.waterRegime()).isEqualTo(FlowRegime.WICKING);
        assertThat(litresPerMinute(joint.waterRate())).isCloseTo(0.1886, within(0.0005));
        assertThat(codes(result)).contains("GAP_WETS_BY_WICKING");
        assertThat(joint.airRegime()).isEqualTo(FlowRegime.VISCOUS_SLOT);
        assertThat(joint.airRate().si()).isCloseTo(1.737e-4, within(1e-7));
        UnsealedJoint finer = missed("0.02 mm", "100 mm").unsealedJoint();
        assertThat(litresPerMinute(finer.waterRate())).isCloseTo(0.0001886, within(5e-7));
    }

    /** A wide gap takes what the spray brings and no more. */
    @Test
    void waterIsNeverMoreThanTheSpray() {
        SealsResult result = missed("10 mm", "1 m");
        UnsealedJoint joint = result.unsealedJoint();
        assertThat(joint.waterRegime()).isEqualTo(FlowRegime.SPRAY_SUPPLY);
        assertThat(joint.waterRate()).isEqualTo(joint.spraySupply());
        Map<String, @Nullable Object> small =
                with(two(), "missedJoint", Map.of("gap", "10 mm", "length", "1 m"));
        UnsealedJoint less = run(with(small, "wettedArea", "13 ft2")).unsealedJoint();
        assertThat(less.spraySupply().si()).isCloseTo(joint.spraySupply().si() / 10, within(1e-12));
    }

    @Test
    void waterGrowsWithTheGapAndIsNeverZero() {
        double before = 0;
        for (double gap = 0.001; gap < 20; gap *= 1.3) {
            double water =
                    litresPerMinute(missed(gap + " mm", "50 mm").unsealedJoint().waterRate());
            assertThat(water).isPositive().isGreaterThanOrEqualTo(before);
            before = water;
        }
    }

    /**
     * A missed joint counts: 2.84 L/min against 15 mL in 15 min (0.001 L/min). One that lets
     * through less than that (0.02 mm, 100 mm long) does not exceed; an illustrative one never
     * counts.
     */
    @Test
    void aMissedJointCountsInTheVerdict() {
        SealsResult known = missed("1 mm", "100 mm");
        assertThat(known.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(known.outcome().utilization()).isCloseTo(2840, within(5.0));
        assertThat(codes(known)).contains("MISSED_JOINT_LEAKS").doesNotContain("ILLUSTRATIVE_GAP");
        assertThat(missed("0.02 mm", "100 mm").outcome().verdict()).isEqualTo(Verdict.SATISFIED);

        SealsResult example = run(two());
        assertThat(example.unsealedJoint().illustrative()).isTrue();
        assertThat(example.unsealedJoint().gap().si()).isEqualTo(0.0254 / 32);
        assertThat(litresPerMinute(example.unsealedJoint().waterRate())).isGreaterThan(1);
        assertThat(example.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(example)).contains("ILLUSTRATIVE_GAP");
    }

    /** Air alone may exceed: where water has been allowed freely, and where no load is known. */
    @Test
    void airCountsBesideWater() {
        Map<String, @Nullable Object> frame =
                with(two(), "missedJoint", Map.of("gap", "3 mm", "length", "1 m"));
        frame = with(frame, "waterTest", Map.of("allowedWater", "100 L/min"));
        SealsResult result = run(frame);
        // orifice 0.61 x 3e-3 x sqrt(600/1.204) = 0.04085 m3/s against 3.681e-3
        assertThat(result.outcome().utilization()).isCloseTo(11.10, within(0.01));
        SealsResult noLoad = run(with(frame, "load", Map.of("negative", "-30 psf")));
        assertThat(noLoad.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        Map<String, @Nullable Object> pair =
                with(frame, "airLeakage", Map.of("limit", "0.12 cfm/ft2", "pressure", "75 Pa"));
        // twice the limit and half the flow (a quarter of the pressure)
        assertThat(run(pair).outcome().utilization()).isCloseTo(11.10 / 4, within(0.01));
    }

    @Test
    void aSealedJointLetsNothingThrough() {
        SealsResult result = missed("1 mm", "0 mm");
        assertThat(result.unsealedJoint().waterRegime()).isEqualTo(FlowRegime.SEALED);
        assertThat(result.unsealedJoint().airRegime()).isEqualTo(FlowRegime.SEALED);
        assertThat(result.unsealedJoint().airRate().si()).isZero();
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }
}
