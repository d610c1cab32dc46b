package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bayledger.drawing.ElevationPicture.Band;
import org.bayledger.drawing.Sheet.Point;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Corner;
import org.bayledger.review.ElevationZones.ProfilePart;
import org.bayledger.review.ElevationZones.WallEdge;
import org.bayledger.review.ElevationZones.ZoneRectangle;

/**
 * What stands around a wall: levels at the left, bands at the right, zones with their widths above,
 * corners and the whole width below.
 *
 * @param picture the elevation
 * @param units units of the numbers
 */
record WallLabels(ElevationPicture picture, UnitSystem units) {

    private static final double LINE = 9;

    /** From the wall's edge to the dimension lines, points. */
    private static final double OFF = 8;

    /** Longest name of a zone over the wall, points. */
    private static final double NAME = 70;

    /** How far the words over a part of the wall may reach beyond it, points. */
    private static final double BEYOND = 40;

    /** Levels nearer than this are one, m. */
    private static final double SAME = 0.001;

    private String length(double metres) {
        return FeetInches.format(metres, units);
    }

    private List<Double> levels() {
        TreeSet<Double> levels =
                new TreeSet<>(List.of(picture.foot(), picture.base(), picture.top()));
        picture.wall().profile().forEach(part -> levels.add(part.top().si()));
        picture.bands().forEach(band -> levels.add(band.from()));
        return List.copyOf(levels);
    }

    private String level(double metres) {
        if (metres == 0) {
            return "Ground";
        }
        String words = length(metres);
        if (metres == picture.base()) {
            return "Base " + words;
        }
        return picture.wall().profile().stream().anyMatch(part -> part.top().si() == metres)
                ? "Top " + words
                : words;
    }

    /** Room for the levels at the left of the wall. */
    double left() {
        return levels().stream()
                        .mapToDouble(at -> Label.width(level(at), Label.SMALL, false))
                        .max()
                        .orElse(0)
                + 3 * OFF;
    }

    /** Room for the bands at its right. */
    double right() {
        return 2 * OFF
                + (picture.bands().size() > 1 ? Label.width("Band 00", Label.SMALL, false) : 0);
    }

    /** Room below it. */
    double below() {
        return corners().isEmpty() ? 4 * OFF : 7 * OFF;
    }

    /** Puts all of it around the wall. */
    void draw(Sheet sheet, Scale scale, Box room) {
        double ground = scale.y(picture.foot());
        double right = scale.x(picture.width());
        sheet.line(Stroke.HEAVY, scale.x(0) - OFF, ground, right + OFF, ground);
        levels(sheet, scale, room);
        bands(sheet, scale, room);
        zones(sheet, scale, room);
        corners(sheet, scale, room);
        Dimensions.across(
                sheet, scale.x(0), right, ground + below() - OFF, length(picture.width()));
    }

    private void levels(Sheet sheet, Scale scale, Box room) {
        List<Double> levels = new ArrayList<>(levels());
        java.util.Collections.reverse(levels);
        double x = scale.x(0) - OFF;
        double[] middles = levels.stream().mapToDouble(scale::y).toArray();
        double[] lengths = levels.stream().mapToDouble(at -> LINE).toArray();
        double[] starts = Spread.along(middles, lengths, room.y(), room.bottom());
        for (int i = 0; i < middles.length; i++) {
            double y = middles[i];
            Dimensions.level(sheet, x, y);
            sheet.line(Stroke.FINE, scale.x(0), y, x, y);
            if (starts.length > 0) {
                double at = starts[i] + LINE / 2;
                Dimensions.leader(sheet, new Point(x, y), new Point(x - OFF, at));
                Label words = Label.centred(level(levels.get(i)), 0, at);
                sheet.put(Label.end(words.words(), x - OFF - 2, words.y()));
            }
        }
        Dimensions.up(sheet, scale.y(picture.top()), scale.y(picture.foot()), x);
    }

    private void bands(Sheet sheet, Scale scale, Box room) {
        List<Band> bands = picture.bands();
        if (bands.size() < 2) {
            return;
        }
        int count = bands.size();
        double x = scale.x(picture.width());
        double[] middles = new double[count];
        double[] lengths = new double[count];
        for (int i = 0; i < count; i++) {
            Band band = bands.get(count - 1 - i);
            middles[i] = scale.y((band.from() + band.to()) / 2);
            lengths[i] = LINE;
            if (i > 0) {
                double y = scale.y(band.to());
                sheet.line(Stroke.DASHED, scale.x(0), y, x + OFF, y);
            }
        }
        double[] starts = Spread.along(middles, lengths, room.y(), room.bottom());
        for (int i = 0; i < starts.length; i++) {
            double at = starts[i] + LINE / 2;
            Dimensions.leader(sheet, new Point(x, middles[i]), new Point(x + 1.5 * OFF, at));
            Label words = Label.centred("Band " + (count - i), 0, at);
            sheet.put(Label.start(words.words(), x + 1.5 * OFF + 2, words.y()));
        }
    }

