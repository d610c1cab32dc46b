package org.bayledger.seals;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * One frame whose internal seals are to be called out.
 *
 * @param columns widths of the columns, left to right as seen from outside, m
 * @param rows heights of the rows from the sill up, m
 * @param load design wind pressure with both signs
 * @param details everything else that is known of the seals
 */
public record SealsRequest(
        @NotEmpty
                @Size(max = 200)
                @Measured(
                        value = Dimension.DISTANCE,
                        sign = Measured.Sign.POSITIVE,
                        min = 0.05,
                        max = 100)
                List<Double> columns,
        @NotEmpty
                @Size(max = 200)
                @Measured(
                        value = Dimension.DISTANCE,
                        sign = Measured.Sign.POSITIVE,
                        min = 0.05,
                        max = 100)
                List<Double> rows,
        Load load,
        @JsonUnwrapped SealDetails details) {

    /** Heights nearer than this are the same height, m. */
    static final double SAME = 1e-6;

    public SealsRequest {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        double height = rows.stream().mapToDouble(Double::doubleValue).sum();
        Faults faults = new Faults();
        List<Double> splices = details.splices() == null ? List.of() : details.splices();
        List<Double> stacks = details.stackJoints() == null ? List.of() : details.stackJoints();
        within(faults, "/splices/", splices, height);
        within(faults, "/stackJoints/", stacks, height);
        for (int i = 0; i < stacks.size(); i++) {
            double stack = stacks.get(i);
            faults.require(
                    splices.stream().noneMatch(splice -> Math.abs(splice - stack) < SAME),
                    "/stackJoints/" + i,
                    "is also listed as a splice; a vertical's joint is one or the other");
        }
        for (int i = 0; i < stacks.size(); i++) {
            faults.require(
                    stacks.get(i) > SAME || details.continues(Edge.BOTTOM),
                    "/stackJoints/" + i,
                    "lies on the sill, where the wall does not go on below: name BOTTOM among"
                            + " continuousEdges, or leave it out");
        }
        SealSystemInputs.check(faults, columns, rows, details);
        details.waterAndAirOrNone()
                .within(faults, columns.size(), rows.size(), details.systemOrDefault());
        faults.throwIfAny();
    }

    private static void within(Faults faults, String pointer, List<Double> heights, double top) {
        for (int i = 0; i < heights.size(); i++) {
            double height = heights.get(i);
            faults.require(
                    height < top - SAME,
                    pointer + i,
                    "must lie between the sill and the head of the frame, as a height above the"
                            + " sill");
            faults.require(
                    heights.subList(0, i).stream().noneMatch(h -> Math.abs(h - height) < SAME),
                    pointer + i,
                    "is listed twice");
        }
    }

    /** Width of the frame, m. */
    double width() {
        return columns.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Height of the frame, m. */
    double height() {
        return rows.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Area of the frame, m2. */
    double area() {
        return width() * height();
    }

    SealsRequest withDetails(SealDetails other) {
        return new SealsRequest(columns, rows, load, other);
    }
}
