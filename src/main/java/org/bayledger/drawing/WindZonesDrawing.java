package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bayledger.check.Cautions;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Bay;
import org.bayledger.review.ReviewResult;

/**
 * An elevation with its wind zones, its bays and the design pressures of both signs: the wall on
 * the left, what the pressures are on the right.
 */
final class WindZonesDrawing {

    private static final double PAD = 10;
    private static final double LINE = 9;
    private static final double SWATCH = 22;

    /** Room above the wall for the names and widths of zones, and below it for its width. */
    private static final double ABOVE = 44;

    private static final double BELOW = 34;

    /** The wall is drawn no narrower and no lower than this, points. */
    private static final double LEAST = 120;

    /** Width of the column on the right, at least. */
    private static final double COLUMN = 200;

    /** Lines nearer to one another than this are left out, points. */
    private static final double CLOSE = 2;

    private final DrawingRequest request;
    private final UnitSystem units;
    private final String origin;
    private final ElevationPicture picture;
    private final PressureTable pressures;
    private final WallLabels labels;

    WindZonesDrawing(
            DrawingRequest request, ReviewResult result, UnitSystem units, String origin) {
        this.request = request;
        this.units = units;
        this.origin = origin;
        picture = ElevationPicture.of(request, result);
        pressures = new PressureTable(picture, units);
        labels = new WallLabels(picture, pressures, units);
    }

    /**
     * On the smallest paper on which everything has room; where names of bays have room on none, on
     * the smallest on which all the rest has.
     */
    byte[] draw() {
        Attempt best = null;
        for (Paper paper : Paper.sizes(units)) {
            Attempt attempt = new Attempt(paper);
            if (attempt.complete && attempt.named) {
                return attempt.sheet.finish();
            }
            if (best == null || (attempt.complete && !best.complete)) {
                best = attempt;
            }
        }
        return Objects.requireNonNull(best).sheet.finish();
    }

    private String title() {
        return "Wind zones and design pressures, elevation " + request.elevation();
    }

    private String description() {
        List<String> said = new ArrayList<>();
        said.add(title() + " of " + request.document().name() + ".");
        said.add("Basis of the pressures: " + pressures.basis() + ", in " + pressures.unit() + ".");
        for (ElevationPicture.Row row : picture.rows()) {
            said.add("Zone " + row.zone() + ": " + String.join("; ", pressures.lines(row)) + ".");
        }
        said.addAll(warnings());
        return String.join(" ", said);
    }

