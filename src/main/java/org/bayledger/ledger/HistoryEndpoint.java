package org.bayledger.ledger;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.regex.Pattern;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What an auditor asks of one lite, member or anchor. */
@RestController
@Tag(name = "Ledger")
class HistoryEndpoint {

    private static final Pattern POSITION = Pattern.compile("[1-9][0-9]{0,8}");

    private final Ledger ledger;
    private final Historian historian;

    HistoryEndpoint(Ledger ledger, Historian historian) {
        this.ledger = ledger;
        this.historian = historian;
    }

    @GetMapping(path = "/v1/projects/{projectId}/history", produces = "application/json")
    @Operation(
            operationId = "readHistory",
            summary = "Follow a bay, or one item of it, through the revisions",
            description =
                    "When a lite first failed, who recorded it and why, which revision changed its"
                            + " glass, in which revisions a check was exceeded; and every revision"
                            + " in which inputs or results of a check changed. From the recorded"
                            + " results; nothing is computed anew.")
    History history(
            @PathVariable String projectId,
            @Parameter(
                            description = "Identifier of the bay, also of one that is gone.",
                            example = "N-01")
                    @RequestParam
                    String bay,
            @Parameter(
                            description =
                                    "Identifier of one of its items, such as N-03/lite/2-2; all"
                                            + " items where absent.")
                    @RequestParam(required = false)
                    @Nullable String item,
            @Parameter(description = "Name of a check, such as glass; all checks where absent.")
                    @RequestParam(required = false)
                    @Nullable String check,
            @Parameter(
                            description =
                                    "Lists only where a check came out so; says nothing to the"
                                            + " answers beside the list.")
                    @RequestParam(required = false)
                    @Nullable Verdict verdict,
            @RequestParam(required = false) @Nullable Integer limit,
            @RequestParam(required = false) @Nullable String cursor) {
        return historian.history(
                ledger.project(Caller.current(), projectId),
                new Historian.Question(
                        bay, item, check, verdict, Cursor.limit(limit), skipped(cursor)));
    }

    private static int skipped(@Nullable String cursor) {
        String position = Cursor.decode(cursor);
        if (position == null) {
            return 0;
        }
        if (!POSITION.matcher(position).matches()) {
            throw Cursor.malformed();
        }
        return Integer.parseInt(position);
    }
}
