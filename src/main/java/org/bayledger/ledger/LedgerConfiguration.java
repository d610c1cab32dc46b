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
import org.bayledger.review.BayResult;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.MapperFeature;
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
        // in order already, as far as it can, so that little is left to be put in order
        JsonMapper inOrder =
                json.rebuild()
                        .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                        .disable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST)
                        .build();
        return new Engine(Review.ENGINE_VERSION, tree -> review(tree, inOrder));
    }

    /** Results are recorded as they would be answered, in the document's own units. */
    private static Supplier<Reviewed> review(Map<?, ?> tree, JsonMapper json) {
        ReviewDocument document = Binder.bind(tree, ReviewDocument.class);
        UnitSystem units = document.unitsOrDefault();
        return () -> {
            Reporting reporting = new Reporting(units, TraceLevel.GOVERNING);
            Review.HandedOn<Reviewed.Bay> result =
                    Review.run(document, reporting, bay -> bay(json, units, bay));
            // canonical first: its numbers are short, however they were written
            Object shell = StrictJson.read(canonical(json, units, result.whole()));
            if (shell instanceof Map<?, ?> properties) {
                return new Reviewed(properties, result.bays());
            }
            throw new IllegalStateException("The review's answer is not a JSON object");
        };
    }

    private static Reviewed.Bay bay(JsonMapper json, UnitSystem units, BayResult bay) {
        return new Reviewed.Bay(
                bay.id(),
                new Content(canonical(json, units, bay)),
                bay.items().stream().map(ItemVerdict::of).toList());
    }

    private static byte[] canonical(JsonMapper json, UnitSystem units, Object answer) {
        return CanonicalJson.bytes(json.writeValueAsBytes(new Answer<>(units, answer)));
    }
}
