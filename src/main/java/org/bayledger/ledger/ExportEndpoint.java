package org.bayledger.ledger;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Gives a whole project away, for whoever verifies or keeps it elsewhere. */
@RestController
@Tag(name = "Ledger")
class ExportEndpoint {

    private static final String NDJSON = "application/x-ndjson";

    private final Ledger ledger;
    private final Exporter exporter;

    ExportEndpoint(Ledger ledger, Exporter exporter) {
        this.ledger = ledger;
        this.exporter = exporter;
    }

    @GetMapping(path = "/v1/projects/{projectId}/export", produces = NDJSON)
    @Operation(
            operationId = "exportProject",
            summary = "Download a project with all its revisions",
            description =
                    "One JSON object a line (NDJSON): first the project; then, revision by"
                            + " revision, each content that it names and none before it did, once,"
                            + " followed by the revision itself; last where the chain ends, without"
                            + " which the download is not whole. The text of a line holds the exact"
                            + " canonical bytes (UTF-8) that its hash is over: of the project what"
                            + " the genesis hash is over, of a content its JSON, of a revision its"
                            + " manifest. The chain can be verified from this alone, without the"
                            + " service.")
    @ApiResponse(
            responseCode = "200",
            description = "The project, line by line.",
            content = @Content(mediaType = NDJSON, schema = @Schema(type = "string")))
    void export(@PathVariable String projectId, HttpServletResponse response) throws IOException {
        Project project = ledger.project(Caller.current(), projectId);
        response.setContentType(NDJSON);
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                "attachment; filename=\"" + project.id() + ".ndjson\"");
        exporter.write(project, response.getOutputStream());
    }
}
