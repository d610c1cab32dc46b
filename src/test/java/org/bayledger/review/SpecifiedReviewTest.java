package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.codes;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Verdict;
import org.bayledger.glass.GlassRequest;
import org.junit.jupiter.api.Test;

/**
 * Specified pressures in a review. The demo building's own, at strength level, are +30.26 psf and
 * -30.26 psf in zone 4 and -55.48 psf in zone 5 for its smallest lites at the roof
 * (ReviewByHandTest); at allowable-stress level 0.6 of that, 18.16 and 33.29.
 */
class SpecifiedReviewTest {

    private static final double PSF = 47.88025898033584;

    private static Map<String, Object> line(String zone, String... more) {
        Map<String, Object> line = new HashMap<>(Map.of("zone", zone));
        for (int i = 0; i < more.length; i += 2) {
            line.put(more[i], more[i + 1]);
        }
        return line;
    }

    private static Map<String, Object> full(String zone, String suction) {
        return line(zone, "positive", "25 psf", "negative", suction);
    }

    private static Map<String, Object> with(String basis, Object... lines) {
        Map<String, Object> tree = demo(2);
        tree.put(
                "specifiedPressures",
                new HashMap<>(
                        Map.of(
                                "source",
                                "General notes, sheet S-001",
                                "basis",
                                basis,
                                "pressures",
                                new ArrayList<>(List.of(lines)))));
        return tree;
    }

    private static List<String> texts(ReviewResult result, String code) {
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(ReviewResult.ReviewFinding::text)
                .toList();
    }

    @Test
    void specifiedPressuresGovernAndKeepTheirBasis() {
        ReviewResult result =
                review(with("ALLOWABLE_STRESS", full("4", "-25 psf"), full("5", "-35 psf")));
        ReviewItem lite = item(result, "N-202/lite/2-2", "glass");
        assertThat(lite.wind().source()).isEqualTo(PressureSource.SPECIFIED);
        GlassRequest request = (GlassRequest) lite.inputs();
        assertThat(request.load().pressure().negative() / PSF).isCloseTo(-25, within(1e-6));
        assertThat(request.load().pressure().basis()).isEqualTo(LoadBasis.ALLOWABLE_STRESS);
        assertThat(codes(result, ""))
                .contains("SPECIFIED_PRESSURES_GOVERN")
                .doesNotContain("SPECIFIED_BELOW_COMPUTED");
        assertThat(item(result, "N-202/mullion/1", "framing").wind().governingZone())
                .isEqualTo("5");
    }

    /**
     * 30 psf at allowable-stress level is less than 0.6 x 55.48 psf, though 60 at strength isn't.
     */
    @Test
    void comparisonIsMadeOnOneBasis() {
        ReviewResult low =
                review(with("ALLOWABLE_STRESS", full("4", "-25 psf"), full("5", "-30 psf")));
        assertThat(texts(low, "SPECIFIED_BELOW_COMPUTED"))
                .hasSize(2)
                .allSatisfy(
                        text ->
                                assertThat(text)
                                        .contains("negative", "zone 5", "-30 psf", "-33.29 psf"));
        assertThat(item(low, "N-203/lite/1-1", "glass").verdict())
                .isEqualTo(item(review(demo(2)), "N-203/lite/1-1", "glass").verdict());
        ReviewResult strength =
                review(with("STRENGTH", full("4", "-31 psf"), full("5", "-50 psf")));
        assertThat(texts(strength, "SPECIFIED_BELOW_COMPUTED"))
                .anySatisfy(text -> assertThat(text).contains("-50 psf", "-55.48 psf"))
                .anySatisfy(text -> assertThat(text).contains("positive", "25 psf", "30.26 psf"))
                .noneSatisfy(text -> assertThat(text).contains("-31 psf"));
        ReviewResult other =
                review(with("CHARACTERISTIC", full("4", "-1 psf"), full("5", "-1 psf")));
        assertThat(codes(other, ""))
                .contains("SPECIFIED_NOT_COMPARED")
                .doesNotContain("SPECIFIED_BELOW_COMPUTED");
    }

