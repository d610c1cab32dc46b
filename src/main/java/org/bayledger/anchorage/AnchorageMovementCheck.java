package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Whether each piece of mullion is fixed exactly once and free to move everywhere else: dead-load
 * anchors counted ({@link Piece}), joints ({@link JointMovement}), slots ({@link SlotMovement}),
 * forces against what the caller allows ({@link AnchorForces}), glass under story drift ({@link
 * GlassDrift}).
 */
public final class AnchorageMovementCheck {

    private AnchorageMovementCheck() {}

    /** The check. */
    public static AnchorageMovementResult run(
            AnchorageMovementRequest request, Reporting reporting) {
        AnchorageMovementResult result = evaluate(request, reporting);
        return result.withRemedies(AnchorageRemedies.of(request, reporting, result));
    }

    /** The check without its remedies, by which remedies are tried out. */
    static AnchorageMovementResult evaluate(AnchorageMovementRequest request, Reporting reporting) {
        List<Finding> findings = new ArrayList<>(AnchorageFindings.missing(request));
        boolean complete = findings.isEmpty();
        Trace trace = new Trace(reporting.trace());
        boolean pieced = request.stackJoints() != null && !request.anchors().isEmpty();
        List<Piece> pieces = Piece.of(request);
        List<PieceResult> pieceResults =
                pieced ? PieceHolding.of(pieces, request.movement()) : List.of();
        for (int i = 0; i < pieceResults.size(); i++) {
            findings.addAll(AnchorageFindings.held(pieces.get(i), pieceResults.get(i), reporting));
        }
        List<JointMovement> movements =
                request.joints().stream().map(joint -> movement(joint, pieces, request)).toList();
        List<JointResult> joints = movements.stream().map(JointMovement::result).toList();
        for (int j = 0; j < joints.size(); j++) {
            Quantity required = joints.get(j).requiredWidth();
            if (joints.get(j).verdict() == Verdict.EXCEEDED && required != null) {
                findings.add(
                        AnchorageFindings.tooNarrow(
                                j, request.joints().get(j), required, reporting));
            }
        }
        findings.addAll(AnchorageFindings.creep(request));
        AnchorageTrace.tolerance(trace, request.movement());
        AnchorageTrace.joints(trace, movements, joints);
        List<SlotResult> slots =
                slots(request, pieced ? pieces : List.of(), reporting, findings, trace);
        List<AnchorForceResult> forces = forces(request, reporting, findings, trace);
        List<ExpansionJointResult> expansion = expansion(request, reporting, findings, trace);
        GlassDrift drift = new GlassDrift(request.movement());
        drift.trace(trace);
        findings.addAll(drift.findings(reporting));

        List<Verdict> verdicts = new ArrayList<>();
        verdicts.add(pieced ? Verdict.SATISFIED : Verdict.UNDETERMINED);
        pieceResults.forEach(piece -> verdicts.add(piece.verdict()));
        joints.forEach(joint -> verdicts.add(joint.verdict()));
        slots.forEach(slot -> verdicts.add(slot.verdict()));
        forces.forEach(force -> verdicts.add(force.verdict()));
        expansion.forEach(joint -> verdicts.add(joint.verdict()));
        verdicts.add(drift.verdict());
        // what any sum rests on, also where there is no joint or slot to miss it
        if (!complete) {
            verdicts.add(Verdict.UNDETERMINED);
        }
        Double utilization =
                Stream.of(
                                joints.stream().map(JointResult::utilization),
                                slots.stream().map(SlotResult::utilization),
                                forces.stream().map(AnchorForceResult::windUtilization),
                                forces.stream().map(AnchorForceResult::deadLoadUtilization),
                                forces.stream()
                                        .map(AnchorForceResult::bracket)
                                        .filter(Objects::nonNull)
                                        .map(BracketResult::utilization),
                                expansion.stream().map(ExpansionJointResult::utilization),
                                Stream.of(drift).map(GlassDrift::utilization))
                        .flatMap(each -> each)
                        .filter(Objects::nonNull)
                        .max(Double::compare)
                        .orElse(null);
        return new AnchorageMovementResult(
                new Outcome(
                        Verdict.ofAll(verdicts),
                        utilization,
                        findings,
                        List.of(),
                        trace.steps(),
                        cautions(request)),
                length(thermalMovement(request, movements)),
                pieceResults,
                joints,
                slots,
                forces,
                length(drift.capacity()),
                length(drift.demand()),
                drift.utilization(),
                expansion);
    }

    private static List<String> cautions(AnchorageMovementRequest request) {
        boolean brackets = request.anchors().stream().anyMatch(a -> a.bracket() != null);
        List<String> own =
                new ArrayList<>(
                        List.of(
                                "Temperatures are those of the metal; the building is taken to keep"
                                        + " its own.",
                                brackets
                                        ? "Embedment in concrete, the metal of brackets and seismic"
                                                + " force on anchors are left to a licensed"
                                                + " engineer."
                                        : "Embedment in concrete, eccentricity of brackets and"
                                                + " seismic force on anchors are left to a licensed"
                                                + " engineer."));
        if (!request.verticalJoints().isEmpty()) {
            own.add(
                    "The width of an expansion joint is for opening and closing; shear of its"
                            + " sealant, where the two sides move against each other, is not in"
                            + " it.");
        }
        return Cautions.with(own.toArray(String[]::new));
    }

