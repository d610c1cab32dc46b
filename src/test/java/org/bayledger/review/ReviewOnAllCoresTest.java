package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bayledger.review.Documents.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** A review says the same however many cores look at its bays. */
class ReviewOnAllCoresTest {

    @Test
    void oneThreadAndManyAnswerAlike() throws InterruptedException, ExecutionException {
        ReviewDocument document = many();
        ReviewResult alone = on(1, document);
        assertThat(document.bays()).hasSizeGreaterThan(50);
        assertThat(alone.bays().stream().map(BayResult::id))
                .containsExactlyElementsOf(document.bays().stream().map(Bay::id).toList());
        for (int round = 0; round < 5; round++) {
            assertThat(on(8, document).equals(alone)).isTrue();
        }
    }

    private static ReviewResult on(int threads, ReviewDocument document)
            throws InterruptedException, ExecutionException {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(
                            () ->
                                    Review.run(
                                            document, new Reporting(UnitSystem.US, TraceLevel.ALL)))
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    /** The demo's bays many times over, each copy on elevations of its own. */
    private static ReviewDocument many() {
        Map<String, Object> tree = demo(1);
        List<Map<String, Object>> bays = new ArrayList<>();
        List<Map<String, Object>> faces = new ArrayList<>();
        for (int copy = 0; copy < 12; copy++) {
            for (Object face : (List<?>) tree.get("elevations")) {
                faces.add(copied(face, "id", copy));
            }
            for (Object bay : (List<?>) tree.get("bays")) {
                Map<String, Object> one = copied(bay, "id", copy);
                one.put("elevation", one.get("elevation") + "-" + copy);
                bays.add(one);
            }
        }
        tree.put("elevations", faces);
        tree.put("bays", bays);
        return Binder.bind(tree, ReviewDocument.class);
    }

    private static Map<String, Object> copied(Object of, String name, int copy) {
        Map<String, Object> one = new LinkedHashMap<>();
        ((Map<?, ?>) of).forEach((key, value) -> one.put(String.valueOf(key), value));
        one.put(name, one.get(name) + "-" + copy);
        return one;
    }
}
