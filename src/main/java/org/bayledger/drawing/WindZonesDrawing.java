package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * An elevation with its wind zones, its bays and the design pressures of both signs: the wall on
 * the left, what the pressures are on the right.
 */
final class WindZonesDrawing {

    private static final double PAD = 10;
    private static final double LINE = 9;
    private static final double SWATCH = 22;

    /** Room above the wall for the names and widths of zones. */
    private static final double ABOVE = 44;

    /** The wall is drawn no narrower and no lower than this, points. */
    private static final double LEAST = 120;

    /** Width of the column on the right, at least. */
    private static final double COLUMN = 200;

    /** A sheet without pressures or words lacks more than one without names of bays. */
    private static final int INCOMPLETE = 2;

    private final Job job;
    private final DrawingRequest request;
    private final ElevationPicture picture;
    private final PressureTable pressures;
    private final WallLabels labels;
    private final WallWords words;

    WindZonesDrawing(Job job) {
        this.job = job;
        request = job.request();
        picture = ElevationPicture.of(request, job.result());
        pressures = new PressureTable(picture, job.units());
        labels = new WallLabels(picture, job.units());
        words = new WallWords(picture, pressures);
    }

    /**
     * On the smallest paper on which everything has room; where names of bays have room on none, on
     * the smallest on which all the rest has.
     */
    byte[] draw() {
        return Attempt.best(job.units(), paper -> new OnPaper(paper).attempt()).finish();
    }

    private String title() {
        return "Wind zones and design pressures, elevation " + request.elevation();
    }

    private String description() {
        List<String> said = new ArrayList<>();
        said.add(title() + " of " + request.document().name() + ".");
        said.add("Basis of the pressures: " + pressures.basis() + ", in " + pressures.unit() + ".");
        said.addAll(pressures.sentences());
        said.addAll(warnings());
        return String.join(" ", said);
    }

    /** What has no pressure, in words. */
    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (picture.rows().isEmpty()
                && request.document().site() == null
                && request.document().specifiedPressures() == null) {
            warnings.add(
                    "Wind pressures UNDETERMINED: the document gives neither a site nor specified"
                            + " pressures.");
        } else if (picture.rows().isEmpty()) {
            warnings.add("Wind pressures UNDETERMINED: no zone of this elevation has any.");
        } else if (pressures.hasGaps()) {
            warnings.add("\u2013 stands for UNDETERMINED: no pressure is called out there.");
        }
        picture.withoutPressure()
                .forEach(
                        (bay, items) ->
                                warnings.add(
                                        "UNDETERMINED, no pressure is called out for "
                                                + String.join(", ", items)
                                                + "."));
        return warnings;
    }

    private TitleBlock block(String scale, Paper paper) {
        return job.block(
                List.of(
                        new TitleBlock.Entry("Job", request.document().name()),
                        new TitleBlock.Entry("Drawing", "Wind zones and design pressures"),
                        new TitleBlock.Entry("Elevation", request.elevation())),
                List.of(
                        new TitleBlock.Entry(
                                "Pressures by",
                                Wording.source(request.document(), pressures, job.units())),
                        new TitleBlock.Entry("Basis of the pressures", pressures.basis()),
                        new TitleBlock.Entry(
                                "Units", pressures.unit() + ", " + Wording.lengths(job.units()))),
                scale,
                paper);
    }

    /** The drawing on one size of paper. */
    private final class OnPaper {

        private final Sheet sheet;

        /** Whether all pressures and all that is to be said stand on the sheet. */
        private boolean complete = true;

        /** Whether all bays are named. */
        private final boolean named;

        OnPaper(Paper paper) {
            sheet = new Sheet(paper, title(), description());
            Box frame = Sheet.frame(paper);
            Box body = block("", paper).body(frame).inset(PAD);
            double column = Math.max(COLUMN, pressures.table().width());
            Box wall = new Box(body.x(), body.y(), body.width() - column - PAD, body.height());
            Scale scale = scale(wall);
            block(scale.words(), paper).draw(sheet, frame);
            WallPicture drawn = new WallPicture(sheet, scale, picture, request.bay());
            drawn.draw();
            labels.draw(sheet, scale, wall);
            List<String> notes = drawn.nameBays();
            named = drawn.isNamed();
            if (picture.rows().isEmpty()) {
                words.across(sheet, scale, warnings());
            }
            words.write(sheet, scale);
            right(new Box(body.right() - column, body.y(), column, body.height()), notes);
        }

        Attempt attempt() {
            return new Attempt(sheet, (complete ? 0 : INCOMPLETE) + (named ? 0 : 1));
        }

        private Scale scale(Box wall) {
            Box room =
                    new Box(
                            wall.x() + labels.left(),
                            wall.y() + ABOVE,
                            wall.width() - labels.left() - labels.right(),
                            wall.height() - ABOVE - labels.below());
            return Scale.fitting(
                    room,
                    0,
                    picture.width(),
                    picture.foot(),
                    picture.top(),
                    Math.min(LEAST, room.height()));
        }

        private void right(Box column, List<String> notes) {
            double y = column.y();
            Table table = pressures.table();
            List<String> said = new ArrayList<>(warnings());
            if (!picture.rows().isEmpty()) {
                said.add(
                        "+ acts toward the wall, \u2212 away from it. Each pressure is that of the"
                                + " smallest effective wind area of its kind at the top of the band: "
                                + String.join(", ", pressures.sizes())
                                + ".");
            }
            if (request.bay() != null) {
                said.add("Bay " + request.bay() + " is drawn with a double line.");
            }
            said.addAll(notes);
            List<String> lines = new ArrayList<>();
            for (String sentence : said) {
                lines.addAll(Words.wrap(sentence, Label.SMALL, column.width()));
            }
            double legend = (picture.shown().size() + 1) * (LINE + 5) + PAD;
            double rest = column.height() - legend - lines.size() * LINE - 2 * PAD;
            int shown = Math.min(table.rows().size(), Math.max(1, table.capacity(rest)));
            if (!table.rows().isEmpty()) {
                table.first(shown).draw(sheet, column.x(), y);
                y += table.first(shown).height() + PAD;
            }
            if (shown < table.rows().size()) {
                complete = false;
                lines.add(
                        0,
                        (table.rows().size() - shown)
                                + " more rows: see elevationZones in the review.");
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
                        Stroke.FINE,
                        swatch.middleX(),
                        swatch.y(),
                        swatch.middleX(),
                        swatch.bottom());
                sheet.line(
                        Stroke.FINE,
                        swatch.x(),
                        swatch.middleY(),
                        swatch.right(),
                        swatch.middleY());
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
