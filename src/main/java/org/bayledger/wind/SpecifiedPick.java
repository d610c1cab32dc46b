package org.bayledger.wind;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What a table of specified pressures says of a piece of wall.
 *
 * @param positive the line with the governing pressure toward the wall; null where it is missing
 * @param negative the line with the governing pressure away from it; null likewise
 * @param missing what the table leaves out there
 */
public record SpecifiedPick(
        @Nullable Line positive, @Nullable Line negative, List<Missing> missing) {

    public SpecifiedPick {
        missing = List.copyOf(missing);
    }

    /**
     * A pressure with its line.
     *
     * @param index place of the line in the table, from 0
     * @param pressure the pressure, Pa
     */
    public record Line(int index, double pressure) {}

    /**
     * Something that a table leaves out.
     *
     * @param code stable name of the kind of finding
     * @param zone zone of the wall
     * @param pointer pointer to where it is missing, relative to the specified pressures
     * @param from height from which it is missing, m
     * @param to height up to which, m; infinite where nothing ends it
     * @param area least area that the table gives there, m2
     * @param sign name of the sign that is missing; empty for both
     */
    public record Missing(
            String code,
            String zone,
            String pointer,
            double from,
            double to,
            double area,
            String sign) {

        private static final String TABLE = "/pressures";

        static Missing zone(String zone) {
            return new Missing("SPECIFIED_ZONE_MISSING", zone, TABLE, 0, 0, 0, "");
        }

        static Missing height(String zone, double from, double to) {
            return new Missing("SPECIFIED_HEIGHT_MISSING", zone, TABLE, from, to, 0, "");
        }

        static Missing area(String zone, double least) {
            return new Missing("SPECIFIED_AREA_MISSING", zone, TABLE, 0, 0, least, "");
        }

        static Missing sign(String zone, int index, String sign) {
            String pointer = TABLE + "/" + index + "/" + sign;
            return new Missing("SPECIFIED_SIGN_MISSING", zone, pointer, 0, 0, 0, sign);
        }

        /**
         * What to say of it.
         *
         * @param elevation name of the elevation; null for a wall that nobody named
         */
        public Finding finding(@Nullable String elevation, Reporting reporting) {
            String where = "zone " + zone + (elevation == null ? "" : " of elevation " + elevation);
            String text =
                    switch (code) {
                        case "SPECIFIED_ZONE_MISSING" ->
                                "No pressures are specified for " + where + ".";
                        case "SPECIFIED_HEIGHT_MISSING" ->
                                "No pressures are specified for "
                                        + where
                                        + heights(reporting)
                                        + ".";
                        case "SPECIFIED_AREA_MISSING" ->
                                "The pressures specified for "
                                        + where
                                        + " begin at an effective wind area of "
                                        + reporting.text(Dimension.AREA, area)
                                        + ": smaller components, which see more, have none.";
                        default ->
                                "No "
                                        + sign
                                        + " pressure is specified for "
                                        + where
                                        + " in this line of the table.";
                    };
            return Finding.action(code, pointer, text + " It is not assumed; have it called out.");
        }

        private String heights(Reporting reporting) {
            String low = reporting.text(Dimension.DISTANCE, from);
            if (Double.isInfinite(to)) {
                return " above " + low;
            }
            return " between " + low + " and " + reporting.text(Dimension.DISTANCE, to);
        }
    }

    static SpecifiedPick missing(Missing missing) {
        return new SpecifiedPick(null, null, List.of(missing));
    }

    /** What governs something that lies in both places. */
    public SpecifiedPick and(SpecifiedPick other) {
        List<Missing> both = new ArrayList<>(missing);
        other.missing.stream().filter(one -> !both.contains(one)).forEach(both::add);
        return new SpecifiedPick(
                greater(positive, other.positive), greater(negative, other.negative), both);
    }

    private static @Nullable Line greater(@Nullable Line one, @Nullable Line other) {
        if (one == null || other == null) {
            return null;
        }
        return Math.abs(one.pressure()) >= Math.abs(other.pressure()) ? one : other;
    }
}
