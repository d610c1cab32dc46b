package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.bayledger.review.Bay;
import org.bayledger.review.ReviewDocument;
import org.jspecify.annotations.Nullable;

/**
 * Takes off what a reviewed job needs, from the results as they are answered and recorded. What the
 * results do not hold stays empty; nothing is assumed. Quantities are net, without waste, unless a
 * column says otherwise.
 */
final class TakeOffs {

    /** As many digits as the results have. */
    private static final MathContext DIGITS = new MathContext(6);

    private final ReviewDocument document;
    private final List<Object> bays;

    private TakeOffs(ReviewDocument document, Map<?, ?> result) {
        this.document = document;
        this.bays = list(result, "bays");
    }

    static TakeOff of(TakeOffKind kind, ReviewDocument document, Map<?, ?> result) {
        TakeOffs takeOffs = new TakeOffs(document, result);
        return switch (kind) {
            case GLASS -> takeOffs.glass();
            case BLOCKS -> takeOffs.blocks();
            case SEALANT -> takeOffs.sealant();
            case ALUMINUM -> takeOffs.aluminum();
            case ANCHORS -> takeOffs.anchors();
        };
    }

    /** Counts and sums of one row. */
    private static final class Sums {
        private int count;
        private @Nullable BigDecimal first = BigDecimal.ZERO;
        private @Nullable BigDecimal second = BigDecimal.ZERO;

        void add(int more, @Nullable BigDecimal toFirst, @Nullable BigDecimal toSecond) {
            count += more;
            first = sum(first, toFirst);
            second = sum(second, toSecond);
        }

        /** A sum is not known where one of its parts is not. */
        private static @Nullable BigDecimal sum(@Nullable BigDecimal a, @Nullable BigDecimal b) {
            return a == null || b == null ? null : a.add(b);
        }
    }

    private TakeOff glass() {
        Map<List<String>, Sums> rows = new LinkedHashMap<>();
        Units units = new Units();
        forEach(
                "glass",
                (bay, item) ->
                        row(
                                        rows,
                                        glassType(bay, item),
                                        text(item, "inputs", "width"),
                                        text(item, "inputs", "height"))
                                .add(
                                        1,
                                        units.value("area", get(item, "result", "area")),
                                        units.value("weight", get(item, "result", "weight"))));
        return new TakeOff(
                TakeOffKind.GLASS,
                List.of(
                        "glass type",
                        "width",
                        "height",
                        "count",
                        "area" + units.of("area"),
                        "weight" + units.of("weight")),
                cells(rows));
    }

    /** The document's name for the build-up of a lite. */
    private String glassType(Object bay, Object item) {
        String[] place = text(item, "id").replaceFirst(".*/", "").split("-", 2);
        return given(bay)
                .map(
                        known ->
                                known.glassTypeOf(
                                        Integer.parseInt(place[0]), Integer.parseInt(place[1])))
                .orElse(text(null));
    }

    private Optional<Bay> given(Object bay) {
        return document.bays().stream()
                .filter(known -> known.id().equals(text(bay, "id")))
                .findFirst();
    }

    private TakeOff blocks() {
        Map<List<String>, Sums> rows = new LinkedHashMap<>();
        forEach(
                "setting-blocks",
                (bay, item) -> {
                    BigDecimal each =
                            get(item, "result", "blockCount") instanceof BigDecimal number
                                    ? number
                                    : null;
                    row(
                                    rows,
                                    text(item, "result", "blockMaterial"),
                                    text(item, "result", "blockCutLength"))
                            .add(1, each, BigDecimal.ZERO);
                });
        List<List<@Nullable Object>> cells = new ArrayList<>();
        rows.forEach(
                (key, sums) ->
                        cells.add(Arrays.asList(key.get(0), key.get(1), sums.count, sums.first)));
        return new TakeOff(
                TakeOffKind.BLOCKS,
                List.of("material", "cut length of each", "lites", "blocks"),
                cells);
    }

    private TakeOff sealant() {
        Map<List<String>, Sums> rows = new LinkedHashMap<>();
        Units units = new Units();
        forEach(
                "internal-seals",
                (bay, item) -> {
                    for (Object joint : list(item, "result", "joints")) {
                        if (get(joint, "count") instanceof BigDecimal count && count.signum() > 0) {
                            row(rows, text(joint, "type"))
                                    .add(
                                            count.intValue(),
                                            units.value("length", get(joint, "length")),
                                            units.value("sealant", get(joint, "sealantVolume")));
                        }
                    }
                });
        return new TakeOff(
                TakeOffKind.SEALANT,
                List.of(
                        "joint",
                        "count",
                        "length" + units.of("length"),
                        "sealant in place" + units.of("sealant")),
                cells(rows));
    }

