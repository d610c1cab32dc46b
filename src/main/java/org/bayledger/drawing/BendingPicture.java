package org.bayledger.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.BlockCandidate;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Verdict;
import org.bayledger.drawing.Sheet.Point;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A horizontal, bent, for each place of the blocks. Every picture has the same scale, so that they
 * can be compared: lengths by one scale, deflections by a larger one, a round number of times.
 */
final class BendingPicture {

    private static final double LINE = 9;

    /** Points of the line that is drawn for the bent member. */
    private static final int PIECES = 64;

    /** Length of an arrow, points. */
    private static final double ARROW = 16;

    /** Room at each end of the span, points. */
    private static final double SIDE = 46;

    /** Room above the unbent line of each picture and below its greatest deflection, points. */
    private static final double ABOVE = 62;

    private static final double BELOW = 34;

    private static final double BLOCK = 3.6;

    private final Sheet sheet;
    private final Box room;
    private final Job job;
    private final SettingBlocksResult result;
    private final List<@Nullable BentHorizontal> bent = new ArrayList<>();
    private final double width;
    private final double span;
    private final Scale scale;
    private final double times;

    BendingPicture(
            Sheet sheet,
            Box room,
            Job job,
            SettingBlocksRequest inputs,
            SettingBlocksResult result) {
        this.sheet = sheet;
        this.room = room;
        this.job = job;
        this.result = result;
        width = inputs.width();
        span = inputs.support().span() == null ? width : inputs.support().span();
        Double mass = result.glassWeight() == null ? null : result.glassWeight().si();
        for (BlockCandidate candidate : result.candidates()) {
            bent.add(BentHorizontal.of(inputs, mass, candidate.distanceFromCorner().si()));
        }
        Box across = new Box(room.x() + SIDE, room.y(), room.width() - 2 * SIDE, room.height());
        double widest = Math.max(width, span);
        scale = Scale.fitting(across, 0, widest, 0, widest / 1000, 0);
        times = times();
    }

    /** Height of one picture. */
    private double high() {
        return room.height() / bent.size();
    }

    /** How many times larger than lengths deflections are drawn: round to two digits. */
    private double times() {
        double most = limit() == null ? 0 : Math.max(0, limit());
        for (BentHorizontal member : bent) {
            most = Math.max(most, member == null ? 0 : member.midSpan());
        }
        if (most == 0) {
            return 1;
        }
        double fitting = (high() - ABOVE - BELOW) / (most * scale.across());
        return new BigDecimal(Math.max(1, fitting))
                .round(new MathContext(2, RoundingMode.DOWN))
                .doubleValue();
    }

    /** Both scales in words. */
    String scale() {
        return "lengths "
                + scale.words()
                + ", deflections "
                + BigDecimal.valueOf(times).stripTrailingZeros().toPlainString()
                + " times larger";
    }

    private @Nullable Double limit() {
        return result.governingLimit() == null ? null : result.governingLimit().si();
    }

    /** Draws all; whether all that has to be written has room. */
    boolean draw() {
        boolean complete = high() > ABOVE + BELOW + 20;
        for (int i = 0; i < bent.size(); i++) {
            Box part = new Box(room.x(), room.y() + i * high(), room.width(), high());
            complete &= one(part, result.candidates().get(i), bent.get(i));
            if (i > 0) {
                sheet.line(Stroke.FINE, room.x(), part.y(), room.right(), part.y());
            }
        }
        return complete;
    }

    private boolean one(Box part, BlockCandidate candidate, @Nullable BentHorizontal member) {
        double y = part.y() + ABOVE;
        double left = scale.x((widest() - span) / 2);
        double right = left + span * scale.across();
        heading(part, candidate);
        support(left, y);
        support(right, y);
        sheet.line(Stroke.FINE, left, y, right, y);
        boolean complete;
        if (member == null) {
            complete =
                    sheet.putIfFree(
                            Label.centred(
                                            "Deflection UNDETERMINED",
                                            (left + right) / 2,
                                            y + 2 * LINE)
                                    .inBold(),
                            part);
        } else {
            complete = bent(part, left, y, candidate, member);
        }
        span(part, left, right, y);
        return complete;
    }

    private double widest() {
        return Math.max(width, span);
    }

