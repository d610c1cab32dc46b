package org.bayledger.review;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bayledger.check.Answer;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

@RestController
@Tag(name = "Reviews")
class ReviewEndpoint {

    @Operation(
            operationId = "review",
            summary = "Run the whole job on one review document",
            description =
                    "Finds the wind zones from where each bay stands on its elevation, takes each"
                            + " effective wind area from the member's own span and spacing, and runs"
                            + " every check on every lite, member and anchor. Stores nothing. Of ten"
                            + " thousand lites the full answer has some 300 megabytes;"
                            + " detail=VERDICTS leaves each item its verdict and utilization, and"
                            + " all that concerns the whole job as it is. With"
                            + " Accept: text/html or application/pdf the same comes as a review"
                            + " sheet.")
    @PostMapping(
            path = "/v1/reviews",
            consumes = MediaType.APPLICATION_JSON_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    Answer<ReviewResult> review(
            @RequestBody ReviewDocument document,
            @RequestParam(required = false) @Nullable UnitSystem units,
            @RequestParam(defaultValue = "GOVERNING") TraceLevel trace,
            @RequestParam(defaultValue = "FULL") ReviewDetail detail) {
        UnitSystem chosen = units == null ? document.unitsOrDefault() : units;
        Reporting reporting = new Reporting(chosen, trace);
        if (detail == ReviewDetail.FULL) {
            return new Answer<>(chosen, Review.run(document, reporting));
        }
        Review.HandedOn<BayResult> brief = Review.run(document, reporting, BayResult::verdictsOnly);
        return new Answer<>(chosen, brief.whole().with(brief.bays()));
    }
}
