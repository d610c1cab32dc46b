package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bayledger.check.LoadBasis;
import org.bayledger.drawing.ElevationPicture.Band;
import org.bayledger.drawing.ElevationPicture.Row;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.PressureSource;
import org.bayledger.review.ReviewResult.Component;
import org.bayledger.review.ReviewResult.Strip;
import org.bayledger.review.ReviewResult.WindRow;
import org.jspecify.annotations.Nullable;

/**
 * The design pressures of an elevation in words and numbers.
 *
 * @param picture the elevation
 * @param units units of the numbers
 */
record PressureTable(ElevationPicture picture, UnitSystem units) {

    private static final String NONE = "\u2013";
    private static final String MINUS = "\u2212";

    /** Widest name of a zone in the table, points. */
    private static final double NAME = 70;

    /** Kinds of component that the review has, in its order. */
    private List<Component> components() {
        TreeSet<Component> kinds = new TreeSet<>();
        picture.rows().forEach(row -> kinds.addAll(row.pressures().keySet()));
        return List.copyOf(kinds);
    }

    String unit() {
        return Dimension.PRESSURE.symbol(units);
    }

    /** Both signs of every zone for every kind of component, band by band from the top down. */
    Table table() {
        boolean banded = picture.bands().size() > 1;
        boolean placed = picture.bands().stream().anyMatch(PressureTable::hasZonesTwice);
        List<List<String>> heads = new ArrayList<>();
        heads.add(List.of(banded ? "Band, up to" : "Zone", ""));
        if (banded) {
            heads.add(List.of("Zone", ""));
        }
        if (placed) {
            heads.add(List.of("From the left", ""));
        }
        for (Component kind : components()) {
            heads.add(List.of(name(kind), "+" + unit()));
            heads.add(List.of("", MINUS + unit()));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = picture.bands().size() - 1; i >= 0; i--) {
            Band band = picture.bands().get(i);
            for (Row row : band.rows()) {
                List<String> cells = new ArrayList<>();
                if (banded) {
                    boolean first = row.equals(band.rows().get(0));
                    cells.add(first ? (i + 1) + ": " + length(band.to()) : "");
                }
                cells.add(Words.fit(row.zone(), Label.SMALL, NAME));
                if (placed) {
                    cells.add(Words.fit(places(row), Label.SMALL, 2 * NAME));
                }
                for (Component kind : components()) {
                    WindRow pressure = row.pressures().get(kind);
                    cells.add(pressure == null ? NONE : number(pressure.positive()));
                    cells.add(pressure == null ? NONE : number(pressure.negative()));
                }
                rows.add(cells);
            }
        }
        return new Table(heads, rows);
    }

    private static boolean hasZonesTwice(Band band) {
        return band.rows().stream().map(Row::zone).distinct().count() < band.rows().size();
    }

    private String levels(Band band) {
        return length(band.from()) + " to " + length(band.to());
    }

    private String places(Row row) {
        return row.strips().stream()
                .map((Strip strip) -> length(strip.from().si()) + " to " + length(strip.to().si()))
                .collect(Collectors.joining(", "));
    }

    private String length(double metres) {
        return FeetInches.format(metres, units);
    }

    /** Both signs of a row, a line for each kind of component. */
    List<String> lines(Row row) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Component, WindRow> entry : row.pressures().entrySet()) {
            WindRow pressure = entry.getValue();
            lines.add(
                    name(entry.getKey())
                            + " "
                            + number(pressure.positive())
                            + " / "
                            + number(pressure.negative()));
        }
        return lines;
    }

    /** All pressures in sentences, for those who can't see the drawing. */
    List<String> sentences() {
        List<String> said = new ArrayList<>();
        for (Band band : picture.bands()) {
            for (Row row : band.rows()) {
                said.add(
                        "Zone "
                                + row.zone()
                                + ", "
                                + places(row)
                                + " from the left, levels "
                                + levels(band)
                                + ": "
                                + String.join("; ", lines(row))
                                + ".");
            }
        }
        return said;
    }

    /** Whether some pressures come from a source of the caller's own. */
    boolean has(PressureSource source) {
        return picture.rows().stream()
                .flatMap(row -> row.pressures().values().stream())
                .anyMatch(row -> row.source() == source);
    }

    /** Whether a pressure is missing. */
    boolean hasGaps() {
        return picture.rows().stream()
                .flatMap(row -> row.pressures().values().stream())
                .anyMatch(row -> row.positive() == null || row.negative() == null);
    }

    /** A pressure with its sign, to the digits of the service's sentences. */
    String number(@Nullable Quantity pressure) {
        if (pressure == null) {
            return NONE;
        }
        String text = pressure.text(units);
        String value = text.substring(0, text.indexOf(' '));
        return value.startsWith("-") ? MINUS + value.substring(1) : "+" + value;
    }

    /** What the pressures of each kind of component were read for. */
    List<String> sizes() {
        List<String> sizes = new ArrayList<>();
        for (Component kind : components()) {
            String areas =
                    picture.rows().stream()
                            .map(row -> row.pressures().get(kind))
                            .filter(Objects::nonNull)
                            .map(row -> Words.together(row.effectiveWindArea().text(units)))
                            .distinct()
                            .collect(Collectors.joining(" or "));
            sizes.add(name(kind).toLowerCase(Locale.ROOT) + " " + areas);
        }
        return sizes;
    }

    /** The level of the pressures in words. */
    String basis() {
        String words =
                picture.rows().stream()
                        .flatMap(row -> row.pressures().values().stream())
                        .map(row -> words(row.basis()))
                        .distinct()
                        .collect(Collectors.joining(", "));
        return words.isEmpty() ? "undetermined" : words;
    }

    private static String words(LoadBasis basis) {
        return switch (basis) {
            case STRENGTH -> "strength level";
            case ALLOWABLE_STRESS -> "allowable-stress level";
            case CHARACTERISTIC -> "characteristic";
        };
    }

    private static String name(Component kind) {
        String name = kind.name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }
}
