package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** The numbers of each block as it was found, in the order of the request. */
final class FoundNumbers {

    private FoundNumbers() {}

    /**
     * All of them.
     *
     * @param lite what the blocks carry, or null where the weight is not known
     * @param member the horizontal, or null where it is not known or there is none
     * @param loads on the blocks, N, or null where they are not determined
     * @param least loads that the blocks may have, N, or null where nothing is known of them
     * @param greatest likewise
     */
    static List<AsFoundBlock> of(
            SettingBlocksRequest request,
            Installed installed,
            @Nullable FoundLoads lite,
            @Nullable FoundMember member,
            double @Nullable [] loads,
            double @Nullable [] least,
            double @Nullable [] greatest) {
        FoundPlaces places = FoundPlaces.of(request, installed);
        List<AsFoundBlock> all = new ArrayList<>();
        for (int i = 0; i < installed.blocks().size(); i++) {
            InstalledBlock block = installed.blocks().get(i);
            Double load = loads == null ? null : (Double) loads[i];
            Double required = null;
            Double pressure = null;
            Double compression = null;
            Double sinks = null;
            if (load != null && lite != null && loads != null) {
                double share = load / lite.weight();
                required = SettingBlock.lengthFor(request.width() * request.height(), share);
                pressure = pressure(request, block, load);
                compression = lite.compression(i, load);
                if (member != null) {
                    sinks = member.sinks(lite.places(), loads, block.position());
                }
            }
            all.add(
                    new AsFoundBlock(
                            Quantity.of(Dimension.LENGTH, block.position()),
                            length(places.end(i)),
                            force(load),
                            force(least == null ? null : (Double) least[i]),
                            force(greatest == null ? null : (Double) greatest[i]),
                            length(required),
                            pressure == null ? null : Quantity.of(Dimension.STRESS, pressure),
                            length(compression),
                            length(sinks),
                            length(FoundPlaceFindings.covered(installed, block))));
        }
        return all;
    }

    /** Bearing pressure on the edges of the panes, Pa, or null where it is not known. */
    private static @Nullable Double pressure(
            SettingBlocksRequest request, InstalledBlock block, double load) {
        Double width = BlockStiffness.contactWidth(block, request.glass());
        Double length = block.length();
        boolean underAll = block.carries() == null || block.carries() == PanesCarried.ALL_PANES;
        return width == null || length == null || request.glass() == null || !underAll
                ? null
                : (Double) (load / (width * length));
    }

    /** The greatest pressure on a block, Pa, or null where one is not known. */
    static @Nullable Double greatestPressure(List<AsFoundBlock> blocks) {
        double greatest = 0;
        for (AsFoundBlock block : blocks) {
            Quantity pressure = block.bearingPressure();
            if (pressure == null) {
                return null;
            }
            greatest = Math.max(greatest, pressure.si());
        }
        return greatest;
    }

    /** The loads, to be redone by hand. */
    static void trace(Trace trace, double[] loads) {
        boolean statics = loads.length == SettingBlock.COUNT;
        for (int i = 0; i < loads.length; i++) {
            trace.step(
                    "R " + (i + 1),
                    "weight on block " + (i + 1) + " as found",
                    Dimension.FORCE,
                    loads[i],
                    statics
                            ? "m g x (distance of the other from the lite's middle) / (distance"
                                    + " between them)"
                            : "rigid lite on yielding blocks on the horizontal, contact without"
                                    + " tension",
                    statics
                            ? "balance"
                            : "Gent 1958, Gent and Lindley 1959 (from memory); balance and"
                                    + " contact");
        }
    }

    static @Nullable Quantity length(@Nullable Double metres) {
        return metres == null ? null : Quantity.of(Dimension.LENGTH, metres);
    }

    private static @Nullable Quantity force(@Nullable Double newtons) {
        return newtons == null ? null : Quantity.of(Dimension.FORCE, newtons);
    }
}
