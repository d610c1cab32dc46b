package org.bayledger.framing;

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

@RestController
@Tag(name = "Selection")
class SystemSelectionEndpoint {

    @Operation(
            operationId = "selectSystem",
            summary = "Choose sections for the zones of a wall",
            description =
                    "Runs every candidate section as every member of every wind zone: the sections"
                            + " that pass, the lightest first, why the others fail and by how much,"
                            + " whether one serves all zones, and what steel in some of them would"
                            + " save.")
    @PostMapping(
            path = "/v1/system-selections",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<SelectionResult> select(
            @RequestBody SelectionRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, SystemSelection.run(request, new Reporting(units, trace)));
    }
}
