package org.bayledger.bench;

import java.util.List;

/** What the middle of some figures is. */
final class Medians {

    private Medians() {}

    static double of(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return (sorted.get((sorted.size() - 1) / 2) + sorted.get(sorted.size() / 2)) / 2;
    }
}
