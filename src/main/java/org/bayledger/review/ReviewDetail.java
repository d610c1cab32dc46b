package org.bayledger.review;

/** How much of each item the answer of a review carries. */
public enum ReviewDetail {
    /** Its wind, inputs, results and findings. */
    FULL,
    /**
     * Its verdict and utilization only; what somebody has to act on is in the review's findings.
     */
    VERDICTS
}
