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
@Tag(name = "Checks")
class FramingEndpoint {

    @Operation(
            operationId = "checkFraming",
            summary = "Check one framing member under wind or dead load",
            description =
                    "Deflection of every span, overhang and glass edge against its limit, bending"
                            + " stress against the allowable, reactions at the anchors, and the"
                            + " section that would be needed. Pressures on a strength basis are"
                            + " multiplied by 0.6 once.")
    @PostMapping(
            path = "/v1/checks/framing",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<FramingResult> check(
            @RequestBody FramingRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, FramingCheck.run(request, new Reporting(units, trace)));
    }
}
