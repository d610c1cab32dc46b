package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Cautions;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Bay;
import org.bayledger.review.BayResult;
import org.bayledger.review.ReviewItem;
import org.bayledger.review.ReviewResult;

/**
 * What every drawing of a document is made from.
 *
 * @param request which drawing is wanted
 * @param result the review of its document
 * @param units units of all its numbers
 * @param origin where the document comes from, for the title block
 */
record Job(DrawingRequest request, ReviewResult result, UnitSystem units, String origin) {

    /** A length as a shop drawing dimensions it. */
    String length(double metres) {
        return FeetInches.format(metres, units);
    }

    /** A quantity whose number and unit stay in one line. */
    String text(Quantity quantity) {
        return Words.together(quantity.text(units));
    }

    /** The bay that the drawing is of. */
    Bay bay() {
        return request.ofBay();
    }

    /** Items of that bay that went through a check. */
    List<ReviewItem> items(String check) {
        BayResult bay = result.bays().get(request.document().bays().indexOf(request.ofBay()));
        return bay.items().stream().filter(item -> item.check().equals(check)).toList();
    }

    /** The title block of a drawing of a bay. */
    TitleBlock ofBay(String drawing, List<TitleBlock.Entry> second, String scale, Paper paper) {
        return block(
                List.of(
                        new TitleBlock.Entry("Job", request.document().name()),
                        new TitleBlock.Entry("Drawing", drawing),
                        new TitleBlock.Entry("Elevation", request.elevation()),
                        new TitleBlock.Entry("Bay", bay().id())),
                second,
                scale,
                paper);
    }

    /** A title block whose last line says what the sheet was made from. */
    TitleBlock block(
            List<TitleBlock.Entry> first,
            List<TitleBlock.Entry> second,
            String scale,
            Paper paper) {
        List<List<TitleBlock.Entry>> lines = new ArrayList<>(List.of(first));
        lines.add(second);
        lines.add(
                List.of(
                        new TitleBlock.Entry("Made from", origin),
                        new TitleBlock.Entry("Scale in a full-size print", scale),
                        new TitleBlock.Entry("Sheet", paper.name())));
        return new TitleBlock(lines, Cautions.with());
    }
}
