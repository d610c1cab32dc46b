package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.tree;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.mechanics.Fluid;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Joints as found. Two columns, three rows; water test pressure 300 Pa; beads 1/4 in deep. */
@NullMarked
class ObservedJointsTest {

    private static Map<String, @Nullable Object> observed(String... joints) {
        return with(two(), "observed", Arrays.stream(joints).map(Frames::tree).toList());
    }

    private static ObservedFinding only(SealsResult result) {
        assertThat(result.waterAndAir().observedJoints()).hasSize(1);
        return result.waterAndAir().observedJoints().get(0);
    }

    private static double litresPerMinute(@Nullable Quantity rate) {
        assertThat(rate).isNotNull();
        return rate == null ? Double.NaN : rate.si() * 60_000;
    }

    /**
     * 1 mm by 100 mm: the orifice, 2.84 L/min at 300 Pa (by hand in UnsealedFlowTest), 170 L in an
     * hour. High end 0.8/0.61 of it, 3.72. Low end: 50 mm, Cd 0.5, three depths: Qo 19.38 mL/s, Qv
     * 65.48 mL/s, in series 16.73 mL/s, 1.00 L/min.
     */
    @Test
    void anUnsealedJointByHand() {
        SealsResult result =
                run(
                        observed(
                                """
                                {"type":"HORIZONTAL_TO_VERTICAL","condition":"UNSEALED",
                                 "location":"north face","column":2,"row":3,
                                 "gap":"1 mm","length":"100 mm"}"""));
        ObservedFinding joint = only(result);
        assertThat(litresPerMinute(joint.waterRate())).isCloseTo(2.84, within(0.005));
        QuantityRange range = joint.waterRange();
        assertThat(range).isNotNull();
        if (range != null) {
            assertThat(litresPerMinute(range.low())).isCloseTo(1.00, within(0.005));
            assertThat(litresPerMinute(range.high())).isCloseTo(3.72, within(0.005));
        }
        Quantity storm = joint.stormWater();
        assertThat(storm == null ? Double.NaN : storm.si()).isCloseTo(0.1702, within(2e-4));
        assertThat(joint.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(joint.severity()).isEqualTo(Finding.Severity.ACTION);
        assertThat(joint.joint())
                .isEqualTo("HORIZONTAL_TO_VERTICAL (north face, column 2, row 3) found UNSEALED");
        assertThat(joint.consequence())
                .contains("2.838 L/min", "170.3 L in a storm of 1 h at 0.3 kPa", "more than");
        // outermost first: cover, glass, plug; 16 ends of horizontals less this one
        assertThat(joint.toOpen())
                .containsExactly(Obstacle.SNAP_COVER, Obstacle.GLASS, Obstacle.JOINT_PLUG);
        assertThat(joint.opening()).contains("the lite in column 2, row 3", "other 15 of type");
        assertThat(joint.othersToInspect()).isEqualTo(15);
        assertThat(joint.step())
                .isEqualTo(Frames.joint(result, JointType.HORIZONTAL_TO_VERTICAL).step());
        assertThat(joint.repair()).contains("solvent", "step " + joint.step(), "signed again");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isCloseTo(2837, within(3.0));
        assertThat(codes(result)).contains("OBSERVED_JOINT_LEAKS");
    }

    /** Length of one joint of its kind: the nominal 4.5 in (114.3 mm) of a splice, said so. */
    @Test
    void theLengthFollowsFromTheKind() {
        ObservedFinding splice =
                only(
                        run(
                                observed(
                                        "{\"type\":\"SPLICE\",\"condition\":\"CRACKED\",\"gap\":\"1 mm\"}")));
        assertThat(splice.lengthAssumed()).isTrue();
        assertThat(litresPerMinute(splice.waterRate())).isCloseTo(2.837 * 1.143, within(0.005));
        SealsResult open =
                run(
                        observed(
                                """
                                {"type":"PERIMETER_SILL","condition":"CRACKED","gap":"1 mm"}"""));
        assertThat(only(open).verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(only(open).consequence()).contains("give the length");
        assertThat(only(open).opening()).contains("can be reached as it is");
        assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
    }

    /**
     * A hairline within the limits: tight enough unsealed, still open where the bond is in doubt.
     */
    @Test
    void withinTheLimits() {
        String hairline = ",\"gap\":\"0.02 mm\",\"length\":\"100 mm\"}";
        SealsResult unsealed =
                run(observed("{\"type\":\"SPLICE\",\"condition\":\"UNSEALED\"" + hairline));
        assertThat(unsealed.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(only(unsealed).severity()).isEqualTo(Finding.Severity.NOTE);
        assertThat(codes(unsealed)).contains("OBSERVED_JOINT_LEAKS_WITHIN_LIMITS");
        for (String condition : new String[] {"NOT_TOOLED", "DIRTY", "WRONG_MATERIAL"}) {
            SealsResult doubt =
                    run(
                            observed(
                                    "{\"type\":\"SPLICE\",\"condition\":\""
                                            + condition
                                            + "\""
                                            + hairline));
            assertThat(doubt.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(codes(doubt)).contains("OBSERVED_JOINT_NOT_SHOWN_TIGHT");
            assertThat(only(doubt).consequence()).contains("nothing shows");
            SealsResult unknown =
                    run(observed("{\"type\":\"SPLICE\",\"condition\":\"" + condition + "\"}"));
            assertThat(only(unknown).utilization()).isNull();
            assertThat(unknown.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            SealsResult repaired =
                    run(
                            observed(
                                    "{\"type\":\"SPLICE\",\"condition\":\""
                                            + condition
                                            + "\",\"length\":\"0 mm\"}"));
            assertThat(repaired.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(only(repaired).severity()).isEqualTo(Finding.Severity.INFO);
            assertThat(only(repaired).toOpen()).isEmpty();
            assertThat(only(repaired).opening()).startsWith("Inspect the other 2 of type SPLICE");
            assertThat(only(repaired).repair()).startsWith("Repaired");
        }
    }

    /** Six hairlines of 0.19 mL/min each are within 1 mL/min, and together they are not. */
    @Test
    void togetherTheyCount() {
        String one =
                "{\"type\":\"SPLICE\",\"condition\":\"UNSEALED\",\"gap\":\"0.02 mm\",\"length\":\"100 mm\"}";
        Map<String, @Nullable Object> six = observed(one, one, one, one, one, one);
        SealsResult result = run(six);
        assertThat(result.outcome().utilization()).isCloseTo(6 * 0.1886, within(0.002));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result)).contains("OBSERVED_JOINTS_LEAK_TOGETHER");
        assertThat(ChamberAndWeepsTest.passes(six).changes()).hasSize(6);
        // with a missed joint of the same kind five are enough; all are sealed
        Map<String, @Nullable Object> five =
                with(
                        observed(one, one, one, one, one),
                        "missedJoint",
                        Map.of("gap", "0.02 mm", "length", "100 mm"));
        assertThat(run(five).outcome().utilization())
                .isCloseTo(result.outcome().utilization(), within(1e-9));
        assertThat(ChamberAndWeepsTest.passes(five).changes()).hasSize(6);
    }

    @Test
    void placesAndKindsMustExist() {
        assertThatThrownBy(
                        () ->
                                Binder.bind(
                                        observed(
                                                """
                                                {"type":"SPLICE","condition":"DIRTY",
                                                 "column":3,"row":4}"""),
                                        SealsRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting("pointer")
                                        .containsExactly("/observed/0/column", "/observed/0/row"));
        Map<String, @Nullable Object> plug =
                with(
                        observed("{\"type\":\"JOINT_PLUG\",\"condition\":\"UNSEALED\"}"),
                        "drainage",
                        "DRAINED");
        assertThat(codes(run(plug))).contains("OBSERVED_KIND_NOT_IN_FRAME");
        String hairline = "{\"type\":\"SPLICE\",\"condition\":\"UNSEALED\",\"gap\":\"0.01 mm\"}";
        SealsResult noWind = run(with(observed(hairline), "load", Map.of("negative", "-35 psf")));
        assertThat(only(noWind).verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(only(noWind).waterRate()).isNull();
        assertThat(only(noWind).consequence()).contains("how much water passes is not known");
        Map<String, @Nullable Object> uncounted =
                with(
                        observed("{\"type\":\"JOINT_COVER\",\"condition\":\"UNSEALED\"}"),
                        "jointCovers",
                        null);
        assertThat(only(run(uncounted)).othersToInspect()).isNull();
        assertThat(only(run(uncounted)).opening()).contains("not known");
    }

    /** A unitized wall: a gutter's sleeve lies under the tier above, gaskets are put in again. */
    @Test
    void unitsHideAndAreGasketed() {
        Map<String, @Nullable Object> units =
                tree(
                        """
                        {"drainage":"PRESSURE_EQUALIZED","system":"UNITIZED",
                         "columns":["5 ft","5 ft"],"rows":["3 ft","8 ft","2 ft"],
                         "bead":{"width":"0.25 in","depth":"0.25 in"},"stackJoints":["11 ft"],
                         "continuousEdges":[],"endDamHeight":"1.5 in",
                         "load":{"positive":"30 psf","negative":"-35 psf"}}""");
        SealsResult result =
                run(
                        with(
                                units,
                                "observed",
                                List.of(
                                        tree(
                                                """
                                                {"type":"SPLICE_SLEEVE","condition":"DIRTY",
                                                 "gap":"1 mm"}"""),
                                        tree(
                                                """
                                                {"type":"UNIT_VERTICAL","condition":"CRACKED",
                                                 "column":1,"row":2}"""))));
        ObservedFinding sleeve = result.waterAndAir().observedJoints().get(0);
        assertThat(sleeve.toOpen()).containsExactly(Obstacle.UNIT_ABOVE);
        assertThat(sleeve.opening()).contains("the unit above");
        assertThat(sleeve.repair()).contains("Cut the sealant out");
        // the nominal bead of a sleeve, 9 in, twice that of a splice
        assertThat(litresPerMinute(sleeve.waterRate())).isCloseTo(2.837 * 2.286, within(0.01));
        ObservedFinding vertical = result.waterAndAir().observedJoints().get(1);
        assertThat(vertical.repair())
                .contains("Take the gasket out")
                .doesNotContain("sealant that");
        assertThat(vertical.consequence()).contains("give gap and length");
        assertThatThrownBy(
                        () ->
                                run(
                                        with(
                                                units,
                                                "observed",
                                                List.of(
                                                        tree(
                                                                """
                                                                {"type":"JOINT_COVER",
                                                                 "condition":"DIRTY"}""")))))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting("pointer")
                                        .containsExactly("/observed/0/type"));
    }

    /** Low, reported and high end never cross, and none is zero while anything is open. */
    @Test
    void rangesAreInOrder() {
        Random random = new Random(5);
        for (int i = 0; i < 3000; i++) {
            double gap = Math.pow(10, -6 + 4 * random.nextDouble());
            double length = Math.pow(10, -2 + 3 * random.nextDouble());
            double depth = Math.pow(10, -3 + 2 * random.nextDouble());
            double pressure = Math.pow(10, 4 * random.nextDouble());
            Fluid fluid = random.nextBoolean() ? Fluid.WATER : Fluid.AIR;
            LeakRange range = LeakRange.of(gap, length, depth, pressure, fluid);
            assertThat(range.low()).isPositive().isLessThan(range.governing());
            assertThat(range.high()).isGreaterThanOrEqualTo(range.governing());
            assertThat(range.high())
                    .isLessThanOrEqualTo(0.8 / 0.61 * range.governing() * 1.0000001);
            LeakRange twice = LeakRange.of(gap, 2 * length, depth, pressure, fluid);
            assertThat(twice.low()).isCloseTo(2 * range.low(), within(1e-9 * twice.low()));
            assertThat(LeakRange.of(gap, length, depth, 1.2 * pressure, fluid).low())
                    .isGreaterThan(range.low());
            double supply = range.governing() / 2;
            assertThat(range.atMost(supply).high()).isEqualTo(supply);
        }
    }

    /** Rain of its own and a duration: what reaches the frame is the most that passes. */
    @Test
    void aStormOfItsOwn() {
        Map<String, @Nullable Object> frame =
                with(two(), "missedJoint", Map.of("gap", "5 mm", "length", "1 m"));
        frame = with(frame, "wettedArea", "2 m2");
        frame =
                with(
                        frame,
                        "storm",
                        tree(
                                "{\"rain\":\"0.5 L/min/m2\",\"pressure\":\"100 Pa\",\"duration\":\"2 h\"}"));
        StormWater storm = run(frame).waterAndAir().stormWater();
        assertThat(storm).isNotNull();
        if (storm != null) {
            assertThat(storm.water().si()).isCloseTo(0.120, within(1e-9));
            assertThat(storm.waterRange().low().si()).isCloseTo(0.120, within(1e-9));
        }
        // 2 mm, 10 mm long: 0.61 x 20 mm2 x sqrt(200/998.2) = 5.46 mL/s, 39.3 L in two hours
        frame = with(frame, "missedJoint", Map.of("gap", "2 mm", "length", "10 mm"));
        StormWater less = run(frame).waterAndAir().stormWater();
        assertThat(less == null ? Double.NaN : less.water().si()).isCloseTo(0.0393, within(1e-4));
    }

    /** Air at the reported rate within the limit, at the high end over it: said, not judged. */
    @Test
    void aRangeThatPassesTheLimitIsSaid() {
        Map<String, @Nullable Object> frame =
                with(two(), "missedJoint", Map.of("gap", "1 mm", "length", "250 mm"));
        frame = with(frame, "waterTest", Map.of("allowedWater", "100 L/min"));
        // 0.61 x 250 mm2 x 22.32 m/s = 3.404 L/s against 3.681
        SealsResult result = run(frame);
        assertThat(result.outcome().utilization()).isCloseTo(3.404 / 3.681, within(0.001));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(result)).contains("LEAK_RANGE_PASSES_LIMIT");
    }
}
