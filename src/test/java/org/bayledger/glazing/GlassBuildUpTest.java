package org.bayledger.glazing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@NullMarked
class GlassBuildUpTest {

    private static final String POUNDS_PER_SQUARE_FOOT_NOTE = "1 lb/ft2 = 4.88243 kg/m2";

    private static GlassBuildUp bind(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), GlassBuildUp.class);
    }

    private static GlassBuildUp single(String thickness) {
        return bind(
                """
                {"panes":[{"nominalThickness":"%s","heatTreatment":"ANNEALED"}],"cavities":[]}"""
                        .formatted(thickness.replace("\"", "\\\"")));
    }

    /** Nominal and minimum thicknesses: ASTM E1300, as the brief gives them. */
    @ParameterizedTest
    @CsvSource({
        "2.5 mm, 3/32 in, 2.16",
        "3 mm, 1/8 in, 2.92",
        "4 mm, 5/32 in, 3.78",
        "5 mm, 3/16 in, 4.57",
        "6 mm, 1/4 in, 5.56",
        "8 mm, 5/16 in, 7.42",
        "10 mm, 3/8 in, 9.02",
        "12 mm, 1/2 in, 11.91",
        "16 mm, 5/8 in, 15.09",
        "19 mm, 3/4 in, 18.26",
        "22 mm, 7/8 in, 21.44"
    })
    void knowsTheTableInMillimetresAndInches(String metric, String inches, double minimum) {
        assertThat(single(metric).panes().get(0).minimumThicknesses().get(0))
                .isCloseTo(minimum / 1000, within(1e-12));
        assertThat(single(inches).panes().get(0).minimumThicknesses().get(0))
                .isCloseTo(minimum / 1000, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"7 mm", "5.9 mm", "0.22 in", "25 mm", "1 in"})
    void refusesWhatIsNotOnTheTableAndListsIt(String thickness) {
        assertThatThrownBy(() -> single(thickness))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.malformed()).isFalse();
                            assertThat(refused.faults().get(0).pointer())
                                    .isEqualTo("/panes/0/nominalThickness");
                            assertThat(refused.faults().get(0).detail())
                                    .contains("2.5 mm (3/32 in)", "22 mm (7/8 in)");
                        });
    }

    /** E1300's 2.7 mm for laminating has no name in inches, and is no step for other sheets. */
    @Test
    void knowsTheSheetMadeForLaminating() {
        Pane lami = single("2.7 mm").panes().get(0);
        assertThat(lami.minimumThicknesses()).containsExactly(0.00259);
        assertThat(single("3/32 in").panes().get(0).thicker())
                .extracting(Pane::nominalThickness)
                .isEqualTo(0.0254 / 8);
        assertThat(lami.thicker()).extracting(Pane::nominalThickness).isEqualTo(0.003);
        assertThat(NominalThickness.MM_2_7.text(true)).isEqualTo("2.7 mm");
        assertThat(NominalThickness.refusal()).contains("(3/32 in), 2.7 mm, 3 mm (1/8 in)");
    }

    /** Nominal thickness at 2500 kg/m3; 1/4 in glass: 3.25 lb/ft2, a figure of the US trade. */
    @Test
    void weighsNominalThickness() {
        assertThat(single("6 mm").areaMass()).isCloseTo(15, within(1e-9));
        assertThat(single("1/4 in").areaMass() / 4.88243)
                .as(POUNDS_PER_SQUARE_FOOT_NOTE)
                .isCloseTo(3.25, within(0.01));
        GlassBuildUp unit =
                bind(
                        """
                        {"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED"},
                          {"plies":[{"nominalThickness":"3 mm"},{"nominalThickness":"4 mm"}],
                           "interlayer":{"material":"PVB","thickness":"0.76 mm"},
                           "heatTreatment":"HEAT_STRENGTHENED"}],
                         "cavities":[{"width":"12 mm"}]}""");
        assertThat(unit.areaMass()).isCloseTo(15 + 17.5 + 1070 * 0.76e-3, within(1e-9));
        assertThat(unit.thickness()).isCloseTo(0.02576, within(1e-12));
        assertThat(unit.isInsulating()).isTrue();
    }

    @Test
    void namesWhatAPaneLacksOrHasTooMuch() {
        assertFault("{\"panes\":[{\"heatTreatment\":\"ANNEALED\"}]}", "/panes/0/nominalThickness");
        assertFault(
                """
                {"panes":[{"plies":[{"nominalThickness":"3 mm"},{"nominalThickness":"3 mm"}],
                 "heatTreatment":"ANNEALED"}]}""",
                "/panes/0/interlayer");
        assertFault(
                """
                {"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED",
                 "interlayer":{"material":"PVB","thickness":"0.76 mm"}}]}""",
                "/panes/0/interlayer");
        assertFault(
                """
                {"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED",
                 "plies":[{"nominalThickness":"3 mm"},{"nominalThickness":"3 mm"}],
                 "interlayer":{"material":"PVB","thickness":"0.76 mm"}}]}""",
                "/panes/0/nominalThickness");
        assertFault(
                """
                {"panes":[{"plies":[{"nominalThickness":"3 mm"}],
                 "interlayer":{"material":"PVB","thickness":"0.76 mm"},
                 "heatTreatment":"ANNEALED"}]}""",
                "/panes/0/plies");
        assertFault(
                """
                {"panes":[{"nominalThickness":"6 mm","heatTreatment":"CHEMICAL"}]}""",
                "/panes/0/heatTreatment");
    }

    @Test
    void countsCavitiesAgainstPanes() {
        String pane = "{\"nominalThickness\":\"6 mm\",\"heatTreatment\":\"ANNEALED\"}";
        assertFault("{\"panes\":[%s,%s],\"cavities\":[]}".formatted(pane, pane), "/cavities");
        assertFault(
                "{\"panes\":[%s],\"cavities\":[{\"width\":\"12 mm\"}]}".formatted(pane),
                "/cavities");
        assertFault("{\"panes\":[%1$s,%1$s,%1$s,%1$s]}".formatted(pane), "/panes");
        assertFault("{\"panes\":[]}", "/panes");
        assertThat(bind("{\"panes\":[%s]}".formatted(pane)).isInsulating()).isFalse();
    }

    @Test
    void stepsUpTheTableInTheUnitsOfTheDrawing() {
        Pane quarter = single("1/4 in").panes().get(0);
        assertThat(quarter.thicker()).isNotNull();
        Pane laminate =
                Pane.laminated(
                        List.of(new Ply(0.003), new Ply(0.006)),
                        new Interlayer(InterlayerMaterial.PVB, 0.00076, null, null),
                        HeatTreatment.ANNEALED);
        assertThat(quarter.thicker())
                .extracting(Pane::nominalThickness)
                .isEqualTo(5.0 / 16 * 0.0254);
        assertThat(laminate.thicker())
                .extracting(Pane::nominalThicknesses)
                .isEqualTo(List.of(0.004, 0.008));
        assertThat(single("22 mm").panes().get(0).thicker()).isNull();
    }

    private static void assertFault(String json, String pointer) {
        assertThatThrownBy(() -> bind(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(fault -> fault.pointer())
                                        .contains(pointer));
    }
}
