package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Map;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Samples of joints against published tables, exact fractions and limits. */
@NullMarked
class SamplingTest {

    /**
     * Sample sizes that show at least one affected of N with 95 %: the table of Cannon and Roe,
     * Livestock Disease Surveys (1982), from memory; it was made with an approximation and may be
     * off by one.
     */
    @ParameterizedTest
    @CsvSource({
        "20,0.10,16",
        "50,0.10,22",
        "100,0.10,25",
        "200,0.10,27",
        "500,0.10,28",
        "1000,0.10,29",
        "20,0.05,19",
        "100,0.05,45",
        "200,0.05,51",
        "500,0.05,56",
        "1000,0.05,57",
        "100,0.01,95",
        "200,0.01,155",
        "500,0.01,225",
        "1000,0.01,258",
        "10000,0.01,294"
    })
    void publishedSampleSizes(int joints, double rate, int published) {
        int sample = Sampling.size(joints, Sampling.defective(joints, rate), 0.95, 0);
        assertThat(sample).isBetween(published - 1, published + 1);
    }

    /**
     * Without an end to the joints the sample is that of the binomial distribution: 29 for 95 % at
     * 10 %, 59 at 5 %, 299 at 1 %, 459 for 99 % at 1 %; with one defect allowed 46 and 93 (tables
     * of success-run and of Wilks, from memory).
     */
    @Test
    void manyJointsAreDrawnAsFromNoEnd() {
        int many = 8_000_000;
        assertThat(Sampling.size(many, many / 10, 0.95, 0)).isEqualTo(29);
        assertThat(Sampling.size(many, many / 20, 0.95, 0)).isEqualTo(59);
        assertThat(Sampling.size(many, many / 100, 0.95, 0)).isEqualTo(299);
        assertThat(Sampling.size(many, many / 100, 0.99, 0)).isEqualTo(459);
        assertThat(Sampling.size(many, many / 10, 0.95, 1)).isEqualTo(46);
        assertThat(Sampling.size(many, many / 20, 0.95, 1)).isEqualTo(93);
        // Clopper and Pearson, one-sided 95 %: 0 of 20 13.91 %, 1 of 20 21.61 %
        assertThat(Sampling.upperBound(many, 20, 0, 0.95) / (double) many)
                .isCloseTo(1 - Math.pow(0.05, 0.05), within(1e-5));
        assertThat(Sampling.upperBound(many, 20, 1, 0.95) / (double) many)
                .isCloseTo(0.2161, within(1e-4));
    }

    @Test
    void limits() {
        // one defective joint: all but a share of 1 - confidence have to be seen
        assertThat(Sampling.size(20, 1, 0.95, 0)).isEqualTo(19);
        assertThat(Sampling.size(100, 1, 0.99, 0)).isEqualTo(99);
        assertThat(Sampling.size(16, 1, 0.95, 0)).isEqualTo(16);
        assertThat(Sampling.size(1, 1, 0.95, 0)).isEqualTo(1);
        assertThat(Sampling.defective(30, 0.1)).isEqualTo(3);
        assertThat(Sampling.defective(31, 0.1)).isEqualTo(4);
        assertThat(Sampling.defective(1, 0.001)).isEqualTo(1);
        // all were seen: what was found is all there is
        assertThat(Sampling.upperBound(40, 40, 3, 0.95)).isEqualTo(3);
        assertThat(Sampling.upperBound(40, 40, 0, 0.95)).isZero();
        // none was good
        assertThat(Sampling.upperBound(40, 5, 5, 0.95)).isEqualTo(40);
        assertThat(Sampling.atMost(10, 5, 8, 2)).isZero();
        assertThat(Sampling.atMost(10, 5, 8, 5)).isEqualTo(1);
    }

    /**
     * Many joints and many defects: the bound is that of the normal distribution, found share +
     * 1.645 standard errors with (N - n) / (N - 1) for the finite number (any textbook of
     * statistics).
     */
    @Test
    void manyDefectsAreBoundedAsByTheNormalDistribution() {
        double error = Math.sqrt(0.25 / 10_000 * 0.99);
        assertThat(Sampling.upperBound(1_000_000, 10_000, 5_000, 0.95) / 1e6)
                .isCloseTo(0.5 + 1.6449 * error, within(2e-4));
        double rare = Math.sqrt(0.01 * 0.99 / 100_000 * 0.9);
        assertThat(Sampling.upperBound(1_000_000, 100_000, 1_000, 0.95) / 1e6)
                .isCloseTo(0.01 + 1.6449 * rare, within(3e-5));
    }

