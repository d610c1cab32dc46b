package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.drawing.Sheet.Point;
import org.jspecify.annotations.Nullable;

/** Lites of a bay with their setting blocks, shims and what is written in them. */
final class BlockPicture {

    /** Pattern of a lite whose blocks are not settled. */
    static final Hatch OPEN = Hatch.of(8);

    private static final Hatch SHIM = Hatch.of(6);

    private static final double LINE = 9;

    /** Height of a block and of shims on the sheet, points: not to scale. */
    private static final double HEIGHT = 3.6;

    /** From the top of the blocks to the dimension lines over them, points. */
    private static final double OFF = 8;

    /** What blocks and their dimensions take of the height of a lite, points. */
    private static final double DIMENSIONS = 26;

    private static final double TRIANGLE = 3;

    /** Lites smaller than this are drawn without their blocks, points. */
    private static final double NARROW = 9;

    private static final double LOW = 9;

    private final Sheet sheet;
    private final Scale scale;
    private final BayFrame frame;
    private final BlockSchedule schedule;
    private final Job job;
    private int small;

    BlockPicture(Sheet sheet, Scale scale, BayFrame frame, BlockSchedule schedule, Job job) {
        this.sheet = sheet;
        this.scale = scale;
        this.frame = frame;
        this.schedule = schedule;
        this.job = job;
    }

    /** Draws all lites; how many of them have no room for all that has to be written in them. */
    int draw(List<LiteBlocks> lites) {
        int lacking = 0;
        List<LiteBlocks> large = new ArrayList<>();
        for (LiteBlocks lite : lites) {
            Box box = frame.lite(scale, lite.column(), lite.row());
            if (box.width() < NARROW || box.height() < LOW) {
                small++;
            } else {
                large.add(lite);
            }
        }
        for (LiteBlocks lite : large) {
            Box box = frame.lite(scale, lite.column(), lite.row());
            if (!lite.settled()) {
                sheet.area(Stroke.FINE, box.inset(1.2), OPEN);
            }
            lacking += blocks(lite, box) ? 0 : 1;
        }
        for (LiteBlocks lite : large) {
            lacking += words(lite, frame.lite(scale, lite.column(), lite.row())) ? 0 : 1;
        }
        shims(large);
        return lacking + small;
    }

    /** How many lites are too small for their blocks to be drawn. */
    int small() {
        return small;
    }

    private boolean blocks(LiteBlocks lite, Box box) {
        BlockPlace place = lite.place();
        SettingBlocksResult result = lite.result();
        if (place == null || result == null) {
            return true;
        }
        double length = result.blockCutLength().si() * scale.across();
        double off = place.distanceFromCorner().si() * scale.across();
        double top = box.bottom() - HEIGHT;
        Box glass = glass(lite, box);
        sheet.line(Stroke.FINE, glass.x(), top, glass.right(), top);
        for (double center : new double[] {glass.x() + off, glass.right() - off}) {
            Box block = new Box(center - length / 2, top, length, HEIGHT);
            if (lite.settled()) {
                sheet.solid(block);
            } else {
                sheet.blank(Stroke.MEDIUM, block);
            }
            if (lite.shimmed()) {
                sheet.area(Stroke.FINE, new Box(block.x(), box.bottom(), length, HEIGHT), SHIM);
            }
            sheet.keepClear(block);
        }
        Double quarter = lite.quarter();
        if (lite.moved() && quarter != null) {
            double at = quarter * scale.across();
            triangle(sheet, glass.x() + at, top);
            triangle(sheet, glass.right() - at, top);
        }
        return dimension(lite, glass, off, top - OFF) || !schedule.isFirst(lite);
    }

    /** The glass of a lite, in the middle of its column. */
    private Box glass(LiteBlocks lite, Box box) {
        double width = lite.width() == null ? box.width() : lite.width() * scale.across();
        return new Box(box.middleX() - width / 2, box.y(), width, box.height());
    }

    private static void triangle(Sheet sheet, double x, double y) {
        sheet.shape(
                Stroke.FINE,
                List.of(
                        new Point(x, y),
                        new Point(x - TRIANGLE, y - 1.6 * TRIANGLE),
                        new Point(x + TRIANGLE, y - 1.6 * TRIANGLE)),
                "white");
    }

