package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.glass.GlassRequests.GUST;
import static org.bayledger.glass.GlassRequests.bind;
import static org.bayledger.glass.GlassRequests.codes;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The framing under the held edges: L/175 and 3/4 in (IBC 2403.3, from memory). */
@NullMarked
class EdgeSupportTest {

    private static final List<String> THICK = List.of(pane("12 mm", "ANNEALED"));

    private static String lite4(String support) {
        return lite("1400 mm", "3500 mm", THICK, GUST, support);
    }

    private static String support(String deflections) {
        return ",\"edgeSupport\":{" + deflections + "}";
    }

    @Test
    void givesTheLimitOfEachHeldEdgeAndLeavesItToBeProven() {
        GlassResult result = run(lite4(""));
        assertThat(result.edges())
                .extracting(EdgeResult::edge)
                .containsExactly(
                        LiteEdge.HEAD, LiteEdge.SILL, LiteEdge.LEFT_JAMB, LiteEdge.RIGHT_JAMB);
        // 1400/175 = 8 mm; 3500/175 = 20 mm, but 3/4 in = 19.05 mm at most
        assertThat(result.edges().get(0).deflectionLimit().si()).isCloseTo(0.008, within(1e-12));
        assertThat(result.edges().get(2).deflectionLimit().si()).isCloseTo(0.01905, within(1e-12));
        assertThat(result.edges()).allSatisfy(edge -> assertThat(edge.utilization()).isNull());
        assertThat(text(result, "EDGE_SUPPORT_TO_BE_PROVEN"))
                .contains("head 8 mm", "sill 8 mm", "left jamb 19.05 mm", "right jamb 19.05 mm");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    @Test
    void isSilentWhereEveryEdgeIsHeldFirmly() {
        GlassResult result =
                run(
                        lite4(
                                support(
                                        "\"head\":\"7.9 mm\",\"sill\":\"0 mm\",\"leftJamb\":\"19 mm\",\"rightJamb\":\"10 mm\"")));
        assertThat(codes(result))
                .doesNotContain("EDGE_SUPPORT_TO_BE_PROVEN", "EDGE_SUPPORT_TOO_SOFT");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isCloseTo(19 / 19.05, within(1e-9));
        assertThat(result.edges().get(1).utilization()).isEqualTo(0.0);
        assertThat(result.outcome().trace())
                .extracting("symbol")
                .contains("dlim,head", "d/dlim,right jamb");
    }

    /** A soft edge is the framing's fault: glass is no remedy for it. */
    @Test
    void isExceededWhereAnEdgeIsTooSoft() {
        GlassResult result = run(lite4(support("\"sill\":\"12 mm\",\"head\":\"5 mm\"")));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isCloseTo(1.5, within(1e-9));
        assertThat(text(result, "EDGE_SUPPORT_TOO_SOFT")).contains("sill bends by 12 mm", "8 mm");
        assertThat(text(result, "EDGE_SUPPORT_TO_BE_PROVEN"))
                .contains("left jamb", "right jamb")
                .doesNotContain("head", "sill");
        assertThat(result.outcome().remedies()).isEmpty();
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("EDGE_SUPPORT_TOO_SOFT"))
                .extracting(Finding::pointer)
                .containsExactly("/edgeSupport/sill");
        GlassResult unloaded =
                run(
                        lite(
                                "1400 mm",
                                "3500 mm",
                                THICK,
                                "{\"duration\":\"3 s\"}",
                                support("\"sill\":\"12 mm\"")));
        assertThat(unloaded.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(unloaded.outcome().utilization()).isCloseTo(1.5, within(1e-9));
    }

    @Test
    void countsTheHeldEdgesOnlyOnTwo() {
        String two = lite("1000 mm", "1000 mm", THICK, GUST, "").replace("FOUR", "TWO");
        String wide = two.replace("\"glass\"", "\"spanDirection\":\"HORIZONTAL\",\"glass\"");
        assertThat(run(wide).edges())
                .extracting(EdgeResult::edge)
                .containsExactly(LiteEdge.LEFT_JAMB, LiteEdge.RIGHT_JAMB);
        assertThat(run(wide.replace("HORIZONTAL", "VERTICAL")).edges())
                .extracting(EdgeResult::edge)
                .containsExactly(LiteEdge.HEAD, LiteEdge.SILL);
        String free =
                wide.replace("\"load\"", support("\"head\":\"1 mm\"").substring(1) + ",\"load\"");
        assertThatThrownBy(() -> bind(free))
                .hasMessageContaining("/edgeSupport/head: belongs to an edge that is free")
                .hasMessageContaining("from jamb to jamb");
        String unsaid =
                two.replace("\"load\"", support("\"head\":\"1 mm\"").substring(1) + ",\"load\"");
        assertThatThrownBy(() -> bind(unsaid))
                .hasMessageContaining("/spanDirection: must be given");
        assertThatThrownBy(() -> bind(lite4(support("\"head\":\"-1 mm\""))))
                .hasMessageContaining("/edgeSupport/head: must not be negative");
    }

    private static String text(GlassResult result, String code) {
        return result.outcome().findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }
}
