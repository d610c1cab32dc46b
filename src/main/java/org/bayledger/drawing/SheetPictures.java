package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Bay;
import org.bayledger.review.Elevation;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.bayledger.review.ReviewResult;
import org.jspecify.annotations.Nullable;

/**
 * The drawings of a review sheet, each inside the page so that the sheet is one file.
 *
 * @param said which drawings these are, in a sentence
 * @param pictures the drawings in order
 */
record SheetPictures(String said, List<Picture> pictures) {

    /**
     * A drawing on the sheet.
     *
     * @param number from 1
     * @param title what it shows
     * @param bay the bay that it is of; null for an elevation
     * @param dataUri the drawing itself
     */
    record Picture(int number, String title, @Nullable String bay, String dataUri) {}

    boolean hasPictures() {
        return !pictures.isEmpty();
    }

    /** Draws from one run of the review. */
    static SheetPictures of(
            ReviewDocument document,
            ReviewResult result,
            @Nullable SheetDrawings asked,
            UnitSystem units,
            SheetOrigin origin) {
        int bays = document.bays().size();
        SheetDrawings chosen = SheetDrawings.chosen(asked, bays);
        Pen pen = new Pen(document, result, units, origin.drawnFrom(), new ArrayList<>());
        if (chosen != SheetDrawings.NONE) {
            for (Elevation elevation : document.elevations()) {
                pen.draw(DrawingKind.WIND_ZONES, elevation.id(), null);
            }
        }
        if (chosen == SheetDrawings.ALL) {
            for (Bay bay : document.bays()) {
                pen.draw(DrawingKind.SETTING_BLOCKS, bay.elevation(), bay.id());
                pen.draw(DrawingKind.INTERNAL_SEALS, bay.elevation(), bay.id());
                if (!HorizontalItem.lines(bay).isEmpty()) {
                    pen.draw(DrawingKind.DEFLECTED_HORIZONTAL, bay.elevation(), bay.id());
                }
            }
        }
        return new SheetPictures(said(chosen, asked, bays), List.copyOf(pen.drawn()));
    }

    /**
     * The same of a document that was recorded, whose results are not those of today. Where today's
     * engine refuses it nothing is drawn, and the sheet says so.
     *
     * @param document the document's tree
     */
    static SheetPictures ofRecorded(
            Map<?, ?> document,
            @Nullable SheetDrawings asked,
            UnitSystem units,
            SheetOrigin origin) {
        int bays = ResultTree.list(document, "bays").size();
        SheetDrawings chosen = SheetDrawings.chosen(asked, bays);
        if (chosen == SheetDrawings.NONE) {
            return new SheetPictures(said(chosen, asked, bays), List.of());
        }
        try {
            ReviewDocument bound = Binder.bind(document, ReviewDocument.class);
            Reporting reporting = new Reporting(units, TraceLevel.GOVERNING);
            return of(bound, Review.run(bound, reporting), asked, units, origin);
        } catch (FaultsException refused) {
            Fault first = refused.faults().get(0);
            return new SheetPictures(
                    "None: today's engine, "
                            + Review.ENGINE_VERSION
                            + ", refuses the document at "
                            + first.pointer()
                            + ": "
                            + first.detail(),
                    List.of());
        }
    }

    private static String said(SheetDrawings chosen, @Nullable SheetDrawings asked, int bays) {
        return switch (chosen) {
            case ALL ->
                    "Wind zones of every elevation; setting blocks, internal seals and the governing"
                            + " horizontal of every bay.";
            case ELEVATIONS ->
                    asked == null
                            ? "Wind zones of every elevation. Drawings of the "
                                    + bays
                                    + " bays are left out, as of any job with more than "
                                    + SheetDrawings.FEW_BAYS
                                    + "; drawings=ALL brings them."
                            : "Wind zones of every elevation. Drawings of the bays were not asked"
                                    + " for.";
            case NONE -> "No drawings were asked for.";
        };
    }

    /** What draws one drawing after another. */
    private record Pen(
            ReviewDocument document,
            ReviewResult result,
            UnitSystem units,
            String origin,
            List<Picture> drawn) {

        void draw(DrawingKind kind, String elevation, @Nullable String bay) {
            DrawingRequest request =
                    new DrawingRequest(
                            document, kind, elevation, bay, null, null, null, null, null);
            String uri =
                    "data:image/svg+xml;base64,"
                            + Base64.getEncoder()
                                    .encodeToString(
                                            Drawings.draw(new Job(request, result, units, origin)));
            drawn.add(new Picture(drawn.size() + 1, title(kind, elevation, bay), bay, uri));
        }

        private static String title(DrawingKind kind, String elevation, @Nullable String bay) {
            return bay == null
                    ? ResultTree.words(kind.name()) + " of elevation " + elevation
                    : ResultTree.words(kind.name()) + " of bay " + bay;
        }
    }
}
