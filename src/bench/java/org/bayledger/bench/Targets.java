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

    /** Of recording and of comparing revisions of 10,000 lites. */
    static final double LEDGER_SECONDS = 1;

    /** Throughput of a small check over that of a canned answer, and its 99th percentile. */
    static final double SHARE_OF_CANNED = 0.7;

    static final double TAIL_OF_CANNED = 3;

    /** A review over HTTP over the engine's own time. */
    static final double OVER_HTTP = 1.5;

    /** From the command to the first answers, on an embedded database that was made before. */
    static final double START_SECONDS = 8;

    static final double START_SECONDS_EXTERNAL = 3;

    /** Memory with which 10,000 lites are reviewed over HTTP. */
    static final int MEGABYTES = 256;

    /** Cost of a request with two services over that with one. */
    static final double INSTANCES = 1.1;

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
