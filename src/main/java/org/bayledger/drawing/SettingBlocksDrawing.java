package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.bayledger.check.Verdict;
import org.bayledger.review.ReviewResult;

/**
 * A bay as seen from outside with the setting blocks of its lites: the frame on the left, the
 * schedule of blocks and the notes for the shop drawings on the right.
 */
final class SettingBlocksDrawing {

    private static final double PAD = 10;

    /** Room around the frame for shims and what is written at them, points. */
    private static final double AROUND = 8;

    /** Width of the column on the right, at least. */
    private static final double COLUMN = 235;

    private static final String NAME = "Setting blocks";

    /** Notes without room outweigh any number of lites without words. */
    private static final int FULL = 1_000_000;

    /** Widths nearer than this are the same, m. */
    private static final double SAME = 1e-6;

    private final Job job;
    private final List<LiteBlocks> lites;
    private final BlockSchedule schedule;
    private final BayFrame frame;

    SettingBlocksDrawing(Job job) {
        this.job = job;
        lites = LiteBlocks.of(job);
        schedule = new BlockSchedule(job, lites);
        frame = new BayFrame(job.bay(), job.units(), AROUND);
    }

    byte[] draw() {
        return Attempt.best(job.units(), this::on).finish();
    }

    private Attempt on(Paper paper) {
        Sheet sheet = new Sheet(paper, title(), description());
        Box all = Sheet.frame(paper);
        Box body = block("", paper).body(all).inset(PAD);
        double width = Math.max(COLUMN, schedule.table().width());
        Box room = new Box(body.x(), body.y(), body.width() - width - PAD, body.height());
        Scale scale = frame.scale(room);
        block(scale.words(), paper).draw(sheet, all);
        frame.draw(sheet, scale);
        boolean complete = frame.dimension(sheet, scale, room);
        BlockPicture picture = new BlockPicture(sheet, scale, frame, schedule, job);
        int lacking = picture.draw(lites);
        Column column =
                new Column(sheet, new Box(body.right() - width, body.y(), width, body.height()));
        words(column, picture.small());
        return new Attempt(sheet, lacking + (complete ? 0 : 1) + (column.full() ? FULL : 0));
    }

    private TitleBlock block(String scale, Paper paper) {
        return job.ofBay(
                NAME,
                List.of(
                        new TitleBlock.Entry("Seen from", "outside"),
                        new TitleBlock.Entry("Blocks", material()),
                        new TitleBlock.Entry("Verdict", verdict().name()),
                        new TitleBlock.Entry("Lengths", Wording.lengths(job.units()))),
                scale,
                paper);
    }

    private Verdict verdict() {
        return Verdict.ofAll(lites.stream().map(LiteBlocks::verdict).toList());
    }

    private String material() {
        for (LiteBlocks lite : lites) {
            if (lite.result() != null) {
                return lite.result().blockMaterial().replace("+-", "\u00b1");
            }
        }
        return "undetermined";
    }

    private String title() {
        return NAME + ", bay " + job.bay().id() + ", elevation " + job.request().elevation();
    }

    private String description() {
        List<String> said = new ArrayList<>();
        said.add(title() + " of " + job.request().document().name() + ".");
        said.addAll(schedule.sentences());
        notes().forEach((note, names) -> said.add(note + " (" + names + ")"));
        open().forEach((why, names) -> said.add("Lites " + names + ": " + why));
        return String.join(" ", said);
    }

    private void words(Column column, int small) {
        column.table(schedule.table());
        column.gap();
        if (small > 0) {
            column.text(
                    small
                            + " of "
                            + lites.size()
                            + " lites are too small here for their blocks to be drawn.");
        }
        notes(column);
        if (!open().isEmpty()) {
            column.heading("Not settled");
            open().forEach((why, names) -> column.text("Lites " + names + ": " + why));
            column.gap();
        }
        signs(column);
        column.text(
                "Lites are named by column and row. Two blocks a lite, drawn to scale along the"
                        + " lite and not across it. Distances run from the glass corner to the"
                        + " center of the block, the same at both corners; "
                        + (asWideAsColumns()
                                ? "the glass is taken as wide as its column."
                                : "the glass is drawn as wide as it is, in the middle of its"
                                        + " column."));
    }

    private boolean asWideAsColumns() {
        return lites.stream()
                .allMatch(
                        lite ->
                                lite.width() == null
                                        || Math.abs(
                                                        lite.width()
                                                                - job.bay()
                                                                        .columns()
                                                                        .get(lite.column() - 1))
                                                < SAME);
    }

    private void notes(Column column) {
        column.heading("Notes for the shop drawings");
        if (notes().isEmpty()) {
            column.text(
                    lites.stream().allMatch(LiteBlocks::settled)
                            ? "None: no blocks of this bay leave the quarter points."
                            : "None so far: see what is not settled.");
        }
        notes().forEach((note, names) -> column.text(note + " (lites " + names + ")"));
        column.gap();
    }

    /** The review's notes on lites of this bay, with the lites. */
    private Map<String, String> notes() {
        Map<String, String> notes = new LinkedHashMap<>();
        for (ReviewResult.Note note : job.result().notes()) {
            List<LiteBlocks> own =
                    lites.stream()
                            .filter(
                                    lite ->
                                            note.items()
                                                    .contains(
                                                            job.bay().id()
                                                                    + "/lite/"
                                                                    + lite.name()))
                            .toList();
            if (!own.isEmpty()) {
                String mark = note.mark() == null ? "Shims: " : note.mark() + " ";
                notes.put(mark + note.text(), BlockSchedule.names(own));
            }
        }
        return notes;
    }

    /** What keeps blocks from being settled, with the lites. */
    private Map<String, String> open() {
        Map<String, List<LiteBlocks>> open = new LinkedHashMap<>();
        for (LiteBlocks lite : lites) {
            if (!lite.settled()) {
                for (String why : new TreeSet<>(lite.open())) {
                    open.computeIfAbsent(why, words -> new ArrayList<>()).add(lite);
                }
            }
        }
        Map<String, String> named = new LinkedHashMap<>();
        open.forEach((why, of) -> named.put(why, BlockSchedule.names(of)));
        return named;
    }

    private void signs(Column column) {
        if (lites.stream().anyMatch(LiteBlocks::settled)) {
            column.sign(BlockPicture::settledSign, "Setting block");
        }
        if (lites.stream().anyMatch(lite -> lite.place() != null && !lite.settled())) {
            column.sign(
                    BlockPicture::heldSign,
                    "Setting block at the best place known, not to be set before it is settled");
        }
        if (lites.stream().anyMatch(LiteBlocks::moved)) {
            column.sign(
                    BlockPicture::quarterSign,
                    "Quarter point, which the blocks of this lite leave");
        }
        if (lites.stream().anyMatch(LiteBlocks::shimmed)) {
            column.sign(BlockPicture::shimSign, "Solid shims under the sill, below each block");
        }
        if (lites.stream().anyMatch(lite -> !lite.settled())) {
            column.sign(
                    (sheet, box) -> sheet.area(Stroke.FINE, box, BlockPicture.OPEN),
                    "Lite whose blocks are not settled: UNDETERMINED, or no place passes");
        }
        column.gap();
    }
}
