package org.bayledger.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.review.IfcFrame.Vector;
import org.bayledger.review.StepEntity.Keyword;
import org.bayledger.review.StepEntity.Reference;
import org.jspecify.annotations.Nullable;

/**
 * Instances of an IFC 4 file, and what the import reads of them (ISO 16739-1:2018). What is read
 * here stands at the same places in IFC4X3 (ISO 16739-1:2024), so that this is taken as well.
 *
 * <p>What an instance should hold and does not is an IllegalArgumentException with the reason.
 */
final class IfcModel {

    /** Placements that hang on one another; more than that is a circle. */
    private static final int LONGEST_CHAIN = 100;

    /** Nothing of a building stands further from the file's origin, m. */
    private static final double FARTHEST = 1e8;

    private static final Pattern SCHEMAS =
            Pattern.compile("IFC4(_ADD\\d.*)?|IFC4X[123](_.*)?", Pattern.CASE_INSENSITIVE);

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
        List<@Nullable Object> said = file.header().getOrDefault("FILE_SCHEMA", List.of());
        Object first = said.isEmpty() ? null : said.get(0);
        String schema =
                first instanceof List<?> names && !names.isEmpty()
                        ? String.valueOf(names.get(0)).strip()
                        : "";
        if (!SCHEMAS.matcher(schema).matches()) {
            throw refused(
                    (schema.isEmpty()
                                    ? "does not say its schema (FILE_SCHEMA)"
                                    : "is a file of schema " + shortened(schema))
                            + "; export it as IFC4 (ISO 16739) or IFC4X3");
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    static FaultsException refused(String detail) {
        return new FaultsException(List.of(new Fault("", detail, Fault.Kind.OUT_OF_RANGE)));
    }

    /** All instances of some types. */
    List<StepEntity> all(String... types) {
        return Arrays.stream(types)
                .flatMap(type -> byType.getOrDefault(type, List.of()).stream())
                .toList();
    }

    /** An instance, or null where the file says that there is none. */
    @Nullable StepEntity optional(@Nullable Object reference, String... types) {
        if (reference == null) {
            return null;
        }
        StepEntity entity = reference instanceof Reference to ? entities.get(to.id()) : null;
        if (entity == null) {
            throw new IllegalArgumentException(
                    reference instanceof Reference to
                            ? "#" + to.id() + " is not in the file"
                            : "a value stands where an instance is needed");
        }
        if (types.length > 0 && !Arrays.asList(types).contains(entity.type())) {
            throw new IllegalArgumentException(
                    entity + " stands where " + String.join(" or ", types) + " is read");
        }
        return entity;
    }

    /** An instance that has to be there. */
    StepEntity required(@Nullable Object reference, String... types) {
        StepEntity entity = optional(reference, types);
        if (entity == null) {
            throw new IllegalArgumentException(
                    "there is no " + (types.length == 0 ? "instance" : types[0]) + " in it");
        }
        return entity;
    }

    List<StepEntity> required(List<?> references) {
        List<StepEntity> found = new ArrayList<>();
        references.forEach(reference -> found.add(required(reference)));
        return found;
    }

    /** Those of a list that are in the file. */
    List<StepEntity> found(List<?> references) {
        List<StepEntity> found = new ArrayList<>();
        for (Object reference : references) {
            StepEntity entity = reference instanceof Reference to ? entities.get(to.id()) : null;
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
        try {
            for (StepEntity project : all("IFCPROJECT")) {
                StepEntity units = optional(project.argument(8), "IFCUNITASSIGNMENT");
                for (StepEntity unit :
                        units == null ? List.<StepEntity>of() : found(units.list(0))) {
                    if (unit.says(1, "LENGTHUNIT")) {
                        return metres(unit);
                    }
                }
            }
        } catch (IllegalArgumentException notReadable) {
            throw refused("has a unit of length that can't be read: " + notReadable.getMessage());
        }
        throw refused("does not say its unit of length (IfcUnitAssignment of the IfcProject)");
    }

    private double metres(StepEntity unit) {
        if (unit.type().equals("IFCSIUNIT") && unit.says(3, "METRE")) {
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
            StepEntity measure = required(unit.argument(3), "IFCMEASUREWITHUNIT");
            StepEntity of = required(measure.argument(1), "IFCSIUNIT");
            if (measure.argument(0) instanceof Double value && value > 1e-6 && value < 1e6) {
                return value * metres(of);
            }
        }
        throw refused("has a unit of length that is not known here, " + unit);
    }

    /** A measure of length, m. */
    double length(@Nullable Object measure) {
        if (!(measure instanceof Double value)) {
            throw new IllegalArgumentException("a length is missing");
        }
        double length = value * metre;
        if (!(Math.abs(length) < FARTHEST)) {
            throw new IllegalArgumentException("a length of " + length + " m");
        }
        return length;
    }

    /** A cartesian point, m; its third coordinate is zero where it has two. */
    Vector point(@Nullable Object reference) {
        return coordinates(required(reference, "IFCCARTESIANPOINT").list(0));
    }

    Vector coordinates(List<?> of) {
        if (of.size() < 2 || of.size() > 3) {
            throw new IllegalArgumentException("a point has two or three coordinates");
        }
        return new Vector(
                length(of.get(0)), length(of.get(1)), of.size() == 3 ? length(of.get(2)) : 0);
    }

    /** A direction, or null where the file says that there is none. */
    @Nullable Vector direction(@Nullable Object reference) {
        StepEntity direction = optional(reference, "IFCDIRECTION");
        if (direction == null) {
            return null;
        }
        List<?> ratios = direction.list(0);
        double[] of = new double[3];
        for (int i = 0; i < Math.min(3, ratios.size()); i++) {
            if (!(ratios.get(i) instanceof Double ratio)) {
                throw new IllegalArgumentException(direction + " is no direction");
            }
            of[i] = ratio;
        }
        return new Vector(of[0], of[1], of[2]).unit();
    }

    Vector direction(@Nullable Object reference, Vector otherwise) {
        Vector direction = direction(reference);
        return direction == null ? otherwise : direction;
    }

    /** The frame of an axis placement; the frame around it where there is none. */
    IfcFrame axes(@Nullable Object reference) {
        StepEntity placement = optional(reference, "IFCAXIS2PLACEMENT2D", "IFCAXIS2PLACEMENT3D");
        if (placement == null) {
            return IfcFrame.WORLD;
        }
        Vector origin = point(placement.argument(0));
        if (placement.type().equals("IFCAXIS2PLACEMENT2D")) {
            return IfcFrame.of(
                    origin,
                    IfcFrame.WORLD.z(),
                    direction(placement.argument(1), IfcFrame.WORLD.x()));
        }
        Vector axis = direction(placement.argument(1), IfcFrame.WORLD.z());
        // IfcFirstProjAxis: x is the reference unless the axis is x itself
        Vector otherwise =
                axis.equals(IfcFrame.WORLD.x()) ? IfcFrame.WORLD.y() : IfcFrame.WORLD.x();
        return IfcFrame.of(origin, axis, direction(placement.argument(2), otherwise));
    }

    /** Where a product stands in the coordinates of the project. */
    IfcFrame placement(StepEntity product) {
        IfcFrame frame = IfcFrame.WORLD;
        StepEntity next = optional(product.argument(5), "IFCLOCALPLACEMENT");
        for (int i = 0; next != null; i++) {
            if (i == LONGEST_CHAIN) {
                throw new IllegalArgumentException("a placement that hangs on itself");
            }
            frame = axes(next.argument(1)).out(frame);
            next = optional(next.argument(0), "IFCLOCALPLACEMENT");
        }
        return frame;
    }
}
