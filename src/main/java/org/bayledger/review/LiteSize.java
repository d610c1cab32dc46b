package org.bayledger.review;

import org.bayledger.glazing.GlassBuildUp;
import org.jspecify.annotations.Nullable;

/**
 * The glass of a lite and the span of the horizontal that it stands on, centered on each other.
 *
 * <pre>
 *   glass  = module - face width + 2 bite      in width and in height
 *   span   = module - face width of the verticals
 * </pre>
 *
 * <p>What is not known is taken from the module, the distance between the lines of columns and
 * rows: it is never less than the glass or the span, so that weight and deflection are upper
 * bounds.
 *
 * @param width of the glass, m
 * @param height of the glass, m
 * @param span of the horizontal, m
 * @param real whether width and height are those of the glass and not of the module
 */
record LiteSize(double width, double height, double span, boolean real) {

    /** The lite of a column and a row, from 1. */
    static LiteSize of(Bay bay, int column, int row) {
        double width = bay.columns().get(column - 1);
        double height = bay.rows().get(row - 1);
        Horizontal horizontal = bay.horizontal();
        Double across = horizontal == null ? null : horizontal.verticalFaceWidth();
        Double up = horizontal == null ? null : horizontal.faceWidth();
        Double bite = bay.glazingPocket() == null ? null : bay.glazingPocket().bite();
        double span = across == null ? width : width - across;
        if (across == null || up == null || bite == null) {
            return new LiteSize(width, height, span, false);
        }
        return new LiteSize(width - across + 2 * bite, height - up + 2 * bite, span, true);
    }

    /** Mass of the glass, kg, or null where its build-up is not known. */
    @Nullable Double mass(@Nullable GlassBuildUp buildUp) {
        return buildUp == null ? null : (Double) (buildUp.areaMass() * width * height);
    }

    /**
     * A place on the horizontal, m from its support.
     *
     * @param fromCorner the same place from the glass corner, m
     */
    double onHorizontal(double fromCorner) {
        return fromCorner - (width - span) / 2;
    }
}
