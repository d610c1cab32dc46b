package org.bayledger.blocks;

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

/** The setting-block check over HTTP. */
@RestController
@Tag(name = "Checks")
class SettingBlocksEndpoint {

    @Operation(
            operationId = "checkSettingBlocks",
            summary = "Where the two setting blocks of a lite stand",
            description =
                    "Finds the first place for the blocks, from the quarter points outward, at which"
                            + " the horizontal keeps its dead-load limits and the clearance and bite"
                            + " below, turns and presses no more than is allowed, and gives the note"
                            + " for the shop drawings where that place is not the quarter points.")
    @PostMapping(
            path = "/v1/checks/setting-blocks",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<SettingBlocksResult> check(
            @RequestBody SettingBlocksRequest request,
            @RequestParam(defaultValue = "SI") UnitSystem units,
            @RequestParam(defaultValue = "ALL") TraceLevel trace) {
        return new Answer<>(units, SettingBlocksCheck.run(request, new Reporting(units, trace)));
    }
}
