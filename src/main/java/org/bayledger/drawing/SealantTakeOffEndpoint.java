package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bayledger.check.Answer;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.seals.SealsCheck;
import org.bayledger.seals.SealsRequest;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The sealant and labour of a frame's seals, as the caller accepts them. */
@RestController
@Tag(name = "Take-offs")
class SealantTakeOffEndpoint {

    private static final String PATH = "/v1/take-offs/sealant";
    private static final String CSV = "text/csv";

    @Operation(
            operationId = "takeOffSealant",
            summary = "Take off the sealant of a frame's internal seals",
            description =
                    "From the request of the internal-seals check: each kind of joint with its"
                            + " bead and volume, each sealant with waste in whole cartridges and"
                            + " sausages, each step with its count of joints. With Accept: text/csv"
                            + " the same comes as CSV (RFC 4180), one line a kind of joint and one"
                            + " a sealant.")
    @PostMapping(
            path = PATH,
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<SealantTakeOffResult> takeOff(
            @RequestBody SealsRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units) {
        return new Answer<>(units, result(request, units));
    }

    @Hidden
    @PostMapping(path = PATH, consumes = MediaType.APPLICATION_JSON_VALUE, produces = CSV)
    byte[] asCsv(
            @RequestBody SealsRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units) {
        return SealantCsv.write(result(request, units), units);
    }

    private static SealantTakeOffResult result(SealsRequest request, UnitSystem units) {
        return SealantTakeOffResult.of(
                SealsCheck.run(request, new Reporting(units, TraceLevel.GOVERNING)));
    }
}
