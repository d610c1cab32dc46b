package org.bayledger.seals;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What makes the frame of a unitized wall beside its grid. The stack joints part it into tiers.
 *
 * @param columnsPerUnit columns of each unit, left to right as seen from outside; they add up to
 *     the columns of the frame
 * @param starterSillLength stock length of the starter sill, m
 */
public record UnitizedFrame(
        @NotEmpty @Size(max = 200) List<Integer> columnsPerUnit,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, min = 0.1, max = 30)
                @Nullable Double starterSillLength) {

    public UnitizedFrame {
        columnsPerUnit = List.copyOf(columnsPerUnit);
        Faults faults = new Faults();
        for (int i = 0; i < columnsPerUnit.size(); i++) {
            faults.require(
                    columnsPerUnit.get(i) >= 1,
                    "/columnsPerUnit/" + i,
                    "must be at least 1: a unit has a column or more");
        }
        faults.throwIfAny();
    }

    int units() {
        return columnsPerUnit.size();
    }

    int columns() {
        return columnsPerUnit.stream().mapToInt(Integer::intValue).sum();
    }
}
