package org.bayledger.review;

/**
 * A frame of coordinates in another one. Those of placements are right-handed with unit vectors;
 * those of mapped shapes may be scaled or mirrored.
 *
 * @param origin its origin, m
 * @param x vector along its x axis, of the length of 1 there
 * @param y vector along its y axis
 * @param z vector along its z axis
 */
record IfcFrame(Vector origin, Vector x, Vector y, Vector z) {

    static final IfcFrame WORLD =
            new IfcFrame(
                    Vector.ZERO, new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1));

    /** A point or a direction. */
    record Vector(double x, double y, double z) {

        static final Vector ZERO = new Vector(0, 0, 0);

        Vector plus(Vector other) {
            return new Vector(x + other.x, y + other.y, z + other.z);
        }

        Vector times(double factor) {
            return new Vector(factor * x, factor * y, factor * z);
        }

        double dot(Vector other) {
            return x * other.x + y * other.y + z * other.z;
        }

        Vector cross(Vector other) {
            return new Vector(
                    y * other.z - z * other.y,
                    z * other.x - x * other.z,
                    x * other.y - y * other.x);
        }

        double length() {
            return Math.sqrt(dot(this));
        }

        Vector unit() {
            double length = length();
            if (!(length > 1e-9 && length < 1e9)) {
                throw new IllegalArgumentException("a direction without a direction");
            }
            return times(1 / length);
        }
    }

    /**
     * The frame of an axis and a reference direction, as IfcBuildAxes makes it (ISO 16739-1:2018):
     * x is what is left of the reference direction at a right angle to the axis.
     */
    static IfcFrame of(Vector origin, Vector axis, Vector reference) {
        Vector z = axis.unit();
        Vector x = reference.plus(z.times(-reference.dot(z)));
        if (!(x.length() > 1e-9)) {
            throw new IllegalArgumentException("an axis along its own reference direction");
        }
        Vector unit = x.unit();
        return new IfcFrame(origin, unit, z.cross(unit), z);
    }

    /** A point of this frame in the frame around it. */
    Vector out(Vector point) {
        return origin.plus(turned(point));
    }

    /** A point of the frame around this right-handed one of unit vectors, in this one. */
    Vector in(Vector point) {
        Vector from = point.plus(origin.times(-1));
        return new Vector(from.dot(x), from.dot(y), from.dot(z));
    }

    /** A frame in this one, seen from the frame around it. */
    IfcFrame out(IfcFrame inner) {
        return new IfcFrame(out(inner.origin), turned(inner.x), turned(inner.y), turned(inner.z));
    }

    private Vector turned(Vector direction) {
        return x.times(direction.x()).plus(y.times(direction.y())).plus(z.times(direction.z()));
    }
}
