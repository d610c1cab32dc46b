package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.document;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.object;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.junit.jupiter.api.Test;

class ReviewDocumentTest {

    private static List<String> refused(Map<String, Object> tree) {
        FaultsException[] caught = new FaultsException[1];
        assertThatThrownBy(() -> document(tree))
                .isInstanceOfSatisfying(FaultsException.class, e -> caught[0] = e);
        return caught[0].faults().stream().map(Fault::pointer).toList();
    }

    @Test
    void demoIsAccepted() {
        assertThat(document(demo(1)).bays()).hasSize(5);
        assertThat(document(demo(2)).bays()).hasSize(5);
    }

    @Test
    void namesThatLeadNowhereAreAllReported() {
        Map<String, Object> tree = demo(1);
        element(tree, "bays", 0).put("glassType", "G9");
        element(tree, "bays", 1).put("elevation", "W");
        object(element(tree, "bays", 2), "mullion").put("section", "V9");
        object(element(tree, "bays", 3), "horizontal").put("section", "H9");
        element(element(tree, "bays", 1), "lites", 0).put("row", new java.math.BigDecimal(7));
        assertThat(refused(tree))
                .containsExactlyInAnyOrder(
                        "/bays/0/glassType",
                        "/bays/1/elevation",
                        "/bays/2/mullion/section",
                        "/bays/3/horizontal/section",
                        "/bays/1/lites/0/row");
    }

    /** A review that would take minutes, or fill the memory, is refused before it begins. */
    @Test
    void workIsBounded() {
        Map<String, Object> many = demo(1);
        grid(many, 140, 143);
        assertThat(refusedTexts(many)).containsExactly(tooMany(20_020 + lites(many)));
        Map<String, Object> enough = demo(1);
        grid(enough, 140, 142);
        assertThat(document(enough).bays()).hasSize(5);

        // 170 x 10 lites of a sealed unit with four climates: 1700 (1 + 4 x 12) = 83 300
        Map<String, Object> dear = demo(1);
        grid(dear, 170, 10);
        Map<String, Object> glass = element(dear, "glassTypes", 0);
        Map<String, Object> climate =
                Map.of(
                        "name", "winter",
                        "altitude", "0 m",
                        "cavityTemperatures", List.of("0 degC"),
                        "duration", "12 h");
        glass.put(
                "sealedUnit",
                new HashMap<>(
                        Map.of(
                                "sealed", Map.of("altitude", "0 m", "temperature", "20 degC"),
                                "service", List.of(climate, climate, climate, climate))));
        element(dear, "bays", 0).put("glassType", "G1");
        assertThat(refusedTexts(dear)).singleElement().asString().contains("units of work");
        object(glass, "sealedUnit").put("service", List.of(climate));
        assertThat(document(dear).bays()).hasSize(5);
    }

    private static String tooMany(long lites) {
        return "hold "
                + lites
                + " lites, and one review takes on at most 20000; split the document, by elevation"
                + " for example";
    }

    /** Gives the first bay a grid of its own, without what depends on it. */
    private static void grid(Map<String, Object> tree, int columns, int rows) {
        Map<String, Object> bay = element(tree, "bays", 0);
        bay.put("columns", Collections.nCopies(columns, "60 mm"));
        bay.put("rows", Collections.nCopies(rows, "60 mm"));
        bay.remove("lites");
        bay.remove("anchors");
        bay.remove("stackJoints");
    }

    /** Lites of the other bays. */
    private static long lites(Map<String, Object> tree) {
        long lites = 0;
        for (int i = 1; i < 5; i++) {
            Map<String, Object> bay = element(tree, "bays", i);
            lites +=
                    (long) ((List<?>) bay.get("columns")).size()
                            * ((List<?>) bay.get("rows")).size();
        }
        return lites;
    }

    private static List<String> refusedTexts(Map<String, Object> tree) {
        FaultsException[] caught = new FaultsException[1];
        assertThatThrownBy(() -> document(tree))
                .isInstanceOfSatisfying(FaultsException.class, e -> caught[0] = e);
        assertThat(caught[0].malformed()).isFalse();
        return caught[0].faults().stream().map(Fault::detail).toList();
    }

    @Test
    void idsAreUsedOnce() {
        Map<String, Object> tree = demo(1);
        element(tree, "bays", 4).put("id", "N-201");
        element(tree, "glassTypes", 1).put("id", "G1");
        element(tree, "sections", 1).put("id", "V1");
        assertThat(refused(tree)).contains("/bays/4/id", "/glassTypes/1/id", "/sections/1/id");
        Map<String, Object> slash = demo(1);
        element(slash, "bays", 4).put("id", "E/101");
        assertThat(refused(slash)).containsExactly("/bays/4/id");
    }

    @Test
    void baysStandOnTheirElevation() {
        Map<String, Object> tree = demo(1);
        element(tree, "bays", 2).put("offset", "115 ft");
        element(tree, "bays", 3).put("sill", "90 ft");
        assertThat(refused(tree)).containsExactlyInAnyOrder("/bays/2/offset", "/bays/3/sill");
        Map<String, Object> low = demo(1);
        element(low, "elevations", 1).put("base", "2 ft");
        assertThat(refused(low)).containsExactly("/bays/4/sill");
    }
}
