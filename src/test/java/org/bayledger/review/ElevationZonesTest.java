package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.review;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * Zones of elevations laid out by hand. The demo building is 98 ft high with a least dimension of
 * 90 ft: end zones are 9 ft wide (ASCE/SEI 7-16 Fig. 30.5-1, from memory).
 */
class ElevationZonesTest {

    private static final double FOOT = 0.3048;

    private static ElevationZones zones(ReviewResult result, String id) {
        return result.elevationZones().stream()
                .filter(zones -> zones.elevation().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static long feet(Quantity quantity) {
        assertThat(quantity.si() / FOOT).isCloseTo(Math.rint(quantity.si() / FOOT), within(1e-6));
        return Math.round(quantity.si() / FOOT);
    }

    private static List<String> rectangles(ReviewResult result, String id) {
        return zones(result, id).zones().stream()
                .map(
                        z ->
                                "%s: %d-%d, %d-%d"
                                        .formatted(
                                                z.zone(),
                                                feet(z.from()),
                                                feet(z.to()),
                                                feet(z.bottom()),
                                                feet(z.top())))
                .toList();
    }

    private static Map<String, Object> stepped() {
        Map<String, Object> tree = demo(2);
        element(tree, "elevations", 0)
                .put(
                        "steps",
                        List.of(
                                Map.of("from", "0 ft", "to", "40 ft", "height", "48 ft"),
                                Map.of("from", "40 ft", "to", "120 ft", "height", "98 ft")));
        element(tree, "bays", 3).put("offset", "40 ft");
        return tree;
    }

    @Test
    void plainElevationHasAnEndZoneAtEachOutsideCorner() {
        assertThat(rectangles(review(demo(2)), "N"))
                .containsExactly("5: 0-9, 0-98", "4: 9-111, 0-98", "5: 111-120, 0-98");
    }

    @Test
    void outsideCornersHaveEndZonesOnBothSidesAndReentrantOnesNone() {
        Map<String, Object> tree = demo(2);
        element(tree, "elevations", 0)
                .put(
                        "corners",
                        List.of(
                                Map.of("at", "60 ft", "kind", "OUTSIDE"),
                                Map.of("at", "90 ft", "kind", "REENTRANT")));
        ReviewResult result = review(tree);
        assertThat(rectangles(result, "N"))
                .containsExactly(
                        "5: 0-9, 0-98",
                        "4: 9-51, 0-98",
                        "5: 51-69, 0-98",
                        "4: 69-111, 0-98",
                        "5: 111-120, 0-98");
        assertThat(result.findings())
                .extracting("code", "pointer")
                .contains(
                        org.assertj.core.groups.Tuple.tuple(
                                "REENTRANT_CORNER_WITHOUT_END_ZONE", "/elevations/0/corners/1"));
        assertThat(zones(result, "N").edges())
                .extracting(edge -> feet(edge.at()) + " " + edge.kind())
                .containsExactly("0 OUTSIDE", "60 OUTSIDE", "90 REENTRANT", "120 OUTSIDE");
    }

    /** The taller part's edge at 40 ft is free from 48 ft up, and an outside corner there. */
    @Test
    void tallerPartHasAnEndZoneAboveTheLowerRoof() {
        ReviewResult result = review(stepped());
        assertThat(rectangles(result, "N"))
                .containsExactly(
                        "5: 0-9, 0-48",
                        "4: 9-111, 0-48",
                        "5: 111-120, 0-98",
                        "5: 40-49, 48-98",
                        "4: 49-111, 48-98");
        assertThat(item(result, "N-701/lite/1-1", "glass").wind().zones()).containsExactly("5");
        Map<String, Object> lower = stepped();
        element(lower, "bays", 3).put("sill", "20 ft");
        element(lower, "bays", 3).remove("anchors");
        assertThat(item(review(lower), "N-701/lite/1-1", "glass").wind().zones())
                .containsExactly("4");
    }

    /** Both zones touched: the greater suction, and it is said. */
    @Test
    void lineAcrossTheLowerRoofTakesTheGoverningZone() {
        Map<String, Object> tree = stepped();
        element(tree, "bays", 3).put("sill", "47 ft");
        element(tree, "bays", 3).remove("anchors");
        ReviewItem lite = item(review(tree), "N-701/lite/1-1", "glass");
        assertThat(lite.wind().zones()).containsExactly("4", "5");
        assertThat(lite.wind().governingZone()).isEqualTo("5");
        assertThat(lite.findings()).extracting("code").contains("TOUCHES_SEVERAL_ZONES");
    }

    /** Rectangles fill the profile: 40 x 48 + 80 x 98 ft2. */
    @Test
    void rectanglesFillTheProfile() {
        double area =
                zones(review(stepped()), "N").zones().stream()
                        .mapToDouble(
                                z ->
                                        (feet(z.to()) - feet(z.from()))
                                                * (feet(z.top()) - feet(z.bottom())))
                        .sum();
        assertThat(area).isEqualTo(40 * 48 + 80 * 98);
    }

    /** A lower part with a mean roof height of 48 ft follows the low-rise figure with its own q. */
    @Test
    void partWithItsOwnMeanRoofHeight() {
        Map<String, Object> tree = stepped();
        element(tree, "elevations", 0)
                .put(
                        "steps",
                        List.of(
                                Map.of(
                                        "from",
                                        "0 ft",
                                        "to",
                                        "40 ft",
                                        "height",
                                        "48 ft",
                                        "meanRoofHeight",
                                        "48 ft"),
                                Map.of("from", "40 ft", "to", "120 ft", "height", "98 ft")));
        double qh =
                0.00256
                        * 2.01
                        * Math.pow(48.0 / 1200, 2.0 / 7)
                        * 0.85
                        * Math.exp(-0.0000362 * 250)
                        * 115
                        * 115;
        // 12.5 ft2 on the line from -1.4 at 10 ft2 to -0.8 at 500 ft2, 10 % less under a flat roof
        double coefficient = 1.4 - 0.6 * Math.log10(1.25) / Math.log10(50);
        ReviewItem lite = item(review(tree), "N-201/lite/1-3", "glass");
        assertThat(lite.wind().effectiveWindArea().si() / FOOT / FOOT)
                .isCloseTo(12.5, within(1e-6));
        assertThat(lite.wind().negative().si() / 47.88025898)
                .isCloseTo(-qh * (0.9 * coefficient + 0.18), within(1e-3));
    }

    @Test
    void bandsRiseWithTheTableOfHeightsAndCallOutBothSigns() {
        ElevationZones zones = zones(review(demo(2)), "N");
        assertThat(zones.bands())
                .extracting(band -> feet(band.to()))
                .containsExactly(15L, 20L, 25L, 30L, 40L, 50L, 60L, 70L, 80L, 90L, 98L);
        Set<String> kinds = new HashSet<>();
        double before = 0;
        for (ReviewResult.WindRow row : zones.pressures()) {
            kinds.add(row.zone() + " " + row.component());
            assertThat(row.positive().si()).isPositive();
            assertThat(row.negative().si()).isNegative();
            if (row.zone().equals("4") && row.component() == ReviewResult.Component.LITE) {
                assertThat(row.positive().si()).isGreaterThan(before);
                before = row.positive().si();
            }
        }
        assertThat(kinds)
                .containsExactlyInAnyOrder(
                        "4 LITE",
                        "4 MULLION",
                        "4 HORIZONTAL",
                        "4 ANCHOR",
                        "5 LITE",
                        "5 MULLION",
                        "5 HORIZONTAL",
                        "5 ANCHOR");
    }

    /** An anchor shows the wind of the vertical whose reaction it takes. */
    @Test
    void anchorsShowZoneAndArea() {
        ReviewResult result = review(demo(2));
        ReviewItem.Wind anchor = item(result, "N-202/anchor/L2", "anchorage-movement").wind();
        assertThat(anchor.governingZone()).isEqualTo("5");
        assertThat(anchor).isEqualTo(item(result, "N-202/mullion/1", "framing").wind());
        assertThat(anchor.negative().value(UnitSystem.US)).isNotNull();
    }

    @Test
    void profileAndCornersMustFit() {
        Map<String, Object> tree = demo(2);
        element(tree, "elevations", 0)
                .put(
                        "corners",
                        List.of(
                                Map.of("at", "0 ft", "kind", "REENTRANT"),
                                Map.of("at", "130 ft", "kind", "OUTSIDE")));
        element(tree, "elevations", 1)
                .put(
                        "steps",
                        List.of(
                                Map.of("from", "0 ft", "to", "40 ft", "height", "48 ft"),
                                Map.of("from", "42 ft", "to", "80 ft", "height", "90 ft")));
        assertThat(pointers(tree))
                .containsExactlyInAnyOrder(
                        "/elevations/0/corners/0/kind",
                        "/elevations/0/corners/1/at",
                        "/elevations/1/steps/1/from",
                        "/elevations/1/steps/1/to",
                        "/elevations/1/height");
        Map<String, Object> high = stepped();
        element(high, "bays", 3).put("offset", "35 ft");
        assertThat(pointers(high)).containsExactly("/bays/3/sill");
    }

    private static List<String> pointers(Map<String, Object> tree) {
        FaultsException[] refused = new FaultsException[1];
        assertThatThrownBy(() -> Documents.document(tree))
                .isInstanceOfSatisfying(FaultsException.class, e -> refused[0] = e);
        return refused[0].faults().stream().map(Fault::pointer).toList();
    }
}
