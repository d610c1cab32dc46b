package org.bayledger.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.bayledger.check.Cautions;
import org.bayledger.check.Verdict;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;

/**
 * A table of spans as a chart: spacing across, span up, one line a pressure, named at its end. A
 * ring stands where deflection limits the span, a dot where stress does, a square where the table
 * ends.
 */
final class SpanChart {

    private static final double LEFT = 48;
    private static final double RIGHT = 90;
    private static final double TOP = 46;
    private static final double BOTTOM = 40;
    private static final double RADIUS = 2.6;
    private static final double NAME = 10;
    private static final int TICKS = 8;

    /** Spans fall with the spacing ever more slowly: a straight line between two lies above. */
    private static final String AT_MARKS =
            " Read them at the marks: between two marks the line lies above the true span.";

    private final SpanTableRequest request;
    private final SpanTableResult table;
    private final UnitSystem units;
    private final Paper paper;
    private final Sheet sheet;
    private final List<List<TitleBlock.Entry>> from;

    SpanChart(SpanTableRequest request, SpanTableResult table, UnitSystem units) {
        this(request, table, units, "Greatest spans of a section", List.of());
    }

    /**
     * @param title what the chart is of
     * @param from lines of the title block that say what the table was made from
     */
    SpanChart(
            SpanTableRequest request,
            SpanTableResult table,
            UnitSystem units,
            String title,
            List<List<TitleBlock.Entry>> from) {
        this.request = request;
        this.table = table;
        this.from = List.copyOf(from);
        this.units = units;
        this.paper = Paper.sizes(units).get(0);
        this.sheet =
                new Sheet(
                        paper,
                        title,
                        "Greatest span by spacing, one line for each of "
                                + table.rows().size()
                                + " pressures"
                                + (from.isEmpty() ? "" : ". " + sentences()));
    }

    byte[] draw() {
        Box room = block().draw(sheet, Sheet.frame(paper));
        Box plot =
                new Box(
                        room.x() + LEFT,
                        room.y() + TOP,
                        room.width() - LEFT - RIGHT,
                        room.height() - TOP - BOTTOM);
        Axis across = Axis.over(values(SpanTableResult.Cell::spacing), plot.x(), plot.right());
        Axis up = Axis.over(values(SpanTableResult.Cell::span), plot.bottom(), plot.y());
        grid(plot, across, up);
        for (SpanTableResult.Row row : table.rows()) {
            curve(row, across, up);
        }
        names(plot, up);
        legend(plot);
        return sheet.finish();
    }

    private TitleBlock block() {
        String basis = request.basis() == null ? "ALLOWABLE_STRESS" : request.basis().name();
        List<List<TitleBlock.Entry>> lines = new ArrayList<>(from);
        lines.add(
                List.of(
                        new TitleBlock.Entry("Drawing", "Greatest spans of a section"),
                        new TitleBlock.Entry(
                                "Spans",
                                request.spans() == 1
                                        ? "single"
                                        : request.spans() + " equal, continuous"),
                        new TitleBlock.Entry("Basis of the pressures", basis),
                        new TitleBlock.Entry("Verdict", table.outcome().verdict().name()),
                        new TitleBlock.Entry("Engine", Review.ENGINE_VERSION)));
        return new TitleBlock(
                lines,
                Cautions.with(
                        table.outcome().verdict() == Verdict.SATISFIED
                                ? "Spans are those of wind alone." + AT_MARKS
                                : "Spans are those of wind alone and may be too long: something"
                                        + " about the section was not given."
                                        + AT_MARKS));
    }

    /** All spans in sentences, for those who can't see the chart. */
    private String sentences() {
        List<String> said = new ArrayList<>();
        for (SpanTableResult.Row row : table.rows()) {
            List<String> spans = new ArrayList<>();
            for (SpanTableResult.Cell cell : sorted(row)) {
                spans.add(
                        cell.span().text(units)
                                + " at a spacing of "
                                + cell.spacing().text(units)
                                + ", limited by "
                                + words(cell.limit()));
            }
            said.add("Under " + row.pressure().text(units) + ": " + String.join("; ", spans) + ".");
        }
        return String.join(" ", said);
    }

    private static String words(SpanTableResult.Limit limit) {
        return switch (limit) {
            case DEFLECTION -> "deflection";
            case STRESS -> "bending stress";
            case GREATEST_SPAN -> "the end of the table";
        };
    }

    private void grid(Box plot, Axis across, Axis up) {
        sheet.outline(Stroke.MEDIUM, plot);
        for (double tick : across.ticks()) {
            double x = across.at(tick);
            sheet.line(Stroke.FINE, x, plot.y(), x, plot.bottom());
            sheet.put(Label.middle(Axis.text(tick), x, plot.bottom() + 11));
        }
        for (double tick : up.ticks()) {
            double y = up.at(tick);
            sheet.line(Stroke.FINE, plot.x(), y, plot.right(), y);
            sheet.put(Label.end(Axis.text(tick), plot.x() - 4, y + 2.5));
        }
        String unit = " (" + Dimension.DISTANCE.symbol(units) + ")";
        sheet.put(Label.middle("Spacing" + unit, plot.middleX(), plot.bottom() + 26));
        sheet.put(Label.middle("Span" + unit, plot.x() - 36, plot.middleY()).turned());
    }

