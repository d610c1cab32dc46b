package org.bayledger.wind;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.bayledger.check.Faults;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Wind pressures that come with the job, from the engineer of record or a wind tunnel, and are used
 * instead of computed ones. Between the areas of a table that of the next smaller one is used,
 * which is never less; nothing is assumed where the table says nothing.
 *
 * @param source where they come from, as a reviewer would cite it
 * @param basis level of all of them
 * @param zoneWidth width of the outermost zone at outside corners, m: a of ASCE/SEI 7, e/5 of EN
 *     1991-1-4; absent: that of the site
 * @param pressures the table
 */
public record SpecifiedPressures(
        @NotBlank @Size(max = 500) String source,
        LoadBasis basis,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 2000)
                @Nullable Double zoneWidth,
        @NotEmpty @Size(max = 500) List<SpecifiedPressure> pressures) {

    public SpecifiedPressures {
        pressures = List.copyOf(pressures);
        Faults faults = new Faults();
        ZoneScheme scheme = null;
        for (int i = 0; i < pressures.size(); i++) {
            SpecifiedPressure line = pressures.get(i);
            String at = "/pressures/" + i;
            ZoneScheme own = scheme(line.zone());
            if (own == null) {
                faults.outOfRange(
                        at + "/zone", "must be 4 or 5 (ASCE/SEI 7), or A, B or C (EN 1991-1-4)");
            } else if (scheme == null) {
                scheme = own;
            } else {
                faults.require(
                        own == scheme,
                        at + "/zone",
                        "is a zone of another standard than those before it");
            }
            for (int j = 0; j < i; j++) {
                if (line.meets(pressures.get(j))) {
                    contradictions(faults, at, line, j, pressures.get(j));
                }
            }
        }
        faults.throwIfAny();
    }

    private static @Nullable ZoneScheme scheme(String zone) {
        for (ZoneScheme scheme : ZoneScheme.values()) {
            if (scheme.inward().contains(zone)) {
                return scheme;
            }
        }
        return null;
    }

    private static void contradictions(
            Faults faults, String at, SpecifiedPressure line, int j, SpecifiedPressure other) {
        String that = "pressures/" + j + ", for the same zone and heights";
        if (line.effectiveWindArea() == null && other.effectiveWindArea() == null) {
            faults.outOfRange(at, "overlaps " + that);
        } else if (line.effectiveWindArea() == null || other.effectiveWindArea() == null) {
            faults.outOfRange(
                    at + "/effectiveWindArea",
                    "must be given in both or in neither of this and " + that);
        } else if (line.sameArea(other)) {
            faults.outOfRange(at, "overlaps " + that + " and area");
        } else {
            boolean larger = line.area() > other.area();
            falls(faults, at, "positive", larger, line.positive(), other.positive(), that);
            falls(faults, at, "negative", larger, line.negative(), other.negative(), that);
        }
    }

    /** The pressure of a larger area is the mean over more wall and never greater. */
    private static void falls(
            Faults faults,
            String at,
            String sign,
            boolean larger,
            @Nullable Double own,
            @Nullable Double other,
            String that) {
        if (own != null && other != null && own != 0) {
            double more = Math.abs(own) - Math.abs(other);
            faults.require(
                    larger ? more <= 0 : more >= 0,
                    at + "/" + sign,
                    larger
                            ? "is greater than for the smaller area of " + that
                            : "is smaller than for the larger area of " + that);
        }
    }

    /** How the table divides a wall into zones. */
    public ZoneScheme scheme() {
        ZoneScheme scheme = scheme(pressures.get(0).zone());
        if (scheme == null) {
            throw new IllegalStateException("a zone of no standard");
        }
        return scheme;
    }

    /** Whether any line of the table holds on an elevation. */
    public boolean coversSomeOf(@Nullable String elevation) {
        return pressures.stream().anyMatch(line -> line.on(elevation));
    }

    /** Heights above ground, m, at which lines of the table for an elevation begin or end. */
    public List<Double> levels(@Nullable String elevation) {
        TreeSet<Double> levels = new TreeSet<>();
        pressures.stream()
                .filter(line -> line.on(elevation))
                .forEach(
                        line -> {
                            levels.add(line.bottom());
                            if (line.to() != null) {
                                levels.add(line.to());
                            }
                        });
        return List.copyOf(levels);
    }

    /**
     * What is specified for a piece of wall in one zone: of all heights that it covers the greatest
     * of each sign, and none of a sign that is missing at any of them.
     *
     * @param elevation name of its elevation; null for a wall that nobody named
     * @param zone zone of the wall
     * @param area effective wind area, m2
     * @param bottom height of its lower edge above ground, m
     * @param top height of its upper edge, m
     */
    public SpecifiedPick pick(
            @Nullable String elevation, String zone, double area, double bottom, double top) {
        List<SpecifiedPressure> lines =
                pressures.stream()
                        .filter(line -> line.on(elevation) && line.zone().equals(zone))
                        .toList();
        if (lines.isEmpty()) {
            return SpecifiedPick.missing(SpecifiedPick.Missing.zone(zone));
        }
        TreeSet<Double> levels = new TreeSet<>(List.of(bottom, top));
        for (SpecifiedPressure line : lines) {
            levels.add(Math.min(Math.max(line.bottom(), bottom), top));
            levels.add(Math.min(Math.max(line.top(), bottom), top));
        }
        SpecifiedPick picked = null;
        double low = bottom;
        for (double high : levels) {
            if (high - low > SpecifiedPressure.TOUCH) {
                SpecifiedPick next = between(lines, zone, area, low, high);
                picked = picked == null ? next : picked.and(next);
                low = high;
            }
        }
        if (picked == null) {
            throw new IllegalArgumentException("no wall between " + bottom + " and " + top);
        }
        return picked;
    }

    private SpecifiedPick between(
            List<SpecifiedPressure> lines, String zone, double area, double low, double high) {
        List<SpecifiedPressure> there =
                lines.stream().filter(line -> line.covers(low, high)).toList();
        if (there.isEmpty()) {
            double from =
                    lines.stream()
                            .mapToDouble(SpecifiedPressure::top)
                            .filter(end -> end <= low + SpecifiedPressure.TOUCH)
                            .max()
                            .orElse(0);
            double to =
                    lines.stream()
                            .mapToDouble(SpecifiedPressure::bottom)
                            .filter(start -> start >= high - SpecifiedPressure.TOUCH)
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
            return SpecifiedPick.missing(SpecifiedPick.Missing.height(zone, from, to));
        }
        List<SpecifiedPressure> held =
                there.stream()
                        .filter(line -> line.holdsFor(area))
                        .sorted(Comparator.comparingDouble(SpecifiedPressure::area).reversed())
                        .toList();
        if (held.isEmpty()) {
            double least = there.stream().mapToDouble(SpecifiedPressure::area).min().orElse(0);
            return SpecifiedPick.missing(SpecifiedPick.Missing.area(zone, least));
        }
        List<SpecifiedPick.Missing> missing = new ArrayList<>();
        SpecifiedPick.Line positive = null;
        SpecifiedPick.Line negative = null;
        for (SpecifiedPressure line : held) {
            int index = pressures.indexOf(line);
            if (positive == null && line.positive() != null) {
                positive = new SpecifiedPick.Line(index, line.positive());
            }
            if (negative == null && line.negative() != null) {
                negative = new SpecifiedPick.Line(index, line.negative());
            }
        }
        int index = pressures.indexOf(held.get(0));
        if (positive == null) {
            missing.add(SpecifiedPick.Missing.sign(zone, index, "positive"));
        }
        if (negative == null) {
            missing.add(SpecifiedPick.Missing.sign(zone, index, "negative"));
        }
        return new SpecifiedPick(positive, negative, missing);
    }
}
