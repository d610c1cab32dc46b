package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.review.IfcFrame.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Corner points of products' bodies: extruded rectangles and polygons, boxes, faceted, tessellated
 * and mapped shapes. Their extents are those of the body. A body of another kind, curved or cut, is
 * refused whole: the extents of a part of it would be wrong.
 */
final class IfcShape {

    /** Points of all shapes that are looked at; what is mapped counts each time. */
    private static final int MOST_POINTS = 4_000_000;

    private static final int DEEPEST = 10;

    private final IfcModel model;
    private final IfcOutline outline;
    private int points;

    IfcShape(IfcModel model) {
        this.model = model;
        this.outline = new IfcOutline(model);
    }

    /**
     * Corner points of a product in the project's coordinates, m.
     *
     * @throws IllegalArgumentException where its body can't be read, with the reason
     */
    List<Vector> corners(StepEntity product) {
        StepEntity shape = model.required(product.argument(6), "IFCPRODUCTDEFINITIONSHAPE");
        IfcFrame frame = model.placement(product);
        List<Vector> corners = new ArrayList<>();
        for (StepEntity item : model.required(body(shape).list(3))) {
            add(corners, item, frame, 0);
        }
        if (corners.isEmpty()) {
            throw new IllegalArgumentException("its body is empty");
        }
        return corners;
    }

    /**
     * The representation that is the body: others are its axis, its footprint or the room in front
     * of it. Where there is none, the box around it.
     */
    private StepEntity body(StepEntity shape) {
        List<StepEntity> all = model.required(shape.list(2));
        for (String identifier : List.of("Body", "Facetation", "", "Box")) {
            for (StepEntity representation : all) {
                if (representation.text(1).equals(identifier)) {
                    return representation;
                }
            }
        }
        throw new IllegalArgumentException("it has no representation 'Body'");
    }

    private void add(List<Vector> corners, StepEntity item, IfcFrame frame, int depth) {
        if (depth > DEEPEST) {
            throw new IllegalArgumentException(
                    "shapes are mapped into one another more than " + DEEPEST + " times");
        }
        count();
        switch (item.type()) {
            case "IFCEXTRUDEDAREASOLID" -> extruded(corners, item, frame);
            case "IFCBOUNDINGBOX" -> box(corners, item, frame);
            case "IFCTRIANGULATEDFACESET" -> tessellated(corners, item, item.list(3), 4, frame);
            case "IFCPOLYGONALFACESET" -> {
                List<Object> indices = new ArrayList<>();
                model.required(item.list(2)).forEach(face -> indices.add(face.list(0)));
                tessellated(corners, item, indices, 3, frame);
            }
            case "IFCFACETEDBREP", "IFCFACETEDBREPWITHVOIDS" ->
                    faces(corners, model.required(item.argument(0)), frame);
            case "IFCFACEBASEDSURFACEMODEL", "IFCSHELLBASEDSURFACEMODEL" ->
                    model.required(item.list(0)).forEach(shell -> faces(corners, shell, frame));
            case "IFCMAPPEDITEM" -> mapped(corners, item, frame, depth);
            default ->
                    throw new IllegalArgumentException(
                            "a body of kind "
                                    + item.type()
                                    + " is not read; export bodies as extrusions or faceted"
                                    + " (tessellated, Reference View)");
        }
    }

    private void put(List<Vector> corners, Vector corner) {
        count();
        corners.add(corner);
    }

    private void count() {
        if (++points > MOST_POINTS) {
            throw IfcModel.refused(
                    "has bodies of more than "
                            + MOST_POINTS
                            + " points; export plates and members without their small parts");
        }
    }

    private void extruded(List<Vector> corners, StepEntity solid, IfcFrame frame) {
        IfcFrame own = frame.out(model.axes(solid.argument(1)));
        Vector along =
                model.direction(solid.argument(2), IfcFrame.WORLD.z())
                        .times(model.length(solid.argument(3)));
        for (Vector corner : outline.profile(model.required(solid.argument(0)))) {
            put(corners, own.out(corner));
            put(corners, own.out(corner.plus(along)));
        }
    }

