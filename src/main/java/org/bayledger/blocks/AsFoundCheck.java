package org.bayledger.blocks;

import static org.bayledger.blocks.FoundNumbers.length;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceStep;
import org.bayledger.mechanics.RigidBar;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What comes of the setting blocks of a lite as they were found on site.
 *
 * <p>Method: what each block carries ({@link FoundLoads}); what that asks of the horizontal where
 * the blocks stand ({@link FoundMember}) and of the glass ({@link GlassOnFoundBlocks}); the limits
 * of the check as drawn ({@link BlockDemand}); each block against the rule for setting blocks
 * ({@link SettingBlock}).
 */
final class AsFoundCheck {

    private final SettingBlocksRequest request;
    private final Installed installed;
    private final SettingBlocksResult drawn;
    private final FoundPlaces places;
    private final AsFoundVerdict verdict = new AsFoundVerdict();
    private final AsFoundFindings findings;
    private final FoundSagFindings sagFindings;
    private final FoundPlaceFindings placeFindings;
    private final FoundBlockFindings blockFindings;
    private final Trace trace;
    private final boolean sill;
    private final @Nullable Double drawnAt;
    private final @Nullable FoundMember member;
    private final @Nullable FoundLoads lite;
    private double @Nullable [] loads;
    private double @Nullable [] least;
    private double @Nullable [] greatest;
    private @Nullable RigidBar bar;

    private AsFoundCheck(
            SettingBlocksRequest request,
            Installed installed,
            Reporting reporting,
            SettingBlocksResult drawn) {
        this.request = request;
        this.installed = installed;
        this.drawn = drawn;
        places = FoundPlaces.of(request, installed);
        findings = new AsFoundFindings(request, reporting, places, verdict);
        sagFindings = new FoundSagFindings(request, reporting, places, verdict);
        placeFindings = new FoundPlaceFindings(request, installed, reporting, places, verdict);
        blockFindings = new FoundBlockFindings(request, reporting, places, verdict);
        trace = new Trace(reporting.trace());
        sill = request.support().kind() == BlockSupport.Kind.SHIMMED_SILL;
        drawnAt = drawnDistance(request, installed, drawn);
        member = FoundMember.of(request, drawnAt);
        Double mass = request.mass();
        lite = mass == null ? null : new FoundLoads(request, installed, mass, member);
    }

    /** The check as drawn with what was found on site, where that was given. */
    static SettingBlocksResult add(
            SettingBlocksRequest request, Reporting reporting, SettingBlocksResult drawn) {
        Installed installed = request.installed();
        return installed == null
                ? drawn
                : new AsFoundCheck(request, installed, reporting, drawn).result();
    }

    /** Where the blocks belong, from each glass corner, m, or null where nothing says so. */
    private static @Nullable Double drawnDistance(
            SettingBlocksRequest request, Installed installed, SettingBlocksResult drawn) {
        if (installed.drawnDistance() != null) {
            return installed.drawnDistance();
        }
        BlockPoint point = installed.drawnPoint();
        Double fraction = point == null ? null : point.fraction(request);
        if (fraction != null) {
            return fraction * request.width();
        }
        BlockPlace place = drawn.recommended();
        return place == null ? null : place.distanceFromCorner().si();
    }

    private SettingBlocksResult result() {
        AsFound found = found();
        Outcome outcome = drawn.outcome();
        List<Finding> said = new ArrayList<>(outcome.findings());
        said.addAll(verdict.findings());
        List<TraceStep> steps = new ArrayList<>(outcome.trace());
        steps.addAll(trace.steps());
        List<String> cautions = new ArrayList<>(outcome.cautions());
        cautions.add(
                "Of what was found on site the setting blocks were looked at: anti-walk blocks at"
                        + " the jambs, gaskets and the edges of the glass were not.");
        Double utilization = outcome.utilization();
        Double also = found.utilization();
        if (utilization == null || (also != null && also > utilization)) {
            utilization = also;
        }
        return drawn.with(
                new Outcome(
                        outcome.verdict().and(found.verdict()),
                        utilization,
                        said,
                        outcome.remedies(),
                        steps,
                        cautions),
                found);
    }

    private AsFound found() {
        int count = places.blocks().size();
        boolean held = stand(count);
        List<AsFoundBlock> blocks =
                FoundNumbers.of(request, installed, lite, member, loads, least, greatest);
        if (loads != null) {
            FoundNumbers.trace(trace, loads);
        }
        FoundSag sag = held ? FoundSag.of(request, lite, member, loads, drawnAt) : null;
        DeadLoadLimits limits = limits();
        Double stress = held ? stress() : null;
        boolean kept = judge(blocks, sag, limits, stress);
        if (installed.drawnPoint() == null && installed.drawnDistance() == null) {
            sagFindings.drawnFrom(drawnAt);
        } else if (sag != null && limits != null && drawnAt != null) {
            sagFindings.drawing(drawnAt, sag, limits);
        }
        if (member != null) {
            sagFindings.beyondMember(member);
        }
        String consequence =
                sag == null || limits == null ? "" : sagFindings.consequence(sag, limits);
        for (int i = 0; i < count; i++) {
            placeFindings.of(i, drawnAt, kept, consequence);
            blockFindings.of(i, blocks.get(i));
        }
        return answer(blocks, sag, limits, stress, held);
    }

