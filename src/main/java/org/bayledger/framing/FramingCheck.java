package org.bayledger.framing;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

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
import org.bayledger.mechanics.BeamModel;
import org.bayledger.mechanics.BeamSolution;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/**
 * Deflection, bending stress and reactions of one member.
 *
 * <p>Elastic beam theory (Euler-Bernoulli) without shear deformation, of constant section. Under
 * wind the member carries w = p b, with p the pressure at allowable-stress level (Pa) and b the
 * tributary width (m), the real one: an effective wind area picks a coefficient and never a load.
 * Stress is M/S against the caller's allowable stress; it is not increased by a third for wind.
 * Local and lateral-torsional buckling are the caller's to cover in the allowable stress and to say
 * so; composite action of thermally broken and split sections is the caller's to state.
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
        FramingResult result = withoutRemedies(request, reporting);
        if (result.outcome().verdict() != Verdict.EXCEEDED) {
            return result;
        }
        List<Remedy> remedies = FramingRemedies.of(request, result, reporting);
        return result.withRemedies(remedies);
    }

    static FramingResult withoutRemedies(FramingRequest request, Reporting reporting) {
        return new FramingCheck(request, reporting).check();
    }

    private FramingResult check() {
        Section section = request.section();
        double inertia = inertia();
        AllowableLoad wind = new AllowableLoad(null, null);
        List<BeamLoad> loads = new ArrayList<>();
        if (request.axis() == Axis.WIND) {
            Load load = request.load() == null ? new Load(null, null, null) : request.load();
            wind = load.allowable(trace);
            undetermined(wind.missingSigns("/load"));
            double width = request.tributaryWidth() == null ? 0 : request.tributaryWidth();
            double w = wind.greatest() * width;
            trace.step("b", "tributary width", Dimension.DISTANCE, width, "input", "input");
            trace.step("w", "load per length", Dimension.LINE_LOAD, w, "max(p+, -p-) b", "statics");
            loads.add(BeamLoad.uniform(0, request.length(), w));
            if (request.tributaryAreas() != null) {
                for (TributaryArea area : request.tributaryAreas()) {
                    double force = wind.greatest() * area.area();
                    loads.add(new BeamLoad.Force(Math.min(area.at(), request.length()), force));
                    trace.detail(
                            "P",
                            "wind that comes on at one place",
                            Dimension.FORCE,
                            force,
                            "max(p+, -p-) A",
                            "statics");
                }
            }
        } else {
            deadLoads(loads);
        }
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                request.length(),
                                request.supports(),
                                request.splices(),
                                section.elasticModulus() * inertia,
                                loads));

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
        double required = inertia * greatestRatio;
        trace.step(
                "I,req",
                "second moment of area that keeps every deflection limit",
                Dimension.SECOND_MOMENT_OF_AREA,
                required,
                "I x greatest ratio of deflection to limit",
                "deflection is inversely proportional to I");

        BeamExtreme moment = beam.greatestMoment();
        trace.step(
                "M",
                "greatest bending moment",
                Dimension.MOMENT,
                Math.abs(moment.value()),
                "exact beam elements, continuity at supports, no moment at splices",
                "Euler-Bernoulli beam");
        List<Finding> unchecked = new ArrayList<>();
        MemberStress stress = MemberStress.of(request, Math.abs(moment.value()), trace, unchecked);
        undetermined(unchecked);
        buckling();
        double utilization =
                Math.max(greatestRatio, stress.utilization() == null ? 0 : stress.utilization());
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
                Quantity.of(Dimension.LENGTH, Math.abs(deflection.value())),
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
                        : Quantity.of(Dimension.SECTION_MODULUS, stress.requiredModulus()));
    }

    private double inertia() {
        Section section = request.section();
        Double dead = section.deadLoadSecondMomentOfArea();
        double inertia = section.secondMomentOfArea();
        if (request.axis() == Axis.DEAD) {
            if (dead == null) {
                undetermined(
                        List.of(
                                Finding.action(
                                        "SECOND_MOMENT_OF_AREA_TAKEN_FOR_DEAD_LOAD",
                                        "/section/deadLoadSecondMomentOfArea",
                                        "No deadLoadSecondMomentOfArea was given: the deflection is"
                                                + " that with secondMomentOfArea, which holds for"
                                                + " wind and may be several times greater than that"
                                                + " of bending parallel to the wall.")));
            } else {
                inertia = dead;
            }
        }
        trace.step(
                "I",
                "second moment of area",
                Dimension.SECOND_MOMENT_OF_AREA,
                inertia,
                "input",
                "input");
        trace.step(
                "E",
                "modulus of elasticity",
                Dimension.STRESS,
                section.elasticModulus(),
                "input",
                "input");
        if (!section.worksAsGiven()) {
            undetermined(
                    List.of(
                            Finding.action(
                                    "COMPOSITE_ACTION_NOT_STATED",
                                    "/section/compositeProperties",
                                    "A thermally broken or split section works only partly as one."
                                            + " State that the properties are those of the parts"
                                            + " as they work together, from test or"
                                            + " calculation.")));
        }
        return inertia;
    }

    private void deadLoads(List<BeamLoad> loads) {
        Double mass = request.section().massPerLength();
        double line = request.lineLoad() == null ? 0 : request.lineLoad();
        double own = mass == null ? 0 : mass * STANDARD_GRAVITY;
        if (mass == null) {
            undetermined(
                    List.of(
                            Finding.action(
                                    "OWN_WEIGHT_LEFT_OUT",
                                    "/section/massPerLength",
                                    "The member's own weight is not included: its mass per length"
                                            + " was not given. Give 0 where lineLoad holds it.")));
        }
        trace.step(
                "w",
                "weight per length",
                Dimension.LINE_LOAD,
                line + own,
                "lineLoad + mass per length x g",
                "statics, g = 9.80665 m/s2");
        loads.add(BeamLoad.uniform(0, request.length(), line + own));
        if (request.pointLoads() != null) {
            for (PointLoad point : request.pointLoads()) {
                loads.add(new BeamLoad.Force(point.at(), point.force()));
                trace.detail(
                        "P",
                        "weight that rests on the member",
                        Dimension.FORCE,
                        point.force(),
                        "input",
                        "input");
            }
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
                                    + " times the allowable one."));
        }
    }

    private String text(Quantity quantity) {
        return quantity.text(reporting.units());
    }

    private void buckling() {
        if (request.axis() == Axis.WIND
                && !Boolean.TRUE.equals(request.section().bucklingCovered())) {
            undetermined(
                    List.of(
                            Finding.action(
                                    "BUCKLING_NOT_CHECKED",
                                    "/section/bucklingCovered",
                                    "Local and lateral-torsional buckling were not checked. Confirm"
                                            + " with bucklingCovered that the allowable bending"
                                            + " stress covers both for this member as it is"
                                            + " braced.")));
        }
    }

    private void undetermined(List<Finding> found) {
        if (!found.isEmpty()) {
            findings.addAll(found);
            verdict = verdict.and(Verdict.UNDETERMINED);
        }
    }
}
