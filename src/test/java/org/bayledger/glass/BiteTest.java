package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.bayledger.glass.GlassRequests.after;
import static org.bayledger.glass.GlassRequests.codes;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import java.util.Locale;
import org.bayledger.check.Remedy;
import org.bayledger.check.Verdict;
import org.bayledger.mechanics.Plate;
import org.bayledger.mechanics.PlateResponse;
import org.bayledger.mechanics.PlateTable;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What bending leaves of the bite. */
@NullMarked
class BiteTest {

    private static final String LOAD =
            "{\"positive\":\"4 kPa\",\"negative\":\"-4 kPa\",\"duration\":\"3 s\"}";

    private static String tall(String more) {
        return lite("1200 mm", "2400 mm", List.of(pane("8 mm", "FULLY_TEMPERED")), LOAD, more);
    }

    private static double left(GlassResult result) {
        return result.biteLeft().si();
    }

    private static PlateResponse plate() {
        return PlateTable.standard().respond(new Plate(2.4, 1.2, 0.00742, 71.7e9, 0.22), 4000);
    }

    /** The sill edge stays on its blocks: at the head both horizontal edges' pull-in is lost. */
    @Test
    void jambLosesItsOwnPullInAndTheHeadThatOfBoth() {
        double vertical = plate().longEdgePullIn();
        double horizontal = plate().shortEdgePullIn();
        assertThat(left(run(tall(",\"bite\":\"12 mm\""))))
                .isCloseTo(0.012 - Math.max(vertical, 2 * horizontal), within(1e-9));
        GlassResult lying =
                run(
                        lite(
                                "2400 mm",
                                "1200 mm",
                                List.of(pane("8 mm", "FULLY_TEMPERED")),
                                LOAD,
                                ",\"bite\":\"12 mm\""));
        assertThat(left(lying)).isCloseTo(0.012 - 2 * vertical, within(1e-9));
        assertThat(codes(lying)).contains("BITE_LEFT");
    }

    /** A strip's held edges each move in by 1088/875 w^2/s (beam theory). */
    @Test
    void liteOnTwoEdgesByHand() {
        String json =
                tall(",\"bite\":\"12 mm\"")
                        .replace("FOUR\"", "TWO\",\"spanDirection\":\"HORIZONTAL\"");
        GlassResult sideways = run(json);
        double w = sideways.panes().get(0).centerDeflection().si();
        assertThat(left(sideways)).isCloseTo(0.012 - 1088.0 / 875 * w * w / 1.2, within(1e-9));
        GlassResult upright =
                run(json.replace("HORIZONTAL", "VERTICAL").replace("4 kPa", "0.3 kPa"));
        double v = upright.panes().get(0).centerDeflection().si();
        assertThat(left(upright)).isCloseTo(0.012 - 2176.0 / 875 * v * v / 2.4, within(1e-9));
    }

    @Test
    void lessThanTheMinimumIsExceededAndEveryRemedyPasses() {
        double left = left(run(tall(",\"bite\":\"12 mm\"")));
        GlassResult kept = run(tall(bite(0.999 * left)));
        assertThat(kept.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(kept)).doesNotContain("BITE_LOST", "BITE_LEFT");
        String json = tall(bite(1.05 * left));
        GlassResult lost = run(json);
        assertThat(lost.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(lost)).contains("BITE_LOST");
        assertThat(lost.outcome().utilization())
                .isCloseTo((1.05 * left + 0.012 - left) / 0.012, withinPercentage(0.001));
        assertThat(lost.outcome().remedies())
                .anyMatch(remedy -> remedy.changes().get(0).pointer().equals("/bite"));
        for (Remedy remedy : lost.outcome().remedies()) {
            GlassResult after = after(json, remedy);
            assertThat(after.outcome().verdict()).as(remedy.text()).isEqualTo(Verdict.SATISFIED);
            assertThat(after.outcome().utilization())
                    .isCloseTo(remedy.utilization(), withinPercentage(0.001));
        }
    }

    private static String bite(double minimum) {
        return String.format(
                Locale.ROOT, ",\"bite\":\"12 mm\",\"minimumBite\":\"%.5f mm\"", 1000 * minimum);
    }

    /** Without any minimum an edge that leaves its pocket is still not satisfied. */
    @Test
    void edgeThatLeavesThePocketIsExceeded() {
        GlassResult result = run(tall(",\"bite\":\"0.5 mm\""));
        assertThat(left(result)).isNegative();
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result)).contains("BITE_LOST");
    }

    /** A bite that is short even at rest has a utilization that a reader can take in. */
    @Test
    void biteUnderItsMinimumAtRestHasAFiniteUtilization() {
        GlassResult result = run(tall(",\"bite\":\"12 mm\",\"minimumBite\":\"15 mm\""));
        assertThat(result.outcome().utilization()).isBetween(1.25, 2.0);
    }
}
