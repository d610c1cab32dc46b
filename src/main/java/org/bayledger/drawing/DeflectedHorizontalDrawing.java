package org.bayledger.drawing;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.BlockCandidate;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.review.ReviewItem;
import org.jspecify.annotations.Nullable;

/**
 * A horizontal as it bends under its lite, once for each place that the two blocks may take, one
 * below the other at one scale: lengths to scale, deflections larger, as the title block says.
 */
final class DeflectedHorizontalDrawing {

    private static final double PAD = 10;

    /** Width of the column on the right. */
    private static final double COLUMN = 215;

    private static final String NAME = "Horizontal bent by its lite";
    private static final String NONE = "\u2013";

    private final Job job;
    private final LoadedHorizontal horizontal;
    private final @Nullable SettingBlocksRequest inputs;
    private final @Nullable SettingBlocksResult result;

    DeflectedHorizontalDrawing(Job job) {
        this.job = job;
        horizontal = LoadedHorizontal.of(job);
        inputs = horizontal.inputs();
        result = horizontal.result();
    }

    byte[] draw() {
        return Attempt.best(job.units(), this::on).finish();
    }

    private Attempt on(Paper paper) {
        Sheet sheet = new Sheet(paper, title(), description());
        Box all = Sheet.frame(paper);
        Box body = block("", paper).body(all).inset(PAD);
        double width = Math.max(COLUMN, result == null ? 0 : table(result).width());
        Box room = new Box(body.x(), body.y(), body.width() - width - 2 * PAD, body.height());
        String scale = "none";
        boolean complete = true;
        if (inputs != null && result != null) {
            BendingPicture picture = new BendingPicture(sheet, room, job, inputs, result);
            complete = picture.draw();
            scale = picture.scale();
        } else {
            new Column(sheet, room).heading(unknown());
        }
        block(scale, paper).draw(sheet, all);
        Column column =
                new Column(sheet, new Box(body.right() - width, body.y(), width, body.height()));
        words(column);
        return new Attempt(sheet, (complete ? 0 : 1) + (column.full() ? 2 : 0));
    }

    private String unknown() {
        return "UNDETERMINED: how this horizontal bends is not known.";
    }

    private TitleBlock block(String scale, Paper paper) {
        return job.ofBay(
                NAME,
                List.of(
                        new TitleBlock.Entry("Horizontal", name()),
                        new TitleBlock.Entry("Under lite", lite(horizontal.item())),
                        new TitleBlock.Entry("Verdict", horizontal.item().verdict().name()),
                        new TitleBlock.Entry(
                                "Units",
                                Wording.lengths(job.units())
                                        + ", deflections: "
                                        + Dimension.LENGTH.symbol(job.units()))),
                scale,
                paper);
    }

    private String name() {
        return job.bay().id() + "/horizontal/" + horizontal.line();
    }

    private static String lite(ReviewItem item) {
        return item.id().substring(item.id().lastIndexOf('/') + 1);
    }

    private String title() {
        return NAME + ", " + name() + " under lite " + lite(horizontal.item());
    }

    private String description() {
        List<String> said = new ArrayList<>();
        said.add(title() + " of " + job.request().document().name() + ".");
        if (inputs == null || result == null) {
            said.add(unknown());
        }
        said.addAll(limits());
        if (result != null) {
            result.candidates().forEach(candidate -> said.add(sentence(candidate)));
        }
        said.add(recommendation());
        said.addAll(horizontal.open());
        return String.join(" ", said);
    }

    private void words(Column column) {
        column.heading("What bends it");
        loads().forEach(column::text);
        column.gap();
        column.heading("How far it may bend");
        limits().forEach(column::text);
        column.gap();
        if (result != null) {
            column.table(table(result));
            column.gap();
            result.candidates().stream()
                    .filter(candidate -> candidate.reason() != null)
                    .forEach(candidate -> column.text(notEligible(candidate)));
        }
        column.gap();
        column.heading(recommendation());
        if (result != null && result.shopDrawingNote().text() != null) {
            column.text("Note for the shop drawings: " + result.shopDrawingNote().text());
        }
        horizontal.open().forEach(column::text);
        column.gap();
        others(column);
    }

