package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamExtreme;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamSolution;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Deflection, bending stress and reactions of one member.
 *
 * <p>Elastic beam theory (Euler-Bernoulli) without shear deformation, of constant section but for
 * steel inside part of the length. Under wind the member carries w = p b, with p the pressure at
 * allowable-stress level (Pa) and b the tributary width (m), the real one, which may vary along the
 * member: an effective wind area picks a coefficient and never a load. Stress is M/S against the
 * least of the allowable stresses given and computed from the alloy; it is not increased by a third
 * for wind. Buckling and the working together of thermally broken and split sections are computed
 * where their data are given; else they are the caller's to state, and without that the verdict is
 * UNDETERMINED.
 */
public final class FramingCheck {

    private final FramingRequest request;
    private final Reporting reporting;
    private final Trace trace;
    private final List<Finding> findings = new ArrayList<>();
    private Verdict verdict = Verdict.SATISFIED;

    private FramingCheck(FramingRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
        this.trace = new Trace(reporting.trace());
    }

    /** Checks a member and, where it fails, computes what would pass. */
    public static FramingResult run(FramingRequest request, Reporting reporting) {
        return run(request, reporting, List.of());
    }

    /**
     * Checks a member and, where it fails, computes what would pass, the next section first.
     *
     * @param others sections that could be taken instead
     */
    public static FramingResult run(
            FramingRequest request, Reporting reporting, List<SectionCandidate> others) {
        FramingResult result = withoutRemedies(request, reporting);
        if (result.outcome().verdict() != Verdict.EXCEEDED) {
            return result;
        }
        List<Remedy> remedies = FramingRemedies.of(request, result, others, reporting);
        return result.withRemedies(remedies);
    }

    static FramingResult withoutRemedies(FramingRequest request, Reporting reporting) {
        return new FramingCheck(request, reporting).check();
    }

