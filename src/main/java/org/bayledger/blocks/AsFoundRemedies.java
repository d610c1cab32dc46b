package org.bayledger.blocks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.QuantityParser;
import org.jspecify.annotations.Nullable;

/**
 * Changes after which blocks found on site will do: the blocks moved, new blocks, a stiffer
 * horizontal under the blocks as they are, or under blocks moved. Each is run through the check
 * before it is offered, and offered only where the check is then satisfied.
 */
final class AsFoundRemedies {

    private static final String BLOCKS = "/installed/blocks";

    private final SettingBlocksRequest request;
    private final Installed installed;
    private final Reporting reporting;
    private final SettingBlocksResult result;
    private final List<Remedy> remedies = new ArrayList<>();

    private AsFoundRemedies(
            SettingBlocksRequest request,
            Installed installed,
            Reporting reporting,
            SettingBlocksResult result) {
        this.request = request;
        this.installed = installed;
        this.reporting = reporting;
        this.result = result;
    }

    /** The remedies where something is wrong with what was found. */
    static List<Remedy> of(
            SettingBlocksRequest request, Reporting reporting, SettingBlocksResult result) {
        Installed installed = request.installed();
        AsFound found = result.asFound();
        if (installed == null || found == null || found.verdict() == Verdict.SATISFIED) {
            return List.of();
        }
        AsFoundRemedies search = new AsFoundRemedies(request, installed, reporting, result);
        if (!search.place(null)) {
            for (BlockCandidate candidate : result.candidates()) {
                Double stiffer = search.needed(candidate);
                if (stiffer != null && search.place(candidate, stiffer)) {
                    break;
                }
            }
        }
        search.stiffen(found);
        return List.copyOf(search.remedies);
    }

    /** The first place that passes; whether there is one. */
    private boolean place(@Nullable Double stiffness) {
        for (BlockCandidate candidate : result.candidates()) {
            if (candidate.eligible() && place(candidate, stiffness)) {
                return true;
            }
        }
        return false;
    }

    /** The blocks that were found, moved, or else two new ones; whether one of these passes. */
    private boolean place(BlockCandidate candidate, @Nullable Double stiffness) {
        String left = reporting.dimensioned(candidate.distanceFromCorner().si());
        String right = reporting.dimensioned(request.width() - candidate.distanceFromCorner().si());
        String where = candidate.point().words() + ", " + left + " from each glass corner";
        if (installed.blocks().size() == SettingBlock.COUNT) {
            int first = FoundPlaces.of(request, installed).order().get(0);
            List<InstalledBlock> moved = new ArrayList<>(installed.blocks());
            moved.set(first, moved.get(first).at(parsed(left)));
            moved.set(1 - first, moved.get(1 - first).at(parsed(right)));
            if (attempt(
                    "Move the blocks to the " + where,
                    List.of(
                            new Remedy.Change(FoundPlaces.pointer(first) + "/position", left),
                            new Remedy.Change(FoundPlaces.pointer(1 - first) + "/position", right)),
                    moved,
                    candidate.point(),
                    stiffness)) {
                return true;
            }
        }
        List<InstalledBlock> blocks = new ArrayList<>();
        List<Map<String, Object>> written = new ArrayList<>();
        for (String position : List.of(left, right)) {
            add(position, blocks, written);
        }
        return attempt(
                "Set two new blocks by the rule ("
                        + SettingBlock.MATERIAL
                        + ", under all panes) at the "
                        + where
                        + ", in place of those found",
                List.of(new Remedy.Change(BLOCKS, written)),
                blocks,
                candidate.point(),
                stiffness);
    }

    /** A block by the rule, as a record and as a request has it. */
    private void add(
            String position, List<InstalledBlock> blocks, List<Map<String, Object>> written) {
        String length = reporting.dimensioned(longEnough());
        GlassBuildUp glass = request.glass();
        String width =
                glass == null ? null : reporting.atLeast(Dimension.LENGTH, glass.thickness());
        BlockSeat seat =
                request.support().kind() == BlockSupport.Kind.SHIMMED_SILL
                        ? BlockSeat.SHIM
                        : BlockSeat.MEMBER;
        blocks.add(
                new InstalledBlock(
                        parsed(position),
                        parsed(length),
                        width == null ? null : (Double) parsed(width),
                        null,
                        null,
                        BlockMaterial.EPDM,
                        SettingBlock.HARDNESS,
                        seat,
                        PanesCarried.ALL_PANES));
        Map<String, Object> block = new LinkedHashMap<>();
        block.put("position", position);
        block.put("length", length);
        if (width != null) {
            block.put("width", width);
        }
        block.put("material", BlockMaterial.EPDM.name());
        block.put("hardness", BigDecimal.valueOf(SettingBlock.HARDNESS).stripTrailingZeros());
        block.put("restsOn", seat.name());
        block.put("carries", PanesCarried.ALL_PANES.name());
        written.add(block);
    }

