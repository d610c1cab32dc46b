package org.bayledger.wind;

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

/** The wind-pressure check over HTTP. */
@RestController
@Tag(name = "Checks")
class WindEndpoint {

    @Operation(
            operationId = "checkWindPressure",
            summary = "Design wind pressures on walls",
            description =
                    "Pressures toward and away from the wall for each component in each wind zone,"
                            + " after ASCE/SEI 7-10, 7-16 or 7-22 (components and cladding) or EN"
                            + " 1991-1-4 with its recommended values. Every pressure carries the"
                            + " level it stands at. Roofs, soffits and tornado loads are not"
                            + " covered.")
    @PostMapping(
            path = "/v1/checks/wind-pressure",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<WindResult> check(
            @RequestBody WindRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, WindCheck.run(request, new Reporting(units, trace)));
    }
}
