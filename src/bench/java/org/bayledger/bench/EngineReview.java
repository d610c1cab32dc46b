package org.bayledger.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.BayResult;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.bayledger.review.ReviewResult;

/**
 * The review of generated towers: time and time per lite, with the results of each bay let go once
 * its verdict is taken, and the memory that a whole answer keeps.
 */
final class EngineReview {

    static final String NAME = "engine-review";

    private static final int[] SIZES = {1_000, 10_000, 100_000};
    private static final int MIDDLE = 10_000;
    private static final int ROUNDS = 7;
    private static final double WARM_UP_SECONDS = 30;
    private static final Reporting REPORTING = new Reporting(UnitSystem.SI, TraceLevel.GOVERNING);

    private EngineReview() {}

    /** Prints the figures. */
    static void run() {
        List<ReviewDocument> documents = new ArrayList<>();
        for (int size : SIZES) {
            documents.add(new Tower(size).bound());
        }
        long end = System.nanoTime() + (long) (WARM_UP_SECONDS * 1e9);
        while (System.nanoTime() < end) {
            Review.run(documents.get(1), REPORTING);
        }
        // every size in every round, so that whatever else the machine does falls on all of them
        List<List<Double>> seconds = new ArrayList<>();
        documents.forEach(document -> seconds.add(new ArrayList<>()));
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < documents.size(); i++) {
                seconds.get(i).add(time(documents.get(i), Math.max(1, MIDDLE / SIZES[i])));
            }
        }
        List<Double> perLite = new ArrayList<>();
        for (int i = 0; i < documents.size(); i++) {
            int lites = lites(documents.get(i));
            double median = Medians.of(seconds.get(i));
            perLite.add(median / lites);
            System.out.printf(
                    Locale.ROOT,
                    "%s: %,d lites: %.3f s, %.1f us per lite%s%n",
                    NAME,
                    lites,
                    median,
                    1e6 * median / lites,
                    SIZES[i] == MIDDLE
                            ? " (target: %.1f s)".formatted(Targets.REVIEW_SECONDS)
                            : "");
        }
        System.out.printf(
                Locale.ROOT,
                "%s: cost per lite, greatest over least: %.2f (target: %.2f)%n",
                NAME,
                Collections.max(perLite) / Collections.min(perLite),
                Targets.FLAT);
        memory(documents.get(1));
    }

    private static double time(ReviewDocument document, int times) {
        System.gc(); // what another size left behind is not this one's
        long start = System.nanoTime();
        for (int i = 0; i < times; i++) {
            Review.run(document, REPORTING, BayResult::verdict);
        }
        return (System.nanoTime() - start) / 1e9 / times;
    }

    private static void memory(ReviewDocument document) {
        long before = used();
        ReviewResult kept = Review.run(document, REPORTING);
        long after = used();
        System.out.printf(
                Locale.ROOT,
                "%s: an answer keeps %,d bytes per lite (governing trace); %,d items%n",
                NAME,
                (after - before) / lites(document),
                kept.bays().stream().mapToInt(bay -> bay.items().size()).sum());
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static int lites(ReviewDocument document) {
        return document.bays().stream()
                .mapToInt(bay -> bay.columns().size() * bay.rows().size())
                .sum();
    }
}
