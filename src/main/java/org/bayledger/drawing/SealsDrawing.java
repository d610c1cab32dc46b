package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.bayledger.check.Finding;
import org.bayledger.drawing.JointMark.Place;
import org.bayledger.review.ReviewItem;
import org.bayledger.seals.SealJoint;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.SealsResult;
import org.jspecify.annotations.Nullable;

/**
 * The frame of a bay with its joints: marks by type on the frame, what the marks stand for on the
 * right, in the order in which the joints are sealed, and one end of a horizontal taken apart.
 */
final class SealsDrawing {

    private static final double PAD = 10;

    /** Room around the frame for the joints along its edges, points. */
    private static final double AROUND = 26;

    private static final double COLUMN = 240;

    private static final String NAME = "Internal seals";
    private static final String NONE = "\u2013";

    /** Marks on one another outweigh words without room. */
    private static final int CROWDED = 1_000;

    private final Job job;
    private final ReviewItem item;
    private final BayFrame frame;

    SealsDrawing(Job job) {
        this.job = job;
        item = job.items("internal-seals").get(0);
        frame = new BayFrame(job.bay(), job.units(), AROUND);
    }

    /** With as much of the joints one by one as some paper has room for. */
    byte[] draw() {
        Attempt best = null;
        for (JointPicture.Level level : JointPicture.Level.values()) {
            if (isTooMuch(level)) {
                continue;
            }
            best = Attempt.best(job.units(), paper -> on(paper, level));
            if (best.lacks() < CROWDED) {
                break;
            }
        }
        return Objects.requireNonNull(best).finish();
    }

    private boolean isTooMuch(JointPicture.Level level) {
        return item.result() instanceof SealsResult result
                && item.inputs() instanceof SealsRequest request
                && JointPicture.isTooMuch(result, request, level);
    }

    private Attempt on(Paper paper, JointPicture.Level level) {
        Sheet sheet = new Sheet(paper, title(), description());
        Box all = Sheet.frame(paper);
        Box body = block("", paper).body(all).inset(PAD);
        double width = Math.max(COLUMN, width());
        Box room = new Box(body.x(), body.y(), body.width() - width - PAD, body.height());
        Scale scale = frame.scale(room);
        block(scale.words(), paper).draw(sheet, all);
        frame.draw(sheet, scale);
        boolean complete = frame.dimension(sheet, scale, room);
        boolean clear = true;
        Column column =
                new Column(sheet, new Box(body.right() - width, body.y(), width, body.height()));
        if (item.result() instanceof SealsResult result
                && item.inputs() instanceof SealsRequest request) {
            JointPicture picture = new JointPicture(sheet, scale, request, result, level);
            clear = picture.draw(room);
            words(column, sheet, result, picture);
        } else {
            column.heading("UNDETERMINED");
            open().forEach(column::text);
        }
        return new Attempt(
                sheet, (complete ? 0 : 1) + (column.full() ? 2 : 0) + (clear ? 0 : CROWDED));
    }

