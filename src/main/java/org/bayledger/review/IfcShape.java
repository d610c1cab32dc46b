package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.review.IfcFrame.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Corner points of a product's body: extruded rectangles and polygons, boxes, faceted and mapped
 * shapes. Their extents are those of the body; curves are not read.
 */
final class IfcShape {

    private final IfcModel model;

    IfcShape(IfcModel model) {
        this.model = model;
    }

    /**
     * Corner points in the project's coordinates, m; none where the product has no shape that is
     * read here.
     */
    List<Vector> corners(StepEntity product) {
        List<Vector> corners = new ArrayList<>();
        StepEntity shape = model.entity(product.argument(6), "IFCPRODUCTDEFINITIONSHAPE");
        if (shape == null) {
            return corners;
        }
        try {
            IfcFrame frame = model.placement(product);
            for (StepEntity representation : model.entities(shape.list(2))) {
                if (!representation.text(1).equals("Axis")) {
                    for (StepEntity item : model.entities(representation.list(3))) {
                        add(corners, item, frame, 0);
                    }
                }
            }
            return corners;
        } catch (IllegalArgumentException | ClassCastException | NullPointerException notReadable) {
            // something the schema demands is missing or of another type
            return List.of();
        }
    }

    private void add(List<Vector> corners, StepEntity item, IfcFrame frame, int depth) {
        if (depth > 10) {
            throw new IllegalArgumentException("a shape that contains itself");
        }
        switch (item.type()) {
            case "IFCEXTRUDEDAREASOLID" -> extruded(corners, item, frame);
            case "IFCBOUNDINGBOX" -> box(corners, item, frame);
            case "IFCTRIANGULATEDFACESET", "IFCPOLYGONALFACESET" ->
                    listed(corners, model.entity(item.argument(0)), frame);
            case "IFCFACETEDBREP" -> faceted(corners, item, frame);
            case "IFCMAPPEDITEM" -> mapped(corners, item, frame, depth);
            default -> {
                // another kind of body; where it is the only one the product has no corners
            }
        }
    }

    private void extruded(List<Vector> corners, StepEntity solid, IfcFrame frame) {
        IfcFrame own = frame.out(model.axes(solid.argument(1)));
        Vector along =
                model.direction(solid.argument(2), IfcFrame.WORLD.z())
                        .unit()
                        .times(model.length(solid.argument(3)));
        for (Vector corner : profile(model.entity(solid.argument(0)))) {
            corners.add(own.out(corner));
            corners.add(own.out(corner.plus(along)));
        }
    }

    private List<Vector> profile(@Nullable StepEntity profile) {
        List<Vector> corners = new ArrayList<>();
        if (profile == null) {
            return corners;
        }
        if (profile.type().equals("IFCRECTANGLEPROFILEDEF")) {
            IfcFrame own = model.axes(profile.argument(2));
            double x = model.length(profile.argument(3)) / 2;
            double y = model.length(profile.argument(4)) / 2;
            for (int i = 0; i < 4; i++) {
                corners.add(own.out(new Vector(i % 2 == 0 ? x : -x, i < 2 ? y : -y, 0)));
            }
        } else if (profile.type().equals("IFCARBITRARYCLOSEDPROFILEDEF")) {
            StepEntity curve = model.entity(profile.argument(2));
            if (curve != null && curve.type().equals("IFCPOLYLINE")) {
                curve.list(0).forEach(point -> corners.add(model.point(point)));
            } else if (curve != null && curve.type().equals("IFCINDEXEDPOLYCURVE")) {
                listed(corners, model.entity(curve.argument(0)), IfcFrame.WORLD);
            }
        }
        return corners;
    }

    private void box(List<Vector> corners, StepEntity box, IfcFrame frame) {
        Vector corner = model.point(box.argument(0));
        double[] x = {0, model.length(box.argument(1))};
        double[] y = {0, model.length(box.argument(2))};
        double[] z = {0, model.length(box.argument(3))};
        for (int i = 0; i < 8; i++) {
            Vector along = new Vector(x[i & 1], y[i >> 1 & 1], z[i >> 2]);
            corners.add(frame.out(corner.plus(along)));
        }
    }

    private void listed(List<Vector> corners, @Nullable StepEntity list, IfcFrame frame) {
        if (list != null) {
            for (Object point : list.list(0)) {
                if (point instanceof List<?> coordinates) {
                    corners.add(frame.out(model.coordinates(coordinates)));
                }
            }
        }
    }

    private void faceted(List<Vector> corners, StepEntity brep, IfcFrame frame) {
        StepEntity shell = model.entity(brep.argument(0), "IFCCLOSEDSHELL");
        for (StepEntity face :
                shell == null ? List.<StepEntity>of() : model.entities(shell.list(0))) {
            for (StepEntity bound : model.entities(face.list(0))) {
                StepEntity loop = model.entity(bound.argument(0), "IFCPOLYLOOP");
                if (loop != null) {
                    loop.list(0).forEach(point -> corners.add(frame.out(model.point(point))));
                }
            }
        }
    }

    private void mapped(List<Vector> corners, StepEntity item, IfcFrame frame, int depth) {
        StepEntity map = model.entity(item.argument(0), "IFCREPRESENTATIONMAP");
        StepEntity target = model.entity(item.argument(1), "IFCCARTESIANTRANSFORMATIONOPERATOR3D");
        if (map == null
                || target == null
                || isScaled(target)
                || !model.axes(map.argument(0)).equals(IfcFrame.WORLD)) {
            return;
        }
        IfcFrame moved =
                IfcFrame.of(
                        model.point(target.argument(2)),
                        model.direction(target.argument(4), IfcFrame.WORLD.z()),
                        model.direction(target.argument(0), IfcFrame.WORLD.x()));
        IfcFrame inside = frame.out(moved);
        StepEntity representation = model.entity(map.argument(1));
        if (representation != null) {
            for (StepEntity part : model.entities(representation.list(3))) {
                add(corners, part, inside, depth + 1);
            }
        }
    }

    private static boolean isScaled(StepEntity target) {
        return target.argument(3) instanceof Double scale && Math.abs(scale - 1) > 1e-9;
    }
}
