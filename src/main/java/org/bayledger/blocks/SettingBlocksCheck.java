package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.FOOT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the place of the two setting blocks of a lite: the quarter points, unless the horizontal
 * bends or turns too far under them; then outward in the order in which the trade accepts it. A
 * place that the request has chosen is judged alone.
 *
 * <p>Method: weight of the lite, half of it on each block; deflection of the horizontal on its span
 * ({@link HorizontalDeflection}), rotation ({@link HorizontalTwist}), end reactions, pressure on
 * the blocks and tension in the glass ({@link BlockDemand}); limits ({@link DeadLoadLimits} and
 * what the caller allows); the first place that may be used and keeps them. Source: glazing
 * industry handbook and curtain-wall design guide rules, from memory.
 */
public final class SettingBlocksCheck {

    /** By how much glass and span may differ and still be one lite on one span, m: 12 in. */
    private static final double ONE_LITE = FOOT;

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final Trace trace;
    private final double length;
    private final @Nullable DeadLoadLimits limits;
    private final List<Finding> findings = new ArrayList<>();

    private SettingBlocksCheck(SettingBlocksRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
        trace = new Trace(reporting.trace());
        length = SettingBlock.length(request.width() * request.height());
        Double span = request.support().span();
        limits = span == null ? null : DeadLoadLimits.of(request, span);
    }

    /** The check. */
    public static SettingBlocksResult run(SettingBlocksRequest request, Reporting reporting) {
        SettingBlocksResult result = evaluate(request, reporting);
        List<Remedy> remedies =
                new ArrayList<>(SettingBlocksRemedies.of(request, reporting, result));
        remedies.addAll(AsFoundRemedies.of(request, reporting, result));
        return result.withRemedies(remedies);
    }

    /** The check without its remedies, by which remedies are tried out. */
    static SettingBlocksResult evaluate(SettingBlocksRequest request, Reporting reporting) {
        SettingBlocksCheck check = new SettingBlocksCheck(request, reporting);
        BlockTrace.blocks(check.trace, request.width() * request.height(), check.length);
        SettingBlocksResult drawn =
                request.support().kind() == BlockSupport.Kind.SHIMMED_SILL
                        ? check.onSill()
                        : check.onMember();
        return AsFoundCheck.add(request, reporting, drawn);
    }

    private SettingBlocksResult onSill() {
        if (request.below() != null) {
            findings.add(
                    Finding.info(
                            "BELOW_NOT_USED",
                            "/below",
                            "A sill that is shimmed does not bend onto what stands below; the"
                                    + " clearance there was not looked at."));
        }
        List<BlockCandidate> candidates =
                new BlockCandidates(request, reporting, length, null).all();
        BlockCandidate quarter = candidates.get(0);
        BlockPlace place = place(quarter);
        BlockTrace.glass(trace, quarter);
        findings.add(
                Finding.note(
                        "SHIMS_UNDER_BLOCKS",
                        "/support",
                        "The lite keeps the quarter points on a sill that is shimmed; call out the"
                                + " shims under the blocks on the shop drawings."));
        if (request.blockPressureAllowable() != null && request.mass() == null) {
            findings.add(BlockFindings.weightNotGiven());
        }
        Verdict verdict = quarter.verdict().and(ofBlocks());
        if (verdict == Verdict.EXCEEDED) {
            findings.add(BlockFindings.nothingPasses(quarter, 0, reporting));
        }
        return result(
                verdict,
                quarter.utilization(),
                place,
                candidates,
                ShopDrawingNote.none(),
                BlockNotes.shims(place, SettingBlock.cutLength(length), reporting));
    }

    /** What is said of the blocks themselves, and what it leaves open. */
    private Verdict ofBlocks() {
        findings.addAll(ConnectionFindings.ofBlocks(request, reporting));
        boolean weightless = request.blockPressureAllowable() != null && request.mass() == null;
        return weightless
                        || ConnectionFindings.tooNarrow(request)
                        || ConnectionFindings.pressureUnknown(request)
                ? Verdict.UNDETERMINED
                : Verdict.SATISFIED;
    }

