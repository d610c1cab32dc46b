package org.bayledger.ledger;

import java.time.Clock;
import java.util.Map;
import java.util.function.Supplier;
import org.bayledger.check.Answer;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.json.JsonMapper;

/** What the ledger is built on besides the database. */
@Configuration(proxyBeanMethods = false)
class LedgerConfiguration {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    Engine engine(JsonMapper json) {
        return new Engine(Review.ENGINE_VERSION, tree -> review(tree, json));
    }

    /** Results are recorded as they would be answered, in the document's own units. */
    private static Supplier<Map<?, ?>> review(Map<?, ?> tree, JsonMapper json) {
        ReviewDocument document = Binder.bind(tree, ReviewDocument.class);
        UnitSystem units = document.unitsOrDefault();
        return () -> {
            Reporting reporting = new Reporting(units, TraceLevel.GOVERNING);
            byte[] answer =
                    json.writeValueAsBytes(new Answer<>(units, Review.run(document, reporting)));
            // canonical first: its numbers are short, however they were written
            if (StrictJson.read(CanonicalJson.bytes(answer)) instanceof Map<?, ?> results) {
                return results;
            }
            throw new IllegalStateException("The review's answer is not a JSON object");
        };
    }
}
