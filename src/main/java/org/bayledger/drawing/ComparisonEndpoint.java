package org.bayledger.drawing;

import io.swagger.v3.oas.annotations.Hidden;
import org.bayledger.ledger.Comparer;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The comparison of two revisions as a table and as a page, for callers that accept those. */
@RestController
@Hidden
class ComparisonEndpoint {

    private static final String PATH = "/v1/projects/{projectId}/comparisons";

    private final Comparer comparer;

    ComparisonEndpoint(Comparer comparer) {
        this.comparer = comparer;
    }

    @GetMapping(path = PATH, produces = "text/csv")
    byte[] asCsv(
            @PathVariable String projectId,
            @RequestParam int base,
            @RequestParam int head,
            @RequestParam(defaultValue = "false") boolean recompute) {
        return ComparisonCsv.write(comparer.compare(projectId, base, head, recompute));
    }

    @GetMapping(path = PATH, produces = "text/html;charset=UTF-8")
    byte[] asPage(
            @PathVariable String projectId,
            @RequestParam int base,
            @RequestParam int head,
            @RequestParam(defaultValue = "false") boolean recompute) {
        return ComparisonPage.write(comparer.compare(projectId, base, head, recompute));
    }
}
