package org.bayledger.ledger;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.net.URI;
import java.util.List;
import org.bayledger.check.RawJson;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Revisions: recorded at the end of the chain, and read. */
@RestController
@RequestMapping("/v1/projects/{projectId}/revisions")
@Tag(name = "Ledger")
class RevisionEndpoint {

    private final Ledger ledger;
    private final LedgerStore store;
    private final Wholes wholes;

    RevisionEndpoint(Ledger ledger, LedgerStore store, Wholes wholes) {
        this.ledger = ledger;
        this.store = store;
        this.wholes = wholes;
    }

    @PostMapping(consumes = "application/json", produces = "application/json")
    @Operation(
            operationId = "recordRevision",
            summary = "Record a revision",
            description =
                    "Runs the review on the document and records document, results, engine"
                            + " version, author and reason at the end of the chain. Needs If-Match"
                            + " with the ETag of the newest revision (or of the project), or"
                            + " If-None-Match: * for the first revision.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(schema = @Schema(implementation = RevisionRequest.class)))
    @ApiResponse(
            responseCode = "201",
            useReturnTypeSchema = true,
            headers = {
                @Header(
                        name = "Location",
                        description = "Where it can be read.",
                        required = true,
                        schema = @Schema(type = "string")),
                @Header(
                        name = "ETag",
                        description = "The project's head: If-Match of the next revision.",
                        required = true,
                        schema = @Schema(type = "string"))
            })
    @ResponseStatus(HttpStatus.CREATED)
    ResponseEntity<Views.RevisionSummary> record(
            @PathVariable String projectId,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestHeader(name = HttpHeaders.IF_NONE_MATCH, required = false)
                    @Nullable String ifNoneMatch,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody RawJson body) {
        Project project = ledger.project(Caller.current(), projectId);
        Revision revision =
                ledger.record(
                        Caller.current(),
                        project,
                        body,
                        key,
                        () -> Precondition.of(ifMatch, ifNoneMatch));
        URI location =
                URI.create("/v1/projects/" + project.id() + "/revisions/" + revision.number());
        return ResponseEntity.created(location)
                .eTag("\"" + revision.hash() + "\"")
                .body(Views.RevisionSummary.of(revision));
    }

    @GetMapping(produces = "application/json")
    @Operation(
            operationId = "listRevisions",
            summary = "List a project's revisions, first one first")
    Views.RevisionList list(
            @PathVariable String projectId,
            @RequestParam(required = false) @Nullable Integer limit,
            @RequestParam(required = false) @Nullable String cursor) {
        Project project = ledger.project(Caller.current(), projectId);
        return Views.RevisionList.of(
                ledger.revisions(project, Cursor.limit(limit), Cursor.decode(cursor)));
    }

    @GetMapping(path = "/{number}", produces = "application/json")
    @Operation(
            operationId = "readRevision",
            summary = "Read a revision, whole",
            description =
                    "Manifest, document and result are the exact bytes that were recorded, so that"
                            + " their hashes can be recomputed.")
    ResponseEntity<Views.RevisionView> read(
            @PathVariable String projectId, @PathVariable String number) {
        Project project = ledger.project(Caller.current(), projectId);
        Revision revision = ledger.revision(project, number);
        List<Manifest.Bay> bays = store.bays(project, revision.number());
        // the head's tag is what If-Match needs; any other revision may be compressed on its way
        boolean head = store.head(project).size() == revision.number();
        return ResponseEntity.ok()
                .eTag((head ? "" : "W/") + "\"" + revision.hash() + "\"")
                .body(
                        Views.RevisionView.of(
                                revision,
                                revision.manifest(project, bays).canonical(),
                                wholes.document(project, revision, bays),
                                wholes.result(project, revision, bays)));
    }
}
