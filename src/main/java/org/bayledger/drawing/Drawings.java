package org.bayledger.drawing;

import java.util.List;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.SpanTable;
import org.bayledger.framing.SpanTableRequest;
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
        return draw(new Job(request, result, units, origin));
    }

    /** The same from a review that was already run. */
    static byte[] draw(Job job) {
        return switch (job.request().drawing()) {
            case WIND_ZONES -> new WindZonesDrawing(job).draw();
            case SETTING_BLOCKS -> new SettingBlocksDrawing(job).draw();
            case INTERNAL_SEALS -> new SealsDrawing(job).draw();
            case DEFLECTED_HORIZONTAL -> new DeflectedHorizontalDrawing(job).draw();
            case SPAN_CHART -> chart(job);
        };
    }

    private static byte[] chart(Job job) {
        Reporting reporting = new Reporting(job.units(), TraceLevel.GOVERNING);
        SpanTableRequest spans = SectionSpans.of(job);
        DrawingRequest request = job.request();
        List<TitleBlock.Entry> from =
                List.of(
                        new TitleBlock.Entry("Job", request.document().name()),
                        new TitleBlock.Entry("Section", request.ofSection().id()),
                        new TitleBlock.Entry("Elevation", request.elevation()),
                        new TitleBlock.Entry("Made from", job.origin()));
        return new SpanChart(
                        spans,
                        SpanTable.run(spans, reporting),
                        job.units(),
                        "Greatest spans of section "
                                + request.ofSection().id()
                                + ", elevation "
                                + request.elevation(),
                        List.of(from))
                .draw();
    }
}
