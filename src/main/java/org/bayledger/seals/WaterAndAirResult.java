package org.bayledger.seals;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What drives water and air through a frame, how it drains, and what observed joints cost.
 *
 * @param drivingPressure wind, stack effect and fans together; null where air was not given or
 *     lacks a level
 * @param pressureEqualization how the chamber divides the pressure; null where none was given
 * @param weepSizing what the weeps can drain; null where none were given or what holds water back
 *     is not known
 * @param stormWater water through the unsealed joint in a storm; null where no pressure is known
 * @param observedJoints what each observed joint costs and what is to be done, in the order in
 *     which they were given
 */
public record WaterAndAirResult(
        @Nullable DrivingPressure drivingPressure,
        @Nullable PressureEqualization pressureEqualization,
        @Nullable WeepSizing weepSizing,
        @Nullable StormWater stormWater,
        List<ObservedFinding> observedJoints) {

    public WaterAndAirResult {
        observedJoints = List.copyOf(observedJoints);
    }
}
