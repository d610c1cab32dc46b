package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.Map;
import java.util.function.Function;
import org.bayledger.check.Answer;
import org.bayledger.check.Binder;
import org.bayledger.check.RawJson;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.ledger.RecordedDocuments;
import org.bayledger.ledger.RecordedRevision;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.bayledger.review.ReviewResult;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The review sheet of a document that is sent or of one that was recorded. */
@RestController
@Tag(name = "Drawings")
class SheetEndpoint {

    private static final String REVIEWS = "/v1/reviews";
    private static final String SHEET = "/v1/projects/{projectId}/revisions/{number}/sheet";
    private static final String HTML = "text/html;charset=UTF-8";
    private static final String PDF = "application/pdf";
    private static final String ZIP = "application/zip";
    private static final String WHICH_DRAWINGS =
            "Which drawings stand on the sheet; absent: ALL for up to 20 bays, else ELEVATIONS.";

    private final RecordedDocuments recorded;
    private final JsonMapper json;

    SheetEndpoint(RecordedDocuments recorded, JsonMapper json) {
        this.recorded = recorded;
        this.json = json;
    }

    @Hidden
    @PostMapping(path = REVIEWS, consumes = MediaType.APPLICATION_JSON_VALUE, produces = HTML)
    byte[] reviewAsPage(
            @RequestBody RawJson body,
            @RequestParam(required = false) @Nullable UnitSystem units,
            @Parameter(description = WHICH_DRAWINGS) @RequestParam(required = false)
                    @Nullable SheetDrawings drawings) {
        return page(reviewed(body, units), drawings);
    }

    @Hidden
    @PostMapping(path = REVIEWS, consumes = MediaType.APPLICATION_JSON_VALUE, produces = PDF)
    byte[] reviewAsPdf(
            @RequestBody RawJson body,
            @RequestParam(required = false) @Nullable UnitSystem units,
            @Parameter(description = WHICH_DRAWINGS) @RequestParam(required = false)
                    @Nullable SheetDrawings drawings) {
        return pdf(reviewed(body, units), drawings);
    }

    @Operation(
            operationId = "readRevisionSheet",
            summary = "Read the review sheet of a revision",
            description =
                    "What a reviewer hands over: the job, governing items, findings, shop-drawing"
                            + " notes, wind schedule, results of each bay with the sums of what"
                            + " governs, setting blocks, seals, drawings, cautions, revision, hash"
                            + " and checkpoint. The results are those that were recorded; the"
                            + " drawings are drawn anew. text/html needs no script and prints on"
                            + " letter and A4 paper; application/pdf is the same on paper, for jobs"
                            + " of up to "
                            + SheetPdf.MOST_ITEMS
                            + " items.")
    @ApiResponse(
            responseCode = "200",
            description = "The sheet.",
            content = {
                @Content(mediaType = "text/html", schema = @Schema(type = "string")),
                @Content(mediaType = PDF, schema = @Schema(type = "string", format = "binary"))
            })
    @ApiResponse(
            responseCode = "422",
            description =
                    "More bays than drawings=ALL is for, or more items than a PDF is made of: take"
                            + " the page instead.")
    @GetMapping(
            path = SHEET,
            produces = {HTML, PDF})
    ResponseEntity<byte[]> recorded(
            @PathVariable String projectId,
            @PathVariable String number,
            @Parameter(description = WHICH_DRAWINGS) @RequestParam(required = false)
                    @Nullable SheetDrawings drawings,
            @Parameter(hidden = true) @RequestHeader(name = "Accept", defaultValue = HTML)
                    String accept) {
        // a page, unless it is the PDF that is asked for
        boolean paper = accept.contains(PDF) && !accept.contains("text/html");
        Material material = read(projectId, number);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(paper ? PDF : HTML))
                .body(paper ? pdf(material, drawings) : page(material, drawings));
    }

    @Operation(
            operationId = "readRevisionTopics",
            summary = "Read the findings of a revision as BCF topics",
            description =
                    "A file of the BIM Collaboration Format (BCF-XML 3.0): one topic for each"
                            + " finding, with the items it is on, for the issue lists of BIM tools.")
    @ApiResponse(
            responseCode = "200",
            description = "The file.",
            content =
                    @Content(mediaType = ZIP, schema = @Schema(type = "string", format = "binary")))
    @GetMapping(path = "/v1/projects/{projectId}/revisions/{number}/topics", produces = ZIP)
    byte[] topics(@PathVariable String projectId, @PathVariable String number) {
        return BcfFile.of(recorded.readWhole(projectId, number));
    }

    /**
     * What a sheet is made from.
     *
     * @param document the document's tree, as it was posted
     * @param result the results' tree
     * @param pictures the drawings for what was asked for
     * @param units which paper it is on
     */
    private record Material(
            Map<?, ?> document,
            Map<?, ?> result,
            SheetOrigin origin,
            Function<@Nullable SheetDrawings, SheetPictures> pictures,
            UnitSystem units) {}

    private static byte[] page(Material from, @Nullable SheetDrawings drawings) {
        return ReviewSheet.page(
                from.document(),
                from.result(),
                from.origin(),
                from.pictures().apply(drawings),
                from.units());
    }

    private static byte[] pdf(Material from, @Nullable SheetDrawings drawings) {
        SheetPdf.requireFew(ReviewSheet.items(from.result()));
        return SheetPdf.of(page(from, drawings), from.origin());
    }

    private Material read(String projectId, String number) {
        RecordedRevision revision = recorded.readWhole(projectId, number);
        UnitSystem units =
                UnitSystem.US.name().equals(revision.document().get("units"))
                        ? UnitSystem.US
                        : UnitSystem.SI;
        SheetOrigin origin = SheetOrigin.of(revision);
        return new Material(
                revision.document(),
                revision.result(),
                origin,
                drawings -> SheetPictures.ofRecorded(revision.document(), drawings, units, origin),
                units);
    }

    private Material reviewed(RawJson body, @Nullable UnitSystem units) {
        ReviewDocument document = Binder.bind(body.tree(), ReviewDocument.class);
        UnitSystem chosen = units == null ? document.unitsOrDefault() : units;
        ReviewResult result = Review.run(document, new Reporting(chosen, TraceLevel.GOVERNING));
        SheetOrigin origin = SheetOrigin.unrecorded(Review.ENGINE_VERSION);
        return new Material(
                ResultTree.of(body.bytes()),
                ResultTree.of(json.writeValueAsBytes(new Answer<>(chosen, result))),
                origin,
                drawings -> SheetPictures.of(document, result, drawings, chosen, origin),
                chosen);
    }
}
