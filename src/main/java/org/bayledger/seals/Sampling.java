package org.bayledger.seals;

import org.hipparchus.special.Gamma;

/**
 * Samples drawn without putting back, from N joints of which D are defective. The number X of
 * defective joints among n has the hypergeometric distribution
 *
 * <p>P(X = k) = C(D, k) C(N - D, n - k) / C(N, n)
 *
 * <p>(any textbook of statistics; its use with no defect accepted and with one: Schilling and
 * Neubauer, Acceptance Sampling in Quality Control, from memory).
 */
final class Sampling {

    /** Ties are ties in spite of rounding: 19 of 20 show one defective joint with 95 %. */
    private static final double TIE = 1e-9;

    /** Share of a sum below which another term changes nothing. */
    private static final double NOUGHT = 1e-17;

    private Sampling() {}

    /** Defective joints that a defect rate stands for: rate x N, rounded up. */
    static int defective(int joints, double rate) {
        return (int) Math.ceil(joints * rate * (1 - TIE));
    }

    /** P(no defect among n): the product of (N - D - i) / (N - i) for i from 0 to n - 1. */
    static double noneFound(int joints, int defective, int sample) {
        double chance = 1;
        for (int i = 0; i < sample; i++) {
            chance *= Math.max(0, (double) (joints - defective - i)) / (joints - i);
        }
        return chance;
    }

    /**
     * Least sample that would hold more defective joints than are allowed, with the confidence
     * asked for, were D or more of N defective. Drawing the joints one by one, the chance to have
     * found k so far moves on by the share of defective ones among those that are left.
     *
     * @param allowed defective joints that the sample may hold, 0 or 1, under D
     */
    static int size(int joints, int defective, double confidence, int allowed) {
        double[] found = new double[allowed + 1];
        found[0] = 1;
        int sample = 0;
        double sum = 1;
        while (sum > (1 - confidence) * (1 + TIE) && sample < joints) {
            double left = (double) joints - sample;
            for (int k = allowed; k >= 0; k--) {
                double before = k == 0 ? 0 : found[k - 1] * (defective - k + 1) / left;
                found[k] = found[k] * Math.max(0, left - (defective - k)) / left + before;
            }
            sample++;
            sum = 0;
            for (double chance : found) {
                sum += chance;
            }
        }
        return sample;
    }

    /**
     * Exact upper bound, one-sided, of the defective joints among N after c were found among n: the
     * greatest D for which finding c or fewer is still likelier than 1 - confidence. It is the
     * counterpart, for samples without putting back, of the bound of Clopper and Pearson.
     */
    static int upperBound(int joints, int sample, int found, double confidence) {
        int low = found;
        int high = joints - sample + found;
        while (low < high) {
            int middle = (int) (((long) low + high + 1) / 2);
            if (atMost(joints, middle, sample, found) > (1 - confidence) * (1 + TIE)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /**
     * P(X at most k), summed from k away from the mean n D / N, where the terms only fall: below it
     * downward, above it upward as what is left of 1.
     */
    static double atMost(int joints, int defective, int sample, int k) {
        int least = Math.max(0, sample - (joints - defective));
        int most = Math.min(sample, defective);
        if (k >= most) {
            return 1;
        }
        if (k < least) {
            return 0;
        }
        if (k > (double) sample * defective / joints) {
            double above = 0;
            double term = exactly(joints, defective, sample, k + 1);
            for (int i = k + 1; i <= most && term > above * NOUGHT; i++) {
                above += term;
                // P(X = i + 1) / P(X = i)
                term *= (double) (defective - i) / (i + 1) * (sample - i);
                term /= (double) joints - defective - sample + i + 1;
            }
            return Math.max(0, 1 - above);
        }
        double below = 0;
        double term = exactly(joints, defective, sample, k);
        for (int i = k; i >= least && term > below * NOUGHT; i--) {
            below += term;
            // P(X = i - 1) / P(X = i)
            term *= (double) i / (defective - i + 1) / (sample - i + 1);
            term *= (double) joints - defective - sample + i;
        }
        return Math.min(1, below);
    }

    private static double exactly(int joints, int defective, int sample, int k) {
        return Math.exp(
                choices(defective, k)
                        + choices(joints - defective, sample - k)
                        - choices(joints, sample));
    }

    /** ln C(n, k). */
    private static double choices(int n, int k) {
        return Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
    }
}