    private static JointMovement movement(
            StackJoint joint, List<Piece> pieces, AnchorageMovementRequest request) {
        int below = 0;
        while (!Objects.equals(pieces.get(below).top(), joint.elevation())) {
            below++;
        }
        return new JointMovement(
                joint, pieces.get(below), pieces.get(below + 1), request.movement());
    }

    private static List<SlotResult> slots(
            AnchorageMovementRequest request,
            List<Piece> pieces,
            Reporting reporting,
            List<Finding> findings,
            Trace trace) {
        List<SlotResult> slots = new ArrayList<>();
        List<String> unsaid = new ArrayList<>();
        List<Anchor> fixed = request.anchors().stream().filter(Anchor::isFixed).toList();
        for (int i = 0; i < request.anchors().size(); i++) {
            Anchor anchor = request.anchors().get(i);
            if (anchor.isFixed()) {
                continue;
            }
            Anchor own =
                    pieces.stream()
                            .filter(piece -> piece.anchors().contains(anchor))
                            .map(piece -> piece.fixedNear(anchor.elevation()))
                            .filter(Objects::nonNull)
                            .findFirst()
                            .orElse(null);
            Anchor from = own == null ? Piece.nearest(fixed, anchor.elevation()) : own;
            SlotResult slot =
                    from == null
                            ? new SlotResult(
                                    anchor.id(),
                                    null,
                                    null,
                                    null,
                                    null,
                                    List.of(),
                                    List.of(),
                                    null,
                                    Verdict.UNDETERMINED)
                            : new SlotMovement(anchor, from, own != null, request.movement())
                                    .result();
            slots.add(slot);
            AnchorageTrace.slot(trace, slot);
            if (slot.verdict() == Verdict.EXCEEDED) {
                findings.add(AnchorageFindings.slotTooShort(i, slot, reporting));
            }
            if (slot.utilization() == null) {
                unsaid.add(anchor.id());
            }
        }
        if (!unsaid.isEmpty()) {
            findings.add(AnchorageFindings.slotsToCallOut(unsaid));
        }
        return slots;
    }

    private static List<AnchorForceResult> forces(
            AnchorageMovementRequest request,
            Reporting reporting,
            List<Finding> findings,
            Trace trace) {
        List<AnchorForceResult> forces = new ArrayList<>();
        List<String> together = new ArrayList<>();
        List<String> bracketed = new ArrayList<>();
        for (int i = 0; i < request.anchors().size(); i++) {
            Anchor anchor = request.anchors().get(i);
            if (AnchorForces.isGiven(anchor)) {
                AnchorForceResult force =
                        AnchorForces.of(anchor, "/anchors/" + i, reporting, findings, trace);
                forces.add(force);
                if (force.windUtilization() != null && force.deadLoadUtilization() != null) {
                    together.add(anchor.id());
                }
                if (anchor.bracket() != null) {
                    bracketed.add(anchor.id());
                }
            }
        }
        if (forces.size() < request.anchors().size()) {
            findings.add(AnchorageFindings.strengthNotChecked());
        }
        if (!together.isEmpty()) {
            findings.add(AnchorageFindings.interaction(together));
        }
        if (!bracketed.isEmpty()) {
            findings.add(BracketStatics.outside(bracketed));
        }
        return forces;
    }

    private static List<ExpansionJointResult> expansion(
            AnchorageMovementRequest request,
            Reporting reporting,
            List<Finding> findings,
            Trace trace) {
        List<ExpansionJointResult> results = new ArrayList<>();
        for (int j = 0; j < request.verticalJoints().size(); j++) {
            ExpansionJointMovement joint =
                    new ExpansionJointMovement(request.verticalJoints().get(j), request.movement());
            ExpansionJointResult result = joint.result();
            results.add(result);
            findings.addAll(joint.findings(j, result, reporting));
            ExpansionJointMovement.trace(trace, result);
        }
        return results;
    }

    private static @Nullable Double thermalMovement(
            AnchorageMovementRequest request, List<JointMovement> movements) {
        if (!movements.isEmpty()) {
            return movements.stream()
                    .map(JointMovement::thermalRange)
                    .filter(Objects::nonNull)
                    .max(Double::compare)
                    .orElse(null);
        }
        Double warming = request.movement().warmingStrain();
        Double cooling = request.movement().coolingStrain();
        if (request.stackJoints() == null || warming == null || cooling == null) {
            return null;
        }
        return request.anchors().stream()
                .filter(Anchor::isFixed)
                .flatMap(
                        fixed ->
                                request.anchors().stream()
                                        .map(a -> Math.abs(a.elevation() - fixed.elevation())))
                .max(Double::compare)
                .map(farthest -> farthest * (warming + cooling))
                .orElse(null);
    }

    private static @Nullable Quantity length(@Nullable Double metres) {
        return metres == null ? null : Quantity.of(Dimension.LENGTH, metres);
    }
}