    /** Why the check did not run, in sentences. */
    private List<String> open() {
        return item.findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.ACTION)
                .map(Finding::text)
                .toList();
    }

    private double width() {
        return item.result() instanceof SealsResult result
                ? table(result, new ArrayList<>()).width()
                : 0;
    }

    private TitleBlock block(String scale, Paper paper) {
        return job.ofBay(
                NAME,
                List.of(
                        new TitleBlock.Entry("Seen from", "outside"),
                        new TitleBlock.Entry("Drainage", drainage()),
                        new TitleBlock.Entry("Verdict", item.verdict().name()),
                        new TitleBlock.Entry("Lengths", Wording.lengths(job.units()))),
                scale,
                paper);
    }

    private String drainage() {
        return item.inputs() instanceof SealsRequest request
                ? words(request.details().drainage())
                : "undetermined";
    }

    private static String words(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String title() {
        return NAME + ", bay " + job.bay().id() + ", elevation " + job.request().elevation();
    }

    private String description() {
        List<String> said = new ArrayList<>();
        said.add(title() + " of " + job.request().document().name() + ".");
        if (item.result() instanceof SealsResult result) {
            for (SealJoint joint : result.joints()) {
                said.add(
                        "Step "
                                + joint.step()
                                + ": "
                                + joint.count()
                                + " of type "
                                + words(joint.type())
                                + (joint.reachableAfterGlazing()
                                        ? ", reachable after glazing"
                                        : ", not reachable after glazing")
                                + (joint.holdPoint() ? ", hold point." : "."));
            }
            said.add("The glass is set at step " + result.glazingStep() + ".");
            notCounted(result).forEach(said::add);
        } else {
            said.add("UNDETERMINED.");
            said.addAll(open());
        }
        return String.join(" ", said);
    }

    private void words(Column column, Sheet sheet, SealsResult result, JointPicture picture) {
        List<SealJoint> joints = result.joints();
        List<@Nullable SealJoint> inRow = new ArrayList<>();
        Table table = table(result, inRow);
        column.table(
                table,
                (row, cell) -> {
                    SealJoint joint = inRow.get(row);
                    if (joint != null) {
                        sign(sheet, JointMark.of(joint.type()), cell);
                    }
                });
        if (picture.notDrawn().values().stream().anyMatch(why -> why.contains("one sign"))) {
            column.sign(
                    (on, box) -> sign(on, JointPicture.END, box),
                    "All joints at one end of a horizontal");
        }
        column.gap();
        notDrawn(column, picture, joints);
        notCounted(result).forEach(column::text);
        column.text(
                "Hold point: somebody inspects and signs before the next thing hides the joint."
                        + " Marks stand beside their lines.");
        column.gap();
        if (!picture.atEnds().isEmpty()) {
            column.heading("One end of a horizontal, taken apart, with steps");
            column.picture(
                    JointDetail.HEIGHT, box -> new JointDetail(sheet, box).draw(picture.atEnds()));
        }
    }

    private static void sign(Sheet sheet, JointMark mark, Box cell) {
        Place place =
                mark.line()
                        ? new Place(
                                cell.x() + 3,
                                cell.middleY(),
                                cell.right() - 3,
                                cell.middleY(),
                                false)
                        : Place.spot(cell.middleX(), cell.middleY(), false);
        mark.draw(sheet, "legend", List.of(place));
    }

    /** Types with their steps, the setting of the glass among them. */
    private Table table(SealsResult result, List<@Nullable SealJoint> inRow) {
        List<List<String>> rows = new ArrayList<>();
        boolean glazed = false;
        for (SealJoint joint : result.joints()) {
            if (!glazed && joint.step() > result.glazingStep()) {
                glazed = true;
                rows.add(List.of("", "THE GLASS IS SET", "" + result.glazingStep(), "", "", ""));
                inRow.add(null);
            }
            rows.add(
                    List.of(
                            "",
                            words(joint.type()),
                            "" + joint.step(),
                            "" + joint.count(),
                            joint.reachableAfterGlazing() ? "reachable" : "hidden",
                            joint.holdPoint() ? "HOLD" : NONE));
            inRow.add(joint);
        }
        if (!glazed) {
            rows.add(List.of("", "THE GLASS IS SET", "" + result.glazingStep(), "", "", ""));
            inRow.add(null);
        }
        return new Table(
                List.of(
                        List.of("Mark", ""),
                        List.of("Joint", ""),
                        List.of("", "Step"),
                        List.of("", "Count"),
                        List.of("After", "glazing"),
                        List.of("Hold", "point")),
                rows);
    }

    /** What is not drawn one by one, by reason. */
    private static void notDrawn(Column column, JointPicture picture, List<SealJoint> joints) {
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        for (SealJoint joint : joints) {
            String why = picture.notDrawn().get(joint.type());
            if (why != null) {
                reasons.computeIfAbsent(why, reason -> new ArrayList<>())
                        .add(joint.count() + " " + words(joint.type()));
            }
        }
        reasons.forEach(
                (why, types) ->
                        column.text(
                                "Not drawn one by one: "
                                        + String.join(", ", types)
                                        + ": "
                                        + why
                                        + "."));
    }

    /** Types that the check could not count, in sentences. */
    private List<String> notCounted(SealsResult result) {
        if (result.notCounted().isEmpty()) {
            return List.of();
        }
        String types =
                result.notCounted().stream()
                        .map(SealsDrawing::words)
                        .collect(Collectors.joining(", "));
        List<String> said = new ArrayList<>();
        said.add("UNDETERMINED, not counted and not drawn: " + types + ".");
        result.outcome().findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.ACTION)
                .filter(finding -> finding.code().startsWith("JOINTS_PARTLY"))
                .forEach(finding -> said.add(finding.text()));
        return said;
    }
}
