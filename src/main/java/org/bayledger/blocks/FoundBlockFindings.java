package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Reporting;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.Pane;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What each block found on site is and rests on, held against the rule for setting blocks. */
final class FoundBlockFindings {

    /** Hardness of a setting block, degrees Shore A: 85 +- 5 (handbook rule, from memory). */
    private static final double SOFTEST = 80;

    private static final double HARDEST = 90;

    private static final String BY_RULE =
            " Replace it by a block of " + SettingBlock.MATERIAL + ".";

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final FoundPlaces places;
    private final AsFoundVerdict verdict;

    FoundBlockFindings(
            SettingBlocksRequest request,
            Reporting reporting,
            FoundPlaces places,
            AsFoundVerdict verdict) {
        this.request = request;
        this.reporting = reporting;
        this.places = places;
        this.verdict = verdict;
    }

    /**
     * All of one block.
     *
     * @param found what was computed of it
     */
    void of(int i, AsFoundBlock found) {
        InstalledBlock block = places.blocks().get(i);
        notGiven(i, block);
        length(i, block, found);
        width(i, block);
        carries(i, block, found);
        material(i, block, found);
        hardness(i, block, found);
        seat(i, block, found);
    }

    private void notGiven(int i, InstalledBlock block) {
        List<String> missing = new ArrayList<>();
        BlockMaterial material = block.material();
        if (block.length() == null) {
            missing.add("length");
        }
        if (block.carries() == null && (block.width() == null || request.glass() == null)) {
            missing.add("hold on the panes (carries, or width and glass)");
        }
        if (material == null || material == BlockMaterial.UNKNOWN) {
            missing.add("material");
        }
        if (block.hardness() == null && (material == null || material.hardModulus() == null)) {
            missing.add("hardness");
        }
        if (block.restsOn() == null || block.restsOn() == BlockSeat.UNKNOWN) {
            missing.add("seat (restsOn)");
        }
        if (!missing.isEmpty()) {
            verdict.open(
                    "BLOCK_DETAILS_NOT_GIVEN",
                    FoundPlaces.pointer(i),
                    places.name(i, reporting)
                            + " was recorded without its "
                            + FoundPlaces.joined(missing)
                            + "; whether it will do can't be said. Measure and record them.");
        }
    }

    private void length(int i, InstalledBlock block, AsFoundBlock found) {
        if (block.length() == null) {
            return;
        }
        double area = request.width() * request.height();
        double least =
                found.requiredLength() == null
                        ? SettingBlock.length(area)
                        : found.requiredLength().si();
        if (!verdict.keeps(least, block.length())) {
            String load =
                    found.load() == null
                            ? "for this lite"
                            : "for the "
                                    + reporting.text(Dimension.FORCE, found.load().si())
                                    + " that it carries";
            verdict.broken(
                    "BLOCK_TOO_SHORT",
                    FoundPlaces.pointer(i) + "/length",
                    places.name(i, reporting)
                            + " is "
                            + reporting.text(Dimension.LENGTH, block.length())
                            + " long; "
                            + load
                            + " at least "
                            + reporting.text(Dimension.LENGTH, least)
                            + " is needed. The glass edge is pressed harder than the rule allows;"
                            + " replace it by one of "
                            + reporting.dimensioned(SettingBlock.cutLength(least))
                            + ".");
        }
    }

    private void width(int i, InstalledBlock block) {
        GlassBuildUp glass = request.glass();
        if (glass == null || block.width() == null || notUnderAll(block)) {
            return;
        }
        if (!verdict.keeps(glass.thickness(), block.width())) {
            verdict.broken(
                    "BLOCK_TOO_NARROW",
                    FoundPlaces.pointer(i) + "/width",
                    places.name(i, reporting)
                            + " is "
                            + reporting.text(Dimension.LENGTH, block.width())
                            + " wide under glass "
                            + reporting.text(Dimension.LENGTH, glass.thickness())
                            + " thick: up to "
                            + reporting.text(Dimension.LENGTH, glass.thickness() - block.width())
                            + " of the edge hangs over it. Replace it by one across the full"
                            + " width.");
        }
    }

    private static boolean notUnderAll(InstalledBlock block) {
        return block.carries() != null && block.carries() != PanesCarried.ALL_PANES;
    }