    @Test
    void missingSignLeavesOnlyItsZoneUndetermined() {
        ReviewResult result =
                review(
                        with(
                                "ALLOWABLE_STRESS",
                                full("4", "-20 psf"),
                                line("5", "positive", "25 psf")));
        ReviewItem end = item(result, "N-201/lite/1-1", "glass");
        assertThat(end.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(end.wind().negative()).isNull();
        assertThat(codes(result, "N-201/lite/1-1")).contains("SPECIFIED_SIGN_MISSING");
        assertThat(item(result, "N-202/mullion/1", "framing").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
        assertThat(item(result, "N-203/lite/1-1", "glass").verdict()).isEqualTo(Verdict.SATISFIED);
    }

    @Test
    void missingZoneIsSaidEvenWhereNoBayStands() {
        Map<String, Object> tree = with("ALLOWABLE_STRESS", full("4", "-25 psf"));
        ReviewResult result = review(tree);
        assertThat(texts(result, "SPECIFIED_ZONE_MISSING"))
                .containsExactlyInAnyOrder(
                        "No pressures are specified for zone 5 of elevation N. It is not assumed;"
                                + " have it called out.",
                        "No pressures are specified for zone 5 of elevation E. It is not assumed;"
                                + " have it called out.");
        assertThat(result.elevationZones().get(0).pressures())
                .filteredOn(row -> row.zone().equals("5"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.negative()).isNull());
    }

    /** Rows of N-203 stand at 14 to 17, 17 to 25 and 25 to 27.5 ft: a gap from 20 to 30 ft. */
    @Test
    void gapInHeight() {
        ReviewResult result =
                review(
                        with(
                                "ALLOWABLE_STRESS",
                                line(
                                        "4",
                                        "to",
                                        "20 ft",
                                        "positive",
                                        "25 psf",
                                        "negative",
                                        "-20 psf"),
                                line(
                                        "4",
                                        "from",
                                        "30 ft",
                                        "positive",
                                        "25 psf",
                                        "negative",
                                        "-20 psf"),
                                full("5", "-35 psf")));
        assertThat(item(result, "N-203/lite/1-1", "glass").verdict()).isEqualTo(Verdict.SATISFIED);
        for (String lite : List.of("N-203/lite/1-2", "N-203/lite/1-3")) {
            assertThat(item(result, lite, "glass").verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(item(result, lite, "glass").findings())
                    .extracting("text")
                    .anySatisfy(
                            text ->
                                    assertThat(text.toString())
                                            .contains("between 20 ft and 30 ft"));
        }
    }

    /** An 80 ft2 lite takes what is given for 50 ft2; one of 12.5 ft2 has nothing. */
    @Test
    void areasBetweenThePointsTakeTheSmallerOne() {
        ReviewResult result =
                review(
                        with(
                                "ALLOWABLE_STRESS",
                                line(
                                        "4",
                                        "effectiveWindArea",
                                        "20 ft2",
                                        "positive",
                                        "25 psf",
                                        "negative",
                                        "-25 psf"),
                                line(
                                        "4",
                                        "effectiveWindArea",
                                        "50 ft2",
                                        "positive",
                                        "22 psf",
                                        "negative",
                                        "-22 psf"),
                                line(
                                        "4",
                                        "effectiveWindArea",
                                        "100 ft2",
                                        "positive",
                                        "20 psf",
                                        "negative",
                                        "-20 psf"),
                                full("5", "-35 psf")));
        assertThat(item(result, "N-202/lite/2-2", "glass").wind().negative().si() / PSF)
                .isCloseTo(-22, within(1e-6));
        assertThat(codes(result, "")).contains("SPECIFIED_AREA_MISSING");
    }

    @Test
    void withoutSiteTheZoneWidthHasToBeGiven() {
        Map<String, Object> tree =
                with("ALLOWABLE_STRESS", full("4", "-25 psf"), full("5", "-35 psf"));
        ReviewResult withSite = review(tree);
        tree.remove("site");
        ReviewResult unknown = review(tree);
        assertThat(codes(unknown, "N-202/lite/2-2")).contains("ZONE_WIDTH_NOT_GIVEN");
        assertThat(item(unknown, "N-202/lite/2-2", "glass").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
        Documents.object(tree, "specifiedPressures").put("zoneWidth", "9 ft");
        ReviewResult given = review(tree);
        assertThat(given.elevationZones()).isEqualTo(withSite.elevationZones());
        assertThat(item(given, "N-202/mullion/1", "framing"))
                .isEqualTo(item(withSite, "N-202/mullion/1", "framing"));
    }

    @Test
    void otherElevationsAreComputedAndItIsSaid() {
        Map<String, Object> north = full("4", "-25 psf");
        north.put("elevation", "N");
        Map<String, Object> end = full("5", "-35 psf");
        end.put("elevation", "N");
        Map<String, Object> tree = with("ALLOWABLE_STRESS", north, end);
        ReviewResult result = review(tree);
        assertThat(item(result, "E-101/lite/1-1", "glass").wind().source())
                .isEqualTo(PressureSource.COMPUTED);
        assertThat(texts(result, "ELEVATION_NOT_SPECIFIED"))
                .singleElement()
                .satisfies(text -> assertThat(text).contains("E: its pressures were computed"));
        tree.remove("site");
        assertThat(item(review(tree), "E-101/lite/1-1", "glass").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
    }

    @Test
    void contradictionsAreRefused() {
        assertThat(
                        pointers(
                                with(
                                        "STRENGTH",
                                        full("4", "-25 psf"),
                                        line("4", "from", "20 ft", "negative", "-30 psf"),
                                        line(
                                                "5",
                                                "effectiveWindArea",
                                                "20 ft2",
                                                "negative",
                                                "-30 psf"),
                                        line(
                                                "5",
                                                "effectiveWindArea",
                                                "50 ft2",
                                                "negative",
                                                "-40 psf"),
                                        line("5", "negative", "-40 psf"),
                                        line("A", "negative", "-40 psf"))))
                .containsExactlyInAnyOrder(
                        "/specifiedPressures/pressures/1",
                        "/specifiedPressures/pressures/3/negative",
                        "/specifiedPressures/pressures/4/effectiveWindArea",
                        "/specifiedPressures/pressures/4/effectiveWindArea",
                        "/specifiedPressures/pressures/5/zone");
        Map<String, Object> elsewhere = full("4", "-25 psf");
        elsewhere.put("elevation", "W");
        assertThat(pointers(with("STRENGTH", elsewhere)))
                .containsExactly("/specifiedPressures/pressures/0/elevation");
        assertThat(pointers(with("STRENGTH", full("A", "-25 psf"))))
                .containsExactly("/specifiedPressures/pressures");
    }

    private static List<String> pointers(Map<String, Object> tree) {
        FaultsException[] refused = new FaultsException[1];
        assertThatThrownBy(() -> Documents.document(tree))
                .isInstanceOfSatisfying(FaultsException.class, e -> refused[0] = e);
        return refused[0].faults().stream().map(Fault::pointer).toList();
    }
}
