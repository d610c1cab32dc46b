package org.bayledger.ledger;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import org.springframework.stereotype.Component;

/** Counts what an operator wants to be told of: what was recorded, and chains that are broken. */
@Component
class LedgerMeters {

    private final MeterRegistry registry;
    private final Counter failures;

    LedgerMeters(MeterRegistry registry) {
        this.registry = registry;
        this.failures =
                Counter.builder("bayledger.ledger.verification.failures")
                        .description("Verifications that found a chain broken")
                        .register(registry);
    }

    /** A revision that was recorded, and not only answered again. */
    void recorded(Revision revision) {
        Counter.builder("bayledger.ledger.revisions")
                .description("Revisions recorded, by the verdict of their review")
                .tag("verdict", revision.verdict())
                .register(registry)
                .increment();
    }

    /** A verification, passed on as it is. */
    Verification verified(Verification verification) {
        if (!verification.intact()) {
            failures.increment();
        }
        return verification;
    }
}
