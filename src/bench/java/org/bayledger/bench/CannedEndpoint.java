package org.bayledger.bench;

import io.swagger.v3.oas.annotations.Operation;
import java.util.concurrent.atomic.AtomicReference;
import org.bayledger.check.TraceLevel;
import org.bayledger.glass.GlassRequest;
import org.bayledger.quantity.UnitSystem;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * Reads a request as the check does, with its query parameters, is timed like it, and answers what
 * it once answered: the server without sums.
 */
@RestController
class CannedEndpoint {

    static final String PATH = "/bench/canned";

    static final AtomicReference<byte[]> ANSWER = new AtomicReference<>(new byte[0]);

    @Operation(operationId = "canned")
    @PostMapping(
            path = PATH,
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> canned(
            @RequestBody GlassRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return ResponseEntity.ok(ANSWER.get());
    }
}
