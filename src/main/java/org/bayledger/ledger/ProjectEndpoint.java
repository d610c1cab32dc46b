package org.bayledger.ledger;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Projects: created and read, never changed. */
@RestController
@RequestMapping("/v1/projects")
@Tag(name = "Ledger")
class ProjectEndpoint {

    private final Ledger ledger;
    private final LedgerStore store;

    ProjectEndpoint(Ledger ledger, LedgerStore store) {
        this.ledger = ledger;
        this.store = store;
    }

    @PostMapping(consumes = "application/json", produces = "application/json")
    @Operation(operationId = "createProject", summary = "Create a project")
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
    ResponseEntity<Views.ProjectView> create(@RequestBody ProjectRequest request) {
        Project project = ledger.create(Caller.current(), request.name());
        Head head = store.head(project);
        return ResponseEntity.created(URI.create("/v1/projects/" + project.id()))
                .eTag(head.entityTag())
                .body(Views.ProjectView.of(project, head));
    }

    @GetMapping(produces = "application/json")
    @Operation(operationId = "listProjects", summary = "List the projects, oldest first")
    Views.ProjectList list(
            @RequestParam(required = false) @Nullable Integer limit,
            @RequestParam(required = false) @Nullable String cursor) {
        Page<Project> page =
                ledger.projects(Caller.current(), Cursor.limit(limit), Cursor.decode(cursor));
        return Views.ProjectList.of(page, store::head);
    }

    @GetMapping(path = "/{projectId}", produces = "application/json")
    @Operation(
            operationId = "readProject",
            summary = "Read a project",
            description = "The ETag is the precondition for recording the next revision.")
    ResponseEntity<Views.ProjectView> read(@PathVariable String projectId) {
        Project project = ledger.project(Caller.current(), projectId);
        Head head = store.head(project);
        return ResponseEntity.ok().eTag(head.entityTag()).body(Views.ProjectView.of(project, head));
    }
}