    private TakeOff aluminum() {
        Map<List<String>, Sums> rows = new LinkedHashMap<>();
        Units units = new Units();
        forEach(
                "framing",
                (bay, item) -> {
                    boolean mullion = text(item, "id").contains("/mullion/");
                    BigDecimal length = units.value("length", get(item, "inputs", "length"));
                    BigDecimal each =
                            units.value("mass", get(item, "inputs", "section", "massPerLength"));
                    row(rows, section(bay, mullion), mullion ? "vertical" : "horizontal")
                            .add(
                                    1,
                                    length,
                                    length == null || each == null
                                            ? null
                                            : length.multiply(each, DIGITS));
                });
        // mass per length times length: lb/ft x ft or kg/m x m, which are the units of the answers
        String mass = units.of("mass").replaceAll("/\\w+\\)", ")");
        return new TakeOff(
                TakeOffKind.ALUMINUM,
                List.of("section", "member", "count", "length" + units.of("length"), "mass" + mass),
                cells(rows));
    }

    private String section(Object bay, boolean mullion) {
        return given(bay)
                .map(
                        known ->
                                mullion
                                        ? known.mullion() == null ? null : known.mullion().section()
                                        : known.horizontal() == null
                                                ? null
                                                : known.horizontal().section())
                .orElse(text(null));
    }

    /** Every vertical of a bay has each of the bay's anchors that is not on the piece beyond. */
    private TakeOff anchors() {
        Map<List<String>, Sums> rows = new LinkedHashMap<>();
        for (Object bay : bays) {
            int verticals =
                    (int)
                            list(bay, "items").stream()
                                    .filter(item -> "framing".equals(get(item, "check")))
                                    .filter(item -> text(item, "id").contains("/mullion/"))
                                    .count();
            Map<String, String> roles = new LinkedHashMap<>();
            for (Object item : list(bay, "items")) {
                for (Object anchor : list(item, "inputs", "anchors")) {
                    roles.put(
                            text(bay, "id") + "/anchor/" + text(anchor, "id"),
                            text(anchor, "role"));
                }
            }
            for (Object item : list(bay, "items")) {
                String role = roles.get(text(item, "id"));
                if (role != null) {
                    row(rows, role).add(verticals, BigDecimal.ZERO, BigDecimal.ZERO);
                }
            }
        }
        List<List<@Nullable Object>> cells = new ArrayList<>();
        rows.forEach((key, sums) -> cells.add(Arrays.asList(key.get(0), sums.count)));
        return new TakeOff(TakeOffKind.ANCHORS, List.of("role", "count"), cells);
    }

    private interface OfBay {
        void take(Object bay, Object item);
    }

    private void forEach(String check, OfBay each) {
        for (Object bay : bays) {
            Consumer<Object> ofBay = item -> each.take(bay, item);
            list(bay, "items").stream()
                    .filter(item -> check.equals(get(item, "check")))
                    .forEach(ofBay);
        }
    }

    private static Sums row(Map<List<String>, Sums> rows, String... key) {
        return rows.computeIfAbsent(List.of(key), unused -> new Sums());
    }

    private static List<List<@Nullable Object>> cells(Map<List<String>, Sums> rows) {
        List<List<@Nullable Object>> cells = new ArrayList<>();
        rows.forEach(
                (key, sums) -> {
                    List<@Nullable Object> row = new ArrayList<>(key);
                    row.add(sums.count);
                    row.add(sums.first == null ? null : sums.first.round(DIGITS));
                    row.add(sums.second == null ? null : sums.second.round(DIGITS));
                    cells.add(row);
                });
        return cells;
    }

    /**
     * The units that a take-off's columns turn out to have: an answer has one for each dimension.
     */
    private static final class Units {
        private final Map<String, String> units = new LinkedHashMap<>();

        @Nullable BigDecimal value(String column, @Nullable Object quantity) {
            if (get(quantity, "value") instanceof BigDecimal value
                    && get(quantity, "unit") instanceof String unit) {
                String known = units.putIfAbsent(column, unit);
                if (known != null && !known.equals(unit)) {
                    throw new IllegalStateException(column + " in " + known + " and in " + unit);
                }
                return value;
            }
            return null;
        }

        String of(String column) {
            String unit = units.get(column);
            return unit == null ? "" : " (" + unit + ")";
        }
    }
}
