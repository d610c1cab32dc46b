package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import org.bayledger.check.Finding;
import org.bayledger.framing.FramingResult;
import org.bayledger.glass.GlassResult;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What a site chooses for deflections and its basis, as they reach the checks of a review. */
@NullMarked
class ServiceabilityReviewTest {

    private static final String MULLION = "/mullion/2";

    private static ReviewResult review(String name, Object value) {
        Map<String, Object> tree = Documents.demo(1);
        Documents.object(tree, "site").put(name, value);
        return Documents.review(tree);
    }

    private static FramingResult mullion(ReviewResult result) {
        String bay = result.bays().get(0).id();
        return (FramingResult)
                java.util.Objects.requireNonNull(
                        Documents.item(result, bay + MULLION, "framing").result());
    }

    /** The choice reaches every member under wind, and the review says so before all else. */
    @Test
    void theChoiceReachesTheFramingAndIsSaid() {
        ReviewResult without = Documents.review(Documents.demo(1));
        ReviewResult with =
                review(
                        "serviceability",
                        Map.of("factor", new BigDecimal("0.42"), "reason", "agreed"));
        FramingResult full = mullion(without);
        FramingResult less = mullion(with);
        assertThat(less.maxDeflection().si())
                .isCloseTo(0.7 * full.maxDeflection().si(), within(1e-12));
        assertThat(less.maxMoment()).isEqualTo(full.maxMoment());
        assertThat(less.reactions()).isEqualTo(full.reactions());
        assertThat(with.findings())
                .anySatisfy(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("SERVICEABILITY_WIND_CHOSEN");
                            assertThat(finding.pointer()).isEqualTo("/site/serviceability");
                        })
                .anySatisfy(
                        finding -> {
                            assertThat(finding.code())
                                    .isEqualTo("DEFLECTION_LOAD_NOT_FOR_GLASS_FRAMING");
                            assertThat(finding.severity()).isEqualTo(Finding.Severity.ACTION);
                            assertThat(finding.items()).isNotEmpty();
                        });
        assertThat(without.findings())
                .noneMatch(finding -> finding.code().contains("SERVICEABILITY"));
        assertThat(with.windSchedule()).isEqualTo(without.windSchedule());
    }

    /** Pressures called out at either level load glass and metal alike: 0.6 is taken once. */
    @Test
    void theBasisOfTheSiteDoesNotChangeWhatMembersCarry() {
        ReviewResult strength = review("designBasis", "STRENGTH");
        ReviewResult allowable = review("designBasis", "ALLOWABLE_STRESS");
        assertThat(mullion(strength).maxMoment().si())
                .isCloseTo(mullion(allowable).maxMoment().si(), within(1e-6));
        for (int i = 0; i < strength.bays().size(); i++) {
            for (int k = 0; k < strength.bays().get(i).items().size(); k++) {
                ReviewItem one = strength.bays().get(i).items().get(k);
                ReviewItem two = allowable.bays().get(i).items().get(k);
                assertThat(two.verdict()).as(one.id()).isEqualTo(one.verdict());
                if (one.utilization() != null) {
                    assertThat(two.utilization())
                            .as("%s %s", one.id(), one.check())
                            .isCloseTo(one.utilization(), within(1e-9));
                }
                if (one.result() instanceof GlassResult) {
                    assertThat(one.wind()).isNotNull();
                    assertThat(one.wind().negative().si())
                            .isCloseTo(two.wind().negative().si() / 0.6, within(1e-6));
                }
            }
        }
    }
}
