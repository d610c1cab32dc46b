package org.bayledger.drawing;

import java.util.List;
import java.util.stream.Collectors;
import org.bayledger.check.FaultsException;
import org.bayledger.review.Bay;
import org.bayledger.review.Elevation;
import org.bayledger.review.ReviewDocument;
import org.jspecify.annotations.Nullable;

/**
 * Which drawing of a review document is wanted.
 *
 * @param document the job
 * @param drawing what the drawing shows
 * @param elevation name of the elevation that is drawn, or on which the bay stands
 * @param bay name of a bay on that elevation; WIND_ZONES marks it
 */
public record DrawingRequest(
        ReviewDocument document, DrawingKind drawing, String elevation, @Nullable String bay) {

    /** Names that are listed of those that would be accepted. */
    private static final int LISTED = 20;

    public DrawingRequest {
        if (document.elevations().stream().noneMatch(face -> face.id().equals(elevation))) {
            throw FaultsException.outOfRange(
                    "/elevation",
                    "'"
                            + elevation
                            + "' is not in the document; known: "
                            + listed(document.elevations().stream().map(Elevation::id).toList()));
        }
        if (bay != null
                && baysOn(document, elevation).stream().noneMatch(b -> b.id().equals(bay))) {
            throw FaultsException.outOfRange(
                    "/bay",
                    "'"
                            + bay
                            + "' does not stand on elevation "
                            + elevation
                            + "; there stand: "
                            + listed(baysOn(document, elevation).stream().map(Bay::id).toList()));
        }
    }

    private static String listed(List<String> names) {
        return names.isEmpty()
                ? "none"
                : names.stream().limit(LISTED).collect(Collectors.joining(", "))
                        + (names.size() > LISTED ? ", ..." : "");
    }

    private static List<Bay> baysOn(ReviewDocument document, String elevation) {
        return document.bays().stream().filter(b -> b.elevation().equals(elevation)).toList();
    }

    /** The elevation that is drawn, or on which the bay stands. */
    Elevation face() {
        return document.elevations().stream()
                .filter(face -> face.id().equals(elevation))
                .findFirst()
                .orElseThrow();
    }

    /** The bays on that elevation, in the order of the document. */
    List<Bay> bays() {
        return baysOn(document, elevation);
    }
}
