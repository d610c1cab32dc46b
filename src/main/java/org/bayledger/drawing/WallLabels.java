package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bayledger.drawing.ElevationPicture.Zone;
import org.bayledger.drawing.Sheet.Point;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.UnitSystem;

/**
 * What stands around a wall and on it: levels at the left, zones with their widths above, the whole
 * width below, pressures in the zones where they have room.
 *
 * @param picture the elevation
 * @param pressures its pressures
 * @param units units of the numbers
 */
record WallLabels(ElevationPicture picture, PressureTable pressures, UnitSystem units) {

    private static final double LINE = 9;

    /** From the wall's edge to the dimension lines, points. */
    private static final double OFF = 8;

    /** Longest name of a zone over the wall, points. */
    private static final double NAME = 70;

    /** Places tried for the pressures of a zone, each way. */
    private static final int TRIES = 9;

    private String length(double metres) {
        return FeetInches.format(metres, units);
    }

    /** Level from which the wall is drawn: the ground, or a base that is far above it. */
    double foot() {
        return picture.face().base() > picture.face().height() ? picture.face().base() : 0;
    }

    private List<Double> levels() {
        return List.copyOf(
                new TreeSet<>(List.of(foot(), picture.face().base(), picture.top())));
    }

    private String level(double metres) {
        if (metres == 0) {
            return "Ground";
        }
        return (metres == picture.face().base() ? "Base " : "Top ") + length(metres);
    }

    /** Room for the levels at the left of the wall. */
    double gutter() {
        return levels().stream()
                        .mapToDouble(at -> Label.width(level(at), Label.SMALL, false))
                        .max()
                        .orElse(0)
                + 3 * OFF;
    }

    /** Levels, ground, widths. */
    void around(Sheet sheet, Scale scale, Box wall) {
        double left = scale.x(0);
        double right = scale.x(picture.face().width());
        double ground = scale.y(foot());
        sheet.line(Stroke.HEAVY, left - OFF, ground, right + OFF, ground);
        levels(sheet, scale, wall);
        zonesAbove(sheet, scale, wall);
        Dimensions.across(
                sheet, left, right, ground + 3 * OFF, length(picture.face().width()));
    }

    private void levels(Sheet sheet, Scale scale, Box wall) {
        List<Double> levels = levels().stream().sorted(Comparator.reverseOrder()).toList();
        double x = scale.x(0) - OFF;
        double[] middles = levels.stream().mapToDouble(scale::y).toArray();
        double[] lengths = levels.stream().mapToDouble(at -> LINE).toArray();
        double[] starts =
                Spread.along(middles, lengths, wall.y(), scale.y(foot()) + LINE);
        for (int i = 0; i < starts.length; i++) {
            double y = middles[i];
            double at = starts[i] + LINE / 2;
            Dimensions.level(sheet, x, y);
            sheet.path(
                    Stroke.FINE,
                    List.of(
                            new Point(scale.x(0), y),
                            new Point(x, y),
                            new Point(x - OFF, at)));
            Label words = Label.centred(level(levels.get(i)), x - OFF - 2, at);
            sheet.put(Label.end(words.words(), words.x(), words.y()));
        }
        Dimensions.up(sheet, scale.y(picture.top()), scale.y(foot()), x);
    }

    private void zonesAbove(Sheet sheet, Scale scale, Box wall) {
        List<Zone> zones = picture.zones();
        if (zones.isEmpty()) {
            return;
        }
        double y = scale.y(picture.top()) - OFF;
        double[] middles = new double[zones.size()];
        double[] lengths = new double[zones.size()];
        List<String> names = new ArrayList<>();
        List<String> widths = new ArrayList<>();
        for (int i = 0; i < zones.size(); i++) {
            Zone zone = zones.get(i);
            names.add(Words.fit("Zone " + zone.name(), Label.SMALL, NAME));
            widths.add(length(zone.to() - zone.from()));
            middles[i] = scale.x((zone.from() + zone.to()) / 2);
            lengths[i] =
                    Math.max(
                                    Label.width(names.get(i), Label.SMALL, true),
                                    Label.width(widths.get(i), Label.SMALL, false))
                            + 6;
            Dimensions.across(sheet, scale.x(zone.from()), scale.x(zone.to()), y);
        }
        double[] starts = Spread.along(middles, lengths, wall.x(), wall.right());
        for (int i = 0; i < starts.length; i++) {
            double at = starts[i] + lengths[i] / 2;
            double low = y - 1.5 * OFF;
            Dimensions.leader(sheet, new Point(middles[i], y), new Point(at, low + 2));
            sheet.put(Label.middle(names.get(i), at, low - LINE).inBold());
            sheet.put(Label.middle(widths.get(i), at, low));
        }
    }

    /** Name and pressures of each zone, inside it and clear of other words. */
    void zones(Sheet sheet, Scale scale) {
        List<Box> bays =
                picture.bays().stream()
                        .map(bay -> scale.box(bay.offset(), bay.right(), bay.sill(), bay.top()))
                        .toList();
        for (Zone zone : picture.zones()) {
            Box room = scale.box(zone.from(), zone.to(), zone.bottom(), zone.top()).inset(2);
            List<String> lines = new ArrayList<>();
            lines.add(Words.fit("Zone " + zone.name(), Label.SMALL, NAME));
            picture.rows().stream()
                    .filter(row -> row.zone().equals(zone.name()))
                    .forEach(row -> lines.addAll(pressures.lines(row)));
            List<String> name = lines.subList(0, 1);
            if (!written(sheet, room, lines, false, bays)
                    && !written(sheet, room, lines, false, List.of())
                    && !written(sheet, room, lines, true, List.of())
                    && !written(sheet, room, name, false, List.of())) {
                written(sheet, room, name, true, List.of());
            }
        }
    }

    /** Sentences in the middle of the wall. */
    void across(Sheet sheet, Scale scale, List<String> sentences) {
        Box room =
                scale.box(0, picture.face().width(), picture.face().base(), picture.top()).inset(4);
        List<String> lines = new ArrayList<>();
        sentences.forEach(
                sentence -> lines.addAll(Words.wrap(sentence, Label.SMALL, room.width() / 1.2)));
        written(sheet, room, lines, false, List.of());
    }

    /** Whether lines, the first in bold, had room somewhere beside what they should not hide. */
    private static boolean written(
            Sheet sheet, Box room, List<String> lines, boolean upright, List<Box> beside) {
        for (int first = 0; first < TRIES; first++) {
            for (int second = 0; second < TRIES; second++) {
                double x = room.x() + room.width() * place(upright ? first : second);
                double y = room.y() + room.height() * place(upright ? second : first);
                List<Label> block = new ArrayList<>();
                for (int i = 0; i < lines.size(); i++) {
                    double off = (i - (lines.size() - 1) / 2.0) * LINE;
                    Label label =
                            upright
                                    ? Label.centred(lines.get(i), x + off, y).turned()
                                    : Label.centred(lines.get(i), x, y + off);
                    block.add(i == 0 ? label.inBold() : label);
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
        double step = (attempt + 1) / 2 / (double) TRIES;
        return attempt % 2 == 0 ? 0.5 + step : 0.5 - step;
    }

    /** The widths of a zone's stretches, for the legend. */
    String widths(String zone) {
        return picture.zones().stream()
                .filter(stretch -> stretch.name().equals(zone))
                .map(stretch -> length(stretch.to() - stretch.from()))
                .distinct()
                .collect(Collectors.joining(" and ", ", ", " wide"));
    }
}
