package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.mechanics.PolygonRing;
import org.jspecify.annotations.Nullable;

/**
 * One closed line of a section's outline.
 *
 * @param points its corners in order, the last joined to the first
 * @param hole whether it bounds a hollow; absent: the metal's outer boundary
 */
public record OutlineRing(
        @Size(min = 3, max = 200) List<OutlinePoint> points, @Nullable Boolean hole) {

    public OutlineRing {
        points = List.copyOf(points);
    }

    boolean isHole() {
        return Boolean.TRUE.equals(hole);
    }

    PolygonRing ring() {
        return new PolygonRing(
                points.stream().mapToDouble(OutlinePoint::x).toArray(),
                points.stream().mapToDouble(OutlinePoint::y).toArray());
    }
}