    /** Names and widths of the zones over each part of the wall that ends at one level. */
    private void zones(Sheet sheet, Scale scale, Box room) {
        TreeMap<Double, List<ZoneRectangle>> tops = new TreeMap<>();
        for (ZoneRectangle zone : picture.wall().zones()) {
            if (reachesTheTop(zone)) {
                tops.computeIfAbsent(zone.top().si(), top -> new ArrayList<>()).add(zone);
            }
        }
        tops.descendingMap()
                .values()
                .forEach(
                        zones -> {
                            zones.sort(
                                    (one, other) ->
                                            Double.compare(one.from().si(), other.from().si()));
                            over(sheet, scale, room, zones);
                        });
    }

    private boolean reachesTheTop(ZoneRectangle zone) {
        double middle = (zone.from().si() + zone.to().si()) / 2;
        return picture.wall().profile().stream()
                .anyMatch(
                        (ProfilePart part) ->
                                part.from().si() < middle
                                        && middle < part.to().si()
                                        && Math.abs(part.top().si() - zone.top().si()) < SAME);
    }

    private void over(Sheet sheet, Scale scale, Box room, List<ZoneRectangle> zones) {
        double y = scale.y(zones.get(0).top().si()) - OFF;
        double[] middles = new double[zones.size()];
        double[] lengths = new double[zones.size()];
        List<String> names = new ArrayList<>();
        List<String> widths = new ArrayList<>();
        for (int i = 0; i < zones.size(); i++) {
            ZoneRectangle zone = zones.get(i);
            names.add(Words.fit(name(zone), Label.SMALL, NAME));
            widths.add(length(zone.to().si() - zone.from().si()));
            middles[i] = scale.x((zone.from().si() + zone.to().si()) / 2);
            lengths[i] =
                    Math.max(
                                    Label.width(names.get(i), Label.SMALL, true),
                                    Label.width(widths.get(i), Label.SMALL, false))
                            + 6;
            Dimensions.across(sheet, scale.x(zone.from().si()), scale.x(zone.to().si()), y);
        }
        double[] starts =
                Spread.along(
                        middles,
                        lengths,
                        Math.max(room.x(), scale.x(zones.get(0).from().si()) - BEYOND),
                        Math.min(
                                room.right(),
                                scale.x(zones.get(zones.size() - 1).to().si()) + BEYOND));
        double low = y - 1.5 * OFF;
        for (int i = 0; i < starts.length; i++) {
            double at = starts[i] + lengths[i] / 2;
            List<Label> both =
                    List.of(
                            Label.middle(names.get(i), at, low - LINE).inBold(),
                            Label.middle(widths.get(i), at, low));
            if (sheet.putIfFree(both, room)) {
                Dimensions.leader(sheet, new Point(middles[i], y), new Point(at, low + 2));
            }
        }
    }

    /** A zone's name; words where nobody can say which zone it is. */
    static String name(ZoneRectangle zone) {
        return zone.zone() == null ? "Zone unknown" : "Zone " + zone.zone();
    }

    /** Corners and free edges between the ends of the wall. */
    private List<WallEdge> corners() {
        return picture.wall().edges().stream()
                .filter(edge -> edge.at().si() > SAME && edge.at().si() < picture.width() - SAME)
                .sorted((one, other) -> Double.compare(one.at().si(), other.at().si()))
                .toList();
    }

    private void corners(Sheet sheet, Scale scale, Box room) {
        List<WallEdge> corners = corners();
        double[] middles = new double[corners.size()];
        double[] lengths = new double[corners.size()];
        List<List<String>> words = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            WallEdge edge = corners.get(i);
            words.add(List.of(name(edge), length(edge.at().si())));
            middles[i] = scale.x(edge.at().si());
            lengths[i] = Label.width(words.get(i).get(0), Label.SMALL, false) + 6;
            sheet.line(
                    Stroke.HEAVY,
                    middles[i],
                    scale.y(edge.bottom().si()),
                    middles[i],
                    scale.y(edge.top().si()));
        }
        double[] starts = Spread.along(middles, lengths, room.x(), room.right());
        double ground = scale.y(picture.foot());
        for (int i = 0; i < starts.length; i++) {
            double at = starts[i] + lengths[i] / 2;
            Dimensions.leader(
                    sheet, new Point(middles[i], ground), new Point(at, ground + 2 * OFF));
            sheet.put(Label.middle(words.get(i).get(0), at, ground + 2 * OFF + 6));
            sheet.put(Label.middle(words.get(i).get(1), at, ground + 2 * OFF + 6 + LINE));
        }
    }

    private String name(WallEdge edge) {
        if (edge.kind() == Corner.Kind.REENTRANT) {
            return "Re-entrant corner";
        }
        return edge.bottom().si() > picture.base() + SAME ? "Free edge" : "Outside corner";
    }

    /** The widths of a zone's stretches, for the legend. */
    String widths(String zone) {
        return picture.wall().zones().stream()
                .filter(stretch -> zone.equals(stretch.zone()))
                .map(stretch -> length(stretch.to().si() - stretch.from().si()))
                .distinct()
                .collect(Collectors.joining(", ", ", ", " wide"));
    }
}
