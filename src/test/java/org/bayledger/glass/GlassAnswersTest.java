package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.glass.GlassRequests.GUST;
import static org.bayledger.glass.GlassRequests.after;
import static org.bayledger.glass.GlassRequests.bind;
import static org.bayledger.glass.GlassRequests.codes;
import static org.bayledger.glass.GlassRequests.laminate;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What the glass check says beside its numbers, and what it takes from the caller. */
@NullMarked
class GlassAnswersTest {

    private static final String SIX = pane("6 mm", "ANNEALED");
    private static final String PVB = "{\"material\":\"PVB\",\"thickness\":\"0.76 mm\"}";
    private static final String EXAMPLE = lite("1200 mm", "1500 mm", SIX);

    private static String load(String positive, String negative, String more) {
        return "{\"positive\":\"%s\",\"negative\":\"%s\"%s}".formatted(positive, negative, more);
    }

    private static String gust(String both) {
        return load(both, "-" + both, ",\"duration\":\"3 s\"");
    }

    /** Characteristic loads of EN 1991 meet an allowable-stress resistance: said, not decided. */
    @Test
    void saysWhatACharacteristicLoadMeets() {
        GlassResult mixed =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                load(
                                        "1.8 kPa",
                                        "-1.8 kPa",
                                        ",\"basis\":\"CHARACTERISTIC\",\"duration\":\"3 s\""),
                                ""));
        assertThat(mixed.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(mixed.outcome().utilization())
                .isCloseTo(1800 / mixed.loadResistance().si(), within(1e-9));
        assertThat(codes(mixed)).contains("CHARACTERISTIC_LOAD_WITH_ALLOWABLE_RESISTANCE");
        assertThat(codes(run(EXAMPLE)))
                .doesNotContain("CHARACTERISTIC_LOAD_WITH_ALLOWABLE_RESISTANCE");
    }

    /**
     * A shear modulus of one's own: the same answer as the table's where it is the table's; nearly
     * rigid it is one sheet, nearly nil two loose ones.
     */
    @Test
    void takesAShearModulusOfOnesOwn() {
        GlassResult table = run(film("\"temperature\":\"50 degC\""));
        GlassResult same = run(film("\"shearModulus\":\"0.44 MPa\""));
        assertThat(same.loadResistance().si()).isCloseTo(table.loadResistance().si(), within(1e-6));
        assertThat(codes(same))
                .contains("INTERLAYER_MODULUS_GIVEN")
                .doesNotContain("INTERLAYER_TEMPERATURE_NOT_GIVEN", "INTERLAYER_MODULUS");
        PaneResult stiff = run(film("\"shearModulus\":\"1 GPa\"")).panes().get(0);
        double h = 0.00292;
        double z = (h + 0.00076) / 2;
        double sheet = Math.cbrt(2 * h * h * h + 24 * h * z * z);
        assertThat(stiff.deflectionEffectiveThickness().si()).isCloseTo(sheet, within(1e-5));
        PaneResult slack = run(film("\"shearModulus\":\"0.001 MPa\"")).panes().get(0);
        assertThat(slack.deflectionEffectiveThickness().si())
                .isCloseTo(h * Math.cbrt(2), within(2e-5));
        assertThat(slack.stressEffectiveThickness().si()).isCloseTo(h * Math.sqrt(2), within(2e-5));
        // beyond the table's temperatures and durations one's own is all there is
        GlassResult cold = run(film("\"temperature\":\"-10 degC\",\"shearModulus\":\"100 MPa\""));
        assertThat(cold.loadResistance().si()).isGreaterThan(table.loadResistance().si());
        assertRefused(
                film("\"temperature\":\"-10 degC\""), "/glass/panes/0/interlayer/temperature");
        assertRefused(film("\"shearModulus\":\"0 MPa\""), "/glass/panes/0/interlayer/shearModulus");
        assertRefused(
                film("\"shearModulus\":\"30 GPa\""), "/glass/panes/0/interlayer/shearModulus");
    }

    private static String film(String more) {
        return lite(
                "1200 mm",
                "1500 mm",
                laminate(
                        "3 mm",
                        "3 mm",
                        "{\"material\":\"PVB\",\"thickness\":\"0.76 mm\",%s}".formatted(more),
                        "ANNEALED"));
    }

    /** The practice's own tables of load sharing stand beside the sharing that is used. */
    @Test
    void showsTheTabulatedLoadShareBesideItsOwn() {
        String unit =
                lite(
                        "1500 mm",
                        "2000 mm",
                        List.of(SIX, laminate("3 mm", "3 mm", PVB, "ANNEALED")),
                        GUST,
                        "");
        double six = Math.pow(5.56, 3);
        assertThat(traced(run(unit), "LSx1")).isCloseTo(1 + Math.pow(5.84, 3) / six, within(1e-9));
        assertThat(traced(run(unit.replace("3 s", "30 d")), "LSx1"))
                .isCloseTo(1 + 2 * Math.pow(2.92, 3) / six, within(1e-9));
    }

    private static double traced(GlassResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }

    /** A remedy says what stays open whatever the glass, and nothing else is left open by it. */
    @Test
    void remediesSayWhatStaysOpen() {
        String unsaid = lite("1200 mm", "1500 mm", List.of(SIX), "{\"positive\":\"3.5 kPa\"}", "");
        List<Remedy> remedies = run(unsaid).outcome().remedies();
        assertThat(remedies).hasSizeGreaterThan(2);
        for (Remedy remedy : remedies) {
            assertThat(remedy.text())
                    .endsWith(
                            "UNDETERMINED until the negative design pressure is called out and the"
                                    + " duration of the load is given.");
            GlassResult after = after(unsaid, remedy);
            assertThat(after.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(after.outcome().findings())
                    .filteredOn(finding -> finding.severity() == Finding.Severity.ACTION)
                    .extracting(Finding::code)
                    .containsExactlyInAnyOrder(
                            "NEGATIVE_PRESSURE_NOT_CALLED_OUT", "LOAD_DURATION_NOT_GIVEN");
        }
        assertThat(
                        run(lite("1200 mm", "1500 mm", List.of(SIX), gust("3.5 kPa"), ""))
                                .outcome()
                                .remedies())
                .allSatisfy(remedy -> assertThat(remedy.text()).doesNotContain("UNDETERMINED"));
        GlassResult twelve = run(lite("1200 mm", "1500 mm", List.of(SIX), gust("12 kPa"), ""));
        assertThat(twelve.outcome().remedies())
                .isNotEmpty()
                .allSatisfy(
                        remedy -> assertThat(remedy.text()).contains("edition of the practice"));
        GlassResult beyond = run(lite("1200 mm", "1500 mm", List.of(SIX), gust("16 kPa"), ""));
        assertThat(beyond.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(beyond.outcome().remedies()).isEmpty();
    }

    /** In an inch document a smaller lite is offered in inches. */
    @Test
    void offersSizesInTheUnitsOfTheDocument() {
        String json = lite("48 in", "60 in", List.of(SIX), gust("70 psf"), "");
        GlassResult failed =
                GlassCheck.run(bind(json), new Reporting(UnitSystem.US, TraceLevel.GOVERNING));
        Remedy smaller =
                failed.outcome().remedies().stream()
                        .filter(remedy -> remedy.text().startsWith("Smaller"))
                        .findFirst()
                        .orElseThrow();
        assertThat(smaller.changes().get(0).to().toString()).matches("\\d+\\.[05] in");
        GlassResult after = after(json, smaller);
        assertThat(after.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(after.outcome().utilization()).isCloseTo(smaller.utilization(), within(1e-9));
    }

    /** What moves too far is named with how far. */
    @Test
    void namesThePanesThatMoveTooFar() {
        GlassResult unit =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX, pane("12 mm", "ANNEALED")),
                                GUST,
                                ",\"centerDeflectionLimit\":\"1 mm\""));
        assertThat(unit.outcome().findings())
                .filteredOn(finding -> finding.code().equals("CENTER_DEFLECTION_EXCEEDED"))
                .extracting(Finding::text)
                .singleElement()
                .asString()
                .contains("limit given, 1 mm", "pane 1 by ", "pane 2 by ");
    }

    /** Every fault at once, each with its place. */
    @Test
    void reportsBadInputWithItsPlaces() {
        String bad =
                lite("-1200 mm", "1500 mm", List.of(pane("7 mm", "ANNEALED")), GUST, "")
                        .replace("\"-1.8 kPa\"", "\"1.8 kPa\"");
        assertThatThrownBy(() -> bind(bad))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(fault -> fault.pointer())
                                        .containsExactlyInAnyOrder(
                                                "/width",
                                                "/glass/panes/0/nominalThickness",
                                                "/load/negative"));
        assertRefused(
                EXAMPLE.replace("\"cavities\":[]", "\"cavities\":[{\"width\":\"12 mm\"}]"),
                "/glass/cavities");
    }

    private static void assertRefused(String json, String pointer) {
        assertThatThrownBy(() -> bind(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.malformed()).isFalse();
                            assertThat(refused.faults())
                                    .extracting(fault -> fault.pointer())
                                    .contains(pointer);
                        });
    }
}
