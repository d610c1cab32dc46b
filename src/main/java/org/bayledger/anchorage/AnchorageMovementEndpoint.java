package org.bayledger.anchorage;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bayledger.check.Answer;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The anchorage and movement check over HTTP. */
@RestController
@Tag(name = "Checks")
class AnchorageMovementEndpoint {

    @Operation(
            operationId = "checkAnchorageMovement",
            summary = "Whether the wall is held once, and free to move everywhere else",
            description =
                    "Counts the dead-load anchors of each piece of mullion, finds what temperature,"
                            + " slabs and columns do at each stack joint and slot from the installed"
                            + " state, the width each joint needs for its sealant, and whether the"
                            + " glass follows the seismic drift of the story.")
    @PostMapping(
            path = "/v1/checks/anchorage-movement",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<AnchorageMovementResult> check(
            @RequestBody AnchorageMovementRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(
                units, AnchorageMovementCheck.run(request, new Reporting(units, trace)));
    }
}
