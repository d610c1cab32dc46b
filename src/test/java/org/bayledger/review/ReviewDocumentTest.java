package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.document;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.object;

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