    private void heading(Box part, BlockCandidate candidate) {
        BlockPlace place = result.recommended();
        boolean chosen = place != null && place.point() == candidate.point();
        List<String> words = new ArrayList<>();
        words.add("Blocks at the " + LiteBlocks.words(candidate.point()));
        if (chosen) {
            words.add("RECOMMENDED");
        }
        if (!candidate.eligible()) {
            words.add("NOT ELIGIBLE");
        }
        words.add(
                candidate.verdict() == Verdict.SATISFIED
                        ? "keeps the limit"
                        : candidate.verdict() == Verdict.EXCEEDED
                                ? "exceeds the limit"
                                : "limit UNDETERMINED");
        String said = String.join(", ", words);
        Label label =
                Label.start(
                        Words.fit(said, Label.SMALL * 1.12, part.width() - 8),
                        part.x() + 4,
                        part.y() + 11);
        sheet.put(label.inBold());
        if (chosen) {
            sheet.outline(Stroke.HEAVY, label.inBold().box().inset(-2.5));
        }
    }

    /** The bent line with its loads, its limit and its figure. */
    private boolean bent(
            Box part, double left, double y, BlockCandidate candidate, BentHorizontal member) {
        double down = scale.across() * times;
        List<Point> line = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double at = span * i / PIECES;
            line.add(new Point(left + at * scale.across(), y + member.deflection(at) * down));
        }
        sheet.path(Stroke.HEAVY, line);
        double right = left + span * scale.across();
        Double limit = limit();
        boolean complete = true;
        if (limit != null && limit > 0) {
            double at = y + limit * down;
            sheet.line(Stroke.DASHED, left, at, right, at);
            sheet.put(Label.end("limit", left - 8, at - 2));
            sheet.put(
                    Label.end(job.text(Quantity.of(Dimension.LENGTH, limit)), left - 8, at + 6.5));
        }
        double length = result.blockCutLength().si() * scale.across();
        String force = job.text(Quantity.of(Dimension.FORCE, member.load()));
        for (double at : new double[] {member.block(), span - member.block()}) {
            double x = left + at * scale.across();
            double top = y + member.deflection(at) * down;
            sheet.solid(new Box(x - length / 2, top - BLOCK, length, BLOCK));
            arrow(x, top - BLOCK);
            complete &= sheet.putIfFree(Label.centred(force, x, top - BLOCK - ARROW - 5), part);
        }
        place(part, left, y, candidate, y + member.deflection(member.block()) * down);
        return complete & figure(part, (left + right) / 2, y, member.midSpan() * down, candidate);
    }

    private void arrow(double x, double tip) {
        sheet.line(Stroke.MEDIUM, x, tip - ARROW, x, tip);
        sheet.shape(
                Stroke.FINE,
                List.of(new Point(x, tip), new Point(x - 2, tip - 5), new Point(x + 2, tip - 5)),
                "black");
    }

    /** From the glass corner to the center of the left block. */
    private void place(Box part, double left, double y, BlockCandidate candidate, double block) {
        double corner = left - (width - span) / 2 * scale.across();
        double center = corner + candidate.distanceFromCorner().si() * scale.across();
        double at = y - ARROW - BLOCK - 17;
        String words = job.length(candidate.distanceFromCorner().si());
        Dimensions.across(sheet, corner, center, at);
        sheet.line(Stroke.FINE, corner, at - 2, corner, y);
        sheet.line(Stroke.FINE, center, at - 2, center, block - BLOCK - ARROW - 10);
        double room = Label.width(words, Label.SMALL, false);
        Label on = Label.centred(words, (corner + center) / 2, at);
        if (room + 8 > center - corner || !sheet.putIfFree(on, part)) {
            sheet.put(Label.centred(words, center + 5 + room / 2, at));
        }
    }

    /** The deflection at mid-span, between the unbent and the bent line. */
    private boolean figure(Box part, double x, double y, double depth, BlockCandidate candidate) {
        Quantity deflection = candidate.memberDeflection();
        if (deflection == null) {
            return true;
        }
        sheet.line(Stroke.FINE, x, y, x, y + depth);
        sheet.shape(
                Stroke.FINE,
                List.of(
                        new Point(x, y + depth),
                        new Point(x - 1.6, y + depth - 4),
                        new Point(x + 1.6, y + depth - 4)),
                "black");
        Double used = candidate.utilization();
        String words =
                job.text(deflection)
                        + (used == null
                                ? ""
                                : ", " + Quantity.number(used).text(job.units()) + " of its limit");
        return sheet.putIfFree(Label.middle(words, x, y - 6), part);
    }

    private void span(Box part, double left, double right, double y) {
        double at = part.bottom() - 12;
        sheet.line(Stroke.FINE, left, y + 8, left, at + 2);
        sheet.line(Stroke.FINE, right, y + 8, right, at + 2);
        Dimensions.across(sheet, left, right, at, "span " + job.length(span));
    }

    private void support(double x, double y) {
        sheet.shape(
                Stroke.MEDIUM,
                List.of(new Point(x, y), new Point(x - 4, y + 7), new Point(x + 4, y + 7)),
                "white");
    }
}
