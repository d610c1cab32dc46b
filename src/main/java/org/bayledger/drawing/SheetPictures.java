package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Elevation;
import org.bayledger.review.ReviewDocument;

/** The drawings of a review sheet, each inside the page so that the sheet is one file. */
final class SheetPictures {

    private SheetPictures() {}

    static List<ReviewSheet.Picture> of(
            ReviewDocument document, UnitSystem units, SheetOrigin origin) {
        List<ReviewSheet.Picture> pictures = new ArrayList<>();
        for (Elevation elevation : document.elevations()) {
            pictures.add(
                    picture(
                            "Wind zones of elevation " + elevation.id(),
                            Drawings.draw(
                                    new DrawingRequest(
                                            document,
                                            DrawingKind.WIND_ZONES,
                                            elevation.id(),
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            null),
                                    units,
                                    origin.title())));
        }
        return pictures;
    }

    private static ReviewSheet.Picture picture(String title, byte[] svg) {
        return new ReviewSheet.Picture(
                title, "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(svg));
    }
}
