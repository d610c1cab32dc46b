package org.bayledger.ledger;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.regex.Pattern;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What an auditor asks of a chain: what changed, is it whole, and where does it end. */
@RestController
@RequestMapping("/v1/projects/{projectId}")
@Tag(name = "Ledger")
class AuditEndpoint {

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private final Ledger ledger;
    private final LedgerStore store;
    private final Comparer comparer;
    private final Verifier verifier;
    private final LedgerMeters meters;

    AuditEndpoint(
            Ledger ledger,
            LedgerStore store,
            Comparer comparer,
            Verifier verifier,
            LedgerMeters meters) {
        this.ledger = ledger;
        this.store = store;
        this.comparer = comparer;
        this.verifier = verifier;
        this.meters = meters;
    }

    @GetMapping(path = "/comparisons", produces = "application/json")
    @Operation(
            operationId = "compareRevisions",
            summary = "Compare two revisions",
            description =
                    "What changed in the input, and which verdicts, utilizations and notes moved,"
                            + " from the recorded results. With recompute=true also what today's"
                            + " engine makes of both: engine effect = today's base less the"
                            + " recorded base, input effect = today's head less today's base. With"
                            + " Accept: text/csv the same comes as CSV (RFC 4180), one line a"
                            + " change; with Accept: text/html as a page for print.")
    Comparison compare(
            @PathVariable String projectId,
            @Parameter(example = "1") @RequestParam int base,
            @Parameter(example = "2") @RequestParam int head,
            @RequestParam(defaultValue = "false") boolean recompute) {
        return comparer.compare(projectId, base, head, recompute);
    }

    @GetMapping(path = "/verification", produces = "application/json")
    @Operation(
            operationId = "verifyProject",
            summary = "Recompute every hash of the chain from the stored bytes",
            description =
                    "With size and headHash of a checkpoint kept elsewhere it also shows whether"
                            + " the chain was cut off or rewritten since.")
    Verification verify(
            @PathVariable String projectId,
            @RequestParam(required = false) @Nullable Integer size,
            @RequestParam(required = false) @Nullable String headHash) {
        Project project = ledger.project(Caller.current(), projectId);
        if (size == null && headHash == null) {
            return meters.verified(verifier.verify(project));
        }
        if (size == null || size < 0 || headHash == null || !HASH.matcher(headHash).matches()) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    "",
                                    "a held checkpoint has both size (0 or more) and headHash (64"
                                            + " lower-case hexadecimal digits)",
                                    Fault.Kind.MALFORMED)));
        }
        return meters.verified(verifier.verify(project, size, headHash));
    }

    @GetMapping(path = "/checkpoint", produces = "application/json")
    @Operation(
            operationId = "readCheckpoint",
            summary = "Read where the chain ends",
            description = "Keep it outside; hold a later chain against it with verification.")
    Views.Checkpoint checkpoint(@PathVariable String projectId) {
        return Views.Checkpoint.of(store.head(ledger.project(Caller.current(), projectId)));
    }
}
