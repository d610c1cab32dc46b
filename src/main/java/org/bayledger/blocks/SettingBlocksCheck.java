package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.FOOT;
import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
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
 * Chooses the place of the two setting blocks of a lite: the quarter points, unless the horizontal
 * bends too far under them; then outward in the order in which the trade accepts it.
 *
 * <p>Method: weight of the lite, half of it on each block; deflection of the horizontal on its span
 * ({@link HorizontalDeflection}); limits ({@link DeadLoadLimits}); the first place that may be used
 * and keeps them. Source: glazing industry handbook and curtain-wall design guide rules, from
 * memory.
 */
public final class SettingBlocksCheck {

    /** Standard gravity, m/s2 (3rd CGPM, 1901), exact. */

    /** By how much glass and span may differ and still be one lite on one span, m: 12 in. */
    private static final double ONE_LITE = FOOT;

    private static final String HANDBOOK = "glazing industry handbook rule (from memory)";
    private static final String GUIDE = "curtain-wall design guide rule (from memory)";

    private SettingBlocksCheck() {}

    /** The check. */
    public static SettingBlocksResult run(SettingBlocksRequest request, Reporting reporting) {
        SettingBlocksResult result = evaluate(request, reporting);
        return result.withRemedies(SettingBlocksRemedies.of(request, reporting, result));
    }

    /** The check without its remedies, by which remedies are tried out. */
    static SettingBlocksResult evaluate(SettingBlocksRequest request, Reporting reporting) {
        Trace trace = new Trace(reporting.trace());
        double area = request.width() * request.height();
        double length = SettingBlock.length(area);
        trace.detail("A", "area of the lite", Dimension.AREA, area, "W H", "geometry")
                .step(
                        "l",
                        "least length of each block",
                        Dimension.LENGTH,
                        length,
                        "max(4 in, 0.1 in x A / ft2)",
                        HANDBOOK);
        return request.support().kind() == BlockSupport.Kind.SHIMMED_SILL
                ? onSill(request, reporting, trace, length)
                : onMember(request, reporting, trace, length);
    }

    private static SettingBlocksResult onSill(
            SettingBlocksRequest request, Reporting reporting, Trace trace, double length) {
        List<Finding> findings = new ArrayList<>();
        if (request.below() != null) {
            findings.add(
                    Finding.info(
                            "BELOW_NOT_USED",
                            "/below",
                            "A sill that is shimmed does not bend onto what stands below; the"
                                    + " clearance there was not looked at."));
        }
        List<BlockCandidate> candidates =
                new BlockCandidates(request, reporting, length, null, null, 0).all();
        BlockPlace place = place(candidates.get(0));
        findings.add(
                Finding.note(
                        "SHIMS_UNDER_BLOCKS",
                        "/support",
                        "The lite keeps the quarter points on a sill that is shimmed; call out the"
                                + " shims under the blocks on the shop drawings."));
        return result(
                Verdict.SATISFIED,
                null,
                findings,
                trace,
                length,
                request.mass(),
                null,
                place,
                candidates,
                ShopDrawingNote.none(),
                BlockNotes.shims(place, SettingBlock.cutLength(length), reporting));
    }

    private static SettingBlocksResult onMember(
            SettingBlocksRequest request, Reporting reporting, Trace trace, double length) {
        Double mass = request.mass();
        List<Finding> findings = new ArrayList<>(BlockFindings.missing(request, mass));
        Verdict verdict = Verdict.SATISFIED;
        boolean oneLite = true;
        Double span = request.support().span();
        DeadLoadLimits limits = span == null ? null : new DeadLoadLimits(span, request.below());
        if (limits == null || !limits.known()) {
            verdict = Verdict.UNDETERMINED;
        }
        if (limits != null) {
            trace(trace, limits);
            oneLite = Math.abs(request.width() - limits.span()) <= ONE_LITE;
            if (!oneLite) {
                findings.add(BlockFindings.spanDiffers(request, limits.span(), reporting));
                verdict = Verdict.UNDETERMINED;
            }
            Double clearance = limits.clearanceLimit();
            if (clearance != null && clearance <= 0) {
                findings.add(BlockFindings.clearanceTooSmall(limits, reporting));
            }
        }
        HorizontalDeflection horizontal = horizontal(request.support());
        double load = mass == null ? 0 : mass * STANDARD_GRAVITY / SettingBlock.COUNT;
        BlockCandidates places =
                new BlockCandidates(
                        request, reporting, length, limits, mass == null ? null : horizontal, load);
        List<BlockCandidate> candidates = places.all();
        if (mass == null || horizontal == null || limits == null) {
            return result(
                    Verdict.UNDETERMINED,
                    null,
                    findings,
                    trace,
                    length,
                    mass,
                    limits,
                    null,
                    candidates,
                    ShopDrawingNote.none(),
                    null);
        }
        trace.detail(
                        "m",
                        "mass of the lite",
                        Dimension.MASS,
                        mass,
                        request.glass() == null ? "input" : "area mass of the build-up x A",
                        request.glass() == null ? "input" : "glass 2500 kg/m3 (from memory)")
                .step(
                        "P",
                        "weight on each block",
                        Dimension.FORCE,
                        load,
                        "m g / 2, g = 9.80665 m/s2",
                        "standard gravity, 3rd CGPM 1901");
        List<BlockCandidate> usable =
                candidates.stream().filter(candidate -> places.fits(candidate.point())).toList();
        for (BlockCandidate candidate : usable) {
            trace(trace, candidate, places.placeOnMember(candidate.point()));
        }
        BlockCandidate chosen =
                usable.stream()
                        .filter(candidate -> candidate.verdict() != Verdict.EXCEEDED)
                        .findFirst()
                        .orElse(null);
        if (chosen == null) {
            // further out is stiffer, so that the last place that fits is the best there is
            BlockCandidate best = usable.isEmpty() ? null : usable.get(usable.size() - 1);
            if (best != null && best.memberDeflection() != null) {
                findings.add(
                        BlockFindings.nothingPasses(
                                best.memberDeflection().si(), limits.limit(), reporting));
            } else {
                findings.add(BlockFindings.nothingFits());
            }
            return result(
                    best == null || !oneLite ? Verdict.UNDETERMINED : Verdict.EXCEEDED,
                    best == null ? null : best.utilization(),
                    findings,
                    trace,
                    length,
                    mass,
                    limits,
                    null,
                    candidates,
                    ShopDrawingNote.none(),
                    null);
        }
        BlockPlace place = place(chosen);
        if (chosen.point() != BlockPoint.QUARTER) {
            findings.add(BlockFindings.relocated(place, reporting));
        }
        if (!chosen.eligible()) {
            findings.add(BlockFindings.fabricatorsWord());
            verdict = Verdict.UNDETERMINED;
        }
        return result(
                verdict.and(chosen.verdict()),
                chosen.utilization(),
                findings,
                trace,
                length,
                mass,
                limits,
                place,
                candidates,
                BlockNotes.of(place, SettingBlock.cutLength(length), chosen.eligible(), reporting),
                null);
    }