    private void carries(int i, InstalledBlock block, AsFoundBlock found) {
        PanesCarried carries = block.carries();
        if (carries == null || carries == PanesCarried.ALL_PANES) {
            return;
        }
        Double share = hanging(carries);
        String consequence =
                share == null || found.load() == null
                        ? "the panes that it is not under hang"
                        : "of the "
                                + reporting.text(Dimension.FORCE, found.load().si())
                                + " that come down there, "
                                + reporting.text(Dimension.FORCE, share * found.load().si())
                                + " hang";
        verdict.broken(
                "BLOCK_NOT_UNDER_ALL_PANES",
                FoundPlaces.pointer(i) + "/carries",
                places.name(i, reporting)
                        + " is under "
                        + carries.words()
                        + ": "
                        + consequence
                        + " on the edge seal of the unit, which creeps in shear and leaks. Replace"
                        + " it by a block under all panes, and have the unit's maker judge the"
                        + " seal.");
    }

    /** Share of the weight that is of panes without a block, or null without the glass. */
    private @Nullable Double hanging(PanesCarried carries) {
        GlassBuildUp glass = request.glass();
        if (carries == PanesCarried.SPACER_ONLY) {
            return 1.0;
        }
        if (glass == null) {
            return null;
        }
        List<Pane> panes = glass.panes();
        Pane held = panes.get(carries == PanesCarried.OUTDOOR_PANE ? 0 : panes.size() - 1);
        return 1 - held.areaMass() / glass.areaMass();
    }

    private void material(int i, InstalledBlock block, AsFoundBlock found) {
        BlockMaterial material = block.material();
        if (material == null || material == BlockMaterial.UNKNOWN || material.byRule()) {
            return;
        }
        String text = places.name(i, reporting) + " is " + material.words() + ": ";
        text +=
                material == BlockMaterial.PVC
                        ? "its plasticizer may go into the sealants that touch it and soften"
                                + " them"
                        : "nothing is known of how it suits the sealants that touch it";
        if (material == BlockMaterial.METAL || material == BlockMaterial.WOOD) {
            text =
                    places.name(i, reporting)
                            + " is an improvised packer of "
                            + material.words()
                            + ": it does not yield to the glass edge, so that "
                            + weight(found)
                            + " rests on a few high spots from which a crack may start";
        }
        verdict.open(
                "BLOCK_MATERIAL_NOT_BY_RULE",
                FoundPlaces.pointer(i) + "/material",
                text + "." + BY_RULE);
    }

    private String weight(AsFoundBlock found) {
        return found.load() == null
                ? "the weight"
                : reporting.text(Dimension.FORCE, found.load().si());
    }

    private void hardness(int i, InstalledBlock block, AsFoundBlock found) {
        Double hardness = block.hardness();
        if (hardness == null || (hardness >= SOFTEST && hardness <= HARDEST)) {
            return;
        }
        String pressed =
                found.compression() == null
                        ? ""
                        : "; under its load it is pressed together by "
                                + reporting.text(Dimension.LENGTH, found.compression().si());
        verdict.open(
                "BLOCK_HARDNESS_NOT_BY_RULE",
                FoundPlaces.pointer(i) + "/hardness",
                places.name(i, reporting)
                        + " has "
                        + reporting.text(Dimension.NONE, hardness)
                        + " Shore A, outside 85 +- 5"
                        + pressed
                        + ". "
                        + (hardness < SOFTEST
                                ? "A softer block creeps and lets the lite down."
                                : "A harder block does not yield to the glass edge.")
                        + BY_RULE);
    }

    private void seat(int i, InstalledBlock block, AsFoundBlock found) {
        BlockSeat seat = block.restsOn();
        if (seat == null || seat == BlockSeat.UNKNOWN || seat == BlockSeat.SHIM) {
            return;
        }
        boolean sill = request.support().kind() == BlockSupport.Kind.SHIMMED_SILL;
        String at = FoundPlaces.pointer(i) + "/restsOn";
        if (seat == BlockSeat.MEMBER) {
            if (sill) {
                verdict.open(
                        "SHIM_MISSING_UNDER_BLOCK",
                        at,
                        places.name(i, reporting)
                                + " has no shim under it: the sill spans there between its shims"
                                + " and bends under "
                                + weight(found)
                                + ". Put a solid shim under the full length of the block.");
            }
            return;
        }
        String why =
                switch (seat) {
                    case STACKED_SHIMS ->
                            "loose shims walk and settle, and the lite with them. Put one solid"
                                    + " shim";
                    case PACKER ->
                            "nothing is known of its stiffness, its creep and how it suits the"
                                    + " sealants. Put one solid shim";
                    default ->
                            "it bears on an edge or a point and can tip or be cut. Put a bearing"
                                    + " plate";
                };
        verdict.open(
                "BLOCK_SEAT_NOT_FIRM",
                at,
                places.name(i, reporting)
                        + " rests with "
                        + weight(found)
                        + " on "
                        + seat.words()
                        + ": "
                        + why
                        + " under its full length.");
    }
}
