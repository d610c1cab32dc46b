package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.review.IfcFrame.Vector;
import org.bayledger.review.StepEntity.Typed;
import org.jspecify.annotations.Nullable;

/** Corners of the profiles that are extruded: rectangles and polygons; curves are refused. */
final class IfcOutline {

    private final IfcModel model;

    IfcOutline(IfcModel model) {
        this.model = model;
    }

    /** Corner points of a profile in the plane of its solid, m. */
    List<Vector> profile(StepEntity profile) {
        return switch (profile.type()) {
            case "IFCRECTANGLEPROFILEDEF",
                    "IFCRECTANGLEHOLLOWPROFILEDEF",
                    "IFCROUNDEDRECTANGLEPROFILEDEF" ->
                    rectangle(profile);
            case "IFCARBITRARYCLOSEDPROFILEDEF", "IFCARBITRARYPROFILEDEFWITHVOIDS" ->
                    polygon(model.required(profile.argument(2)));
            default ->
                    throw new IllegalArgumentException(
                            "a profile of kind " + profile.type() + " is not read");
        };
    }

    private List<Vector> rectangle(StepEntity profile) {
        IfcFrame own = model.axes(profile.argument(2));
        double x = model.length(profile.argument(3)) / 2;
        double y = model.length(profile.argument(4)) / 2;
        List<Vector> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            corners.add(own.out(new Vector(i % 2 == 0 ? x : -x, i < 2 ? y : -y, 0)));
        }
        return corners;
    }

    private List<Vector> polygon(StepEntity curve) {
        List<Vector> corners = new ArrayList<>();
        if (curve.type().equals("IFCPOLYLINE")) {
            curve.list(0).forEach(point -> corners.add(model.point(point)));
            return corners;
        }
        if (!curve.type().equals("IFCINDEXEDPOLYCURVE")) {
            throw new IllegalArgumentException(
                    "an outline of kind " + curve.type() + " is not read");
        }
        List<?> points = model.required(curve.argument(0)).list(0);
        if (curve.argument(1) == null) {
            points.forEach(point -> corners.add(coordinates(point)));
        }
        for (Object segment : curve.list(1)) {
            if (!(segment instanceof Typed line) || !line.type().equals("IFCLINEINDEX")) {
                throw new IllegalArgumentException("an outline with arcs is not read");
            }
            line.values().forEach(index -> corners.add(coordinates(element(points, index))));
        }
        return corners;
    }

    private Vector coordinates(@Nullable Object point) {
        if (!(point instanceof List<?> coordinates)) {
            throw new IllegalArgumentException("a point without coordinates");
        }
        return model.coordinates(coordinates);
    }

    /** An element of a list, counted from 1 as the schema counts. */
    static @Nullable Object element(List<?> list, @Nullable Object index) {
        if (!(index instanceof Double at) || at != Math.rint(at) || at < 1 || at > list.size()) {
            throw new IllegalArgumentException("point " + index + " of " + list.size());
        }
        return list.get((int) (at - 1));
    }
}