    /** What has no pressure, in words. */
    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (request.document().site() == null) {
            warnings.add("Wind pressures UNDETERMINED: the document gives no site.");
        } else if (picture.rows().isEmpty()) {
            warnings.add(
                    "Wind pressures UNDETERMINED: the standard does not reach up to the top of this"
                            + " elevation, or the document has nothing that the wind loads.");
        }
        picture.withoutPressure()
                .forEach(
                        (bay, items) ->
                                warnings.add(
                                        "UNDETERMINED, above the height that the standard reaches: "
                                                + String.join(", ", items)
                                                + "."));
        return warnings;
    }

    private TitleBlock block(String scale, Paper paper) {
        return new TitleBlock(
                List.of(
                        List.of(
                                new TitleBlock.Entry("Job", request.document().name()),
                                new TitleBlock.Entry(
                                        "Drawing", "Wind zones and design pressures"),
                                new TitleBlock.Entry("Elevation", request.elevation())),
                        List.of(
                                new TitleBlock.Entry(
                                        "Pressures by", Wording.source(request.document(), units)),
                                new TitleBlock.Entry("Basis of the pressures", pressures.basis()),
                                new TitleBlock.Entry(
                                        "Units", pressures.unit() + ", " + Wording.lengths(units))),
                        List.of(
                                new TitleBlock.Entry("Made from", origin),
                                new TitleBlock.Entry("Scale in a full-size print", scale),
                                new TitleBlock.Entry("Sheet", paper.name()))),
                Cautions.with());
    }

    /** The drawing on one size of paper. */
    private final class Attempt {

        private final Sheet sheet;
        /** Whether all pressures and all that is to be said stand on the sheet. */
        private boolean complete = true;

        /** Whether all bays are named. */
        private boolean named = true;

        Attempt(Paper paper) {
            sheet = new Sheet(paper, title(), description());
            Box frame = Sheet.frame(paper);
            double foot = block("", paper).height(frame.width());
            Box body =
                    new Box(frame.x(), frame.y(), frame.width(), frame.height() - foot).inset(PAD);
            double column = Math.max(COLUMN, pressures.table().width());
            Box wall = new Box(body.x(), body.y(), body.width() - column - PAD, body.height());
            Scale scale = scale(wall);
            block(scale.words(), paper).draw(sheet, frame);
            wall(scale);
            labels.around(sheet, scale, wall);
            List<String> notes = bays(scale);
            labels.zones(sheet, scale);
            if (picture.zones().isEmpty()) {
                labels.across(sheet, scale, warnings());
            }
            right(new Box(body.right() - column, body.y(), column, body.height()), notes);
        }

        private Scale scale(Box wall) {
            double gutter = labels.gutter();
            Box room =
                    new Box(
                            wall.x() + gutter,
                            wall.y() + ABOVE,
                            wall.width() - gutter - PAD,
                            wall.height() - ABOVE - BELOW);
            return Scale.fitting(
                    room,
                    0,
                    picture.face().width(),
                    labels.foot(),
                    picture.top(),
                    Math.min(LEAST, room.height()));
        }

        private void wall(Scale scale) {
            for (ElevationPicture.Zone zone : picture.zones()) {
                sheet.area(
                        Stroke.DASHED,
                        scale.box(zone.from(), zone.to(), zone.bottom(), zone.top()),
                        picture.hatch(zone.name()));
            }
            for (Bay bay : picture.bays()) {
                grid(scale, bay);
            }
            sheet.outline(
                    Stroke.HEAVY,
                    scale.box(
                            0, picture.face().width(), picture.face().base(), picture.top()));
        }

        private void grid(Scale scale, Bay bay) {
            Box frame = scale.box(bay.offset(), bay.right(), bay.sill(), bay.top());
            double last = frame.x();
            for (int column = 2; column <= bay.columns().size(); column++) {
                double x = scale.x(bay.columnStart(column));
                if (x - last > CLOSE && frame.right() - x > CLOSE) {
                    sheet.line(Stroke.FINE, x, frame.y(), x, frame.bottom());
                    last = x;
                }
            }
            last = frame.bottom();
            for (int row = 2; row <= bay.rows().size(); row++) {
                double y = scale.y(bay.sill() + bay.rowStart(row));
                if (last - y > CLOSE && y - frame.y() > CLOSE) {
                    sheet.line(Stroke.FINE, frame.x(), y, frame.right(), y);
                    last = y;
                }
            }
            sheet.outline(bay.id().equals(request.bay()) ? Stroke.HEAVY : Stroke.MEDIUM, frame);
            if (bay.id().equals(request.bay())) {
                sheet.outline(Stroke.MEDIUM, frame.inset(-2.5));
            }
        }

        /** Names the bays; gives what is to be said of those whose names have no room. */
        private List<String> bays(Scale scale) {
            BayNames names = new BayNames(sheet);
            int number = 0;
            for (Bay bay : picture.bays()) {
                number++;
                Box frame = scale.box(bay.offset(), bay.right(), bay.sill(), bay.top());
                List<String> below =
                        picture.withoutPressure().containsKey(bay.id())
                                ? List.of("UNDETERMINED")
                                : List.of();
                names.write(bay, number, frame.inset(0.3), below);
            }
            List<String> notes = new ArrayList<>();
            if (!names.key().isEmpty()) {
                notes.add("Bays by number: " + String.join(", ", names.key()) + ".");
            }
            if (names.unnamed() > 0) {
                named = false;
                notes.add(
                        names.unnamed()
                                + " of "
                                + picture.bays().size()
                                + " bays are too small here to be named.");
            }
            return notes;
        }

        private void right(Box column, List<String> notes) {
            double y = column.y();
            Table table = pressures.table();
            List<String> words = new ArrayList<>(warnings());
            if (!picture.rows().isEmpty()) {
                words.add(
                        "+ acts toward the wall, \u2212 away from it. A design pressure is the"
                                + " greatest of the zone for components of its kind.");
                words.addAll(pressures.sizes());
            }
            if (request.bay() != null) {
                words.add("Bay " + request.bay() + " is drawn with a double line.");
            }
            words.addAll(notes);
            List<String> lines = new ArrayList<>();
            for (String sentence : words) {
                lines.addAll(Words.wrap(sentence, Label.SMALL, column.width()));
            }
            double legend = (picture.shown().size() + 1) * (LINE + 5) + PAD;
            double rest = column.height() - legend - lines.size() * LINE - 2 * PAD;
            int shown = Math.min(table.rows().size(), Math.max(1, table.capacity(rest)));
            if (!table.rows().isEmpty()) {
                table.part(0, shown).draw(sheet, column.x(), y);
                y += table.part(0, shown).height() + PAD;
            }
            if (shown < table.rows().size()) {
                complete = false;
                lines.add(0, (table.rows().size() - shown) + " more rows: see the windSchedule.");
            }
            y = legend(column, y);
            for (String line : lines) {
                y += LINE;
                if (y > column.bottom()) {
                    complete = false;
                    break;
                }
                sheet.put(Label.start(line, column.x(), y));
            }
        }

        private double legend(Box column, double from) {
            double y = from;
            for (String zone : picture.shown()) {
                Box swatch = new Box(column.x(), y, SWATCH, LINE + 2);
                sheet.area(Stroke.FINE, swatch, picture.hatch(zone));
                sheet.put(
                        Label.start(
                                Words.fit(
                                        "Zone " + zone + labels.widths(zone),
                                        Label.SMALL,
                                        column.width() - SWATCH - 6),
                                swatch.right() + 6,
                                swatch.bottom() - 3));
                y += LINE + 5;
            }
            if (!picture.bays().isEmpty()) {
                Box swatch = new Box(column.x(), y, SWATCH, LINE + 2);
                sheet.outline(Stroke.MEDIUM, swatch);
                sheet.line(
                        Stroke.FINE, swatch.middleX(), swatch.y(), swatch.middleX(), swatch.bottom());
                sheet.line(
                        Stroke.FINE, swatch.x(), swatch.middleY(), swatch.right(), swatch.middleY());
                sheet.put(
                        Label.start(
                                "Bay with its column and row lines",
                                swatch.right() + 6,
                                swatch.bottom() - 3));
                y += LINE + 5;
            }
            return y;
        }
    }

}
