package org.bayledger.glass;

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

/** Answers the glass check. */
@RestController
@Tag(name = "Checks")
class GlassEndpoint {

    @Operation(
            operationId = "checkGlass",
            summary = "Does a lite of glass resist its design pressure?",
            description =
                    "Load resistance of monolithic, laminated and insulating glass on four or two"
                            + " edges by ASTM E1300, from the glass failure prediction model on the"
                            + " large-deflection plate, with the deflection of each pane and the"
                            + " weight of the lite. A build-up, size or duration outside what the"
                            + " practice and the solution cover is refused with 422.")
    @PostMapping(
            path = "/v1/checks/glass",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<GlassResult> check(
            @RequestBody GlassRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, GlassCheck.run(request, new Reporting(units, trace)));
    }
}