    /** The length to cut, and a millimetre where rounding to whole ones would fall short, m. */
    private double longEnough() {
        double cut = result.blockCutLength().si();
        return parsed(reporting.dimensioned(cut)) < result.blockLength().si() ? cut + 1e-3 : cut;
    }

    /**
     * The second moment of area that a place needs, m4, or null where it needs none or is barred.
     */
    private @Nullable Double needed(BlockCandidate candidate) {
        Quantity required = candidate.requiredSecondMomentOfArea();
        Double now = request.support().secondMomentOfArea();
        return candidate.eligible() && required != null && now != null && required.si() > now
                ? (Double) required.si()
                : null;
    }

    /** A horizontal that carries two blocks where they are: its deflection goes with 1/(E I). */
    private void stiffen(AsFound found) {
        BlockSupport support = request.support();
        Double span = support.span();
        Double now = support.secondMomentOfArea();
        Double modulus = support.elasticModulus();
        Quantity bends = found.memberDeflection();
        HorizontalDeflection horizontal = HorizontalDeflection.of(support);
        if (span == null
                || now == null
                || modulus == null
                || horizontal == null
                || bends == null
                || found.loadBasis() != AsFound.LoadBasis.STATICS) {
            return;
        }
        Quantity clearance = found.clearanceLeft();
        DeadLoadLimits limits = DeadLoadLimits.of(request, span);
        Double without = limits.clearanceLeft(bends.si());
        double drop = clearance == null || without == null ? 0 : without - clearance.si();
        double limit = limits.limit(drop);
        if (limit > 0 && bends.si() > limit) {
            double rigidity = horizontal.rigidity() * bends.si() / limit;
            attempt(
                    "Leave the blocks where they are",
                    List.of(),
                    installed.blocks(),
                    null,
                    (rigidity - support.steelRigidity()) / modulus);
        }
    }

    private boolean attempt(
            String words,
            List<Remedy.Change> blockChanges,
            List<InstalledBlock> blocks,
            @Nullable BlockPoint point,
            @Nullable Double stiffness) {
        List<Remedy.Change> changes = new ArrayList<>();
        StringBuilder text = new StringBuilder(words);
        BlockSupport support = request.support();
        if (stiffness != null) {
            Dimension dimension = Dimension.SECOND_MOMENT_OF_AREA;
            String to = reporting.atLeast(dimension, stiffness);
            changes.add(new Remedy.Change("/support/secondMomentOfArea", to));
            text.append(" and stiffen the horizontal to a second moment of area of at least ")
                    .append(to);
            support = support.withSecondMomentOfArea(QuantityParser.parse(to, dimension));
        }
        changes.addAll(blockChanges);
        BlockPoint drawnPoint = installed.drawnPoint();
        if (point != null && drawnPoint != null && drawnPoint != point) {
            drawnPoint = point;
            changes.add(new Remedy.Change("/installed/drawnPoint", point.name()));
            text.append(", and correct the drawing");
        }
        Double drawnDistance = installed.drawnDistance();
        if (point != null && drawnDistance != null) {
            String to = reporting.dimensioned(distance(point));
            if (Math.abs(parsed(to) - drawnDistance) > installed.tolerance()) {
                drawnDistance = parsed(to);
                changes.add(new Remedy.Change("/installed/drawnDistance", to));
                text.append(", and correct the drawing");
            }
        }
        SettingBlocksRequest changed =
                request.withSupport(support)
                        .withInstalled(
                                new Installed(
                                        drawnPoint,
                                        drawnDistance,
                                        installed.positionTolerance(),
                                        blocks,
                                        installed.weeps()));
        if (point != null && point != BlockPoint.CHOSEN && request.blockDistance() != null) {
            String to = reporting.dimensioned(distance(point));
            changed = changed.withBlockDistance(parsed(to));
            changes.add(new Remedy.Change("/blockDistance", to));
        }
        SettingBlocksResult after = SettingBlocksCheck.evaluate(changed, reporting);
        Double utilization = after.outcome().utilization();
        if (after.outcome().verdict() != Verdict.SATISFIED || utilization == null) {
            return false;
        }
        remedies.add(new Remedy(text + ".", changes, utilization));
        return true;
    }

    /** From the glass corner to a block at a point, m. */
    private double distance(BlockPoint point) {
        return result.candidates().stream()
                .filter(candidate -> candidate.point() == point)
                .mapToDouble(candidate -> candidate.distanceFromCorner().si())
                .findFirst()
                .orElseThrow();
    }

    private static double parsed(String length) {
        return QuantityParser.parse(length, Dimension.LENGTH);
    }
}