    private FramingResult check() {
        Section section = request.section();
        SectionProperties properties = SectionProperties.of(request);
        List<Finding> unknown = new ArrayList<>();
        double inertia = properties.inertia(request, trace, unknown);
        undetermined(unknown);
        AllowableLoad wind = new AllowableLoad(null, null);
        List<BeamLoad> loads;
        if (request.axis() == Axis.WIND) {
            Load load = request.load() == null ? new Load(null, null, null) : request.load();
            wind = load.allowable(trace);
            undetermined(wind.missingSigns("/load"));
            loads = MemberLoads.wind(request, wind.greatest(), trace);
            undetermined(DeflectionLoad.explain(request, trace, findings));
        } else {
            List<Finding> left = new ArrayList<>();
            loads =
                    MemberLoads.dead(
                            request, request.lineLoad(), request.pointLoads(), trace, left);
            undetermined(left);
        }
        BeamSolution beam = Beam.solve(MemberLoads.model(request, inertia, loads));

        List<FramingResult.Span> spans = MemberResponse.spans(request, beam);
        List<FramingResult.Edge> edges = MemberResponse.edges(request, beam, trace);
        FramingResult.Span governing = spans.get(0);
        for (FramingResult.Span span : spans) {
            governing = span.utilization() > governing.utilization() ? span : governing;
        }
        double ratio = governing.utilization();
        double edgeRatio =
                edges.stream().mapToDouble(FramingResult.Edge::utilization).max().orElse(0);
        MemberResponse.explain(request, governing, trace);
        double greatestRatio = Math.max(ratio, edgeRatio);
        double required = new RequiredInertia(request, loads).least(inertia, greatestRatio, trace);

        BeamExtreme moment = beam.greatestMoment();
        trace.step(
                "M",
                "greatest bending moment",
                Dimension.MOMENT,
                Math.abs(moment.value()),
                "exact beam elements, continuity at supports, no moment at splices",
                "Euler-Bernoulli beam");
        List<Finding> unchecked = new ArrayList<>();
        MemberStress stress = MemberStress.of(request, properties, beam, loads, trace, unchecked);
        undetermined(unchecked);
        BeamExtreme shear = beam.greatestShear();
        Double flow = breakShear(properties, Math.abs(shear.value()));
        double utilization =
                Math.max(greatestRatio, stress.utilization() == null ? 0 : stress.utilization());
        utilization = Math.max(utilization, ofParts(stress, flow));
        verdict = verdict.and(Verdict.ofUtilization(utilization));
        exceeded(governing, stress);
        if (edgeRatio > 1) {
            findings.add(
                    Finding.action(
                            "GLASS_EDGE_DEFLECTS_TOO_FAR",
                            "/glassEdges",
                            "An edge of glass is not firmly supported: the member bends more than"
                                    + " the smaller of L/175 of that edge and 3/4 in, so that the"
                                    + " strength of the glass can't be relied on."));
        }
        notes(section, properties);
        boolean calm = request.axis() == Axis.WIND && !wind.calledOut();
        BeamExtreme deflection = beam.greatestDeflection();
        return new FramingResult(
                new Outcome(
                        verdict,
                        calm ? null : utilization,
                        findings,
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Connections, splices, fasteners and anchors of the member are not"
                                        + " checked here.")),
                Quantity.of(
                        Dimension.LENGTH, request.onDeflection() * Math.abs(deflection.value())),
                governing.limit(),
                ratio,
                Quantity.of(Dimension.MOMENT, Math.abs(moment.value())),
                Quantity.of(Dimension.DISTANCE, moment.at()),
                stress.bending() == null ? null : Quantity.of(Dimension.STRESS, stress.bending()),
                stress.utilization(),
                MemberResponse.reactions(beam, wind),
                spans,
                edges,
                Quantity.of(Dimension.SECOND_MOMENT_OF_AREA, required),
                stress.requiredModulus() == null
                        ? null
                        : Quantity.of(Dimension.SECTION_MODULUS, stress.requiredModulus()),
                Quantity.of(Dimension.DISTANCE, deflection.at()),
                Quantity.of(Dimension.FORCE, Math.abs(shear.value())),
                Quantity.of(Dimension.DISTANCE, shear.at()),
                stress.allowables(),
                stress.dead() == null ? null : Quantity.of(Dimension.STRESS, stress.dead()),
                stress.steel(),
                flow == null ? null : Quantity.of(Dimension.LINE_LOAD, flow),
                properties.computed(),
                MemberResponse.along(request, beam));
    }

    /**
     * Greatest shear per length in a thermal break, N/m, or null where there are no data of one.
     */
    private @Nullable Double breakShear(SectionProperties properties, double shear) {
        ThermalBreak parts = request.section().thermalBreak();
        if (request.axis() != Axis.WIND || parts == null || properties.composite() == null) {
            return null;
        }
        double flow = shear * properties.composite().shearFlowPerShear();
        trace.step(
                "q",
                "greatest shear per length in the thermal break",
                Dimension.LINE_LOAD,
                flow,
                "V (1 - (I1 + I2) / I,ef) / a",
                "equilibrium of one part along the member");
        if (parts.allowableShearFlow() == null) {
            undetermined(
                    List.of(
                            Finding.action(
                                    "BREAK_SHEAR_NOT_CHECKED",
                                    "/section/thermalBreak/allowableShearFlow",
                                    "The shear in the thermal break is not checked: what it may"
                                            + " carry per length was not given.")));
        }
        return flow;
    }

    /** The greatest utilization of steel and thermal break, with what to say of them. */
    private double ofParts(MemberStress stress, @Nullable Double flow) {
        double greatest = 0;
        FramingResult.Steel steel = stress.steel();
        if (steel != null) {
            greatest = steel.utilization();
            if (greatest > 1) {
                findings.add(
                        Finding.action(
                                "REINFORCEMENT_STRESS_EXCEEDED",
                                "/section/reinforcement",
                                "The bending stress of the steel inside is "
                                        + reporting.text(Dimension.NONE, greatest)
                                        + " times its allowable one."));
            }
        }
        ThermalBreak parts = request.section().thermalBreak();
        if (flow != null && parts != null && parts.allowableShearFlow() != null) {
            double ratio = flow / parts.allowableShearFlow();
            if (ratio > 1) {
                findings.add(
                        Finding.action(
                                "BREAK_SHEAR_EXCEEDED",
                                "/section/thermalBreak",
                                "The thermal break carries "
                                        + reporting.text(Dimension.NONE, ratio)
                                        + " times the shear that it may."));
            }
            greatest = Math.max(greatest, ratio);
        }
        return greatest;
    }

    /** What an engineer should know of how the numbers came about. */
    private void notes(Section section, SectionProperties properties) {
        SectionOutline outline = properties.outline();
        if (outline != null && outline.askew()) {
            findings.add(
                    Finding.note(
                            "SECTION_BENDS_ASKEW",
                            "/section/outline",
                            "The section has no axis of symmetry in the direction of the load, so"
                                    + " that it moves sideways as it bends. The stiffness counted is"
                                    + " that of free bending, the strength the lesser of free and"
                                    + " held."));
        }
        if (request.axis() == Axis.WIND && section.reinforcement() != null) {
            findings.add(
                    Finding.note(
                            "REINFORCEMENT_HANDS_OVER",
                            "/section/reinforcement",
                            "The steel takes its share of the moment only where it bears tightly on"
                                    + " the aluminum along its length and at its ends. That bearing,"
                                    + " its fasteners and a separation against corrosion were not"
                                    + " checked."));
        }
    }

    /** Says which limit is exceeded and by how much. */
    private void exceeded(FramingResult.Span governing, MemberStress stress) {
        if (governing.utilization() > 1) {
            findings.add(
                    Finding.action(
                            "DEFLECTION_EXCEEDED",
                            "/section",
                            "The member bends by "
                                    + text(governing.deflection())
                                    + " between "
                                    + text(governing.from())
                                    + " and "
                                    + text(governing.to())
                                    + " from its start; "
                                    + text(governing.limit())
                                    + " is allowed."));
        }
        Double utilization = stress.utilization();
        if (utilization != null && utilization > 1) {
            findings.add(
                    Finding.action(
                            "STRESS_EXCEEDED",
                            "/section",
                            "The bending stress is "
                                    + reporting.text(Dimension.NONE, utilization)
                                    + " times the allowable one, "
                                    + allowable(stress)));
        }
    }

    /** The governing allowable stress in words, and whether a greater section modulus helps. */
    private String allowable(MemberStress stress) {
        FramingResult.AllowableStress governing = stress.allowables().get(0);
        String words =
                text(governing.stress())
                        + switch (governing.limitState()) {
                            case GIVEN -> " as given.";
                            default ->
                                    " for " + BendingStrength.words(governing.limitState()) + ".";
                        };
        return stress.requiredModulus() == null
                        && governing.limitState()
                                == FramingResult.LimitState.LATERAL_TORSIONAL_BUCKLING
                ? words
                        + " No greater section modulus alone makes up for that: hold the member"
                        + " sideways more closely, or use a section that is stiffer sideways and in"
                        + " torsion."
                : words;
    }

    private String text(Quantity quantity) {
        return quantity.text(reporting.units());
    }

    private void undetermined(List<Finding> found) {
        if (!found.isEmpty()) {
            findings.addAll(found);
            verdict = verdict.and(Verdict.UNDETERMINED);
        }
    }
}
