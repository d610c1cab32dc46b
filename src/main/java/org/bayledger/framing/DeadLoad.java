package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Weight that bends a horizontal parallel to the wall while wind bends it at right angles. The
 * section's massPerLength is added to it.
 *
 * @param weightPerLength weight per length besides the member's own mass, N/m; absent: none
 * @param pointLoads weights that rest on the member, as glass on its setting blocks, N; absent:
 *     none
 */
public record DeadLoad(
        @Measured(value = Dimension.LINE_LOAD, sign = Sign.NOT_NEGATIVE)
                @Nullable Double weightPerLength,
        @Size(max = 200) @Nullable List<PointLoad> pointLoads) {

    public DeadLoad {
        pointLoads = pointLoads == null ? null : List.copyOf(pointLoads);
    }
}
