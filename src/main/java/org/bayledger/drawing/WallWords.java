package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.drawing.ElevationPicture.Band;
import org.bayledger.drawing.ElevationPicture.Row;
import org.bayledger.review.ElevationZones.ZoneRectangle;

/**
 * What is written on a wall: names of zones and their pressures, where they have room.
 *
 * @param picture the elevation
 * @param pressures its pressures
 */
record WallWords(ElevationPicture picture, PressureTable pressures) {

    private static final double LINE = 9;

    /** Longest name of a zone on the wall, points. */
    private static final double NAME = 70;

    /** Places tried, each way. */
    private static final int TRIES = 9;

    /** Names of the zones, then the pressures band by band, clear of other words. */
    void write(Sheet sheet, Scale scale) {
        List<Box> bays =
                picture.bays().stream()
                        .map(bay -> scale.box(bay.offset(), bay.right(), bay.sill(), bay.top()))
                        .toList();
        for (ZoneRectangle zone : picture.wall().zones()) {
            Box room = room(scale, zone, zone.bottom().si(), zone.top().si());
            List<String> name = List.of(Words.fit(WallLabels.name(zone), Label.SMALL, NAME));
            if (!written(sheet, room, name, false, bays)
                    && !written(sheet, room, name, false, List.of())) {
                written(sheet, room, name, true, List.of());
            }
        }
        for (Band band : picture.bands()) {
            for (Row row : band.rows()) {
                picture.wall().zones().stream()
                        .filter(zone -> row.zone().equals(zone.zone()) && lies(zone, row))
                        .forEach(zone -> pressures(sheet, scale, zone, band, row, bays));
            }
        }
    }

    private static boolean lies(ZoneRectangle zone, Row row) {
        double middle = (zone.from().si() + zone.to().si()) / 2;
        return row.strips().stream()
                .anyMatch(strip -> strip.from().si() < middle && middle < strip.to().si());
    }

    private void pressures(
            Sheet sheet, Scale scale, ZoneRectangle zone, Band band, Row row, List<Box> bays) {
        double bottom = Math.max(zone.bottom().si(), band.from());
        double top = Math.min(zone.top().si(), band.to());
        if (top <= bottom) {
            return;
        }
        Box room = room(scale, zone, bottom, top);
        List<String> lines = pressures.lines(row);
        List<String> one = List.of(String.join("; ", lines));
        boolean written =
                written(sheet, room, lines, false, bays) || written(sheet, room, one, false, bays);
        if (!written && picture.bands().size() == 1) {
            written(sheet, room, lines, false, List.of());
        }
    }

    private static Box room(Scale scale, ZoneRectangle zone, double bottom, double top) {
        return scale.box(zone.from().si(), zone.to().si(), bottom, top).inset(1.5);
    }

    /** Sentences in the middle of the wall. */
    void across(Sheet sheet, Scale scale, List<String> sentences) {
        Box room = scale.box(0, picture.width(), picture.base(), picture.top()).inset(4);
        List<String> lines = new ArrayList<>();
        sentences.forEach(
                sentence -> lines.addAll(Words.wrap(sentence, Label.SMALL, room.width() * 0.8)));
        written(sheet, room, lines, false, List.of());
    }

    /** Whether lines had room somewhere beside what they should not hide. */
    private static boolean written(
            Sheet sheet, Box room, List<String> lines, boolean upright, List<Box> beside) {
        if (room.width() <= 0 || room.height() <= 0) {
            return false;
        }
        for (int first = 0; first < TRIES; first++) {
            for (int second = 0; second < TRIES; second++) {
                double x = room.x() + room.width() * place(upright ? first : second);
                double y = room.y() + room.height() * place(upright ? second : first);
                List<Label> block = new ArrayList<>();
                for (int i = 0; i < lines.size(); i++) {
                    double off = (i - (lines.size() - 1) / 2.0) * LINE;
                    Label label = Label.centred(lines.get(i), x, y + off);
                    block.add(upright ? label.turned() : label);
                }
                if (block.stream()
                                .map(Label::box)
                                .noneMatch(box -> beside.stream().anyMatch(box::overlaps))
                        && sheet.putIfFree(block, room)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Parts of a length to try, from the middle outward. */
    private static double place(int attempt) {
        int steps = (attempt + 1) / 2;
        double off = (double) steps / TRIES;
        return attempt % 2 == 0 ? 0.5 + off : 0.5 - off;
    }
}
