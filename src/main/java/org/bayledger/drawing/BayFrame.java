package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Bay;

/**
 * The frame of a bay as seen from outside, with its dimensions: columns and the whole width below,
 * rows and the whole height at the left, the numbers of columns above and of rows at the right.
 *
 * @param bay the bay
 * @param units units of the dimensions
 * @param beyond room on every side between the frame and what is written around it, points
 */
record BayFrame(Bay bay, UnitSystem units, double beyond) {

    private static final double LINE = 9;

    /** From a chain of dimensions to the one beyond it, points. */
    private static final double NEXT = 24;

    /** A frame is drawn no narrower and no lower than this, points. */
    private static final double LEAST = 90;

    /** Lines nearer to one another than this are left out, points. */
    private static final double CLOSE = 2;

    /** Of how many columns or rows one is numbered where not all have room. */
    private static final int[] STRIDES = {1, 2, 5, 10, 20, 50, 100, 200};

    private String length(double metres) {
        return FeetInches.format(metres, units);
    }

    private List<String> heights() {
        return bay.rows().stream().map(this::length).toList();
    }

    private double left() {
        return beyond + Chain.room(heights()) + Chain.room(List.of(length(bay.height())));
    }

    private double right() {
        return beyond + 2 * LINE;
    }

    private double below() {
        return beyond + NEXT + 2 * LINE;
    }

    /** The largest scale at which the frame and what is written around it fit a room. */
    Scale scale(Box room) {
        Box inner =
                new Box(
                        room.x() + left(),
                        room.y() + beyond + 2 * LINE,
                        room.width() - left() - right(),
                        room.height() - beyond - 2 * LINE - below());
        return Scale.fitting(inner, 0, bay.width(), 0, bay.height(), LEAST);
    }

    /** The frame on the sheet. */
    Box box(Scale scale) {
        return scale.box(0, bay.width(), 0, bay.height());
    }

    /** A lite on the sheet; column and row from 1. */
    Box lite(Scale scale, int column, int row) {
        double from = bay.columnStart(column) - bay.offset();
        double low = bay.rowStart(row);
        return scale.box(
                from, from + bay.columns().get(column - 1), low, low + bay.rows().get(row - 1));
    }

    /** Where the verticals stand, from the left edge of the bay, m. */
    static List<Double> lines(List<Double> parts) {
        List<Double> lines = new ArrayList<>(List.of(0.0));
        for (double part : parts) {
            lines.add(lines.get(lines.size() - 1) + part);
        }
        return lines;
    }

    /** Draws members as lines. */
    void draw(Sheet sheet, Scale scale) {
        Box frame = box(scale);
        double last = Double.NEGATIVE_INFINITY;
        for (double at : lines(bay.columns())) {
            double x = scale.x(at);
            if (x - last > CLOSE) {
                sheet.line(Stroke.MEDIUM, x, frame.y(), x, frame.bottom());
                last = x;
            }
        }
        last = Double.POSITIVE_INFINITY;
        for (double at : lines(bay.rows())) {
            double y = scale.y(at);
            if (last - y > CLOSE) {
                sheet.line(Stroke.MEDIUM, frame.x(), y, frame.right(), y);
                last = y;
            }
        }
        sheet.outline(Stroke.HEAVY, frame);
    }

    /** Writes dimensions and numbers around it; whether all have room. */
    boolean dimension(Sheet sheet, Scale scale, Box room) {
        Box frame = box(scale);
        double low = frame.bottom() + beyond + LINE;
        boolean complete =
                new Chain(
                                sheet,
                                lines(bay.columns()).stream().mapToDouble(scale::x).toArray(),
                                bay.columns().stream().map(this::length).toList())
                        .across(low, room.x(), room.right());
        if (bay.columns().size() > 1) {
            Dimensions.across(sheet, frame.x(), frame.right(), low + NEXT, length(bay.width()));
        }
        List<Double> levels = new ArrayList<>(lines(bay.rows()));
        Collections.reverse(levels);
        List<String> heights = new ArrayList<>(heights());
        Collections.reverse(heights);
        double left = frame.x() - beyond - LINE / 2;
        complete &=
                new Chain(sheet, levels.stream().mapToDouble(scale::y).toArray(), heights)
                        .up(left, room.y(), room.bottom());
        if (bay.rows().size() > 1) {
            complete &=
                    new Chain(
                                    sheet,
                                    new double[] {frame.y(), frame.bottom()},
                                    List.of(length(bay.height())))
                            .up(left - Chain.room(heights()), room.y(), room.bottom());
        }
        return complete & numbers(sheet, scale, room);
    }

    private boolean numbers(Sheet sheet, Scale scale, Box room) {
        Box frame = box(scale);
        List<Label> columns = new ArrayList<>();
        for (int column = 1; column <= bay.columns().size(); column++) {
            double x = lite(scale, column, 1).middleX();
            columns.add(Label.centred("" + column, x, frame.y() - beyond - LINE).inBold());
        }
        List<Label> rows = new ArrayList<>();
        for (int row = 1; row <= bay.rows().size(); row++) {
            double y = lite(scale, 1, row).middleY();
            rows.add(Label.centred("" + row, frame.right() + beyond + LINE, y).inBold());
        }
        return numbers(sheet, columns, room) & numbers(sheet, rows, room);
    }

    /** Puts every number, or as many of them as have room; whether every one. */
    private static boolean numbers(Sheet sheet, List<Label> numbers, Box room) {
        for (int stride : STRIDES) {
            List<Label> some = new ArrayList<>();
            for (int i = 0; i < numbers.size(); i++) {
                if (i == 0 || (i + 1) % stride == 0) {
                    some.add(numbers.get(i));
                }
            }
            boolean apart = true;
            for (int i = 1; i < some.size(); i++) {
                apart &= !some.get(i).box().inset(-1).overlaps(some.get(i - 1).box());
            }
            if (apart && sheet.putIfFree(some, room)) {
                return stride == 1;
            }
        }
        return false;
    }
}