    private static BigInteger choose(int n, int k) {
        BigInteger value = BigInteger.ONE;
        for (int i = 1; i <= k; i++) {
            value = value.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
        }
        return k < 0 || k > n ? BigInteger.ZERO : value;
    }

    /** P(X at most k) in exact fractions. */
    private static double exact(int joints, int defective, int sample, int k) {
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i <= k; i++) {
            sum = sum.add(choose(defective, i).multiply(choose(joints - defective, sample - i)));
        }
        return new BigDecimal(sum)
                .divide(new BigDecimal(choose(joints, sample)), MathContext.DECIMAL64)
                .doubleValue();
    }

    /** Every small lot: sizes, chances and bounds against exact fractions. */
    @Test
    void smallLotsAgainstExactFractions() {
        for (int joints : new int[] {1, 2, 5, 12, 33, 60}) {
            for (int defective = 1; defective <= joints; defective++) {
                for (int allowed = 0; allowed < Math.min(2, defective); allowed++) {
                    int sample = Sampling.size(joints, defective, 0.95, allowed);
                    assertThat(exact(joints, defective, sample, allowed))
                            .isLessThanOrEqualTo(0.05 + 1e-12);
                    assertThat(exact(joints, defective, sample - 1, allowed))
                            .isGreaterThan(0.05 + 1e-12);
                    // a clean sample of the plan bounds the defective ones under what it looks for
                    if (allowed == 0) {
                        assertThat(Sampling.upperBound(joints, sample, 0, 0.95))
                                .isLessThan(defective);
                        assertThat(Sampling.noneFound(joints, defective, sample))
                                .isCloseTo(exact(joints, defective, sample, 0), within(1e-14));
                    }
                }
            }
            for (int sample = 1; sample <= joints; sample++) {
                for (int found = 0; found <= Math.min(3, sample); found++) {
                    int bound = Sampling.upperBound(joints, sample, found, 0.9);
                    assertThat(exact(joints, bound, sample, found)).isGreaterThan(0.1);
                    if (bound < joints - sample + found) {
                        assertThat(exact(joints, bound + 1, sample, found))
                                .isLessThanOrEqualTo(0.1 + 1e-12);
                    }
                    for (int defective = found; defective <= joints; defective++) {
                        assertThat(Sampling.atMost(joints, defective, sample, found))
                                .isCloseTo(exact(joints, defective, sample, found), within(1e-11));
                    }
                }
            }
        }
    }

    private static SealsResult inspected(String json) {
        return run(with(two(), "inspection", Frames.tree(json)));
    }

    private static InspectionRow row(SealsResult result, JointType type) {
        InspectionPlan plan = result.inspection();
        assertThat(plan).isNotNull();
        return plan == null
                ? new InspectionRow(0, type, 0, 0, 0, 0, "", 0, 0, null)
                : plan.rows().stream().filter(r -> r.type() == type).findFirst().orElseThrow();
    }

    /**
     * 66 fastener heads, 10 % rounded up is 7: 22 are enough, P(0) = C(59,22)/C(66,22) = 0.0490...;
     * 16 ends, 2 defective: P(0 of 12) = 4 x 3 / (16 x 15) = 0.05.
     */
    @Test
    void planOfAFrame() {
        SealsResult result = inspected("{\"confidence\":0.95,\"defectRate\":0.1}");
        InspectionRow heads = row(result, JointType.FASTENER_HEAD);
        assertThat(heads.joints()).isEqualTo(66);
        assertThat(heads.defective()).isEqualTo(7);
        assertThat(heads.missProbability())
                .isCloseTo(exact(66, 7, heads.sampleSize(), 0), within(1e-14))
                .isLessThanOrEqualTo(0.05);
        assertThat(exact(66, 7, heads.sampleSize() - 1, 0)).isGreaterThan(0.05);
        InspectionRow ends = row(result, JointType.HORIZONTAL_TO_VERTICAL);
        assertThat(ends.sampleSize()).isEqualTo(12);
        assertThat(ends.missProbability()).isCloseTo(0.05, within(1e-15));
        assertThat(ends.basis()).startsWith("N = 16, D = 0.1 x 16 rounded up = 2;");
        // a single line is looked at whole
        assertThat(row(result, JointType.PERIMETER_SILL).sampleSize()).isEqualTo(1);
        assertThat(ends.sampleSizeAfterOne()).isGreaterThan(12);
        assertThat(ends.boundAfterOne()).isEqualTo(Sampling.upperBound(16, 12, 1, 0.95));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.inspection() == null ? 0 : result.inspection().rows().size())
                .isEqualTo((int) result.joints().stream().filter(j -> j.count() > 0).count());

        SealsResult without = run(two());
        assertThat(without.inspection()).isNull();
        assertThat(codes(without)).contains("INSPECTION_NOT_PLANNED", "STICK_BUILT_TAKEN");
        assertThat(codes(result)).doesNotContain("INSPECTION_NOT_PLANNED");
        assertThat(codes(run(with(two(), "system", "STICK_BUILT"))))
                .doesNotContain("STICK_BUILT_TAKEN");
    }

    private static @Nullable InspectionShown shown(SealsResult result, JointType type) {
        return row(result, type).found();
    }

    private static SealsResult found(int inspected, int defective) {
        return inspected(
                """
                {"confidence":0.95,"defectRate":0.1,
                 "found":[{"type":"FASTENER_HEAD","inspected":%d,"defective":%d}]}"""
                        .formatted(inspected, defective));
    }

    @Test
    void whatAnInspectionFound() {
        SealsResult clean = found(30, 0);
        assertThat(clean.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(clean)).contains("INSPECTION_FOUND_NO_DEFECT");
        assertThat(shown(clean, JointType.FASTENER_HEAD))
                .extracting("upperBound", "action")
                .containsExactly(
                        Sampling.upperBound(66, 30, 0, 0.95),
                        "None was defective and the sample is large enough.");
        int size = row(clean, JointType.FASTENER_HEAD).sampleSize();
        assertThat(shown(found(10, 0), JointType.FASTENER_HEAD))
                .extracting("action")
                .asString()
                .contains("inspect " + (size - 10) + " more");

        SealsResult one = found(size, 1);
        assertThat(one.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(one)).contains("DEFECTIVE_JOINTS_FOUND");
        int more = row(one, JointType.FASTENER_HEAD).sampleSizeAfterOne() - size;
        assertThat(shown(one, JointType.FASTENER_HEAD))
                .extracting("action")
                .asString()
                .contains("inspect the other " + (66 - size), "inspect " + more + " more");
        assertThat(shown(found(60, 1), JointType.FASTENER_HEAD))
                .extracting("action")
                .asString()
                .contains("No other was defective among the 60");
        assertThat(shown(found(66, 4), JointType.FASTENER_HEAD))
                .extracting("upperBound", "action")
                .containsExactly(4, "All were inspected: repair the 4 defective ones.");
        assertThat(found(66, 4).outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(shown(found(20, 2), JointType.FASTENER_HEAD))
                .extracting("action")
                .asString()
                .endsWith("inspect the other 46 joints of this type as well.");
        assertThat(codes(found(67, 0))).contains("INSPECTED_JOINTS_DO_NOT_FIT");
        assertThat(found(67, 0).outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
    }

    @Test
    void refusesWhatCannotBe() {
        for (Map.Entry<String, String> wrong :
                Map.of(
                                "{\"confidence\":0.3,\"defectRate\":0.1}", "/inspection/confidence",
                                "{\"confidence\":0.95,\"defectRate\":0}", "/inspection/defectRate",
                                "{\"confidence\":0.95,\"defectRate\":0.1,\"found\":[{\"type\":\"SPLICE\",\"inspected\":2,\"defective\":3}]}",
                                        "/inspection/found/0/defective",
                                "{\"confidence\":0.95,\"defectRate\":0.1,\"found\":[{\"type\":\"SPLICE\",\"inspected\":2,\"defective\":1},{\"type\":\"SPLICE\",\"inspected\":2,\"defective\":1}]}",
                                        "/inspection/found/1/type")
                        .entrySet()) {
            SystemCountsTest.assertFaults(
                    with(two(), "inspection", Frames.tree(wrong.getKey())), wrong.getValue());
        }
    }
}
