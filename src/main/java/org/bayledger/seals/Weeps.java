package org.bayledger.seals;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The weeps through which the frame drains: all alike, round holes or slots.
 *
 * @param count number of weeps that share the water
 * @param diameter diameter of a round weep, m
 * @param slotLength length of a slot, m; with slotHeight
 * @param slotHeight height of a slot, m; with slotLength
 * @param flow water that is to be drained by all of them together, m3/s
 * @param availableHead height of water that may stand over the middle of a weep before it passes
 *     the end dams or the back leg, m; endDamHeight where absent
 */
public record Weeps(
        @Min(1) @Max(Weeps.MOST) int count,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, min = 0.0005, max = 0.1)
                @Nullable Double diameter,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, min = 0.0005, max = 1)
                @Nullable Double slotLength,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, min = 0.0005, max = 0.1)
                @Nullable Double slotHeight,
        @Measured(value = Dimension.WATER_RATE, sign = Sign.POSITIVE, max = 1) double flow,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 2)
                @Nullable Double availableHead) {

    /** Most weeps that a frame can be said to have. */
    static final int MOST = 100_000;

    public Weeps {
        boolean slot = slotLength != null && slotHeight != null;
        boolean any = slotLength != null || slotHeight != null;
        if (diameter == null ? !slot : any) {
            throw FaultsException.outOfRange(
                    "/diameter",
                    "give either the diameter of a round weep or slotLength and slotHeight");
        }
    }

    /** Area of one weep, m2. */
    double area() {
        return diameter == null ? length() * height() : Math.PI / 4 * diameter * diameter;
    }

    /** Length of the rim of one weep, m. */
    double perimeter() {
        return diameter == null ? 2 * (length() + height()) : Math.PI * diameter;
    }

    /** The smaller dimension of one weep, m. */
    double across() {
        return diameter == null ? Math.min(length(), height()) : diameter;
    }

    /** Half of the height of one weep, m: with less over its middle it does not run full. */
    double halfHeight() {
        return (diameter == null ? height() : diameter) / 2;
    }

    private double length() {
        return slotLength == null ? 0 : slotLength;
    }

    private double height() {
        return slotHeight == null ? 0 : slotHeight;
    }

    Weeps withCount(int other) {
        return new Weeps(other, diameter, slotLength, slotHeight, flow, availableHead);
    }
}
