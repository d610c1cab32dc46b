package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.framing.Retention;
import org.bayledger.framing.RetentionCheck;
import org.bayledger.framing.RetentionRequest;
import org.bayledger.framing.RetentionResult;

/**
 * What holds the glass of one bay against suction: with a pressure plate the member whose screws
 * carry most, with structural silicone the lite whose edges pull most.
 *
 * <p>A vertical is taken to carry half of the width of each lite beside it, a horizontal at most
 * half of the short side of each lite above and below it: what a lite puts on its edges falls off
 * at 45 degrees from its corners (common practice, no source). The plate levers about its screws
 * under the side that is loaded more, so that the greater of the two halves counts on both sides;
 * at a jamb, that of its one lite (prying; common practice, no source).
 */
final class RetentionReview {

    private static final String NAME = "glass-retention";

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;

    RetentionReview(ReviewContext context, Bay bay, String pointer) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
    }

    Checked item() {
        String id = bay.id() + "/retention";
        Retention retention = bay.retention();
        if (retention == null) {
            return Checked.missing(
                    id,
                    NAME,
                    "RETENTION_NOT_GIVEN",
                    pointer + "/retention",
                    "Nothing was said of what holds the glass against suction: pressure-plate"
                            + " screws, gasket bite or structural silicone were not checked.");
        }
        return Checked.governing(
                retention.kind() == Retention.Kind.PRESSURE_PLATE
                        ? screws(id, retention)
                        : silicone(id, retention));
    }

    private List<Checked> screws(String id, Retention retention) {
        List<Checked> found = new ArrayList<>();
        double spacing = retention.fastenerSpacing() == null ? 0 : retention.fastenerSpacing();
        for (Layout.Vertical vertical : context.layout.verticals(bay)) {
            double width = 2 * Math.max(vertical.left(), vertical.right());
            found.add(
                    check(
                            id,
                            retention,
                            width,
                            shortSide(),
                            vertical.at() - vertical.left(),
                            vertical.at() + vertical.right(),
                            spacing * vertical.tributaryWidth(),
                            bay.sill(),
                            bay.top()));
        }
        for (int column = 1; column <= bay.columns().size(); column++) {
            for (int line = 1; line <= bay.rows().size() + 1; line++) {
                double below = reach(column, line - 1);
                double above = reach(column, line);
                double width = Math.max(below, above);
                double from = bay.columnStart(column);
                found.add(
                        check(
                                id,
                                retention,
                                width,
                                shortSide(),
                                from,
                                from + bay.columns().get(column - 1),
                                spacing * (below + above) / 2,
                                bay.sill(),
                                bay.top()));
            }
        }
        return found;
    }

    /**
     * Short side of a lite, m; beyond the bay's top and sill the neighbours count as its column.
     */
    private double reach(int column, int row) {
        double width = bay.columns().get(column - 1);
        if (row < 1) {
            return Math.min(width, tallest(context.layout.below(bay), false));
        }
        if (row > bay.rows().size()) {
            return Math.min(width, tallest(context.layout.above(bay), true));
        }
        return Math.min(width, bay.rows().get(row - 1));
    }

    private static double tallest(List<Bay> bays, boolean first) {
        return bays.stream()
                .mapToDouble(other -> other.rows().get(first ? 0 : other.rows().size() - 1))
                .max()
                .orElse(0);
    }

    private double shortSide() {
        double widest = bay.columns().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double tallest = bay.rows().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return Math.min(widest, tallest);
    }

    private List<Checked> silicone(String id, Retention retention) {
        List<Checked> found = new ArrayList<>();
        for (int column = 1; column <= bay.columns().size(); column++) {
            for (int row = 1; row <= bay.rows().size(); row++) {
                double width = bay.columns().get(column - 1);
                double height = bay.rows().get(row - 1);
                double from = bay.columnStart(column);
                found.add(
                        check(
                                id,
                                retention,
                                width,
                                Math.min(width, height),
                                from,
                                from + width,
                                width * height,
                                bay.sill() + bay.rowStart(row),
                                bay.sill() + bay.rowStart(row) + height));
            }
        }
        return found;
    }

    /**
     * The check of one member or lite.
     *
     * @param width wall that hangs on it, m
     * @param shortSide of the lite, m
     * @param from left edge of what loads it, from the elevation's left edge, m
     * @param to right edge of that, m
     * @param area effective wind area, m2
     * @param bottom height of its lower edge above the building datum, m
     * @param top height of its top above the building datum, m
     */
    private Checked check(
            String id,
            Retention retention,
            double width,
            double shortSide,
            double from,
            double to,
            double area,
            double bottom,
            double top) {
        WallWind.Seen seen =
                context.wind.on(
                        pointer, new WallWind.Patch(bay.elevation(), from, to, bottom, top, area));
        return Checked.run(
                id,
                NAME,
                pointer,
                seen,
                List.of(),
                () -> {
                    RetentionRequest request =
                            new RetentionRequest(retention, width, shortSide, seen.load());
                    RetentionResult result = RetentionCheck.run(request, context.reporting);
                    return new Checked.Ran(request, result, result.outcome());
                });
    }
}
