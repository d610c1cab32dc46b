package org.bayledger.anchorage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.SOUND;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.codes;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.run;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Force between anchors that are both fixed. L3 and L4 stand 144 in apart on slabs that go down 0.5
 * in and 0.4 in; E A = 10 100 ksi x 2 in2 = 20 200 kip; warming 120 degF, cooling 60 degF.
 */
@NullMarked
class LockedInTest {

    private static final double KIP = 4448.2216152605;
    private static final double EA = 20_200;
    private static final double ALPHA = 13.1e-6;

    private static final String TWICE =
            SOUND.replace("\"WIND_LOAD\"", "\"DEAD_LOAD\"")
                    .replace("\"material\"", "\"sectionArea\":\"2 in2\",\"material\"");

    private static double kip(@Nullable Quantity force) {
        return Objects.requireNonNull(force).si() / KIP;
    }

    private static LockedInResult pair(String json) {
        return run(json).pieces().get(1).lockedIn().get(0);
    }

    /** Hooke's law by hand: N = E A (alpha dT + s / L). */
    @Test
    void anchorsThatDoNotGive() {
        LockedInResult pair = pair(TWICE);
        assertThat(pair.lower()).isEqualTo("L3");
        assertThat(pair.upper()).isEqualTo("L4");
        assertThat(kip(pair.thermal())).isCloseTo(EA * ALPHA * 120, offset(1e-6));
        // the upper slab down by 0.4 in and the columns shorter by 0.02 in push
        assertThat(kip(pair.compression()))
                .isCloseTo(EA * (ALPHA * 120 + 0.42 / 144), offset(1e-6));
        // the lower slab down by 0.5 in pulls
        assertThat(kip(pair.tension())).isCloseTo(EA * (ALPHA * 60 + 0.5 / 144), offset(1e-6));
        AnchorageMovementResult result = run(TWICE);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("SEVERAL_DEAD_LOAD_ANCHORS"))
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .contains("where the anchors do not give", "of compression", "L3 and L4");
    }

    /** Bar and two springs in line: N = (alpha L dT + s) / (L/EA + 1/k1 + 1/k2). */
    @Test
    void anchorsThatGive() {
        // 24 000 lbf/ft is 2 kip/in
        String soft =
                TWICE.replace(
                        "\"slabLiveLoadDeflection\"",
                        "\"stiffness\":\"24000 lbf/ft\",\"slabLiveLoadDeflection\"");
        double gives = 144 / EA + 0.5 + 0.5;
        LockedInResult pair = pair(soft);
        assertThat(kip(pair.thermal())).isCloseTo(ALPHA * 144 * 120 / gives, offset(1e-6));
        assertThat(kip(pair.compression()))
                .isCloseTo((ALPHA * 144 * 120 + 0.42) / gives, offset(1e-6));
        assertThat(kip(pair.tension())).isCloseTo((ALPHA * 144 * 60 + 0.5) / gives, offset(1e-6));
        assertThat(codes(run(soft))).contains("SEVERAL_DEAD_LOAD_ANCHORS");
        // only one of the two gives
        String half = TWICE.replace("\"40 ft\"", "\"40 ft\",\"stiffness\":\"24000 lbf/ft\"");
        assertThat(kip(pair(half).thermal()))
                .isCloseTo(ALPHA * 144 * 120 / (144 / EA + 0.5), offset(1e-6));
    }

    /**
     * Three equal anchors at equal distances: the one in the middle does not move, and each half is
     * a bar between an anchor that gives and one that does not.
     */
    @Test
    void symmetricChainOfThree() {
        String three =
                """
                {"anchors":[%s,%s,%s],"stackJoints":[],"material":"ALUMINUM","sectionArea":"2 in2",
                 "temperature":{"installed":"60 degF","minimum":"0 degF","maximum":"180 degF"},
                 "erectionTolerance":"0 in","columnShortening":"0 in"}"""
                        .formatted(fixed("A", 0), fixed("B", 12), fixed("C", 24));
        List<LockedInResult> pairs = run(three).pieces().get(0).lockedIn();
        assertThat(pairs).hasSize(2);
        for (LockedInResult pair : pairs) {
            assertThat(kip(pair.thermal()))
                    .isCloseTo(ALPHA * 144 * 120 / (144 / EA + 0.5), offset(1e-6));
        }
        assertThat(kip(pairs.get(0).compression()))
                .isCloseTo(
                        kip(pairs.get(1).tension()) + ALPHA * 144 * 60 / (144 / EA + 0.5),
                        offset(1e-6));
    }

    private static String fixed(String id, int feet) {
        return "{\"id\":\"%s\",\"elevation\":\"%d ft\",\"role\":\"DEAD_LOAD\",\"stiffness\":\"24000 lbf/ft\",\"slabLiveLoadDeflection\":\"0.3 in\"}"
                .formatted(id, feet);
    }

    /** Softer anchors and smaller ranges of temperature lock in less, whatever the numbers. */
    @Test
    void stifferAndHotterLocksInMore() {
        Random random = new Random(11);
        for (int i = 0; i < 100; i++) {
            double stiffness = 1000 + 1e5 * random.nextDouble();
            double hot = 100 + 100 * random.nextDouble();
            LockedInResult one = pair(with(stiffness, hot));
            LockedInResult stiffer = pair(with(stiffness * 2, hot));
            LockedInResult hotter = pair(with(stiffness, hot + 20));
            assertThat(kip(stiffer.compression())).isGreaterThan(kip(one.compression()));
            assertThat(kip(stiffer.tension())).isGreaterThan(kip(one.tension()));
            assertThat(kip(hotter.compression())).isGreaterThan(kip(one.compression()));
            assertThat(kip(one.thermal())).isLessThan(EA * ALPHA * (hot - 60));
        }
    }

    private static String with(double stiffness, double hot) {
        return TWICE.replace("\"40 ft\"", "\"40 ft\",\"stiffness\":\"" + stiffness + " lbf/ft\"")
                .replace("180 degF", hot + " degF");
    }

    /** Two fixed anchors at one level are one place: nothing is divided by their distance. */
    @Test
    void twoAnchorsAtOneLevel() {
        AnchorageMovementResult result = run(TWICE.replace("\"40 ft\"", "\"28 ft\""));
        assertThat(result.pieces().get(1).lockedIn()).isEmpty();
        assertThat(codes(result)).contains("SEVERAL_DEAD_LOAD_ANCHORS");
    }

    @Test
    void whatIsNotKnownIsNotCounted() {
        String unsaid = TWICE.replace(",\"slabLiveLoadDeflection\":\"0.4 in\"", "");
        LockedInResult pair = pair(unsaid);
        assertThat(pair.compression()).isNull();
        assertThat(pair.tension()).isNull();
        assertThat(kip(pair.thermal())).isPositive();
    }
}
