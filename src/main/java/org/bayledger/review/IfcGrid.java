package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The grid that rectangles make: columns and rows, with the lines half-way between neighbours.
 *
 * @param start position of the left edge along the wall, m
 * @param columns widths, left to right, m
 * @param bottom level of the bottom edge, m
 * @param rows heights, bottom to top, m
 * @param openEdges its edges at which no member stands: there the grid ends with the plates
 */
record IfcGrid(
        double start,
        List<Double> columns,
        double bottom,
        List<Double> rows,
        List<String> openEdges) {

    /** Edges nearer to one another than this stand on one line, m. */
    private static final double SAME_LINE = 0.025;

    /** Two plates that are further apart have something between them that is not read, m. */
    private static final double WIDEST_MEMBER = 0.3;

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
        requireEveryPlaceOnce(plates, columns, rows);
        List<String> open = new ArrayList<>();
        double[] across =
                boundaries(
                        columns,
                        members.stream()
                                .filter(member -> member.height() > member.width())
                                .mapToDouble(member -> (member.left() + member.right()) / 2)
                                .toArray(),
                        List.of("left", "right"),
                        open);
        double[] up =
                boundaries(
                        rows,
                        members.stream()
                                .filter(member -> member.width() > member.height())
                                .mapToDouble(member -> (member.bottom() + member.top()) / 2)
                                .toArray(),
                        List.of("bottom", "top"),
                        open);
        return new IfcGrid(across[0], steps(across), up[0], steps(up), List.copyOf(open));
    }

    /** As many plates as places can still be two in one place and none in another. */
    private static void requireEveryPlaceOnce(
            List<Rectangle> plates, List<double[]> columns, List<double[]> rows) {
        Set<List<Integer>> taken = new HashSet<>();
        for (Rectangle plate : plates) {
            int column = place(columns, plate.left());
            int row = place(rows, plate.bottom());
            if (!taken.add(List.of(column, row))) {
                throw new IllegalArgumentException(
                        "two of its plates stand in column "
                                + (column + 1)
                                + ", row "
                                + (row + 1)
                                + " of its grid");
            }
        }
    }

    private static int place(List<double[]> lines, double from) {
        int place = 0;
        while (place + 1 < lines.size() && from > lines.get(place + 1)[0] - SAME_LINE) {
            place++;
        }
        return place;
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

    private static double[] boundaries(
            List<double[]> lines, double[] members, List<String> edges, List<String> open) {
        double[] at = new double[lines.size() + 1];
        for (int i = 1; i < lines.size(); i++) {
            double from = lines.get(i - 1)[1];
            double to = lines.get(i)[0];
            if (to - from > WIDEST_MEMBER) {
                throw new IllegalArgumentException(
                        String.format(
                                Locale.ROOT,
                                "between its plates %d and %d, counted from the %s, stand %.0f mm"
                                        + " empty; a door, a window or something else that is no"
                                        + " IfcPlate may be there",
                                i,
                                i + 1,
                                edges.get(0),
                                1000 * (to - from)));
            }
            at[i] = (from + to) / 2;
        }
        double first = lines.get(0)[0];
        double last = lines.get(lines.size() - 1)[1];
        at[0] = first;
        at[lines.size()] = last;
        boolean atFirst = false;
        boolean atLast = false;
        for (double member : members) {
            if (member < first - WIDEST_MEMBER || member > last + WIDEST_MEMBER) {
                throw new IllegalArgumentException(
                        "one of its members stands further than "
                                + (int) (1000 * WIDEST_MEMBER)
                                + " mm from its plates");
            }
            // a member on the outer edge stands beyond the glass, or just covers its edge
            if (member < first + SAME_LINE) {
                at[0] = Math.min(at[0], member);
                atFirst = true;
            }
            if (member > last - SAME_LINE) {
                at[lines.size()] = Math.max(at[lines.size()], member);
                atLast = true;
            }
        }
        if (!atFirst) {
            open.add(edges.get(0));
        }
        if (!atLast) {
            open.add(edges.get(1));
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
