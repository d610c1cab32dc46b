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

    /** P(X at most k), summed downward from k; near 1 where k lies above the mean. */
    static double atMost(int joints, int defective, int sample, int k) {
        int least = Math.max(0, sample - (joints - defective));
        int most = Math.min(sample, defective);
        if (k >= most) {
            return 1;
        }
        if (k < least) {
            return 0;
        }
        double term =
                Math.exp(
                        choices(defective, k)
                                + choices(joints - defective, sample - k)
                                - choices(joints, sample));
        double sum = term;
        for (int i = k; i > least && term > sum * 1e-17; i--) {
            // P(X = i - 1) / P(X = i)
            term *=
                    (double) i
                            / (defective - i + 1)
                            * (joints - defective - sample + i)
                            / (sample - i + 1);
            sum += term;
        }
        return Math.min(1, sum);
    }

    /** ln C(n, k). */
    private static double choices(int n, int k) {
        return Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
    }
}
