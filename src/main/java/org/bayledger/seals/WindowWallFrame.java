package org.bayledger.seals;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What makes the frame of a window wall beside its grid.
 *
 * @param slabRows rows, counted from 1 at the sill, that are edges of slabs behind covers; the rows
 *     between them are storeys, each from slab to slab; empty where the frame is one storey
 * @param receptorLength stock length of head and sill receptors, m
 * @param slabCoverLength stock length of the slab-edge covers, m
 */
public record WindowWallFrame(
        @Size(max = 200) List<Integer> slabRows,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, min = 0.1, max = 30)
                @Nullable Double receptorLength,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, min = 0.1, max = 30)
                @Nullable Double slabCoverLength) {

    public WindowWallFrame {
        slabRows = List.copyOf(slabRows);
    }
}
