package org.bayledger.drawing;

/** Places things along a line, each as near as can be to where it belongs, clear of one another. */
final class Spread {

    private Spread() {}

    /**
     * Where things begin.
     *
     * @param middles where the middle of each belongs, in rising order
     * @param lengths room that each takes, gaps included
     * @param from where the line begins
     * @param to where it ends
     * @return where each begins, or an empty array where they don't all have room
     */
    static double[] along(double[] middles, double[] lengths, double from, double to) {
        int count = middles.length;
        double[] starts = new double[count];
        double free = from;
        for (int i = 0; i < count; i++) {
            starts[i] = Math.max(free, middles[i] - lengths[i] / 2);
            free = starts[i] + lengths[i];
        }
        // what was pushed beyond the end goes back, and pushes what stands before it
        double limit = to;
        for (int i = count - 1; i >= 0; i--) {
            starts[i] = Math.min(starts[i], limit - lengths[i]);
            limit = starts[i];
        }
        return limit < from - 1e-6 ? new double[0] : starts;
    }
}
