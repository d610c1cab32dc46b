package org.bayledger.mechanics;

/**
 * Where a polynomial crosses zero, located to rounding.
 *
 * <p>Between neighbouring zeros of its derivative a polynomial is monotone, so that a change of
 * sign there brackets exactly one crossing; taken from degree one upward this finds all of them. A
 * zero that only touches is not looked for: it is no extreme of the function of which this is the
 * derivative.
 */
final class BeamRoots {

    private static final int MOST_STEPS = 200;

    /** Crossings of each derivative, by its degree; reused from call to call. */
    private final double[][] crossings = new double[6][];

    private final double[] derivative = new double[6];

    /** The crossings found last. */
    double[] found = {};

    /**
     * Finds the crossings in the open interval between {@code low} and {@code high}, in increasing
     * order, into {@link #found}.
     *
     * @param coefficients of the powers 0 up to {@code degree}, which is at most 5
     * @return how many there are
     */
    int between(double[] coefficients, int degree, double low, double high) {
        int count = 0;
        for (int order = 1; order <= degree; order++) {
            differentiate(coefficients, degree, degree - order);
            double[] turns = found;
            if (crossings[order] == null) {
                crossings[order] = new double[order];
            }
            double[] here = crossings[order];
            int next = 0;
            double left = low;
            double atLeft = value(derivative, order, left);
            for (int i = 0; i <= count; i++) {
                double right = i < count ? turns[i] : high;
                double atRight = value(derivative, order, right);
                if ((atLeft < 0 && atRight > 0) || (atLeft > 0 && atRight < 0)) {
                    here[next++] = bracketed(order, left, atLeft, right);
                }
                left = right;
                atLeft = atRight;
            }
            count = next;
            found = here;
        }
        return count;
    }

    /** The derivative of the given order, a polynomial of degree {@code degree - times}. */
    private void differentiate(double[] coefficients, int degree, int times) {
        for (int power = times; power <= degree; power++) {
            double factor = 1;
            for (int k = 0; k < times; k++) {
                factor *= power - k;
            }
            derivative[power - times] = factor * coefficients[power];
        }
    }

    /** Newton steps that fall back on halving, inside a bracket known to hold one crossing. */
    private double bracketed(int order, double left, double atLeft, double right) {
        double a = left;
        double b = right;
        double x = 0.5 * (a + b);
        for (int step = 0; step < MOST_STEPS; step++) {
            double f = derivative[order];
            double slope = 0;
            for (int power = order - 1; power >= 0; power--) {
                slope = slope * x + f;
                f = f * x + derivative[power];
            }
            if (f == 0) {
                return x;
            }
            if ((f < 0) == (atLeft < 0)) {
                a = x;
            } else {
                b = x;
            }
            double newton = x - f / slope;
            double y = newton > a && newton < b ? newton : 0.5 * (a + b);
            if (y == x || b - a <= Math.ulp(b)) {
                return x;
            }
            x = y;
        }
        return x;
    }

    static double value(double[] coefficients, int degree, double x) {
        double sum = coefficients[degree];
        for (int power = degree - 1; power >= 0; power--) {
            sum = sum * x + coefficients[power];
        }
        return sum;
    }
}
