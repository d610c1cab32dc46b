package org.bayledger.seals;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What drives air and water through the wall: wind, stack effect and fans, positive toward the
 * inside. A part that acts against the others is not counted in their sums, since it may be absent
 * when it is needed. For leakage only: none of it is a load on glass or framing.
 *
 * @param windPositive positive design pressure at allowable-stress level; null where not known
 * @param windNegative negative design pressure likewise
 * @param windWithRain wind that comes with driving rain; null where not known
 * @param stackEffectInward greatest stack effect toward the inside over the height of the frame,
 *     negative where it acts outward everywhere; null without temperatures
 * @param stackEffectOutward greatest stack effect toward the outside likewise, positive where it
 *     acts inward everywhere
 * @param stackEffectInwardRange between what stackEffectInward is expected to lie, by neutral level
 *     and draft coefficient where these were not given
 * @param mechanicalPressure what fans add
 * @param inward positive design wind with what adds to it
 * @param outward negative design wind with what adds to it
 * @param withRain wind with rain and what adds to it: what drives water
 * @param withRainRange between what withRain is expected to lie
 * @param waterHead height of water that withRain holds
 */
public record DrivingPressure(
        @Nullable Quantity windPositive,
        @Nullable Quantity windNegative,
        @Nullable Quantity windWithRain,
        @Nullable Quantity stackEffectInward,
        @Nullable Quantity stackEffectOutward,
        @Nullable QuantityRange stackEffectInwardRange,
        Quantity mechanicalPressure,
        @Nullable Quantity inward,
        @Nullable Quantity outward,
        @Nullable Quantity withRain,
        @Nullable QuantityRange withRainRange,
        @Nullable Quantity waterHead) {}
