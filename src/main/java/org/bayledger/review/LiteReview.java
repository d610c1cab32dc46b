package org.bayledger.review;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.AsFound;
import org.bayledger.blocks.AsFoundBlock;
import org.bayledger.blocks.BlockCandidate;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.blocks.GlazingBelow;
import org.bayledger.blocks.SettingBlocksCheck;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Finding;
import org.bayledger.framing.LateralBuckling;
import org.bayledger.framing.PointLoad;
import org.bayledger.framing.Section;
import org.bayledger.glass.GlassCheck;
import org.bayledger.glass.GlassLoad;
import org.bayledger.glass.GlassRequest;
import org.bayledger.glass.GlassResult;
import org.bayledger.glass.Practice;
import org.bayledger.glass.SupportedEdges;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The lites of one bay: their glass and their setting blocks, from the sill up, since a lite that
 * stands on a horizontal takes room from the one below.
 */
final class LiteReview {

    private static final double GUST = 3; // s, duration of a wind gust in ASTM E1300

    /**
     * What a lite hands on to the horizontal under it.
     *
     * @param mass of the lite, kg; null where its glass is not known
     * @param loads of its setting blocks, from the left support of its horizontal: as they were
     *     found on site, else in the place that was found for them; null where they are not known
     * @param span of the horizontal, m
     * @param sinks how far it sinks on its blocks, the lesser of its corners, m; null where that is
     *     not known
     */
    record Standing(
            @Nullable Double mass,
            @Nullable List<PointLoad> loads,
            double span,
            @Nullable Double sinks) {}

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final @Nullable Section horizontal;
    private final Standing[][] standing;
    private final List<Checked> glass = new ArrayList<>();
    private final List<Checked> blocks = new ArrayList<>();