    /** From each corner to the center of its block, where the lite has room for it. */
    private boolean dimension(LiteBlocks lite, Box box, double off, double y) {
        String words = job.length(distance(lite));
        double width = Label.width(words, Label.SMALL, false);
        // words that have no room in their line stand over it, flush with the corner
        boolean on = width + 6 < off;
        double from = on ? off / 2 : 2 + width / 2;
        double at = on ? y : y - LINE / 2 - 1;
        Label left = Label.centred(words, box.x() + from, at);
        Label right = Label.centred(words, box.right() - from, at);
        boolean both = 2 * (from + width / 2) + 2 < box.width();
        if (!sheet.putIfFree(both ? List.of(left, right) : List.of(left), box.inset(0.5))) {
            return false;
        }
        line(box.x(), box.x() + off, y, box.x() + off);
        line(box.right() - off, box.right(), y, box.right() - off);
        return true;
    }

    private static double distance(LiteBlocks lite) {
        BlockPlace place = lite.place();
        return place == null ? 0 : place.distanceFromCorner().si();
    }

    private void line(double from, double to, double y, double center) {
        Dimensions.across(sheet, from, to, y);
        sheet.line(Stroke.FINE, center, y - 2, center, y + OFF);
    }

    /** The name of the glass, the letter of the blocks, the mark of the note, and what is open. */
    private boolean words(LiteBlocks lite, Box box) {
        String letter = schedule.letter(lite);
        String mark = lite.mark() == null ? letter : letter + " " + lite.mark();
        String state = BlockSchedule.state(lite);
        String glass = BlockSchedule.glass(lite);
        Box room = box.inset(1);
        boolean all =
                written(room, glass, "Blocks " + mark, state)
                        || written(room, glass, mark, state)
                        || written(room, glass + "  " + mark, null, state)
                        || written(room, mark, null, state);
        return all || (written(room, mark, null, null) && state == null);
    }

    private boolean written(
            Box box, String first, @Nullable String second, @Nullable String state) {
        List<Label> lines = new ArrayList<>();
        lines.add(Label.centred(first, 0, 0).inBold());
        if (second != null) {
            lines.add(Label.centred(second, 0, 0));
        }
        if (state != null) {
            lines.add(Label.centred(state, 0, 0).inBold());
        }
        double height = lines.size() * LINE;
        // above the dimensions, in a high lite a little above its middle
        double middle = Math.min(0.42 * box.height(), (box.height() - DIMENSIONS) / 2);
        double y = box.y() + Math.max(0.5, middle - height / 2) + LINE / 2;
        List<Label> placed = new ArrayList<>();
        for (Label line : lines) {
            Label label = Label.centred(line.words(), box.middleX(), y);
            placed.add(line.bold() ? label.inBold() : label);
            y += LINE;
        }
        return sheet.putIfFree(placed, box);
    }

    /** Names the shims at the right end of a sill that has some. */
    private void shims(List<LiteBlocks> lites) {
        Box all = frame.box(scale);
        lites.stream()
                .filter(LiteBlocks::shimmed)
                .reduce((first, last) -> last)
                .ifPresent(
                        lite -> {
                            Box box = frame.lite(scale, lite.column(), lite.row());
                            double x = glass(lite, box).right() - distance(lite) * scale.across();
                            double y = all.bottom() + HEIGHT / 2;
                            Label words = Label.centred("Shims", 0, all.bottom() + LINE);
                            Label end = Label.start(words.words(), all.right() + 4, words.y());
                            Dimensions.leader(
                                    sheet,
                                    new Point(x, y),
                                    new Point(all.right() - 3, all.bottom() + LINE),
                                    new Point(all.right() + 3, all.bottom() + LINE));
                            sheet.put(end);
                        });
    }

    static void settledSign(Sheet sheet, Box box) {
        sheet.solid(block(box));
    }

    static void heldSign(Sheet sheet, Box box) {
        sheet.blank(Stroke.MEDIUM, block(box));
    }

    static void quarterSign(Sheet sheet, Box box) {
        triangle(sheet, box.middleX(), box.middleY() + TRIANGLE);
    }

    static void shimSign(Sheet sheet, Box box) {
        sheet.area(Stroke.FINE, block(box), SHIM);
    }

    private static Box block(Box box) {
        return new Box(box.x() + 3, box.middleY() - HEIGHT / 2, box.width() - 6, HEIGHT);
    }
}
