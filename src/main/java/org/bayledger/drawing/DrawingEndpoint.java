package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.function.Supplier;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.ledger.RecordedDocument;
import org.bayledger.ledger.RecordedDocuments;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Draws review documents, as they are sent and as they are recorded. */
@RestController
@Tag(name = "Drawings")
class DrawingEndpoint {

    private static final String SVG = "image/svg+xml";

    private final RecordedDocuments recorded;

    DrawingEndpoint(RecordedDocuments recorded) {
        this.recorded = recorded;
    }

    @Operation(
            operationId = "createDrawing",
            summary = "Draw an elevation, a bay or a section of a review document",
            description =
                    "A sheet for print as SVG, legible in black and white, with a title block. The"
                            + " numbers are those of the review of the same document. The sheet is"
                            + " A4, or letter paper in US units, and larger where what it shows has"
                            + " no room on that. Stores nothing.")
    @ApiResponse(
            responseCode = "200",
            description = "The drawing.",
            content = @Content(mediaType = SVG, schema = @Schema(type = "string")))
    @PostMapping(path = "/v1/drawings", consumes = MediaType.APPLICATION_JSON_VALUE, produces = SVG)
    byte[] draw(
            @RequestBody DrawingRequest request,
            @RequestParam(required = false) @Nullable UnitSystem units) {
        return Drawings.draw(
                request, chosen(units, request.document()), "Engine " + Review.ENGINE_VERSION);
    }

    @Operation(
            operationId = "readRevisionDrawing",
            summary = "Draw an elevation, a bay or a section of a recorded document",
            description =
                    "Drawn anew from the document as it was recorded. The title block names the"
                            + " revision, the engine that recorded it and the engine that drew it.")
    @ApiResponse(
            responseCode = "200",
            description = "The drawing.",
            content = @Content(mediaType = SVG, schema = @Schema(type = "string")))
    @ApiResponse(
            responseCode = "422",
            description =
                    "The recorded document has no such elevation, bay, horizontal or section, or"
                            + " can't be reviewed by today's engine.")
    @GetMapping(path = "/v1/projects/{projectId}/revisions/{number}/drawings", produces = SVG)
    byte[] drawRecorded(
            @PathVariable String projectId,
            @PathVariable String number,
            @Parameter(description = "What the drawing shows.", example = "WIND_ZONES")
                    @RequestParam
                    DrawingKind drawing,
            @Parameter(description = "Name of the elevation.", example = "N") @RequestParam
                    String elevation,
            @Parameter(description = "Name of a bay on that elevation.")
                    @RequestParam(required = false)
                    @Nullable String bay,
            @Parameter(
                            description =
                                    "Name of a horizontal of the bay, or of a lite on one, for"
                                            + " DEFLECTED_HORIZONTAL.")
                    @RequestParam(required = false)
                    @Nullable String item,
            @Parameter(description = "Name of a section, for SPAN_CHART.")
                    @RequestParam(required = false)
                    @Nullable String section,
            @RequestParam(required = false) @Nullable UnitSystem units) {
        RecordedDocument revision = recorded.read(projectId, number);
        ReviewDocument document = revision.document();
        String origin =
                SheetOrigin.drawnFrom(revision.number(), revision.hash(), revision.engineVersion());
        return ofQuery(
                () ->
                        Drawings.draw(
                                new DrawingRequest(
                                        document, drawing, elevation, bay, item, section, null,
                                        null, null),
                                chosen(units, document),
                                origin));
    }

    /** Faults of a request without a body are of its query. */
    private static <T> T ofQuery(Supplier<T> asked) {
        try {
            return asked.get();
        } catch (FaultsException refused) {
            List<Fault> faults =
                    refused.faults().stream()
                            .map(
                                    fault ->
                                            new Fault(
                                                    "",
                                                    "query parameter "
                                                            + fault.pointer().substring(1)
                                                            + ": "
                                                            + fault.detail(),
                                                    fault.kind()))
                            .toList();
            throw new FaultsException(faults);
        }
    }

    private static UnitSystem chosen(@Nullable UnitSystem units, ReviewDocument document) {
        return units == null ? document.unitsOrDefault() : units;
    }
}
