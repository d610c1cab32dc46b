package org.bayledger.drawing;

import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewResult;

/** Draws what a request asks for: the same request makes the same bytes. */
final class Drawings {

    private Drawings() {}

    /**
     * A drawing as SVG.
     *
     * @param units units of all its numbers
     * @param origin where the document comes from, for the title block
     */
    static byte[] draw(DrawingRequest request, UnitSystem units, String origin) {
        Reporting reporting = new Reporting(units, TraceLevel.GOVERNING);
        ReviewResult result = Review.run(request.document(), reporting);
        return switch (request.drawing()) {
            case WIND_ZONES -> new WindZonesDrawing(request, result, units, origin).draw();
        };
    }
}