    private void box(List<Vector> corners, StepEntity box, IfcFrame frame) {
        Vector corner = model.point(box.argument(0));
        double[] x = {0, model.length(box.argument(1))};
        double[] y = {0, model.length(box.argument(2))};
        double[] z = {0, model.length(box.argument(3))};
        for (int i = 0; i < 8; i++) {
            Vector along = new Vector(x[i & 1], y[i >> 1 & 1], z[i >> 2]);
            put(corners, frame.out(corner.plus(along)));
        }
    }

    /** The points of a list that faces name; others on the list may belong to other bodies. */
    private void tessellated(
            List<Vector> corners, StepEntity set, List<?> faces, int through, IfcFrame frame) {
        List<?> list = model.required(set.argument(0), "IFCCARTESIANPOINTLIST3D").list(0);
        List<?> indirect = set.argument(through) == null ? null : set.list(through);
        for (Object face : faces) {
            if (!(face instanceof List<?> indices)) {
                throw new IllegalArgumentException(set + " has a face without points");
            }
            for (Object index : indices) {
                Object at = indirect == null ? index : IfcOutline.element(indirect, index);
                if (!(IfcOutline.element(list, at) instanceof List<?> coordinates)) {
                    throw new IllegalArgumentException(set + " has a point without coordinates");
                }
                put(corners, frame.out(model.coordinates(coordinates)));
            }
        }
    }

    private void faces(List<Vector> corners, StepEntity shell, IfcFrame frame) {
        for (StepEntity face : model.required(shell.list(0))) {
            if (!face.type().equals("IFCFACE")) {
                throw new IllegalArgumentException("a face of kind " + face.type());
            }
            for (StepEntity bound : model.required(face.list(0))) {
                StepEntity loop = model.required(bound.argument(0), "IFCPOLYLOOP");
                loop.list(0).forEach(point -> put(corners, frame.out(model.point(point))));
            }
        }
    }

    /** A shape that stands elsewhere in the file: its own origin comes to stand on the target. */
    private void mapped(List<Vector> corners, StepEntity item, IfcFrame frame, int depth) {
        StepEntity map = model.required(item.argument(0), "IFCREPRESENTATIONMAP");
        IfcFrame origin = model.axes(map.argument(0));
        IfcFrame inside = frame.out(target(model.required(item.argument(1))));
        List<Vector> own = new ArrayList<>();
        for (StepEntity part : model.required(model.required(map.argument(1)).list(3))) {
            add(own, part, IfcFrame.WORLD, depth + 1);
        }
        own.forEach(corner -> corners.add(inside.out(origin.in(corner))));
    }

    /**
     * IfcCartesianTransformationOperator3D: axes, origin, one scale or three. The second axis tells
     * whether the shape is mirrored. Where it is left out the schema takes y for it, while most
     * programs take the right-handed one: where these differ nobody knows.
     */
    private IfcFrame target(StepEntity operator) {
        boolean three = operator.type().equals("IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM");
        if (!three && !operator.type().equals("IFCCARTESIANTRANSFORMATIONOPERATOR3D")) {
            throw new IllegalArgumentException(operator + " is not read");
        }
        IfcFrame axes =
                IfcFrame.of(
                        model.point(operator.argument(2)),
                        model.direction(operator.argument(4), IfcFrame.WORLD.z()),
                        model.direction(operator.argument(0), IfcFrame.WORLD.x()));
        Vector second = model.direction(operator.argument(1));
        double side = axes.y().dot(second == null ? IfcFrame.WORLD.y() : second);
        if (Math.abs(side) < 1e-6 || (second == null && side < 0)) {
            throw new IllegalArgumentException(
                    operator + " does not say whether its shape is mirrored (Axis2)");
        }
        double scale = scale(operator.argument(3), 1);
        return new IfcFrame(
                axes.origin(),
                axes.x().times(scale),
                axes.y()
                        .times(
                                Math.signum(side)
                                        * (three ? scale(operator.argument(5), scale) : scale)),
                axes.z().times(three ? scale(operator.argument(6), scale) : scale));
    }

    private static double scale(@Nullable Object factor, double otherwise) {
        double scale = factor instanceof Double given ? given : otherwise;
        if (!(scale > 1e-6 && scale < 1e6)) {
            throw new IllegalArgumentException("a shape is scaled by " + scale);
        }
        return scale;
    }
}