    private static @Nullable HorizontalDeflection horizontal(BlockSupport support) {
        if (support.span() == null
                || support.secondMomentOfArea() == null
                || support.elasticModulus() == null) {
            return null;
        }
        return new HorizontalDeflection(
                support.span(),
                support.elasticModulus() * support.secondMomentOfArea(),
                support.massPerLength() == null ? 0 : support.massPerLength() * STANDARD_GRAVITY);
    }

    private static void trace(Trace trace, DeadLoadLimits limits) {
        trace.step(
                "d own",
                "limit on the member's own account",
                Dimension.LENGTH,
                limits.ownLimit(),
                "min(L/360, 1/8 in)",
                "common practice, no source");
        Double bite = limits.biteLimit();
        if (bite != null) {
            trace.step(
                    "d bite",
                    "deflection that leaves 75 % of the bite",
                    Dimension.LENGTH,
                    bite,
                    "0.25 b",
                    GUIDE);
        }
        Double clearance = limits.clearanceLimit();
        GlazingBelow below = limits.below();
        if (clearance != null && below != null) {
            trace.detail(
                            "r",
                            "edge clearance to be left below",
                            Dimension.LENGTH,
                            below.kind().clearanceToKeep(),
                            "1/8 in over anything fixed, 1/16 in over an operating sash",
                            GUIDE)
                    .step(
                            "d clr",
                            "deflection that uses up the clearance below",
                            Dimension.LENGTH,
                            clearance,
                            "c - r + s, s sinking of the glazing below",
                            GUIDE);
        }
    }

    private static void trace(Trace trace, BlockCandidate candidate, double place) {
        Quantity deflection = candidate.memberDeflection();
        if (deflection != null) {
            trace.detail(
                            "a " + candidate.point(),
                            "block from the member's support",
                            Dimension.LENGTH,
                            place,
                            "f W - (W - L)/2, f = " + candidate.fraction(),
                            "geometry")
                    .step(
                            "d " + candidate.point(),
                            "deflection at mid-span",
                            Dimension.LENGTH,
                            deflection.si(),
                            "P a (3 L^2 - 4 a^2) / (24 E I) + 5 w L^4 / (384 E I)",
                            "closed form, simply supported beam");
        }
    }

    private static BlockPlace place(BlockCandidate candidate) {
        return new BlockPlace(
                candidate.point(),
                candidate.fraction(),
                candidate.distanceFromCorner(),
                candidate.memberDeflection());
    }

    private static SettingBlocksResult result(
            Verdict verdict,
            @Nullable Double utilization,
            List<Finding> findings,
            Trace trace,
            double length,
            @Nullable Double mass,
            @Nullable DeadLoadLimits limits,
            @Nullable BlockPlace recommended,
            List<BlockCandidate> candidates,
            ShopDrawingNote note,
            @Nullable String shims) {
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
                                "Twist of the horizontal under glass that stands off its axis, its"
                                        + " end connections and the glass over its blocks are not"
                                        + " part of this check.")),
                SettingBlock.COUNT,
                Quantity.of(Dimension.LENGTH, length),
                Quantity.of(Dimension.LENGTH, SettingBlock.cutLength(length)),
                SettingBlock.MATERIAL,
                mass == null ? null : Quantity.of(Dimension.MASS, mass),
                limits == null ? null : Quantity.of(Dimension.LENGTH, limits.ownLimit()),
                limits == null ? null : Quantity.of(Dimension.LENGTH, limits.limit()),
                recommended,
                candidates,
                note,
                shims);
    }
}
