package org.bayledger.seals;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/**
 * What drives water and air through a frame, how it drains, and what was found on site. All of it
 * may be left out.
 *
 * @param air what drives air and water beside the wind; the head of water that it makes counts in
 *     the verdict
 * @param pressureEqualization a chamber between the outer line and the air seal; its limit counts
 *     in the verdict where it is given
 * @param weeps the weeps; what they can drain counts in the verdict
 * @param storm rain for which the water through an unsealed joint is added up; an hour under the
 *     water test where absent
 * @param observed joints as they were found on site, beside missedJoint; what they let through
 *     together counts in the verdict
 */
public record WaterAndAir(
        @Nullable AirPressures air,
        @Nullable Chamber pressureEqualization,
        @Nullable Weeps weeps,
        @Nullable Storm storm,
        @Size(max = 500) @Nullable List<ObservedJoint> observed) {

    /** Where nothing was given. */
    static final WaterAndAir NONE = new WaterAndAir(null, null, null, null, null);

    public WaterAndAir {
        observed = observed == null ? null : List.copyOf(observed);
    }

    List<ObservedJoint> observedOrNone() {
        return observed == null ? List.of() : observed;
    }

    Storm stormOrDefault() {
        return storm == null ? Storm.HOUR : storm;
    }

    /** Adds a fault for each observed joint that the grid or such a wall does not have. */
    void within(Faults faults, int columns, int rows, WallSystem system) {
        for (int i = 0; i < observedOrNone().size(); i++) {
            ObservedJoint joint = observedOrNone().get(i);
            faults.require(
                    system.jointTypes().contains(joint.type()),
                    "/observed/" + i + "/type",
                    "is no joint of a wall that is " + system);
            inGrid(faults, "/observed/" + i + "/column", joint.column(), columns, "columns");
            inGrid(faults, "/observed/" + i + "/row", joint.row(), rows, "rows");
        }
    }

    private static void inGrid(
            Faults faults, String pointer, @Nullable Integer at, int of, String what) {
        faults.require(
                at == null || at <= of,
                pointer,
                "must be at most " + of + ", the number of " + what);
    }

    /** The same with the level of the frame's sill, m, where stack effect needs it. */
    public WaterAndAir withSillLevel(double level) {
        return air == null || air.sillLevel() != null ? this : withAir(air.withSillLevel(level));
    }

    private WaterAndAir withAir(AirPressures other) {
        return new WaterAndAir(other, pressureEqualization, weeps, storm, observed);
    }

    WaterAndAir withPressureEqualization(Chamber other) {
        return new WaterAndAir(air, other, weeps, storm, observed);
    }

    WaterAndAir withWeeps(Weeps other) {
        return new WaterAndAir(air, pressureEqualization, other, storm, observed);
    }

    WaterAndAir withObserved(List<ObservedJoint> other) {
        return new WaterAndAir(air, pressureEqualization, weeps, storm, other);
    }
}
