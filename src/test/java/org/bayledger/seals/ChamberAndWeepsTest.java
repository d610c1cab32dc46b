package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.tree;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Chamber and weeps by hand; the frame's water test pressure is 300 Pa, its end dams 38.1 mm. */
@NullMarked
class ChamberAndWeepsTest {

    private static Map<String, @Nullable Object> chamber(String json) {
        return with(two(), "pressureEqualization", tree(json));
    }

    private static PressureEqualization chamberOf(SealsResult result) {
        PressureEqualization chamber = result.waterAndAir().pressureEqualization();
        if (chamber == null) {
            throw new AssertionError("no chamber");
        }
        return chamber;
    }

    private static WeepSizing weepsOf(SealsResult result) {
        WeepSizing weeps = result.waterAndAir().weepSizing();
        if (weeps == null) {
            throw new AssertionError("no weeps");
        }
        return weeps;
    }

    private static double si(@Nullable Quantity quantity) {
        assertThat(quantity).isNotNull();
        return quantity == null ? Double.NaN : quantity.si();
    }

    /** Vents of twice the leaks leave a fifth outside; a tenth takes three times. */
    @Test
    void shareAndVentsByHand() {
        Map<String, @Nullable Object> frame =
                chamber(
                        """
                        {"ventArea":"200 mm2","leakArea":"100 mm2","volume":"10 L",
                         "outerShareLimit":0.1}""");
        SealsResult result = run(frame);
        PressureEqualization chamber = chamberOf(result);
        assertThat(chamber.outerShare()).isCloseTo(0.2, within(1e-12));
        assertThat(si(chamber.outerPressure())).isCloseTo(60, within(1e-9));
        assertThat(si(chamber.requiredVentArea())).isCloseTo(300e-6, within(1e-12));
        // 0.010 sqrt(2 x 1.204 x 300) / (101 325 x 0.61 x 200e-6) = 0.0217 s
        assertThat(si(chamber.equalizationTime())).isCloseTo(0.02174, within(1e-4));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isCloseTo(2, within(1e-9));
        assertThat(codes(result)).contains("OUTER_SHARE_ABOVE_LIMIT");
        passes(frame);
        // without a limit it is told and not judged
        SealsResult told = run(chamber("{\"ventArea\":\"0 mm2\",\"leakArea\":\"100 mm2\"}"));
        assertThat(chamberOf(told).outerShare()).isEqualTo(1);
        assertThat(told.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    /**
     * Leaks from the limit: 0.06 cfm/ft2 (0.3048 mm/s) on 4 m2 at 300 Pa is 1.219 L/s, through 0.61
     * sqrt(600/1.204) = 13.62 m/s: 89.5 mm2.
     */
    @Test
    void leaksFromTheLimitOnAirLeakage() {
        PressureEqualization chamber =
                chamberOf(run(chamber("{\"ventArea\":\"300 mm2\",\"chamberArea\":\"4 m2\"}")));
        assertThat(si(chamber.leakArea())).isCloseTo(89.5e-6, within(0.1e-6));
    }

    /**
     * A missed joint of 1 mm by 200 mm beside leaks of 100 mm2: as if the vents shrank to a third.
     */
    @Test
    void aMissedJointSpoilsTheEqualization() {
        Map<String, @Nullable Object> frame =
                chamber(
                        """
                        {"ventArea":"400 mm2","leakArea":"100 mm2","outerShareLimit":0.1}""");
        frame = with(frame, "waterTest", Map.of("allowedWater", "100 L/min"));
        frame = with(frame, "airLeakage", Map.of("limit", "1 cfm/ft2", "pressure", "300 Pa"));
        frame = with(frame, "missedJoint", Map.of("gap", "1 mm", "length", "200 mm"));
        SealsResult result = run(frame);
        PressureEqualization chamber = chamberOf(result);
        assertThat(chamber.outerShare()).isCloseTo(1.0 / 17, within(1e-12));
        assertThat(chamber.outerShareWithMissedJoint())
                .isCloseTo(1 / (1 + 16.0 / 9), within(1e-12));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        Remedy remedy = passes(frame);
        assertThat(remedy.changes()).extracting("pointer").containsExactly("/missedJoint/length");
    }

    @Test
    void drainedWallsAndLargeChambersAreWarnedOf() {
        Map<String, @Nullable Object> slow =
                chamber("{\"ventArea\":\"10 mm2\",\"leakArea\":\"1 mm2\",\"volume\":\"100 L\"}");
        assertThat(codes(run(with(slow, "drainage", "DRAINED"))))
                .contains("CHAMBER_IN_A_DRAINED_WALL", "CHAMBER_FOLLOWS_SLOWLY");
        assertFault(chamber("{\"ventArea\":\"10 mm2\"}"), "/pressureEqualization/leakArea");
    }

    /**
     * Round weeps of 8 mm, dams of 38.1 mm, no chamber: 300 Pa hold back 30.65 mm and surface
     * tension 4 x 0.0728 / (998.2 x 9.80665 x 0.008) = 3.72 mm, which leaves 3.73 mm; 0.5 x 50.27
     * mm2 x sqrt(2 x 9.80665 x 0.00373) = 6.80 mL/s, 0.408 L/min each. 2 L/min take 5.
     */
    @Test
    void weepsByHand() {
        Map<String, @Nullable Object> frame =
                with(
                        two(),
                        "weeps",
                        tree("{\"count\":4,\"diameter\":\"8 mm\",\"flow\":\"2 L/min\"}"));
        SealsResult result = run(frame);
        WeepSizing weeps = weepsOf(result);
        assertThat(si(weeps.retainedHead())).isCloseTo(3.72e-3, within(5e-6));
        assertThat(si(weeps.opposingHead())).isCloseTo(30.65e-3, within(5e-6));
        assertThat(si(weeps.capacity())).isCloseTo(0.408e-3 / 60, within(0.002e-3 / 60));
        assertThat(weeps.requiredCount()).isEqualTo(5);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result))
                .contains("WEEPS_DRAIN_TOO_LITTLE")
                .doesNotContain("WEEP_HOLDS_WATER");
        assertThat(passes(frame).changes()).extracting("to").containsExactly(5);
        // capillary length of water 2.73 mm (textbooks): two of it for a round weep, sqrt 2 for a
        // slot
        assertThat(si(weeps.leastDiameter())).isCloseTo(2 * 2.73e-3, within(1e-5));
        assertThat(si(weeps.leastSlotHeight())).isCloseTo(Math.sqrt(2) * 2.73e-3, within(1e-5));
    }