    private void curve(SpanTableResult.Row row, Axis across, Axis up) {
        List<SpanTableResult.Cell> cells = sorted(row);
        List<Sheet.Point> points = new ArrayList<>();
        for (SpanTableResult.Cell cell : cells) {
            points.add(
                    new Sheet.Point(across.at(value(cell.spacing())), up.at(value(cell.span()))));
        }
        if (points.size() > 1) {
            sheet.path(Stroke.MEDIUM, points);
        }
        for (int i = 0; i < points.size(); i++) {
            mark(cells.get(i).limit(), points.get(i).x(), points.get(i).y());
        }
    }

    private void mark(SpanTableResult.Limit limit, double x, double y) {
        switch (limit) {
            case DEFLECTION -> sheet.circle(Stroke.MEDIUM, x, y, RADIUS, "white");
            case STRESS -> sheet.circle(Stroke.MEDIUM, x, y, RADIUS, "black");
            case GREATEST_SPAN ->
                    sheet.blank(
                            Stroke.MEDIUM, new Box(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
    }

    /** The pressures, each at the end of its line, clear of one another. */
    private void names(Box plot, Axis up) {
        List<SpanTableResult.Row> rows =
                table.rows().stream()
                        .sorted(Comparator.comparingDouble(row -> up.at(value(last(row).span()))))
                        .toList();
        double[] middles =
                rows.stream().mapToDouble(row -> up.at(value(last(row).span()))).toArray();
        double[] lengths = new double[middles.length];
        Arrays.fill(lengths, NAME);
        double[] starts =
                Spread.along(middles, lengths, plot.y() - TOP / 2, plot.bottom() + BOTTOM);
        for (int i = 0; i < starts.length; i++) {
            double y = starts[i] + NAME / 2;
            sheet.line(Stroke.FINE, plot.right() + 3, middles[i], plot.right() + 14, y);
            sheet.put(
                    Label.start(
                            Words.together(rows.get(i).pressure().text(units)),
                            plot.right() + 16,
                            y + 2.5));
        }
    }

    private void legend(Box plot) {
        double x = plot.x();
        double y = plot.y() - 18;
        for (SpanTableResult.Limit limit : SpanTableResult.Limit.values()) {
            mark(limit, x + RADIUS, y - 2.4);
            String words =
                    switch (limit) {
                        case DEFLECTION -> "deflection limits the span";
                        case STRESS -> "bending stress limits the span";
                        case GREATEST_SPAN -> "the table ends";
                    };
            Label label = Label.start(words, x + 4 * RADIUS, y);
            sheet.put(label);
            x = label.box().right() + 16;
        }
        sheet.put(Label.start("Pressure", plot.right() + 16, plot.y() - TOP / 2 - 4).inBold());
    }

    private SpanTableResult.Cell last(SpanTableResult.Row row) {
        List<SpanTableResult.Cell> cells = sorted(row);
        return cells.get(cells.size() - 1);
    }

    private static List<SpanTableResult.Cell> sorted(SpanTableResult.Row row) {
        return row.cells().stream()
                .sorted(Comparator.comparingDouble(cell -> cell.spacing().si()))
                .toList();
    }

    private double[] values(Function<SpanTableResult.Cell, Quantity> of) {
        return table.rows().stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(cell -> value(of.apply(cell)))
                .toArray();
    }

    private double value(Quantity quantity) {
        return quantity.value(units).doubleValue();
    }

    /**
     * An axis with round marks.
     *
     * @param first first mark
     * @param step from mark to mark
     * @param count marks
     * @param from where the first stands, points
     * @param to where the last stands, points
     */
    private record Axis(double first, double step, int count, double from, double to) {

        static Axis over(double[] values, double from, double to) {
            double least = Arrays.stream(values).min().orElse(0);
            double most = Arrays.stream(values).max().orElse(1);
            double range = Math.max(most - least, 0.1 * most);
            double rough = range / (TICKS - 2);
            double power = Math.pow(10, Math.floor(Math.log10(rough)));
            double step = power;
            for (double round : new double[] {1, 2, 5, 10}) {
                step = round * power;
                if (step >= rough) {
                    break;
                }
            }
            double first = Math.floor(least / step);
            double last = Math.ceil(most / step);
            if (last <= first) {
                last = first + 1;
            }
            return new Axis(first * step, step, (int) (last - first) + 1, from, to);
        }

        double at(double value) {
            return from + (value - first) / (step * (count - 1)) * (to - from);
        }

        List<Double> ticks() {
            List<Double> ticks = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                ticks.add(first + i * step);
            }
            return ticks;
        }

        static String text(double tick) {
            return new BigDecimal(tick)
                    .setScale(6, RoundingMode.HALF_EVEN)
                    .stripTrailingZeros()
                    .toPlainString();
        }
    }
}