    /** What each block carries, and what is to be said of it; whether the blocks hold the lite. */
    private boolean stand(int count) {
        double middle = request.width() / 2;
        boolean held =
                FoundLoads.held(
                        places.blocks().stream()
                                .mapToDouble(block -> block.position() - middle)
                                .toArray());
        FoundLoads of = lite;
        if (count < SettingBlock.COUNT) {
            findings.tooFew();
        } else if (!held) {
            findings.tips(of == null || count > SettingBlock.COUNT ? null : of.pair(0, 1));
        } else if (of == null) {
            if (count > SettingBlock.COUNT) {
                findings.uncounted();
            }
        } else if (count == SettingBlock.COUNT) {
            double[] both = of.pairs().get(0);
            loads = both;
            findings.unequal(both, of.corners(both));
        } else {
            RigidBar resting = of.elastic(-1, 0);
            if (resting == null) {
                least = of.bound(true);
                greatest = of.bound(false);
                findings.bounded(of.bound(true), of.bound(false));
            } else {
                bar = resting;
                loads = resting.reactions();
                findings.many(of, resting);
            }
        }
        if (count == SettingBlock.COUNT) {
            findings.level();
        }
        if (loads != null) {
            least = loads;
            greatest = loads;
        }
        return held;
    }

    private @Nullable DeadLoadLimits limits() {
        Double span = request.support().span();
        return span == null ? null : DeadLoadLimits.of(request, span);
    }

    /** Greatest tension in an edge of the glass, Pa, or null where the weight is not known. */
    private @Nullable Double stress() {
        FoundLoads of = lite;
        return of == null
                ? null
                : (Double)
                        of.cases(loads).stream()
                                .mapToDouble(
                                        one -> GlassOnFoundBlocks.stress(request, of.places(), one))
                                .max()
                                .orElse(0);
    }

    /** Holds what was found against its limits; whether all of them are known to be kept. */
    private boolean judge(
            List<AsFoundBlock> blocks,
            @Nullable FoundSag sag,
            @Nullable DeadLoadLimits limits,
            @Nullable Double stress) {
        boolean known = stress != null;
        boolean kept = known;
        if (stress != null) {
            Double pressure = FoundNumbers.greatestPressure(blocks);
            BlockDemand demand =
                    new BlockDemand(null, pressure, stress, sag == null ? null : sag.member());
            kept = sagFindings.limits(demand, sag, limits);
            known = request.blockPressureAllowable() == null || pressure != null;
        }
        Double span = request.support().span();
        if (!sill) {
            known =
                    known
                            && sag != null
                            && limits != null
                            && limits.known()
                            && span != null
                            && SettingBlocksCheck.goTogether(request, span);
        }
        if (sag != null) {
            trace.step(
                    "d found",
                    "greatest deflection with the blocks as found",
                    Dimension.LENGTH,
                    sag.greatest(),
                    "loads R at the blocks, own weight, on the member's supports",
                    "Bernoulli's theory of bending");
        }
        if (!known) {
            verdict.unknown();
        }
        return kept && known;
    }

    private AsFound answer(
            List<AsFoundBlock> blocks,
            @Nullable FoundSag sag,
            @Nullable DeadLoadLimits limits,
            @Nullable Double stress,
            boolean held) {
        double[] corners = null;
        if (bar != null) {
            double half = request.width() / 2;
            corners = new double[] {bar.dropAt(-half), bar.dropAt(half)};
        } else if (lite != null && loads != null) {
            corners = lite.corners(loads);
        }
        Double clearance = sag == null || limits == null ? null : limits.clearanceLeft(sag.lost());
        GlazingBelow below = request.below();
        boolean nothingBelow = below != null && below.kind() == GlazingBelow.Kind.NONE;
        Double rotation = sag == null ? null : sag.member().rotation();
        return new AsFound(
                verdict.verdict(),
                verdict.utilization(),
                lite == null || !held ? null : basis(),
                blocks,
                length(drawnAt),
                length(sag == null ? null : (Double) sag.greatest()),
                length(sag == null ? null : (Double) sag.at()),
                length(sag == null ? null : sag.asDrawn()),
                length(clearance),
                length(sag == null || limits == null ? null : limits.biteLeft(sag.lost())),
                nothingBelow ? (Boolean) false : touches(sag, clearance),
                length(corners == null ? null : (Double) corners[0]),
                length(corners == null ? null : (Double) corners[1]),
                rotation == null ? null : Quantity.of(Dimension.ANGLE, rotation),
                sag == null ? null : Quantity.of(Dimension.FORCE, sag.member().endReaction()),
                stress == null ? null : Quantity.of(Dimension.STRESS, stress));
    }

    private AsFound.LoadBasis basis() {
        if (places.blocks().size() == SettingBlock.COUNT) {
            return AsFound.LoadBasis.STATICS;
        }
        return bar == null ? AsFound.LoadBasis.BOUNDS : AsFound.LoadBasis.YIELDING_BLOCKS;
    }

    /** Where only the worst is known, it says nothing unless even that stays clear. */
    private static @Nullable Boolean touches(@Nullable FoundSag sag, @Nullable Double clearance) {
        if (sag == null || clearance == null || (sag.bound() && clearance <= 0)) {
            return null;
        }
        return clearance <= 0;
    }
}
