package org.bayledger.review;

import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One face of the building; one that turns at corners is laid out flat.
 *
 * @param id its name in this document
 * @param width width, m
 * @param height height above its base, m; of the highest part where it has steps
 * @param base level of its base above the building datum, which is the ground, m
 * @param cornerAtLeft whether its left end, seen from outside, is an outside corner of the building
 * @param cornerAtRight whether its right end is one
 * @param corners corners between its ends; one at an end repeats what cornerAtLeft or cornerAtRight
 *     says
 * @param steps its parts of different heights from left to right, without a gap from end to end;
 *     absent: one height
 */
public record Elevation(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 2000) double width,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 1000) double height,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 1000) double base,
        boolean cornerAtLeft,
        boolean cornerAtRight,
        @Size(max = 20) @Nullable List<Corner> corners,
        @Size(min = 1, max = 20) @Nullable List<Step> steps) {

    public Elevation {
        corners = corners == null ? null : List.copyOf(corners);
        steps = steps == null ? null : List.copyOf(steps);
        Faults faults = new Faults();
        if (corners != null) {
            corners(faults, corners, width, cornerAtLeft, cornerAtRight);
        }
        if (steps != null) {
            steps(faults, steps, width, height);
        }
        faults.throwIfAny();
    }

    private static void corners(
            Faults faults, List<Corner> corners, double width, boolean left, boolean right) {
        for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get(i);
            String at = "/corners/" + i;
            boolean outside = corner.kind() == Corner.Kind.OUTSIDE;
            faults.require(
                    corner.at() <= width + Layout.TOUCH,
                    at + "/at",
                    "lies beyond the right end of the elevation");
            if (corner.at() <= Layout.TOUCH) {
                faults.require(outside == left, at + "/kind", "disagrees with cornerAtLeft");
            } else if (Math.abs(corner.at() - width) <= Layout.TOUCH) {
                faults.require(outside == right, at + "/kind", "disagrees with cornerAtRight");
            }
            for (Corner other : corners.subList(0, i)) {
                faults.require(
                        Math.abs(other.at() - corner.at()) > Layout.TOUCH,
                        at + "/at",
                        "is the place of a corner that was already given");
            }
        }
    }

    private static void steps(Faults faults, List<Step> steps, double width, double height) {
        double reached = 0;
        double highest = 0;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            String at = "/steps/" + i;
            faults.require(
                    Math.abs(step.from() - reached) <= Layout.TOUCH,
                    at + "/from",
                    i == 0
                            ? "must be 0, the elevation's left end"
                            : "must be where the part before it ends, without a gap or an overlap");
            faults.require(
                    step.to() - step.from() > Layout.TOUCH,
                    at + "/to",
                    "must lie on the right of from");
            faults.require(
                    step.height() <= height + Layout.TOUCH,
                    at + "/height",
                    "exceeds the height of the elevation");
            reached = step.to();
            highest = Math.max(highest, step.height());
        }
        faults.require(
                Math.abs(reached - width) <= Layout.TOUCH,
                "/steps/" + (steps.size() - 1) + "/to",
                "must be the width of the elevation, its right end");
        faults.require(
                highest >= height - Layout.TOUCH,
                "/height",
                "must be the height of the highest of the steps");
    }

    /** Level of its highest part's top above the building datum, m. */
    double top() {
        return base + height;
    }

    /** Its parts from left to right, one where no steps were given. */
    List<Step> parts() {
        return steps == null ? List.of(new Step(0, width, height, null)) : steps;
    }

    /** Level above the building datum up to which all of a stretch of the elevation reaches, m. */
    double topBetween(double from, double to) {
        return base
                + parts().stream()
                        .filter(
                                part ->
                                        Math.min(to, part.to()) - Math.max(from, part.from())
                                                > Layout.TOUCH)
                        .mapToDouble(Step::height)
                        .min()
                        .orElse(height);
    }

    /** Its corners from left to right, those at its ends included. */
    List<Corner> allCorners() {
        List<Corner> all = new ArrayList<>();
        if (cornerAtLeft) {
            all.add(new Corner(0, Corner.Kind.OUTSIDE));
        }
        if (cornerAtRight) {
            all.add(new Corner(width, Corner.Kind.OUTSIDE));
        }
        for (Corner corner : corners == null ? List.<Corner>of() : corners) {
            if (all.stream().noneMatch(c -> Math.abs(c.at() - corner.at()) <= Layout.TOUCH)) {
                all.add(corner);
            }
        }
        all.sort(Comparator.comparingDouble(Corner::at));
        return all;
    }
}
