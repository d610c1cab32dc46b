package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bayledger.check.Answer;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.ledger.RecordedDocuments;
import org.bayledger.ledger.RecordedRevision;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
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

/** Take-offs of a document that is sent or of one that was recorded. */
@RestController
@Tag(name = "Take-offs")
class TakeOffEndpoint {

    private static final String SENT = "/v1/take-offs";
    private static final String RECORDED = "/v1/projects/{projectId}/revisions/{number}/take-offs";
    private static final String CSV = "text/csv";
    private static final String XLSX =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final RecordedDocuments recorded;
    private final JsonMapper json;

    TakeOffEndpoint(RecordedDocuments recorded, JsonMapper json) {
        this.recorded = recorded;
        this.json = json;
    }

    @Operation(
            operationId = "takeOff",
            summary = "Take off glass, blocks, sealant, aluminum and anchors of a job",
            description =
                    "Runs the review and counts what the job needs: text/csv is one list (RFC 4180);"
                            + " the workbook has a sheet for each. What the document does not tell"
                            + " stays empty. Stores nothing.")
    @ApiResponse(
            responseCode = "200",
            description = "The take-off.",
            content = {
                @Content(mediaType = CSV, schema = @Schema(type = "string")),
                @Content(mediaType = XLSX, schema = @Schema(type = "string", format = "binary"))
            })
    @PostMapping(
            path = SENT,
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = {CSV, XLSX})
    ResponseEntity<byte[]> takeOff(
            @RequestBody TakeOffRequest request,
            @RequestParam(required = false) @Nullable UnitSystem units,
            @Parameter(hidden = true) @RequestHeader(name = "Accept", defaultValue = CSV)
                    String accept) {
        return answer(
                accept, request.takeOff(), request.document(), results(request, units), "/takeOff");
    }

    @Operation(
            operationId = "takeOffRevision",
            summary = "Take off what a recorded revision needs",
            description = "From the results as they were recorded.")
    @ApiResponse(
            responseCode = "200",
            description = "The take-off.",
            content = {
                @Content(mediaType = CSV, schema = @Schema(type = "string")),
                @Content(mediaType = XLSX, schema = @Schema(type = "string", format = "binary"))
            })
    @GetMapping(
            path = RECORDED,
            produces = {CSV, XLSX})
    ResponseEntity<byte[]> takeOffRecorded(
            @PathVariable String projectId,
            @PathVariable String number,
            @Parameter(
                            description =
                                    "What is taken off; text/csv needs it, a workbook without it"
                                            + " has all of them.",
                            example = "GLASS")
                    @RequestParam(required = false)
                    @Nullable TakeOffKind takeOff,
            @Parameter(hidden = true) @RequestHeader(name = "Accept", defaultValue = CSV)
                    String accept) {
        RecordedRevision revision = recorded.readWhole(projectId, number);
        return answer(accept, takeOff, document(revision), revision.result(), "");
    }

    /** A table, unless it is the workbook that is asked for. */
    private static ResponseEntity<byte[]> answer(
            String accept,
            @Nullable TakeOffKind kind,
            ReviewDocument document,
            Map<?, ?> result,
            String pointer) {
        boolean book = accept.contains(XLSX) && !accept.contains(CSV);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(book ? XLSX : CSV))
                .body(
                        book
                                ? workbook(kind, document, result)
                                : csv(kind, document, result, pointer));
    }

    private static ReviewDocument document(RecordedRevision revision) {
        return Binder.bind(revision.document(), ReviewDocument.class);
    }

    /**
     * @param pointer where the kind stands in a body; empty where it is a query parameter
     */
    private static byte[] csv(
            @Nullable TakeOffKind kind, ReviewDocument document, Map<?, ?> result, String pointer) {
        if (kind == null) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    pointer,
                                    (pointer.isEmpty() ? "query parameter takeOff " : "")
                                            + "is required for text/csv, which is one list: one of "
                                            + Arrays.stream(TakeOffKind.values())
                                                    .map(Enum::name)
                                                    .collect(Collectors.joining(", "))
                                            + "; a workbook ("
                                            + XLSX
                                            + ") has all of them",
                                    Fault.Kind.MALFORMED)));
        }
        TakeOff takeOff = TakeOffs.of(kind, document, result);
        return CsvText.write(takeOff.heading(), takeOff.rows());
    }

    private static byte[] workbook(
            @Nullable TakeOffKind kind, ReviewDocument document, Map<?, ?> result) {
        return TakeOffBook.write(
                (kind == null ? Arrays.stream(TakeOffKind.values()) : Stream.of(kind))
                        .map(each -> TakeOffs.of(each, document, result))
                        .toList());
    }

    private Map<?, ?> results(TakeOffRequest request, @Nullable UnitSystem units) {
        UnitSystem chosen = units == null ? request.document().unitsOrDefault() : units;
        return ResultTree.of(
                json.writeValueAsBytes(
                        new Answer<>(
                                chosen,
                                Review.run(
                                        request.document(),
                                        new Reporting(chosen, TraceLevel.GOVERNING)))));
    }
}
