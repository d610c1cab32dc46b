package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.INCH;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.QuantityParser;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Remedies that leave section and clearance as they are: blocks at another place, steel inside the
 * horizontal, lighter glass of those that the caller offers, a prop at mid-span.
 */
final class OtherBlockRemedies {

    /** Density of structural steel, kg/m3 (from memory). */
    private static final double STEEL_DENSITY = 7850;

    /** Rounds of finding steel that carries its own weight as well. */
    private static final int ROUNDS = 8;

    private final SettingBlocksRequest request;
    private final Reporting reporting;

    OtherBlockRemedies(SettingBlocksRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
    }

    /** Those that pass. */
    List<Remedy> all() {
        List<Remedy> all = new ArrayList<>();
        boolean member = request.support().kind() == BlockSupport.Kind.MEMBER;
        if (member) {
            add(all, otherPlace());
            add(all, steel());
        }
        lighter(all);
        if (member) {
            add(all, prop());
        }
        return all;
    }

    private static void add(List<Remedy> all, @Nullable Remedy remedy) {
        if (remedy != null) {
            all.add(remedy);
        }
    }

    /**
     * The place nearest to the quarter points that passes, on the marks of a tape. Further out
     * every demand on the horizontal is less, so that the places that pass lie together at the
     * outer end.
     */
    private @Nullable Remedy otherPlace() {
        boolean us = reporting.units() == UnitSystem.US;
        double mark = us ? INCH / 16 : 0.001;
        double length = SettingBlock.length(request.width() * request.height());
        double outer =
                Math.max(BlockCandidates.leastDistance(request), BlockCandidates.nearest(length));
        long low = (long) Math.ceil(outer / mark - 1e-6);
        long high = (long) Math.floor(request.width() / 4 / mark + 1e-6);
        if (low > high || !passes(low, us)) {
            return null;
        }
        while (high > low) {
            long middle = (low + high + 1) / 2;
            if (passes(middle, us)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        String to = onTape(low, us);
        return SettingBlocksRemedies.passing(
                "With no other change",
                List.of(new Remedy.Change("/blockDistance", to)),
                at(low, us),
                reporting);
    }

    private boolean passes(long marks, boolean us) {
        return SettingBlocksCheck.evaluate(
                                at(marks, us), new Reporting(UnitSystem.SI, TraceLevel.GOVERNING))
                        .outcome()
                        .verdict()
                == Verdict.SATISFIED;
    }

    private SettingBlocksRequest at(long marks, boolean us) {
        return request.withBlockDistance(
                QuantityParser.parse(onTape(marks, us), Dimension.DISTANCE));
    }

    /** A length of whole marks as a request takes it, exact. */
    private static String onTape(long marks, boolean us) {
        return us
                ? new BigDecimal(marks)
                                .divide(new BigDecimal(16))
                                .stripTrailingZeros()
                                .toPlainString()
                        + " in"
                : marks + " mm";
    }

    /**
     * Steel inside over the whole span that keeps the quarter points, its own weight counted: that
     * of a solid square bar of that second moment of area, A = sqrt(12 I), the heaviest that is at
     * least as deep as it is wide.
     */
    private @Nullable Remedy steel() {
        BlockSupport support = request.support();
        if (support.steelSecondMomentOfArea() != null
                || support.secondMomentOfArea() == null
                || support.elasticModulus() == null) {
            return null;
        }
        Dimension dimension = Dimension.SECOND_MOMENT_OF_AREA;
        double mass = 0;
        double steel = 1e-12;
        for (int i = 0; i < ROUNDS; i++) {
            Double more = missing(support.withSteel(steel, mass));
            if (more == null || more <= 0) {
                return null;
            }
            steel = more;
            mass = STEEL_DENSITY * Math.sqrt(12 * steel);
        }
        String line = reporting.atLeast(Dimension.LINE_MASS, mass);
        double weighed = QuantityParser.parse(line, Dimension.LINE_MASS);
        Double enough = missing(support.withSteel(steel, weighed));
        if (enough == null) {
            return null;
        }
        String inertia = reporting.atLeast(dimension, enough);
        return SettingBlocksRemedies.passing(
                "With steel inside the horizontal over its whole span, of a second moment of area of"
                        + " at least "
                        + inertia
                        + " and no heavier than "
                        + line
                        + ", made to bear on the shear blocks,",
                List.of(
                        new Remedy.Change("/support/steelSecondMomentOfArea", inertia),
                        new Remedy.Change("/support/steelMassPerLength", line)),
                request.withSupport(
                        support.withSteel(QuantityParser.parse(inertia, dimension), weighed)),
                reporting);
    }

    /**
     * Second moment of area of steel, m4, that a horizontal with some steel needs for the first
     * place, or null where none helps.
     */
    private @Nullable Double missing(BlockSupport support) {
        SettingBlocksRequest with = request.withSupport(support);
        SettingBlocksResult result =
                SettingBlocksCheck.evaluate(
                        with, new Reporting(UnitSystem.SI, TraceLevel.GOVERNING));
        BlockCandidate first =
                request.blockDistance() == null
                        ? result.candidates().get(0)
                        : result.candidates().get(result.candidates().size() - 1);
        HorizontalDeflection horizontal = HorizontalDeflection.of(support);
        Double span = support.span();
        if (first.memberDeflection() == null || horizontal == null || span == null) {
            return null;
        }
        double drop = first.rotationDrop() == null ? 0 : first.rotationDrop().si();
        double limit = DeadLoadLimits.of(with, span).limit(drop);
        if (limit <= 0 || support.steelSecondMomentOfArea() == null) {
            return null;
        }
        double needed = horizontal.rigidity() * first.memberDeflection().si() / limit;
        double aluminum = horizontal.rigidity() - support.steelRigidity();
        return (needed - aluminum) / (support.steelRigidity() / support.steelSecondMomentOfArea());
    }

    private void lighter(List<Remedy> all) {
        List<GlassBuildUp> offered = request.alternativeBuildUps();
        GlassBuildUp now = request.glass();
        if (offered == null || now == null) {
            return;
        }
        for (int i = 0; i < offered.size(); i++) {
            GlassBuildUp other = offered.get(i);
            if (other.areaMass() < now.areaMass()) {
                add(
                        all,
                        SettingBlocksRemedies.passing(
                                "With alternative build-up "
                                        + (i + 1)
                                        + ", of "
                                        + reporting.text(Dimension.AREA_MASS, other.areaMass())
                                        + " instead of "
                                        + reporting.text(Dimension.AREA_MASS, now.areaMass())
                                        + ", whose resistance to wind has to be checked before it"
                                        + " is taken,",
                                List.of(new Remedy.Change("/glass", other)),
                                request.withGlass(other),
                                reporting));
            }
        }
    }

    private @Nullable Remedy prop() {
        if (request.support().propped()) {
            return null;
        }
        SettingBlocksRequest propped = request.withSupport(request.support().withMidSupport());
        return SettingBlocksRemedies.passing(
                "With a prop under the middle of the horizontal, that does not yield and does not"
                        + " press on glass,",
                List.of(new Remedy.Change("/support/midSupport", true)),
                propped,
                reporting);
    }
}
