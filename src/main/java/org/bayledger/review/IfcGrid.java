package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The grid that rectangles make: columns and rows, with the lines half-way between neighbours.
 *
 * @param start position of the left edge along the wall, m
 * @param columns widths, left to right, m
 * @param bottom level of the bottom edge, m
 * @param rows heights, bottom to top, m
 */
record IfcGrid(double start, List<Double> columns, double bottom, List<Double> rows) {

    /** Edges nearer to one another than this stand on one line, m. */
    private static final double SAME_LINE = 0.025;

    /** The extents of one plate or member in the plane of the wall, m. */
    record Rectangle(double left, double right, double bottom, double top) {

        double width() {
            return right - left;
        }

        double height() {
            return top - bottom;
        }
    }

    /**
     * The grid of a wall.
     *
     * @param plates its plates
     * @param members its members; the outermost ones give the outer lines
     * @throws IllegalArgumentException where the plates make no grid, with the reason
     */
    static IfcGrid of(List<Rectangle> plates, List<Rectangle> members) {
        List<double[]> columns =
                lines(plates.stream().map(p -> new double[] {p.left(), p.right()}).toList());
        List<double[]> rows =
                lines(plates.stream().map(p -> new double[] {p.bottom(), p.top()}).toList());
        if (plates.size() != columns.size() * rows.size()) {
            throw new IllegalArgumentException(
                    "its "
                            + plates.size()
                            + " plates do not fill a grid of "
                            + columns.size()
                            + " columns and "
                            + rows.size()
                            + " rows");
        }
        double[] across =
                boundaries(
                        columns,
                        members.stream()
                                .filter(member -> member.height() > member.width())
                                .mapToDouble(member -> (member.left() + member.right()) / 2)
                                .toArray());
        double[] up =
                boundaries(
                        rows,
                        members.stream()
                                .filter(member -> member.width() > member.height())
                                .mapToDouble(member -> (member.bottom() + member.top()) / 2)
                                .toArray());
        return new IfcGrid(across[0], steps(across), up[0], steps(up));
    }

    /** The different intervals, in order; those that overlap without being the same are no grid. */
    private static List<double[]> lines(List<double[]> intervals) {
        List<double[]> sorted = new ArrayList<>(intervals);
        sorted.sort(Comparator.comparingDouble(interval -> interval[0]));
        List<double[]> lines = new ArrayList<>();
        for (double[] interval : sorted) {
            double[] last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            if (last == null || interval[0] > last[1] - SAME_LINE) {
                lines.add(interval.clone());
            } else if (Math.abs(interval[0] - last[0]) > SAME_LINE
                    || Math.abs(interval[1] - last[1]) > SAME_LINE) {
                throw new IllegalArgumentException("its plates do not stand in columns and rows");
            }
        }
        return lines;
    }

    private static double[] boundaries(List<double[]> lines, double[] members) {
        double[] at = new double[lines.size() + 1];
        for (int i = 1; i < lines.size(); i++) {
            at[i] = (lines.get(i - 1)[1] + lines.get(i)[0]) / 2;
        }
        double first = lines.get(0)[0];
        double last = lines.get(lines.size() - 1)[1];
        at[0] = first;
        at[lines.size()] = last;
        for (double member : members) {
            // a member on the outer edge stands beyond the glass, or just covers its edge
            at[0] = member < first + SAME_LINE ? Math.min(at[0], member) : at[0];
            at[lines.size()] =
                    member > last - SAME_LINE
                            ? Math.max(at[lines.size()], member)
                            : at[lines.size()];
        }
        return at;
    }

    private static List<Double> steps(double[] boundaries) {
        List<Double> steps = new ArrayList<>();
        for (int i = 1; i < boundaries.length; i++) {
            steps.add(boundaries[i] - boundaries[i - 1]);
        }
        return steps;
    }

    double width() {
        return columns.stream().mapToDouble(Double::doubleValue).sum();
    }

    double height() {
        return rows.stream().mapToDouble(Double::doubleValue).sum();
    }
}