    LiteReview(ReviewContext context, Bay bay, String pointer) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        Horizontal named = bay.horizontal();
        horizontal = context.section(named == null ? null : named.section());
        standing = new Standing[bay.columns().size()][bay.rows().size()];
        for (int row = 1; row <= bay.rows().size(); row++) {
            for (int column = 1; column <= bay.columns().size(); column++) {
                standing[column - 1][row - 1] = lite(column, row);
            }
        }
    }

    List<Checked> items() {
        List<Checked> items = new ArrayList<>(glass);
        items.addAll(blocks);
        return items;
    }

    /** What a lite hands on; column and row from 1. */
    Standing standing(int column, int row) {
        return standing[column - 1][row - 1];
    }

    private Standing lite(int column, int row) {
        String id = bay.id() + "/lite/" + column + "-" + row;
        GlassBuildUp buildUp = context.glass(bay.glassTypeOf(column, row));
        double width = bay.columns().get(column - 1);
        double height = bay.rows().get(row - 1);
        if (buildUp == null) {
            String text = "No glass type was given for this lite.";
            glass.add(
                    Checked.missing(id, "glass", "GLASS_NOT_GIVEN", pointer + "/glassType", text));
        } else {
            double from = bay.columnStart(column);
            double top = bay.sill() + bay.rowStart(row) + height;
            WallWind.Seen seen =
                    context.wind.on(
                            pointer,
                            new WallWind.Patch(
                                    bay.elevation(),
                                    from,
                                    from + width,
                                    top - height,
                                    top,
                                    width * height));
            glass.add(
                    Checked.run(
                            id,
                            "glass",
                            pointer,
                            seen,
                            List.of(),
                            () -> {
                                GlassRequest request =
                                        new GlassRequest(
                                                Practice.ASTM_E1300,
                                                width,
                                                height,
                                                SupportedEdges.FOUR,
                                                null,
                                                buildUp,
                                                new GlassLoad(seen.load(), GUST),
                                                null,
                                                null,
                                                context.sealedUnit(bay.glassTypeOf(column, row)),
                                                bite(),
                                                null,
                                                null);
                                GlassResult result = GlassCheck.run(request, context.reporting);
                                return new Checked.Ran(request, result, result.outcome());
                            }));
        }
        return blocks(id, column, row, buildUp);
    }

    private @Nullable Double bite() {
        GlazingPocket pocket = bay.glazingPocket();
        return pocket == null ? null : pocket.bite();
    }

    private Standing blocks(String id, int column, int row, @Nullable GlassBuildUp buildUp) {
        LiteSize size = LiteSize.of(bay, column, row);
        Double mass = size.mass(buildUp);
        BlockSupport support = support(row, size.span());
        if (support == null) {
            blocks.add(
                    Checked.missing(
                            id,
                            "setting-blocks",
                            "SILL_SUPPORT_NOT_GIVEN",
                            pointer + "/sillSupport",
                            "It was not said whether the bottom lites rest on a member or on a"
                                    + " shimmed sill."));
            return new Standing(mass, null, size.span(), null);
        }
        LiteChange change = bay.change(column, row);
        boolean shimmed = support.kind() == BlockSupport.Kind.SHIMMED_SILL;
        GlazingPocket pocket = bay.glazingPocket();
        Checked checked =
                Checked.run(
                        id,
                        "setting-blocks",
                        pointer,
                        null,
                        size.real() ? List.of() : List.of(takenAsModule()),
                        () -> {
                            SettingBlocksRequest request =
                                    new SettingBlocksRequest(
                                            size.width(),
                                            size.height(),
                                            buildUp,
                                            null,
                                            support,
                                            below(column, row),
                                            change == null ? null : change.fabricatorApproval(),
                                            change == null ? null : change.blockDistance(),
                                            change == null ? null : change.leastBlockDistance(),
                                            null,
                                            pocket == null ? null : pocket.blockPressureAllowable(),
                                            null,
                                            null,
                                            change == null ? null : change.installed());
                            SettingBlocksResult result =
                                    SettingBlocksCheck.run(request, context.reporting);
                            return new Checked.Ran(request, result, result.outcome());
                        });
        blocks.add(checked);
        if (checked.item().result() instanceof SettingBlocksResult result) {
            return result.asFound() == null
                    ? drawn(result, mass, size)
                    : found(result.asFound(), mass, size);
        }
        return new Standing(mass, null, size.span(), shimmed ? Double.valueOf(0) : null);
    }

    /** A lite on blocks in the place that the check finds for them. */
    private static Standing drawn(
            SettingBlocksResult result, @Nullable Double mass, LiteSize size) {
        BlockPlace place = result.recommended();
        Double sinks = result.shimNote() == null ? null : Double.valueOf(0);
        List<PointLoad> loads = null;
        if (place != null) {
            for (BlockCandidate candidate : result.candidates()) {
                if (candidate.point() == place.point() && candidate.blockDeflection() != null) {
                    sinks = candidate.blockDeflection().si();
                }
            }
            if (mass != null) {
                double at = size.onHorizontal(place.distanceFromCorner().si());
                double half = mass * STANDARD_GRAVITY / 2;
                loads = List.of(new PointLoad(at, half), new PointLoad(size.span() - at, half));
            }
        }
        return new Standing(mass, loads, size.span(), sinks);
    }

    /** A lite on its blocks as they were found on site. */
    private static Standing found(AsFound found, @Nullable Double mass, LiteSize size) {
        List<PointLoad> loads = new ArrayList<>();
        for (AsFoundBlock block : found.blocks()) {
            if (block.load() != null) {
                loads.add(
                        new PointLoad(size.onHorizontal(block.position().si()), block.load().si()));
            }
        }
        Quantity left = found.leftCornerSinks();
        Quantity right = found.rightCornerSinks();
        Double sinks = null;
        // a corner that higher blocks lift takes room above it that nobody has measured
        if (left != null && right != null && Math.min(left.si(), right.si()) >= 0) {
            sinks = Math.min(left.si(), right.si());
        }
        return new Standing(mass, loads.isEmpty() ? null : loads, size.span(), sinks);
    }

    private Finding takenAsModule() {
        return Finding.note(
                "GLASS_TAKEN_AS_MODULE",
                pointer + "/horizontal",
                "The glass was taken as large as its column and row, for want of face widths of the"
                        + " framing or of the bite: its weight is an upper bound, and its blocks"
                        + " are placed by that width.");
    }

    private @Nullable BlockSupport support(int row, double span) {
        if (row == 1) {
            if (bay.sillSupport() == null) {
                return null;
            }
            if (bay.sillSupport() == BlockSupport.Kind.SHIMMED_SILL) {
                return BlockSupport.shimmedSill();
            }
        }
        Horizontal named = bay.horizontal();
        if (horizontal == null || named == null) {
            return BlockSupport.member(span, null, null, null);
        }
        LateralBuckling twist = horizontal.lateralBuckling();
        return new BlockSupport(
                BlockSupport.Kind.MEMBER,
                span,
                horizontal.deadLoadInertia(),
                horizontal.modulusOfElasticity(),
                horizontal.massPerLength(),
                null,
                null,
                null,
                null,
                first(named.torsionConstant(), twist == null ? null : twist.torsionConstant()),
                named.shearModulus(),
                first(named.warpingConstant(), twist == null ? null : twist.warpingConstant()),
                named.eccentricity(),
                named.rotationLimit(),
                named.endReactionAllowable(),
                named.endTorqueAllowable());
    }

    private static @Nullable Double first(@Nullable Double one, @Nullable Double other) {
        return one == null ? other : one;
    }

    /** What loses clearance when the horizontal under a lite bends. */
    private @Nullable GlazingBelow below(int column, int row) {
        if (row > 1) {
            return below(bay.glazingPocket(), standing(column, row - 1).sinks());
        }
        if (bay.sillSupport() == BlockSupport.Kind.MEMBER) {
            GlazingPocket tightest = tightest(column, context.layout.below(bay));
            return tightest == null ? bay.belowSill() : below(tightest, null);
        }
        return null;
    }

    /**
     * The least clearance and bite of the bays under a column, nothing in it that is not known of
     * one of them; null where no bay stands there.
     */
    private @Nullable GlazingPocket tightest(int column, List<Bay> under) {
        double from = bay.columnStart(column);
        double to = from + bay.columns().get(column - 1);
        GlazingPocket tightest = null;
        for (Bay one : under) {
            if (Math.min(to, one.right()) - Math.max(from, one.offset()) > Layout.TOUCH) {
                GlazingPocket pocket =
                        one.glazingPocket() == null
                                ? new GlazingPocket(null, null, null, null, null)
                                : one.glazingPocket();
                tightest = tightest == null ? pocket : tightest.tighter(pocket);
            }
        }
        return tightest;
    }

    private static GlazingBelow below(@Nullable GlazingPocket pocket, @Nullable Double sinks) {
        return new GlazingBelow(
                GlazingBelow.Kind.FIXED_LITE,
                pocket == null ? null : pocket.edgeClearance(),
                pocket == null ? null : pocket.bite(),
                sinks,
                pocket == null ? null : pocket.tolerance(),
                pocket == null ? null : pocket.thermalGrowth());
    }
}
