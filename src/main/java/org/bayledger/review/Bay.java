package org.bayledger.review;

import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.anchorage.Anchor;
import org.bayledger.anchorage.ExpansionJoint;
import org.bayledger.anchorage.Movement;
import org.bayledger.anchorage.StackJoint;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.blocks.GlazingBelow;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.framing.Retention;
import org.bayledger.quantity.Dimension;
import org.bayledger.seals.SealDetails;
import org.jspecify.annotations.Nullable;

/**
 * One bay of wall on an elevation. What a bay leaves out is never assumed: what depends on it is
 * undetermined, with a finding.
 *
 * @param id its name in this document, first part of the ids of all its items
 * @param elevation name of its elevation
 * @param offset distance of its left edge from the elevation's left edge, seen from outside, m
 * @param sill level of its bottom edge above the building datum, m
 * @param columns widths of its columns, left to right as seen from outside, m
 * @param rows heights of its rows from the sill up, m
 * @param glassType name of the glass type of its lites
 * @param lites lites that differ
 * @param sillSupport what the bottom lites rest on
 * @param belowSill what stands under its sill, for a sillSupport of MEMBER; it counts for columns
 *     under which no bay of this document stands
 * @param mullion its verticals
 * @param horizontal its horizontals
 * @param glazingPocket edge clearance and bite at the top of its lites
 * @param retention what holds the glass against suction
 * @param anchors anchors of each of its verticals, levels above the building datum; those of the
 *     pieces beyond its stack joints as well, whose movement counts in the joints
 * @param stackJoints horizontal joints that let the wall move, levels above the building datum
 * @param movement what moves it
 * @param seals its internal seals; grid, load and neighbours come from the review
 * @param expansionJoints vertical joints at its edges or inside it that let the wall move along
 *     itself
 * @param cornerReturns what its verticals at corners of the building carry of the wall round the
 *     corner
 */
public record Bay(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        String elevation,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 2000) double offset,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 1000) double sill,
        @Size(min = 1, max = 200)
                @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, min = 0.05, max = 20)
                List<Double> columns,
        @Size(min = 1, max = 200)
                @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, min = 0.05, max = 20)
                List<Double> rows,
        @Nullable String glassType,
        @Nullable List<LiteChange> lites,
        BlockSupport.@Nullable Kind sillSupport,
        @Nullable GlazingBelow belowSill,
        @Nullable Mullion mullion,
        @Nullable Horizontal horizontal,
        @Nullable GlazingPocket glazingPocket,
        @Nullable Retention retention,
        @Size(max = 100) @Nullable List<Anchor> anchors,
        @Size(max = 100) @Nullable List<StackJoint> stackJoints,
        @Nullable Movement movement,
        @Nullable SealDetails seals,
        @Size(max = 100) @Nullable List<ExpansionJoint> expansionJoints,
        @Size(max = 2) @Nullable List<CornerReturn> cornerReturns) {

    public Bay {
        if (belowSill != null && sillSupport != BlockSupport.Kind.MEMBER) {
            throw FaultsException.outOfRange(
                    "/belowSill", "belongs to a sill that rests on a MEMBER and to nothing else");
        }
        if (horizontal != null) {
            Faults faults = new Faults();
            narrower(faults, horizontal.verticalFaceWidth(), columns, "verticalFaceWidth");
            narrower(faults, horizontal.faceWidth(), rows, "faceWidth");
            Double bite = glazingPocket == null ? null : glazingPocket.bite();
            wider(faults, horizontal.verticalFaceWidth(), bite, "verticalFaceWidth");
            wider(faults, horizontal.faceWidth(), bite, "faceWidth");
            faults.throwIfAny();
        }
    }

    private static void narrower(
            Faults faults, @Nullable Double face, List<Double> modules, String name) {
        faults.require(
                face == null || modules.stream().allMatch(module -> face < module),
                "/horizontal/" + name,
                "must leave an opening in every column and row");
    }

    private static void wider(
            Faults faults, @Nullable Double face, @Nullable Double bite, String name) {
        faults.require(
                face == null || bite == null || face > 2 * bite,
                "/horizontal/" + name,
                "must be more than two bites of the glazing pocket: the glass on either side would"
                        + " meet behind it");
    }

    /** Width of the bay, m. */
    public double width() {
        return sum(columns);
    }

    /** Height of the bay, m. */
    public double height() {
        return sum(rows);
    }

    private static double sum(List<Double> modules) {
        double sum = 0;
        for (double module : modules) {
            sum += module;
        }
        return sum;
    }

    /** Area of its smallest lite, m2. */
    double smallestLite() {
        return columns.stream().mapToDouble(Double::doubleValue).min().orElse(0)
                * rows.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    /** Distance of the bay's right edge from the elevation's left edge, m. */
    public double right() {
        return offset + width();
    }

    /** Level of the bay's top above the building datum, m. */
    public double top() {
        return sill + height();
    }

    /** Distance of the left edge of a column, counted from 1, from the elevation's left edge, m. */
    public double columnStart(int column) {
        double at = offset;
        for (int i = 0; i < column - 1; i++) {
            at += columns.get(i);
        }
        return at;
    }

    /** Height of the bottom edge of a row, counted from 1, above the bay's sill, m. */
    public double rowStart(int row) {
        double at = 0;
        for (int i = 0; i < row - 1; i++) {
            at += rows.get(i);
        }
        return at;
    }

    /** What its vertical at one of its edges carries round the corner, or null where not said. */
    @Nullable CornerReturn cornerReturn(CornerReturn.Side side) {
        if (cornerReturns != null) {
            for (CornerReturn corner : cornerReturns) {
                if (corner.side() == side) {
                    return corner;
                }
            }
        }
        return null;
    }

    /** What is said of a lite of its own, or null. */
    @Nullable LiteChange change(int column, int row) {
        if (lites != null) {
            for (LiteChange lite : lites) {
                if (lite.column() == column && lite.row() == row) {
                    return lite;
                }
            }
        }
        return null;
    }

    /** Name of the glass type of a lite, or null where none was given. */
    public @Nullable String glassTypeOf(int column, int row) {
        LiteChange lite = change(column, row);
        return lite == null || lite.glassType() == null ? glassType : lite.glassType();
    }
}
