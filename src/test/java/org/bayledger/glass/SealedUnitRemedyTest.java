package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bayledger.glass.GlassRequests.after;
import static org.bayledger.glass.GlassRequests.bind;
import static org.bayledger.glass.GlassRequests.laminate;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Remedies with the gas sealed in, and laminated panes of unknown warmth. */
@NullMarked
class SealedUnitRemedyTest {

    private static String sealed(String altitude, String temperature, String duration) {
        return """
        ,"sealedUnit":{"sealed":{"altitude":"0 m","temperature":"20 degC"},
         "service":[{"name":"season","altitude":"%s","cavityTemperatures":["%s"],"duration":"%s"}]}"""
                .formatted(altitude, temperature, duration);
    }

    private static String load(String pressure) {
        return "{\"positive\":\"%s\",\"negative\":\"-%s\",\"duration\":\"3 s\"}"
                .formatted(pressure, pressure);
    }

    /** A pane that is too weak for the wind and small enough for the climate to matter. */
    @Test
    void remediesPassWithTheGasSealedInToo() {
        for (String temperature : List.of("-25 degC", "-5 degC", "45 degC", "70 degC")) {
            for (String width : List.of("450 mm", "700 mm", "1200 mm")) {
                for (String pressure : List.of("3 kPa", "6 kPa", "9 kPa")) {
                    String json =
                            lite(
                                    width,
                                    "1500 mm",
                                    List.of(pane("4 mm", "ANNEALED"), pane("4 mm", "ANNEALED")),
                                    load(pressure),
                                    sealed("600 m", temperature, "30 d"));
                    GlassResult failed = run(json);
                    for (Remedy remedy : failed.outcome().remedies()) {
                        assertThat(after(json, remedy).outcome().verdict())
                                .as("%s %s %s: %s", temperature, width, pressure, remedy.text())
                                .isEqualTo(Verdict.SATISFIED);
                    }
                }
            }
        }
    }

    /**
     * Looking for remedies never refuses what was asked: tempered glass has no factor for a year.
     */
    @Test
    void heatTreatedGlassIsNotOfferedWhereTheClimateLastsLonger() {
        String json =
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(pane("4 mm", "ANNEALED"), pane("4 mm", "ANNEALED")),
                        load("4 kPa"),
                        sealed("50 m", "15 degC", "365 d"));
        GlassResult result = run(json);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().remedies())
                .isNotEmpty()
                .noneMatch(remedy -> remedy.text().startsWith("Stronger"));
    }

    /**
     * Nobody knows how cold the interlayer is while the climate acts: a laminated pane draws at
     * least what it draws with an interlayer so stiff that its plies act as one.
     */
    @Test
    void laminatedPaneDrawsWhatARigidInterlayerDraws() {
        String film = "{\"material\":\"PVB\",\"thickness\":\"0.38 mm\"}";
        String stiff =
                "{\"material\":\"IONOMER\",\"thickness\":\"0.38 mm\",\"temperature\":\"20 degC\"}";
        double[] drawn = new double[2];
        for (int i = 0; i < 2; i++) {
            GlassResult result =
                    run(
                            lite(
                                    "900 mm",
                                    "900 mm",
                                    List.of(
                                            laminate(
                                                    "3 mm",
                                                    "3 mm",
                                                    i == 0 ? film : stiff,
                                                    "ANNEALED"),
                                            pane("6 mm", "ANNEALED")),
                                    load("0.5 kPa"),
                                    sealed("0 m", "0 degC", "30 d")));
            SealedUnitResult.Case alone =
                    result.sealedUnit().cases().stream()
                            .filter(one -> one.climate() != null && one.wind() == null)
                            .findFirst()
                            .orElseThrow();
            drawn[i] = alone.panes().get(0).pressure().si();
        }
        assertThat(drawn[0]).isGreaterThanOrEqualTo(0.99 * drawn[1]).isPositive();
    }

    /**
     * Two plies of 22 mm as one piece are no thin plate on 400 mm: refused in words, not a fault.
     */
    @Test
    void pieceTooThickForAPlateIsRefused() {
        String film = "{\"material\":\"PVB\",\"thickness\":\"1.52 mm\"}";
        GlassRequest request =
                bind(
                        lite(
                                "400 mm",
                                "400 mm",
                                List.of(
                                        laminate("22 mm", "22 mm", film, "ANNEALED"),
                                        pane("6 mm", "ANNEALED")),
                                load("1 kPa"),
                                sealed("0 m", "0 degC", "30 d")));
        assertThatThrownBy(() -> GlassCheck.run(request, GlassRequests.SI))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> assertThat(e.faults().get(0).pointer()).isEqualTo("/glass/panes/0"));
    }
}
