package org.bayledger.bench;

import java.util.concurrent.atomic.AtomicReference;
import org.bayledger.glass.GlassRequest;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Reads a request as the check does and answers what it once answered: the server without sums. */
@RestController
class CannedEndpoint {

    static final String PATH = "/bench/canned";

    static final AtomicReference<byte[]> ANSWER = new AtomicReference<>(new byte[0]);

    @PostMapping(
            path = PATH,
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> canned(@RequestBody GlassRequest request) {
        return ResponseEntity.ok(ANSWER.get());
    }
}
