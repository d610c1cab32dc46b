package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bayledger.check.Answer;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.SpanTable;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.UnitSystem;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Tables of spans, as the caller accepts them: data, a table for a spreadsheet, a chart. */
@RestController
@Tag(name = "Selection")
class SpanTableEndpoint {

    private static final String PATH = "/v1/span-tables";
    private static final String CSV = "text/csv";
    private static final String SVG = "image/svg+xml";

    @Operation(
            operationId = "tabulateSpans",
            summary = "Tabulate the greatest spans of a section",
            description =
                    "For every pressure and spacing the greatest span that passes the framing"
                            + " check, and which limit stops it from being longer. With Accept:"
                            + " text/csv the same comes as CSV (RFC 4180), one line a span; with"
                            + " Accept: image/svg+xml as a chart for print.")
    @PostMapping(
            path = PATH,
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<SpanTableResult> tabulate(
            @RequestBody SpanTableRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, SpanTable.run(request, new Reporting(units, trace)));
    }

    @Hidden
    @PostMapping(path = PATH, consumes = MediaType.APPLICATION_JSON_VALUE, produces = CSV)
    byte[] asCsv(
            @RequestBody SpanTableRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units) {
        return SpanCsv.write(run(request, units), units);
    }

    @Hidden
    @PostMapping(path = PATH, consumes = MediaType.APPLICATION_JSON_VALUE, produces = SVG)
    byte[] asChart(
            @RequestBody SpanTableRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units) {
        return new SpanChart(request, run(request, units), units).draw();
    }

    private static SpanTableResult run(SpanTableRequest request, UnitSystem units) {
        return SpanTable.run(request, new Reporting(units, TraceLevel.GOVERNING));
    }
}
