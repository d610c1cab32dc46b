package org.bayledger.seals;

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

/** The internal-seals check over HTTP. */
@RestController
@Tag(name = "Checks")
class SealsEndpoint {

    @Operation(
            operationId = "checkInternalSeals",
            summary = "List a frame's internal seals, in order, and what one missed joint costs",
            description =
                    "Counts every joint of a stick-built frame, of units or of a window wall from"
                            + " its grid, orders them so that none comes after what hides it, adds"
                            + " up the sealant, says how many to inspect, gives the"
                            + " water test pressure and its head, and estimates the water and air"
                            + " through an unsealed joint and through joints as they were found on"
                            + " site. Where it is given: wind, stack effect and fans together, the"
                            + " share of pressure left on the outer line of a pressure-equalized"
                            + " chamber, and what the weeps drain.")
    @PostMapping(
            path = "/v1/checks/internal-seals",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<SealsResult> check(
            @RequestBody SealsRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, SealsCheck.run(request, new Reporting(units, trace)));
    }
}