    /** The other lites on the same line. */
    private void others(Column column) {
        if (horizontal.others().size() < 2) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (ReviewItem item : horizontal.others()) {
            BlockPlace place =
                    item.result() instanceof SettingBlocksResult found ? found.recommended() : null;
            rows.add(
                    List.of(
                            lite(item) + (item.equals(horizontal.item()) ? ", drawn" : ""),
                            place == null ? NONE : LiteBlocks.words(place.point()),
                            number(item.utilization()),
                            item.verdict().name()));
        }
        column.heading("Lites on this line");
        column.table(
                new Table(
                        List.of(
                                List.of("Lite", ""),
                                List.of("Place", ""),
                                List.of("Of its", "limit"),
                                List.of("Verdict", "")),
                        rows));
    }

    private List<String> loads() {
        if (inputs == null || result == null || result.glassWeight() == null) {
            return List.of("The weight of the lite is not known.");
        }
        List<String> loads = new ArrayList<>();
        loads.add(
                "A lite of "
                        + job.text(result.glassWeight())
                        + " on two blocks, each "
                        + job.length(result.blockCutLength().si())
                        + " long and each carrying half of it, "
                        + job.text(
                                Quantity.of(
                                        Dimension.FORCE,
                                        result.glassWeight().si() * STANDARD_GRAVITY / 2))
                        + ".");
        loads.add(
                inputs.support().massPerLength() == null
                        ? "The horizontal's own weight was not given and is not in the numbers."
                        : "The horizontal's own weight is in the numbers and not drawn as a load.");
        return loads;
    }

    private List<String> limits() {
        if (result == null || result.governingLimit() == null) {
            return List.of("Its limit is not known.");
        }
        List<String> limits = new ArrayList<>();
        limits.add("Limit that governs: " + job.text(result.governingLimit()) + ".");
        if (result.deflectionLimit() != null) {
            limits.add(
                    "Limit of the member alone, the smaller of L/360 and 1/8 in: "
                            + job.text(result.deflectionLimit())
                            + (result.deflectionLimit().equals(result.governingLimit())
                                    ? ", which governs."
                                    : "; bite and clearance below ask for less."));
        }
        return limits;
    }

    private Table table(SettingBlocksResult of) {
        List<List<String>> rows = new ArrayList<>();
        for (BlockCandidate candidate : of.candidates()) {
            rows.add(
                    List.of(
                            LiteBlocks.words(candidate.point()),
                            job.length(candidate.distanceFromCorner().si()),
                            text(candidate.memberDeflection()),
                            number(candidate.utilization()),
                            candidate.eligible() ? "yes" : "no"));
        }
        return new Table(
                List.of(
                        List.of("Blocks at", ""),
                        List.of("Corner to", "center"),
                        List.of("Mid-span", "bends"),
                        List.of("Of its", "limit"),
                        List.of("Eligible", "")),
                rows);
    }

    private String text(@Nullable Quantity quantity) {
        return quantity == null ? NONE : job.text(quantity);
    }

    private String number(@Nullable Double utilization) {
        return utilization == null ? NONE : Quantity.number(utilization).text(job.units());
    }

    private static String notEligible(BlockCandidate candidate) {
        return "Not eligible, "
                + LiteBlocks.words(candidate.point())
                + ": "
                + candidate.reason()
                + ".";
    }

    private String sentence(BlockCandidate candidate) {
        return "Blocks at the "
                + LiteBlocks.words(candidate.point())
                + ", "
                + job.length(candidate.distanceFromCorner().si())
                + " from the glass corners: "
                + (candidate.memberDeflection() == null
                        ? "deflection undetermined"
                        : "mid-span bends by " + job.text(candidate.memberDeflection()))
                + ", utilization "
                + number(candidate.utilization())
                + ", "
                + candidate.verdict()
                + (candidate.reason() == null ? "" : ", not eligible: " + candidate.reason())
                + ".";
    }

    private String recommendation() {
        BlockPlace place = result == null ? null : result.recommended();
        return place == null
                ? "No place is recommended."
                : "Recommended: "
                        + LiteBlocks.words(place.point())
                        + ", "
                        + job.length(place.distanceFromCorner().si())
                        + " from each glass corner.";
    }
}
