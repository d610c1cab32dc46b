package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.document;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;

import java.util.List;
import java.util.Map;
import org.bayledger.check.Verdict;
import org.bayledger.seals.DrivingPressure;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.SealsResult;
import org.junit.jupiter.api.Test;

/** A review passes on what a bay says of air, drainage and observed joints, with its own wind. */
class SealWaterReviewTest {

    @Test
    void airTakesTheBaysWindAndSill() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> seals = object(element(tree, "bays", 1), "seals");
        seals.put(
                "air",
                Documents.tree(
                        """
                        {"outsideTemperature":"-20 degC","insideTemperature":"20 degC",
                         "neutralLevel":"30 m","draftCoefficient":1}"""));
        ReviewItem item = item(review(tree), "N-202/seals", "internal-seals");
        SealsRequest inputs = (SealsRequest) item.inputs();
        Bay bay = document(tree).bays().get(1);
        assertThat(inputs.details().waterAndAir().air().sillLevel()).isEqualTo(bay.sill());
        DrivingPressure driving = ((SealsResult) item.result()).waterAndAir().drivingPressure();
        // the wind of the bay, at strength level from ASCE 7, times 0.6
        assertThat(driving.windPositive().si())
                .isCloseTo(0.6 * inputs.load().positive(), within(1e-6));
        // BS 5925 (from memory): 3463 (1/253.15 - 1/293.15) Pa for each metre
        double stack = 3463 * (1 / 253.15 - 1 / 293.15) * (30 - bay.sill());
        assertThat(driving.stackEffectInward().si()).isCloseTo(stack, within(0.1));
        assertThat(driving.inward().si())
                .isCloseTo(driving.windPositive().si() + stack, within(0.1));

        seals.put("air", Documents.tree("{\"sillLevel\":\"3 m\",\"mechanicalPressure\":\"5 Pa\"}"));
        SealsRequest own =
                (SealsRequest) item(review(tree), "N-202/seals", "internal-seals").inputs();
        assertThat(own.details().waterAndAir().air().sillLevel()).isEqualTo(3);
    }

    @Test
    void observedJointsOpenTheReview() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> seals = object(element(tree, "bays", 1), "seals");
        seals.put(
                "observed",
                List.of(
                        Documents.tree(
                                """
                                {"type":"JOINT_PLUG","condition":"UNSEALED","column":1,"row":1,
                                 "gap":"1 mm","length":"50 mm"}""")));
        ReviewResult result = review(tree);
        assertThat(item(result, "N-202/seals", "internal-seals").verdict())
                .isEqualTo(Verdict.EXCEEDED);
        assertThat(Documents.codes(result, "N-202/seals")).contains("OBSERVED_JOINT_LEAKS");
    }
}
