package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bayledger.check.LoadBasis;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewResult;
import org.bayledger.review.ReviewResult.WindRow;

/**
 * The design pressures of an elevation in words and numbers.
 *
 * @param picture the elevation
 * @param units units of the numbers
 */
record PressureTable(ElevationPicture picture, UnitSystem units) {

    private static final String NONE = "\u2013";

    /** Kinds of component that the schedule has, in its order. */
    List<ReviewResult.Component> components() {
        TreeSet<ReviewResult.Component> kinds = new TreeSet<>();
        picture.rows().forEach(row -> kinds.addAll(row.pressures().keySet()));
        return List.copyOf(kinds);
    }

    String unit() {
        return Dimension.PRESSURE.symbol(units);
    }

    /** Both signs of every zone for every kind of component. */
    Table table() {
        List<List<String>> heads = new ArrayList<>();
        heads.add(List.of("Zone", ""));
        for (ReviewResult.Component kind : components()) {
            heads.add(List.of(name(kind), "+" + unit()));
            heads.add(List.of("", "\u2212" + unit()));
        }
        List<List<String>> rows = new ArrayList<>();
        for (ElevationPicture.Row row : picture.rows()) {
            List<String> cells = new ArrayList<>();
            cells.add(Words.fit(row.zone(), Label.SMALL, 70));
            for (ReviewResult.Component kind : components()) {
                WindRow pressure = row.pressures().get(kind);
                cells.add(pressure == null ? NONE : number(pressure.positive()));
                cells.add(pressure == null ? NONE : number(pressure.negative()));
            }
            rows.add(cells);
        }
        return new Table(heads, rows);
    }

    /** Both signs of a row, a line for each kind of component. */
    List<String> lines(ElevationPicture.Row row) {
        return new TreeMap<>(row.pressures())
                .entrySet().stream()
                        .map(
                                entry ->
                                        name(entry.getKey())
                                                + " "
                                                + number(entry.getValue().positive())
                                                + " / "
                                                + number(entry.getValue().negative()))
                        .toList();
    }

    /** A pressure with its sign, to the digits of the service's sentences. */
    String number(Quantity pressure) {
        String text = pressure.text(units);
        String value = text.substring(0, text.indexOf(' '));
        return value.startsWith("-") ? "\u2212" + value.substring(1) : "+" + value;
    }

    /** What the pressures of each kind of component were read for. */
    List<String> sizes() {
        List<String> sizes = new ArrayList<>();
        for (ReviewResult.Component kind : components()) {
            String read =
                    picture.rows().stream()
                            .map(row -> row.pressures().get(kind))
                            .filter(java.util.Objects::nonNull)
                            .map(
                                    row ->
                                            "effective wind area "
                                                    + Words.together(
                                                            row.effectiveWindArea().text(units))
                                                    + " at a height of "
                                                    + Words.together(row.height().text(units)))
                            .distinct()
                            .collect(Collectors.joining("; "));
            sizes.add(name(kind) + ": " + read + ".");
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

    static String name(ReviewResult.Component kind) {
        String name = kind.name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }
}
