package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/**
 * A review small enough to foresee: a bay's utilization is its "load", a bay with a "note" is
 * called out, a bay with "glass" was checked with it, and a document that "waits" is held until the
 * test lets it go.
 */
@TestConfiguration
class StandInReview {

    static final String VERSION = "9.8.7";

    static volatile CountDownLatch started = new CountDownLatch(1);
    static volatile CountDownLatch released = new CountDownLatch(0);

    @Bean
    @Primary
    Engine standIn() {
        return new Engine(VERSION, StandInReview::review);
    }

    private static Supplier<Reviewed> review(Map<?, ?> document) {
        if (document.containsKey("refused")) {
            throw FaultsException.outOfRange("/refused", "is outside the rules");
        }
        return () -> results(document);
    }

    private static Reviewed results(Map<?, ?> document) {
        if (document.containsKey("waits")) {
            started.countDown();
            try {
                released.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        List<Reviewed.Bay> bays = new ArrayList<>();
        List<Object> notes = new ArrayList<>();
        String verdict = "SATISFIED";
        for (Object bay : Trees.present(Trees.list(document, "bays"))) {
            Map<String, Object> result = bay(bay);
            bays.add(
                    new Reviewed.Bay(
                            Trees.text(result, "id"),
                            new Content(CanonicalJson.bytes(result)),
                            ItemVerdict.of(result)));
            if ("EXCEEDED".equals(result.get("verdict"))) {
                verdict = "EXCEEDED";
            }
            if (Trees.get(bay, "note") instanceof String text) {
                notes.add(
                        Map.of("mark", "*", "items", List.of(Trees.text(bay, "id")), "text", text));
            }
        }
        return new Reviewed(Map.of("verdict", verdict, "bays", List.of(), "notes", notes), bays);
    }

    private static Map<String, Object> bay(@Nullable Object bay) {
        BigDecimal load =
                Trees.get(bay, "load") instanceof BigDecimal given ? given : BigDecimal.ZERO;
        String verdict = load.compareTo(BigDecimal.ONE) > 0 ? "EXCEEDED" : "SATISFIED";
        Map<String, Object> item = new LinkedHashMap<>();
        item.put("id", Trees.text(bay, "id") + "/mullion/1");
        item.put("check", "FRAMING");
        item.put("verdict", verdict);
        item.put("utilization", load);
        if (Trees.get(bay, "glass") instanceof Map<?, ?> glass) {
            item.put("inputs", Map.of("glass", glass, "load", load));
        }
        return Map.of("id", Trees.text(bay, "id"), "verdict", verdict, "items", List.of(item));
    }
}
