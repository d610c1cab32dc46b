package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Objects;
import org.bayledger.blocks.AsFound;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.PointLoad;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Setting blocks found on site, through a bay of two rows. */
@NullMarked
class AsFoundReviewTest {

    private static final double INCH = 0.0254;

    /** One column of 10 ft, two rows of 8 ft, panes of 6 mm and 6 mm: 491.6 lb a lite. */
    private static final String JOB =
            """
            {"name":"Two rows","units":"US",
             "site":{"standard":"ASCE_7_16","basicWindSpeed":"115 mph","exposureCategory":"B",
               "meanRoofHeight":"40 ft","leastHorizontalDimension":"90 ft","roofSlope":"0 deg",
               "enclosureClassification":"ENCLOSED","groundElevation":"0 ft",
               "topographicFactor":1.0,"designBasis":"STRENGTH"},
             "glassTypes":[{"id":"G","panes":[
               {"nominalThickness":"6 mm","heatTreatment":"HEAT_STRENGTHENED"},
               {"nominalThickness":"6 mm","heatTreatment":"HEAT_STRENGTHENED"}],
               "cavities":[{"width":"12 mm"}]}],
             "sections":[{"id":"H","secondMomentOfArea":"4.2 in4","sectionModulus":"1.9 in3",
               "elasticModulus":"10100 ksi","allowableBendingStress":"15.2 ksi",
               "deadLoadSecondMomentOfArea":"6.2 in4","deadLoadSectionModulus":"2.5 in3"}],
             "elevations":[{"id":"N","width":"60 ft","height":"40 ft","base":"0 ft",
               "cornerAtLeft":true,"cornerAtRight":true}],
             "bays":[{"id":"B","elevation":"N","offset":"20 ft","sill":"0 ft",
               "columns":["10 ft"],"rows":["8 ft","8 ft"],"glassType":"G",
               "sillSupport":"SHIMMED_SILL","horizontal":{"section":"H"},
               "glazingPocket":{"edgeClearance":"%s in","bite":"0.75 in"},
               "lites":[%s]}]}""";

    private static final String AT_QUARTER =
            """
            {"column":1,"row":2,"installed":{"drawnPoint":"EIGHTH","blocks":[
              {"position":"30 in","length":"8 in","width":"1 in","material":"EPDM","hardness":85,
               "restsOn":"MEMBER","carries":"ALL_PANES"},
              {"position":"%s in","length":"8 in","width":"1 in","material":"EPDM","hardness":85,
               "restsOn":"MEMBER","carries":"ALL_PANES"}]}}""";

    private static ReviewResult review(String clearance, String lites) {
        return Documents.review(Documents.tree(JOB.formatted(clearance, lites)));
    }

    private static AsFound found(ReviewItem item) {
        return Objects.requireNonNull(
                ((SettingBlocksResult) Objects.requireNonNull(item.result())).asFound());
    }

    /**
     * By hand: the lite weighs 30 kg/m2 x 7.4322 m2 = 222.97 kg = 491.56 lbf. At the quarter points
     * the horizontal bends by 0.2055 in x 491.56/520 = 0.1943 in, at the eighth points by 0.1038
     * in: over a clearance of 3/16 in the blocks as found put it on the lite below.
     */
    @Test
    void theLiteBelowGetsTouched() {
        String item = "B/lite/1-2";
        ReviewResult result = review("0.1875", AT_QUARTER.formatted("90"));
        ReviewItem blocks = Documents.item(result, item, "setting-blocks");
        assertThat(blocks.verdict()).isEqualTo(Verdict.EXCEEDED);
        AsFound found = found(blocks);
        assertThat(found.touchesBelow()).isTrue();
        assertThat(Objects.requireNonNull(found.memberDeflection()).si() / INCH)
                .isCloseTo(0.1943, offset(1e-4));
        assertThat(Objects.requireNonNull(found.clearanceLeft()).si() / INCH)
                .isCloseTo(0.1875 - 0.1943, offset(1e-4));
        assertThat(Documents.codes(result, item))
                .contains("GLAZING_BELOW_TOUCHED", "BLOCK_OFF_THE_DRAWING");
        assertThat(Documents.codes(review("0.1875", ""), item))
                .doesNotContain("GLAZING_BELOW_TOUCHED", "BLOCK_OFF_THE_DRAWING");
        assertThat(result.bays().get(0).items().stream().map(ReviewItem::id))
                .isEqualTo(
                        review("0.1875", "").bays().get(0).items().stream()
                                .map(ReviewItem::id)
                                .toList());
    }

    /** The horizontal is looked at under the blocks where they are, each with what it carries. */
    @Test
    void theHorizontalCarriesWhatWasFound() {
        ReviewItem framing =
                Documents.item(
                        review("0.5", AT_QUARTER.formatted("75")),
                        "B/horizontal/2",
                        "framing-dead-load");
        List<PointLoad> loads =
                Objects.requireNonNull(
                        ((FramingRequest) Objects.requireNonNull(framing.inputs())).pointLoads());
        double weight = 222.967 * 9.80665;
        assertThat(loads.get(0).at() / INCH).isCloseTo(30, offset(1e-9));
        assertThat(loads.get(0).force()).isCloseTo(weight / 3, offset(0.01));
        assertThat(loads.get(1).at() / INCH).isCloseTo(75, offset(1e-9));
        assertThat(loads.get(1).force()).isCloseTo(2 * weight / 3, offset(0.01));
    }

    @Test
    void blocksBeyondTheLiteAreRefusedWithTheDocument() {
        assertThatThrownBy(() -> review("0.5", AT_QUARTER.formatted("121")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly(
                                                "/bays/0/lites/0/installed/blocks/1/position"));
    }
}
