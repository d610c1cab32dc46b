package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@NullMarked
class SealsCheckTest {

    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);

    private static double si(@Nullable Quantity quantity) {
        assertThat(quantity).isNotNull();
        return quantity == null ? Double.NaN : quantity.si();
    }

    private static SealsResult underLoad(String positive, String basis) {
        return run(
                with(
                        two(),
                        "load",
                        Map.of("positive", positive, "negative", "-35 psf", "basis", basis)));
    }

    /**
     * Specification practice (from memory): 20 % of the positive design pressure, not under 300 Pa
     * (6.24 psf), not over 15 psf; on site two thirds. 30 psf -> 6 psf -> 300 Pa; 50 psf -> 10 psf;
     * 90 psf -> 18 psf -> 720 Pa (15 psf). 12 psf on site is 8 psf.
     */
    @Test
    void testPressureHasAShareAFloorAndACap() {
        assertThat(si(underLoad("30 psf", "ALLOWABLE_STRESS").waterTestPressure())).isEqualTo(300);
        SealsResult between = underLoad("50 psf", "ALLOWABLE_STRESS");
        assertThat(si(between.waterTestPressure())).isCloseTo(10 * PSF, within(1e-9));
        assertThat(si(between.fieldTestPressure())).isCloseTo(10 * PSF * 2 / 3, within(1e-9));
        SealsResult capped = underLoad("90 psf", "ALLOWABLE_STRESS");
        assertThat(si(capped.waterTestPressure())).isEqualTo(720);
        assertThat(codes(capped)).contains("TEST_PRESSURE_CAPPED");
        assertThat(codes(between)).doesNotContain("TEST_PRESSURE_CAPPED");
        // a strength load of 100 psf is 60 psf, its share 12 psf
        assertThat(si(underLoad("100 psf", "STRENGTH").waterTestPressure()))
                .isCloseTo(12 * PSF, within(1e-9));
        SealsResult own =
                run(
                        with(
                                two(),
                                "waterTest",
                                Frames.tree(
                                        "{\"share\":0.15,\"floor\":\"4 psf\",\"cap\":\"12 psf\"}")));
        assertThat(si(own.waterTestPressure())).isCloseTo(4.5 * PSF, within(1e-9));
    }

    /** 300 Pa hold 1.2 in of water (conversion tables: 6.24 psf = 1.2 in of water). */
    @Test
    void headAgainstTheEndDam() {
        SealsResult result = run(two());
        double head = si(result.waterHead());
        assertThat(head).isCloseTo(1.2 * 0.0254, within(0.0002));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isCloseTo(head / (1.5 * 0.0254), within(1e-12));
        assertThat(run(with(two(), "endDamHeight", "1 in")).outcome().verdict())
                .isEqualTo(Verdict.EXCEEDED);
        // the sill is the neighbour's: nothing to hold here
        Map<String, @Nullable Object> upper = with(two(), "continuousEdges", List.of("BOTTOM"));
        assertThat(run(with(upper, "endDamHeight", "1 in")).outcome().utilization()).isNull();
    }

    @Test
    void whatTheVerdictNeedsAndIsMissingLeavesItOpen() {
        SealsResult noDam = run(with(two(), "endDamHeight", null));
        assertThat(noDam.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(noDam.outcome().utilization()).isNull();
        assertThat(codes(noDam)).contains("END_DAM_HEIGHT_NOT_GIVEN");

        SealsResult noPositive = run(with(two(), "load", Map.of("negative", "-35 psf")));
        assertThat(noPositive.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(noPositive)).contains("POSITIVE_PRESSURE_NOT_CALLED_OUT");
        assertThat(noPositive.waterTestPressure()).isNull();
        assertThat(noPositive.waterHead()).isNull();
        assertThat(noPositive.unsealedJoint().waterRate()).isNull();
        assertThat(noPositive.unsealedJoint().airRate().si()).isPositive();

        SealsResult noNegative = run(with(two(), "load", Map.of("positive", "35 psf")));
        assertThat(noNegative.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(noNegative)).contains("NEGATIVE_PRESSURE_NOT_CALLED_OUT");
        assertThat(si(noNegative.waterTestPressure())).isPositive();
    }

    /** Every remedy, put into the request as it stands, passes with the utilization it promises. */
    @Test
    void remediesPass() {
        Map<String, @Nullable Object> low = with(two(), "endDamHeight", "0.5 in");
        Map<String, @Nullable Object> missed =
                with(two(), "missedJoint", Map.of("gap", "0.5 mm", "length", "100 mm"));
        Map<String, @Nullable Object> both =
                with(low, "missedJoint", Map.of("gap", "0.5 mm", "length", "100 mm"));
        for (Map<String, @Nullable Object> tree : List.of(low, missed, both)) {
            for (var reporting : List.of(Frames.SI, Frames.US)) {
                SealsResult before = run(tree, reporting);
                assertThat(before.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
                assertThat(before.outcome().remedies()).hasSize(1);
                Remedy remedy = before.outcome().remedies().get(0);
                SealsResult after = run(applied(tree, remedy), reporting);
                assertThat(after.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
                assertThat(after.outcome().utilization())
                        .isCloseTo(remedy.utilization(), within(1e-9));
            }
        }
        assertThat(run(low).outcome().remedies().get(0).text()).contains("31 mm");
        assertThat(run(low, Frames.US).outcome().remedies().get(0).text()).contains("1.25 in");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, @Nullable Object> applied(
            Map<String, @Nullable Object> tree, Remedy remedy) {
        Map<String, @Nullable Object> changed = new LinkedHashMap<>(tree);
        for (Remedy.Change change : remedy.changes()) {
            String[] path = change.pointer().substring(1).split("/", -1);
            if (path.length == 1) {
                changed.put(path[0], change.to());
            } else {
                Map<String, @Nullable Object> inner =
                        new LinkedHashMap<>((Map<String, @Nullable Object>) changed.get(path[0]));
                inner.put(path[1], change.to());
                changed.put(path[0], inner);
            }
        }
        return changed;
    }

    /**
     * The physical facts, independent of the table of steps: a cover is bedded over a splice and a
     * stack joint that are done, a plug over a seam and heads that are done, the sill's dams are
     * under the horizontals, plates come after the glass.
     */
    @Test
    void noStepComesAfterWhatHidesIt() {
        for (String drainage : List.of("PRESSURE_EQUALIZED", "DRAINED")) {
            SealsResult result = run(with(two(), "drainage", drainage));
            List<Integer> steps = result.joints().stream().map(SealJoint::step).toList();
            assertThat(steps).isSorted().doesNotHaveDuplicates();
            for (SealJoint joint : result.joints()) {
                assertThat(joint.hiddenBy())
                        .as("%s", joint.type())
                        .allSatisfy(
                                o ->
                                        assertThat(joint.step())
                                                .isLessThan(WallSystem.STICK_BUILT.step(o)));
                boolean buried = joint.step() < result.glazingStep() && !joint.type().perimeter();
                assertThat(joint.holdPoint())
                        .as("%s", joint.type())
                        .isEqualTo(buried && joint.count() > 0);
                assertThat(joint.reachableAfterGlazing()).isEqualTo(!buried);
                assertThat(joint.instruction()).contains("solvent", "second", "within the time");
            }
            before(result, JointType.SPLICE, JointType.JOINT_COVER);
            before(result, JointType.STACK_JOINT, JointType.JOINT_COVER);
            before(result, JointType.HORIZONTAL_TO_VERTICAL, JointType.JOINT_PLUG);
            before(result, JointType.FASTENER_HEAD, JointType.JOINT_PLUG);
            before(result, JointType.END_DAM, JointType.HORIZONTAL_TO_VERTICAL);
            before(result, JointType.END_DAM, JointType.PERIMETER_SILL);
            before(result, JointType.SPLICE, JointType.HORIZONTAL_TO_VERTICAL);
            assertThat(Frames.joint(result, JointType.PRESSURE_PLATE_BUTT).step())
                    .isGreaterThan(result.glazingStep());
            assertThat(Frames.joint(result, JointType.JOINT_PLUG).step())
                    .isLessThan(result.glazingStep());
        }
    }

    private static void before(SealsResult result, JointType first, JointType then) {
        assertThat(Frames.joint(result, first).step())
                .as("%s before %s", first, then)
                .isLessThan(Frames.joint(result, then).step());
    }

    @Test
    void unitsChangeWordsAndNoNumber() {
        SealsResult us = run(two(), Frames.US);
        SealsResult si = run(two(), Frames.SI);
        assertThat(us.sealantVolume()).isEqualTo(si.sealantVolume());
        assertThat(us.unsealedJoint()).isEqualTo(si.unsealedJoint());
        assertThat(us.outcome().utilization()).isEqualTo(si.outcome().utilization());
        assertThat(us.outcome().trace()).isEqualTo(si.outcome().trace());

        Map<String, @Nullable Object> metric = two();
        metric = with(metric, "columns", List.of("1.524 m", "1524 mm"));
        metric = with(metric, "rows", List.of("914.4 mm", "2.4384 m", "0.6096 m"));
        metric = with(metric, "splices", List.of("3505.2 mm"));
        metric = with(metric, "bead", Map.of("width", "6.35 mm", "depth", "6.35 mm"));
        metric = with(metric, "perimeterBead", Map.of("width", "12.7 mm", "depth", "6.35 mm"));
        metric = with(metric, "pressurePlateLength", "3.048 m");
        metric = with(metric, "perimeterFastenerSpacing", "457.2 mm");
        SealsResult same = run(metric);
        for (int i = 0; i < same.joints().size(); i++) {
            assertThat(same.joints().get(i).count()).isEqualTo(us.joints().get(i).count());
        }
        assertThat(same.sealantVolume().si()).isCloseTo(us.sealantVolume().si(), within(1e-12));
    }

    @Test
    void governingTraceIsPartOfTheWhole() {
        var governing = new org.bayledger.check.Reporting(UnitSystem.SI, TraceLevel.GOVERNING);
        List<String> all =
                run(two()).outcome().trace().stream().map(step -> step.symbol()).toList();
        List<String> few =
                run(two(), governing).outcome().trace().stream()
                        .map(step -> step.symbol())
                        .toList();
        assertThat(all).containsAll(few).contains("pt", "pmin", "pmax", "h", "V", "w", "Vc", "n");
        assertThat(few.size()).isLessThan(all.size());
    }

    @Test
    void spliceBehindAHorizontalIsPointedOut() {
        assertThat(codes(run(with(two(), "splices", List.of("11 ft")))))
                .contains("SPLICE_AT_HORIZONTAL");
        assertThat(codes(run(two()))).doesNotContain("SPLICE_AT_HORIZONTAL");
    }

    @Test
    void refusesWhatCannotBe() {
        Map<String, @Nullable Object> wrong =
                with(two(), "splices", List.of("13 ft", "2 ft", "2 ft"));
        wrong = with(wrong, "stackJoints", List.of("2 ft"));
        assertFaults(wrong, "/splices/0", "/splices/2", "/stackJoints/0");
        assertFaults(
                with(two(), "waterTest", Frames.tree("{\"cap\":\"5 psf\"}")), "/waterTest/cap");
        assertFaults(with(two(), "columns", List.of()), "/columns");
        assertFaults(with(two(), "wasteFactor", 10), "/wasteFactor");
        assertFaults(
                with(two(), "missedJoint", Map.of("gap", "0 mm", "length", "1 m")),
                "/missedJoint/gap");
    }

    private static void assertFaults(Map<String, @Nullable Object> tree, String... pointers) {
        assertThatThrownBy(() -> Binder.bind(tree, SealsRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isFalse();
                            assertThat(e.faults())
                                    .extracting(Fault::pointer)
                                    .containsExactlyInAnyOrder(pointers);
                        });
    }

    @Test
    void theContractsExampleIsAnswered() throws IOException {
        try (InputStream example =
                SealsRequest.class.getResourceAsStream(
                        "/contract/checkInternalSeals.request.json")) {
            assertThat(example).isNotNull();
            byte[] bytes = example == null ? new byte[0] : example.readAllBytes();
            SealsResult result =
                    new SealsEndpoint()
                            .check(
                                    Binder.bind(StrictJson.read(bytes), SealsRequest.class),
                                    UnitSystem.US,
                                    TraceLevel.ALL)
                            .body();
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("PRESSURE_EQUALIZED");
        }
    }
}