    /** With little pressure left outside the same weeps drain: 30 Pa hold back 3.1 mm. */
    @Test
    void aChamberRelievesTheWeeps() {
        Map<String, @Nullable Object> frame =
                chamber("{\"ventArea\":\"300 mm2\",\"leakArea\":\"100 mm2\"}");
        frame =
                with(
                        frame,
                        "weeps",
                        tree("{\"count\":4,\"diameter\":\"8 mm\",\"flow\":\"2 L/min\"}"));
        SealsResult result = run(frame);
        assertThat(si(weepsOf(result).opposingHead())).isCloseTo(3.065e-3, within(5e-6));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    /**
     * A film spans 5 mm holes and 3.5 mm slots; low dams leave no head: higher ones are offered.
     */
    @Test
    void smallWeepsHoldWaterAndLowDamsLeaveNoHead() {
        Map<String, @Nullable Object> frame =
                with(
                        two(),
                        "weeps",
                        tree("{\"count\":4,\"diameter\":\"2 mm\",\"flow\":\"0.1 L/min\"}"));
        SealsResult result = run(frame);
        // 30.65 + 14.87 mm stand before anything drains
        assertThat(weepsOf(result).requiredCount()).isNull();
        assertThat(si(weepsOf(result).capacity())).isZero();
        assertThat(codes(result)).contains("WEEP_HOLDS_WATER", "WEEPS_DRAIN_TOO_LITTLE");
        assertThat(passes(frame).changes()).extracting("pointer").containsExactly("/endDamHeight");
        Map<String, @Nullable Object> slot =
                with(
                        two(),
                        "weeps",
                        tree(
                                """
                                {"count":2,"slotLength":"50 mm","slotHeight":"3.5 mm",
                                 "flow":"0.1 L/min","availableHead":"60 mm"}"""));
        WeepSizing narrow = weepsOf(run(slot));
        // gamma P / (rho g A) = 0.0728 x 0.107 / (9789 x 175e-6) = 4.55 mm
        assertThat(si(narrow.retainedHead())).isCloseTo(4.55e-3, within(5e-6));
        assertThat(narrow.holdsFilm()).isTrue();
        Map<String, @Nullable Object> usual =
                with(
                        two(),
                        "weeps",
                        tree("{\"count\":9,\"diameter\":\"7 mm\",\"flow\":\"0.1 L/min\"}"));
        assertThat(codes(run(usual))).contains("WEEP_SMALLER_THAN_USUAL");
    }

    @Test
    void whatWeepsNeedAndLack() {
        Map<String, @Nullable Object> frame =
                with(
                        two(),
                        "weeps",
                        tree("{\"count\":4,\"diameter\":\"8 mm\",\"flow\":\"2 L/min\"}"));
        SealsResult noHead = run(with(frame, "endDamHeight", null));
        assertThat(codes(noHead)).contains("WEEP_HEAD_NOT_GIVEN");
        assertThat(noHead.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        SealsResult high = run(with(weeps(4, 30, 2), "endDamHeight", "14 mm"));
        assertThat(codes(high)).contains("WEEPS_NOT_COVERED");
        assertThat(high.waterAndAir().weepSizing()).isNull();
        SealsResult noWind = run(with(frame, "load", Map.of("negative", "-35 psf")));
        assertThat(noWind.waterAndAir().weepSizing()).isNull();
        assertFault(
                with(two(), "weeps", tree("{\"count\":4,\"flow\":\"2 L/min\"}")),
                "/weeps/diameter");
        assertFault(
                with(
                        two(),
                        "weeps",
                        tree(
                                """
                                {"count":4,"flow":"2 L/min","diameter":"8 mm",
                                 "slotHeight":"8 mm"}""")),
                "/weeps/diameter");
    }

    /** More head, more weeps, larger ones, less flow, less pressure: each helps. */
    @Test
    void everyHelpHelps() {
        double before = weepsOf(run(weeps(4, 8, 2))).utilization();
        assertThat(weepsOf(run(weeps(5, 8, 2))).utilization()).isLessThan(before);
        assertThat(weepsOf(run(weeps(4, 9, 2))).utilization()).isLessThan(before);
        assertThat(weepsOf(run(weeps(4, 8, 1))).utilization()).isLessThan(before);
        assertThat(weepsOf(run(with(weeps(4, 8, 2), "endDamHeight", "50 mm"))).utilization())
                .isLessThan(before);
    }

    private static Map<String, @Nullable Object> weeps(int count, int diameter, int flow) {
        return with(
                two(),
                "weeps",
                tree(
                        "{\"count\":%d,\"diameter\":\"%d mm\",\"flow\":\"%d L/min\"}"
                                .formatted(count, diameter, flow)));
    }

    /**
     * Applies the remedy to the request as it stands and sees it pass, in both systems of units.
     */
    static Remedy passes(Map<String, @Nullable Object> frame) {
        Remedy last = null;
        for (Reporting reporting : List.of(Frames.US, Frames.SI)) {
            List<Remedy> remedies = run(frame, reporting).outcome().remedies();
            assertThat(remedies).hasSize(1);
            last = remedies.get(0);
            SealsResult after = run(applied(frame, last), reporting);
            assertThat(after.outcome().verdict()).isNotEqualTo(Verdict.EXCEEDED);
            assertThat(after.outcome().utilization()).isCloseTo(last.utilization(), within(1e-4));
        }
        if (last == null) {
            throw new AssertionError();
        }
        return last;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, @Nullable Object> applied(
            Map<String, @Nullable Object> frame, Remedy remedy) {
        Map<String, @Nullable Object> changed = frame;
        for (Remedy.Change change : remedy.changes()) {
            String[] path = change.pointer().substring(1).split("/", -1);
            Object to = change.to();
            if (path.length == 2) {
                to =
                        with(
                                (Map<String, @Nullable Object>)
                                        java.util.Objects.requireNonNull(changed.get(path[0])),
                                path[1],
                                to);
            } else if (path.length == 3) {
                List<Object> items =
                        new java.util.ArrayList<>(
                                (List<Object>)
                                        java.util.Objects.requireNonNull(changed.get(path[0])));
                int index = Integer.parseInt(path[1]);
                Map<String, @Nullable Object> item =
                        new LinkedHashMap<>((Map<String, @Nullable Object>) items.get(index));
                items.set(index, with(item, path[2], to));
                to = items;
            }
            changed = with(changed, path[0], to);
        }
        return changed;
    }

    private static void assertFault(Map<String, @Nullable Object> tree, String pointer) {
        assertThatThrownBy(() -> Binder.bind(tree, SealsRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> assertThat(e.faults()).extracting("pointer").containsExactly(pointer));
    }
}