    private SettingBlocksResult onMember() {
        Double mass = request.mass();
        findings.addAll(BlockFindings.missing(request, mass));
        findings.addAll(ConnectionFindings.ofMember(request.support()));
        Verdict verdict = ofBlocks();
        boolean together = true;
        if (limits == null || !limits.known()) {
            verdict = Verdict.UNDETERMINED;
        }
        Double span = request.support().span();
        if (limits != null && span != null) {
            BlockTrace.limits(trace, limits);
            BlockTrace.rotationLimit(trace, request.support());
            together = goTogether(request, span);
            if (!together) {
                findings.add(BlockFindings.spanDiffers(request, span, reporting));
                verdict = Verdict.UNDETERMINED;
            }
            Double clearance = limits.clearanceLimit();
            if (clearance != null && clearance <= 0) {
                findings.add(BlockFindings.clearanceTooSmall(limits, reporting));
            }
        }
        BlockCandidates places = new BlockCandidates(request, reporting, length, limits);
        List<BlockCandidate> candidates = places.all();
        Double load = request.blockLoad();
        if (mass == null
                || load == null
                || limits == null
                || HorizontalDeflection.of(request.support()) == null) {
            return result(
                    Verdict.UNDETERMINED, null, null, candidates, ShopDrawingNote.none(), null);
        }
        BlockTrace.weight(trace, request, mass, load);
        List<BlockCandidate> usable =
                candidates.stream()
                        .filter(
                                candidate ->
                                        request.blockDistance() == null
                                                || candidate.point() == BlockPoint.CHOSEN)
                        .filter(places::fits)
                        .toList();
        usable.forEach(candidate -> BlockTrace.candidate(trace, request, candidate));
        BlockCandidate chosen =
                usable.stream()
                        .filter(candidate -> candidate.verdict() != Verdict.EXCEEDED)
                        .findFirst()
                        .orElse(null);
        if (chosen == null) {
            return nothing(usable, candidates, together, limits);
        }
        BlockPlace place = place(chosen);
        if (!place.atQuarterPoints()) {
            findings.add(BlockFindings.relocated(place, candidates.get(0), reporting));
        }
        if (!chosen.eligible()) {
            findings.add(BlockFindings.fabricatorsWord());
            verdict = Verdict.UNDETERMINED;
        }
        if (request.support().propped()) {
            findings.add(ConnectionFindings.prop(chosen.midSupportReaction(), reporting));
        }
        return result(
                verdict.and(chosen.verdict()),
                chosen.utilization(),
                place,
                candidates,
                BlockNotes.of(place, SettingBlock.cutLength(length), chosen.eligible(), reporting),
                null);
    }

    /** Whether the lites that were given are those that stand on the span. */
    static boolean goTogether(SettingBlocksRequest request, double span) {
        SecondLite beside = request.secondLite();
        return Math.abs(request.width() + (beside == null ? 0 : beside.width()) - span) <= ONE_LITE;
    }

    /** No place passes, or none can be had. */
    private SettingBlocksResult nothing(
            List<BlockCandidate> usable,
            List<BlockCandidate> candidates,
            boolean together,
            DeadLoadLimits of) {
        BlockCandidate best =
                usable.stream()
                        .min(Comparator.comparingDouble(SettingBlocksCheck::use))
                        .orElse(null);
        BlockCandidate last = candidates.get(candidates.size() - 1);
        boolean refused = best == null && last.point() == BlockPoint.CHOSEN;
        if (best != null) {
            Quantity drop = best.rotationDrop();
            findings.add(
                    BlockFindings.nothingPasses(
                            best, of.limit(drop == null ? 0 : drop.si()), reporting));
        } else if (refused) {
            findings.add(BlockFindings.chosenNotAccepted(last));
        } else {
            findings.add(BlockFindings.nothingFits());
        }
        return result(
                (best == null && !refused) || !together ? Verdict.UNDETERMINED : Verdict.EXCEEDED,
                best == null ? null : best.utilization(),
                null,
                candidates,
                ShopDrawingNote.none(),
                null);
    }

    /** Governing use of a place; one that was not judged comes last. */
    private static double use(BlockCandidate candidate) {
        Double utilization = candidate.utilization();
        return utilization == null ? Double.POSITIVE_INFINITY : utilization;
    }

    private static BlockPlace place(BlockCandidate candidate) {
        return new BlockPlace(
                candidate.point(),
                candidate.fraction(),
                candidate.distanceFromCorner(),
                candidate.memberDeflection());
    }

    private SettingBlocksResult result(
            Verdict verdict,
            @Nullable Double utilization,
            @Nullable BlockPlace recommended,
            List<BlockCandidate> candidates,
            ShopDrawingNote note,
            @Nullable String shims) {
        Double mass = request.mass();
        boolean turns = candidates.get(0).rotation() != null;
        Quantity drop =
                candidates.stream()
                        .filter(one -> recommended != null && one.point() == recommended.point())
                        .findFirst()
                        .orElse(candidates.get(0))
                        .rotationDrop();
        return new SettingBlocksResult(
                new Outcome(
                        verdict,
                        utilization,
                        findings,
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Blocks are as wide as the pane is thick and must suit the sealants"
                                        + " that touch them; follow the glass fabricator's word on"
                                        + " both.",
                                "Crushing of the glass right over a block, creep of the blocks and"
                                        + " the strength of the horizontal in bending are not part"
                                        + " of this check; nor are twist, end connections and"
                                        + " pressure on the blocks where a finding says so.")),
                SettingBlock.COUNT,
                Quantity.of(Dimension.LENGTH, length),
                Quantity.of(Dimension.LENGTH, SettingBlock.cutLength(length)),
                SettingBlock.MATERIAL,
                mass == null ? null : Quantity.of(Dimension.MASS, mass),
                limits == null ? null : Quantity.of(Dimension.LENGTH, limits.ownLimit()),
                limits == null
                        ? null
                        : Quantity.of(Dimension.LENGTH, limits.limit(drop == null ? 0 : drop.si())),
                recommended,
                candidates,
                note,
                shims,
                turns ? Quantity.of(Dimension.ANGLE, request.support().rotationAllowed()) : null,
                Quantity.of(Dimension.STRESS, GlassOnBlocks.allowable()),
                null);
    }
}
