package org.bayledger.bench;

/** What is aimed at, on one core. */
final class Targets {

    static final double PLATE_MILLISECONDS = 20.0;

    /** Of as many full copies. */
    static final double STORAGE_PERCENT = 5.0;

    /** Of a review of 10,000 lites, on two cores. */
    static final double REVIEW_SECONDS = 0.5;

    /** Greatest cost per lite over the least, from 1,000 to 100,000 lites. */
    static final double FLAT = 1.1;

    private Targets() {}

    /** Operations per second. */
    static double rate(String benchmark) {
        String name = benchmark.substring(benchmark.lastIndexOf('.') + 1);
        return switch (name) {
            case "nonFactoredLoads" -> 500_000.0;
            case "componentPressures" -> 100_000.0;
            case "threeSpansTwoSplices" -> 20_000.0;
            default -> throw new IllegalArgumentException("no target for " + benchmark);
        };
    }
}
