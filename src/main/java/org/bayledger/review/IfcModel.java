package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.review.IfcFrame.Vector;
import org.bayledger.review.StepEntity.Keyword;
import org.bayledger.review.StepEntity.Reference;
import org.jspecify.annotations.Nullable;

/** Instances of an IFC 4 file, and what the import reads of them (ISO 16739-1:2018). */
final class IfcModel {

    /** Placements that hang on one another; more than that is a circle. */
    private static final int LONGEST_CHAIN = 100;

    private static final Map<String, Double> PREFIXES =
            Map.of("MILLI", 1e-3, "CENTI", 1e-2, "DECI", 1e-1, "KILO", 1e3, "MICRO", 1e-6);

    private final Map<Integer, StepEntity> entities;
    private final Map<String, List<StepEntity>> byType = new HashMap<>();
    private final double metre;

    IfcModel(StepReader.File file) {
        requireIfc4(file);
        this.entities = file.entities();
        entities.values()
                .forEach(
                        entity ->
                                byType.computeIfAbsent(entity.type(), type -> new ArrayList<>())
                                        .add(entity));
        this.metre = lengthUnit();
    }

    private static void requireIfc4(StepReader.File file) {
        String schema = String.valueOf(file.header().get("FILE_SCHEMA")).toUpperCase(Locale.ROOT);
        if (!schema.matches("\\[\\[IFC4.*")) {
            throw refused(
                    "is not a file of schema IFC4 (ISO 16739) but of " + schema + "; export IFC 4");
        }
    }

    static FaultsException refused(String detail) {
        return new FaultsException(List.of(new Fault("", detail, Fault.Kind.OUT_OF_RANGE)));
    }

    List<StepEntity> all(String type) {
        return byType.getOrDefault(type, List.of());
    }

    @Nullable StepEntity entity(@Nullable Object reference) {
        return reference instanceof Reference to ? entities.get(to.id()) : null;
    }

    @Nullable StepEntity entity(@Nullable Object reference, String type) {
        StepEntity entity = entity(reference);
        return entity != null && entity.type().equals(type) ? entity : null;
    }

    List<StepEntity> entities(List<?> references) {
        List<StepEntity> found = new ArrayList<>();
        for (Object reference : references) {
            StepEntity entity = entity(reference);
            if (entity != null) {
                found.add(entity);
            }
        }
        return found;
    }

    /** Name of the project; empty where it has none. */
    String projectName() {
        List<StepEntity> projects = all("IFCPROJECT");
        return projects.isEmpty() ? "" : projects.get(0).text(2);
    }

    private double lengthUnit() {
        for (StepEntity project : all("IFCPROJECT")) {
            StepEntity units = entity(project.argument(8), "IFCUNITASSIGNMENT");
            for (StepEntity unit :
                    units == null ? List.<StepEntity>of() : entities(units.list(0))) {
                if (new Keyword("LENGTHUNIT").equals(unit.argument(1))) {
                    return metres(unit);
                }
            }
        }
        throw refused("does not say its unit of length (IfcUnitAssignment of the IfcProject)");
    }

    private double metres(StepEntity unit) {
        if (unit.type().equals("IFCSIUNIT")) {
            Object prefix = unit.argument(2);
            if (prefix == null) {
                return 1;
            }
            Double factor = prefix instanceof Keyword name ? PREFIXES.get(name.name()) : null;
            if (factor != null) {
                return factor;
            }
        }
        if (unit.type().equals("IFCCONVERSIONBASEDUNIT")) {
            StepEntity measure = entity(unit.argument(3), "IFCMEASUREWITHUNIT");
            StepEntity of = measure == null ? null : entity(measure.argument(1), "IFCSIUNIT");
            if (measure != null
                    && of != null
                    && measure.argument(0) instanceof Double value
                    && value > 0) {
                return value * metres(of);
            }
        }
        throw refused("has a unit of length that is not known here, instance #" + unit.id());
    }

    /** A measure of length, m. */
    double length(@Nullable Object measure) {
        if (measure instanceof Double value) {
            return value * metre;
        }
        throw new IllegalArgumentException("a length is missing");
    }

    /** A cartesian point, m; its third coordinate is zero where it has two. */
    Vector point(@Nullable Object reference) {
        StepEntity point = entity(reference, "IFCCARTESIANPOINT");
        if (point == null) {
            throw new IllegalArgumentException("a point is missing");
        }
        return coordinates(point.list(0));
    }

    Vector coordinates(List<?> of) {
        if (of.size() < 2 || of.size() > 3) {
            throw new IllegalArgumentException("a point has two or three coordinates");
        }
        return new Vector(
                length(of.get(0)), length(of.get(1)), of.size() == 3 ? length(of.get(2)) : 0);
    }

    Vector direction(@Nullable Object reference, Vector otherwise) {
        StepEntity direction = entity(reference, "IFCDIRECTION");
        if (direction == null) {
            return otherwise;
        }
        List<?> ratios = direction.list(0);
        double[] of = new double[3];
        for (int i = 0; i < Math.min(3, ratios.size()); i++) {
            of[i] = (Double) Objects.requireNonNull(ratios.get(i));
        }
        return new Vector(of[0], of[1], of[2]);
    }

    /** The frame of an axis placement; the frame around it where there is none. */
    IfcFrame axes(@Nullable Object reference) {
        StepEntity placement = entity(reference);
        if (placement == null) {
            return IfcFrame.WORLD;
        }
        Vector origin = point(placement.argument(0));
        return placement.type().equals("IFCAXIS2PLACEMENT2D")
                ? IfcFrame.of(
                        origin,
                        IfcFrame.WORLD.z(),
                        direction(placement.argument(1), IfcFrame.WORLD.x()))
                : IfcFrame.of(
                        origin,
                        direction(placement.argument(1), IfcFrame.WORLD.z()),
                        direction(placement.argument(2), IfcFrame.WORLD.x()));
    }

    /** Where a product stands in the coordinates of the project. */
    IfcFrame placement(StepEntity product) {
        IfcFrame frame = IfcFrame.WORLD;
        Object next = product.argument(5);
        for (int i = 0; next != null; i++) {
            StepEntity placement = entity(next, "IFCLOCALPLACEMENT");
            if (placement == null || i == LONGEST_CHAIN) {
                throw new IllegalArgumentException(
                        "a placement that is not local, or hangs on itself");
            }
            frame = axes(placement.argument(1)).out(frame);
            next = placement.argument(0);
        }
        return frame;
    }
}
