package org.bayledger.seals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/** What a system's inputs must fulfil together with the grid. */
final class SealSystemInputs {

    /** Heights nearer than this are the same height, m. */
    private static final double SAME = 0.001;

    private final Faults faults;
    private final SealDetails details;
    private final WallSystem system;

    private SealSystemInputs(Faults faults, SealDetails details) {
        this.faults = faults;
        this.details = details;
        this.system = details.systemOrDefault();
    }

    static void check(Faults faults, List<Double> columns, List<Double> rows, SealDetails details) {
        SealSystemInputs inputs = new SealSystemInputs(faults, details);
        inputs.only(WallSystem.UNITIZED, details.unitized(), "unitized");
        inputs.only(WallSystem.WINDOW_WALL, details.windowWall(), "windowWall");
        inputs.only(WallSystem.STICK_BUILT, details.pressurePlateLength(), "pressurePlateLength");
        inputs.only(WallSystem.STICK_BUILT, filled(details.splices()), "splices");
        Integer covers = details.jointCovers();
        inputs.only(
                WallSystem.STICK_BUILT,
                covers != null && covers > 0 ? covers : null,
                "jointCovers");
        if (inputs.system == WallSystem.UNITIZED) {
            inputs.units(columns.size(), rows);
        } else if (inputs.system == WallSystem.WINDOW_WALL) {
            inputs.windows(rows.size());
        }
    }

    private static @Nullable List<Double> filled(@Nullable List<Double> list) {
        return list == null || list.isEmpty() ? null : list;
    }

    private void only(WallSystem owner, @Nullable Object given, String property) {
        faults.require(
                given == null || system == owner,
                "/" + property,
                "belongs to a " + owner + " wall; this one is " + system);
    }

    private void units(int columns, List<Double> rows) {
        faults.require(
                details.perimeterFastenerSpacing() == null,
                "/perimeterFastenerSpacing",
                "does not belong to a UNITIZED wall, which hangs on its anchors");
        UnitizedFrame units = details.unitized();
        if (units != null) {
            faults.require(
                    units.columns() == columns,
                    "/unitized/columnsPerUnit",
                    "add up to %d columns; the frame has %d".formatted(units.columns(), columns));
        }
        List<Double> stacks = details.stackJoints();
        for (int i = 0; stacks != null && i < stacks.size(); i++) {
            double at = 0;
            boolean met = stacks.get(i) <= SAME;
            for (double row : rows) {
                at += row;
                met |= Math.abs(stacks.get(i) - at) <= SAME;
            }
            faults.require(
                    met,
                    "/stackJoints/" + i,
                    "must lie between two rows: a unit ends at a stack joint, and no lite crosses"
                            + " it");
        }
    }

    private void windows(int rows) {
        faults.require(
                filled(details.stackJoints()) == null,
                "/stackJoints",
                "do not belong to a WINDOW_WALL, which moves in its head receptors");
        WindowWallFrame frame = details.windowWall();
        if (frame == null) {
            return;
        }
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < frame.slabRows().size(); i++) {
            int row = frame.slabRows().get(i);
            faults.require(
                    row >= 1 && row <= rows,
                    "/windowWall/slabRows/" + i,
                    "must be a row of the frame, from 1 to " + rows);
            faults.require(seen.add(row), "/windowWall/slabRows/" + i, "is listed twice");
        }
        faults.require(
                seen.size() < rows,
                "/windowWall/slabRows",
                "must leave a row between slabs, else there is no window");
    }
}
