package org.bayledger.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Rotation, end reactions, pressure, two lites on one span, tolerances: numbers by hand. */
@NullMarked
class BlockDemandTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237 * 9.80665;

    /** P = 260 lbf on each block, 12 in4 on 10 ft. */
    private static final String LITE =
            """
            {"width":"10 ft","height":"8 ft","glassWeight":"520 lb",
             "support":{"kind":"MEMBER","span":"10 ft","secondMomentOfArea":"12 in4",
                        "elasticModulus":"10100 ksi","massPerLength":"3 lb/ft"%s},
             "below":{"kind":"FIXED_LITE","edgeClearance":"0.3 in","bite":"0.5 in"%s}%s}""";

    private static SettingBlocksRequest bind(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), SettingBlocksRequest.class);
    }

    private static SettingBlocksResult run(String support, String below, String more) {
        return SettingBlocksCheck.run(bind(LITE.formatted(support, below, more)), US);
    }

    private static double si(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static List<String> codes(SettingBlocksResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    /**
     * By hand: G = 10100/2.66 = 3797 ksi, J = 4 in4, e = 1.5 in, T = 390 lbf in, a = 30 in: phi =
     * 390 x 30/(3.797e6 x 4) = 7.703e-4 rad; it brings the metal 1.5 in off down by 0.001156 in.
     */
    @Test
    void turnsUnderEccentricGlass() {
        SettingBlocksResult result =
                run(",\"torsionConstant\":\"4 in4\",\"eccentricity\":\"1.5 in\"", "", "");
        BlockCandidate quarter = result.candidates().get(0);
        assertThat(si(quarter.rotation())).isCloseTo(7.703e-4, withinPercentage(0.02));
        assertThat(si(quarter.rotationDrop()) / INCH).isCloseTo(0.0011555, offset(1e-6));
        assertThat(si(quarter.endTorque()) / POUND / INCH).isCloseTo(390, offset(0.01));
        // half of the lite and of 30 lb of member
        assertThat(si(quarter.endReaction()) / POUND).isCloseTo(275, offset(0.01));
        double deflection = si(quarter.memberDeflection());
        assertThat(si(quarter.clearanceLeft()))
                .isCloseTo(0.3 * INCH - deflection - si(quarter.rotationDrop()), offset(1e-12));
        assertThat(si(quarter.biteLeft()))
                .isCloseTo(0.5 * INCH - deflection - si(quarter.rotationDrop()), offset(1e-12));
        assertThat(codes(result))
                .contains("SHEAR_MODULUS_OF_ALUMINUM", "END_CONNECTION_NOT_CHECKED");
        assertThat(si(result.rotationLimit())).isCloseTo(Math.PI / 180, offset(1e-12));
        // eighth points: half the arm, half the angle
        assertThat(si(result.candidates().get(1).rotation()))
                .isCloseTo(7.703e-4 / 2, withinPercentage(0.02));
    }

    /**
     * J = 0.4 in4: 0.01156 in come down by rotation on top of the 0.1118 in by bending; together
     * 0.1234 of the 0.125 in that bite of 0.5 in may lose, while bending alone is 0.894 of its
     * limit.
     */
    @Test
    void rotationTakesOfBiteAndClearance() {
        BlockCandidate quarter =
                run(",\"torsionConstant\":\"0.4 in4\",\"eccentricity\":\"1.5 in\"", "", "")
                        .candidates()
                        .get(0);
        assertThat(quarter.governing()).isEqualTo(BlockLimit.BITE);
        assertThat(Objects.requireNonNull(quarter.utilization()))
                .isCloseTo((0.1062 + 0.00557 + 0.01156) / 0.125, offset(1e-3));
    }

    /** An open section turns by more than a degree: exceeded, and said so; warping helps. */
    @Test
    void judgesTheRotation() {
        String open = ",\"torsionConstant\":\"0.05 in4\",\"eccentricity\":\"1.5 in\"";
        SettingBlocksResult result = run(open, "", "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.candidates().get(0).governing()).isEqualTo(BlockLimit.ROTATION);
        assertThat(result.outcome().findings())
                .anySatisfy(f -> assertThat(f.text()).contains("turns too far about its axis"));
        double pure = si(result.candidates().get(0).rotation());
        double warped =
                si(
                        run(open + ",\"warpingConstant\":\"8 in6\"", "", "")
                                .candidates()
                                .get(0)
                                .rotation());
        assertThat(warped).isLessThan(pure);
        SettingBlocksResult own =
                run(
                        ",\"torsionConstant\":\"4 in4\",\"shearModulus\":\"3800 ksi\","
                                + "\"eccentricity\":\"-1.5 in\",\"rotationLimit\":\"0.03 deg\"",
                        "",
                        "");
        assertThat(own.candidates().get(0).verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(own.candidates().get(1).verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(own.outcome().findings())
                .anySatisfy(
                        f ->
                                assertThat(f.text())
                                        .startsWith(
                                                "At the quarter points the horizontal turns too far"));
    }

    /** Without torsion data nothing is assumed: no number, a note that names what is missing. */
    @Test
    void saysWhereRotationWasNotLookedAt() {
        SettingBlocksResult bare = run("", "", "");
        assertThat(bare.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(bare.candidates().get(0).rotation()).isNull();
        assertThat(bare.rotationLimit()).isNull();
        assertThat(bare.outcome().findings())
                .anySatisfy(
                        f -> {
                            assertThat(f.code()).isEqualTo("ROTATION_NOT_CHECKED");
                            assertThat(f.severity()).isEqualTo(Finding.Severity.NOTE);
                            assertThat(f.pointer()).isEqualTo("/support/torsionConstant");
                        });
        assertThat(run(",\"torsionConstant\":\"4 in4\"", "", "").outcome().findings())
                .anySatisfy(f -> assertThat(f.pointer()).isEqualTo("/support/eccentricity"));
    }

    /** Shares of reaction and torque add: 275/500 + 390/600 = 1.2. */
    @Test
    void holdsTheEndReactionAgainstTheCallersAllowable() {
        assertThat(run(",\"endReactionAllowable\":\"270 lbf\"", "", "").outcome().verdict())
                .isEqualTo(Verdict.EXCEEDED);
        String twist =
                ",\"torsionConstant\":\"4 in4\",\"eccentricity\":\"1.5 in\",\"endReactionAllowable\":\"500 lbf\"";
        SettingBlocksResult alone = run(twist, "", "");
        assertThat(alone.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(alone)).contains("END_TORQUE_NOT_CHECKED");
        SettingBlocksResult both = run(twist + ",\"endTorqueAllowable\":\"600 lbf*in\"", "", "");
        assertThat(both.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(Objects.requireNonNull(both.candidates().get(0).utilization()))
                .isCloseTo(1.2, offset(1e-4));
        // no stiffness relieves the ends, a prop does
        assertThat(both.outcome().remedies())
                .extracting(remedy -> remedy.changes().get(0).pointer())
                .containsExactly("/support/midSupport");
    }

    /** 260 lbf on 8 in x 0.75 in: 43.3 psi. */
    @Test
    void pressesOnTheBlocks() {
        SettingBlocksResult result =
                run("", "", ",\"blockWidth\":\"0.75 in\",\"blockPressureAllowable\":\"50 psi\"");
        assertThat(si(result.candidates().get(0).blockPressure()) / POUND * INCH * INCH)
                .isCloseTo(260 / 6.0, offset(1e-6));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(
                        run(
                                        "",
                                        "",
                                        ",\"blockWidth\":\"0.75 in\",\"blockPressureAllowable\":\"40 psi\"")
                                .outcome()
                                .verdict())
                .isEqualTo(Verdict.EXCEEDED);
        SettingBlocksResult unknown = run("", "", ",\"blockPressureAllowable\":\"40 psi\"");
        assertThat(unknown.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(unknown)).contains("BLOCK_WIDTH_NOT_GIVEN");
        // panes of 6 mm stand on the block, the cavity between them does not
        String glass =
                LITE.formatted("", "", ",\"blockWidth\":\"20 mm\"")
                        .replace(
                                "\"glassWeight\":\"520 lb\"",
                                """
                                "glass":{"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED"},
                                  {"nominalThickness":"6 mm","heatTreatment":"ANNEALED"}],
                                  "cavities":[{"width":"12 mm"}]}""");
        SettingBlocksResult narrow = SettingBlocksCheck.run(bind(glass), US);
        BlockCandidate quarter = narrow.candidates().get(0);
        assertThat(si(quarter.blockPressure()))
                .isCloseTo(si(quarter.blockLoad()) / (8 * INCH * 0.012), withinPercentage(1e-6));
        assertThat(codes(narrow)).contains("BLOCK_NARROWER_THAN_GLASS");
        assertThat(narrow.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
    }

    /** A shimmed sill has blocks that are pressed as well. */
    @Test
    void pressesOnBlocksOfASill() {
        String sill =
                """
                {"width":"10 ft","height":"8 ft","support":{"kind":"SHIMMED_SILL"},
                 "blockWidth":"0.75 in","blockPressureAllowable":"40 psi"%s}""";
        assertThat(
                        SettingBlocksCheck.run(
                                        bind(sill.formatted(",\"glassWeight\":\"520 lb\"")), US)
                                .outcome()
                                .verdict())
                .isEqualTo(Verdict.EXCEEDED);
        SettingBlocksResult light =
                SettingBlocksCheck.run(bind(sill.formatted(",\"glassWeight\":\"200 lb\"")), US);
        assertThat(light.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(Objects.requireNonNull(light.outcome().utilization()))
                .isCloseTo(100 / 6.0 / 40, offset(1e-6));
        assertThat(light.shimNote()).contains("shims");
        assertThat(SettingBlocksCheck.run(bind(sill.formatted("")), US).outcome().verdict())
                .isEqualTo(Verdict.UNDETERMINED);
    }

    /** 0.3 in less 0.05 and 0.03 leave 0.22: 0.095 may go, and 0.1062 + 0.0056 does not. */
    @Test
    void takesTolerancesAndGrowthOffTheClearance() {
        SettingBlocksResult drawn = run("", "", "");
        assertThat(drawn.candidates().get(0).verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(drawn)).contains("CLEARANCE_AS_DRAWN");
        SettingBlocksResult taken =
                run("", ",\"tolerance\":\"0.05 in\",\"thermalGrowth\":\"0.03 in\"", "");
        BlockCandidate quarter = taken.candidates().get(0);
        assertThat(quarter.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(quarter.governing()).isEqualTo(BlockLimit.CLEARANCE);
        assertThat(si(quarter.clearanceLeft()))
                .isCloseTo(
                        si(drawn.candidates().get(0).clearanceLeft()) - 0.08 * INCH, offset(1e-12));
        assertThat(codes(taken)).doesNotContain("CLEARANCE_AS_DRAWN");
        assertThat(run("", ",\"tolerance\":\"0.2 in\"", "").outcome().findings())
                .anySatisfy(f -> assertThat(f.code()).isEqualTo("CLEARANCE_TOO_SMALL_AS_DRAWN"))
                .anySatisfy(f -> assertThat(f.text()).startsWith("What thermal growth takes"));
    }

    /**
     * Two lites of 5 ft side by side on 10 ft: four loads of 130 lbf at 15, 45, 75 and 105 in. By
     * superposition of the closed form: 130/(24 E I) x (15 (43200 - 900) + 45 (43200 - 8100)).
     */
    @Test
    void carriesTwoLitesOnOneSpan() {
        String two =
                """
                {"width":"5 ft","height":"8 ft","glassWeight":"260 lb",
                 "support":{"kind":"MEMBER","span":"10 ft","secondMomentOfArea":"12 in4",
                            "elasticModulus":"10100 ksi","glassOffset":"0 ft"},
                 "secondLite":{"offset":"5 ft","width":"5 ft","glassWeight":"%s lb"},
                 "below":{"kind":"NONE"}}""";
        SettingBlocksResult even = SettingBlocksCheck.run(bind(two.formatted("260")), US);
        double byHand = 130 * (15 * (43200 - 900.0) + 45 * (43200 - 8100.0)) / (24 * 10.1e6 * 12);
        BlockCandidate quarter = even.candidates().get(0);
        assertThat(si(quarter.memberDeflection()) / INCH).isCloseTo(byHand, withinPercentage(1e-6));
        assertThat(si(quarter.deflectionPosition()) / INCH).isCloseTo(60, offset(1e-6));
        assertThat(even.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(even)).doesNotContain("SPAN_DIFFERS_FROM_GLASS");
        // a heavier neighbour moves the worst place toward it; its end carries more
        SettingBlocksResult uneven = SettingBlocksCheck.run(bind(two.formatted("400")), US);
        BlockCandidate leaning = uneven.candidates().get(0);
        assertThat(si(leaning.deflectionPosition()) / INCH).isGreaterThan(60);
        assertThat(si(leaning.endReaction()) / POUND)
                .isCloseTo(260 * 0.25 + 400 * 0.75, offset(0.01));
        // a span with room for more than these two is left to a person
        SettingBlocksResult wide =
                SettingBlocksCheck.run(
                        bind(two.formatted("260").replace("\"10 ft\"", "\"16 ft\"")), US);
        assertThat(codes(wide)).contains("SPAN_DIFFERS_FROM_GLASS");
        assertThat(wide.outcome().verdict()).isNotEqualTo(Verdict.SATISFIED);
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"5 ft","height":"8 ft","glassWeight":"260 lb",
                                         "support":{"kind":"MEMBER"},"blockDistance":"3 ft",
                                         "leastBlockDistance":"2 ft","alternativeBuildUps":[],
                                         "secondLite":{"offset":"5 ft","width":"5 ft","glassWeight":"1 lb"}}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/blockDistance",
                                                "/leastBlockDistance",
                                                "/alternativeBuildUps",
                                                "/support/glassOffset"));
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"5 ft","height":"8 ft","blockDistance":"1 ft",
                                         "support":{"kind":"SHIMMED_SILL"}}"""))
                .isInstanceOf(FaultsException.class);
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"5 ft","height":"8 ft",
                                         "support":{"kind":"MEMBER","steelMassPerLength":"1 lb/ft"}}"""))
                .isInstanceOf(FaultsException.class);
    }

    /** What is drawn is what is judged: the greatest of the curve, its blocks and its limit. */
    @Test
    void theCurveIsThatOfTheCandidate() {
        SettingBlocksRequest request =
                bind(LITE.formatted(",\"midSupport\":true", "", ",\"blockDistance\":\"20 in\""));
        SettingBlocksResult result = SettingBlocksCheck.run(request, US);
        for (BlockCandidate candidate : result.candidates()) {
            DeflectionCurve curve =
                    Objects.requireNonNull(DeflectionCurve.of(request, candidate.point()));
            assertThat(curve.span() / INCH).isCloseTo(120, offset(1e-9));
            assertThat(curve.supports()).hasSize(3);
            assertThat(curve.greatest().value())
                    .isCloseTo(si(candidate.memberDeflection()), offset(1e-15));
            assertThat(curve.deflectionAt(curve.greatest().at()))
                    .isCloseTo(curve.greatest().value(), offset(1e-15));
            assertThat(curve.blocks().get(0))
                    .isCloseTo(candidate.distanceFromCorner().si(), offset(1e-9));
            assertThat(curve.limit()).isCloseTo(si(result.governingLimit()), offset(1e-15));
            assertThat(candidate.midSupportReaction()).isNotNull();
        }
        assertThat(codes(result)).contains("PROP_NOT_CHECKED");
        assertThat(DeflectionCurve.of(bind(LITE.formatted("", "", "")), BlockPoint.CHOSEN))
                .isNull();
        assertThat(
                        DeflectionCurve.of(
                                bind(
                                        "{\"width\":\"10 ft\",\"height\":\"8 ft\",\"support\":{\"kind\":\"SHIMMED_SILL\"}}"),
                                BlockPoint.QUARTER))
                .isNull();
    }

    /** Tension in the edge of the glass is far below what even annealed edges bear for good. */
    @Test
    void stressesTheEdgeOfTheGlassLittle() {
        SettingBlocksResult result = run("", "", "");
        for (BlockCandidate candidate : result.candidates()) {
            assertThat(si(candidate.glassEdgeStress()))
                    .isPositive()
                    .isLessThan(0.1 * result.glassEdgeStressAllowable().si());
        }
        // a strip 18 m wide and 0.3 m high does not stand at the eighth points
        assertThat(new GlassOnBlocks(18, 0.3).stress(0.125))
                .isGreaterThan(GlassOnBlocks.allowable());
    }
}
