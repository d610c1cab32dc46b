package org.bayledger.blocks;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Where each block found on site stands: against the drawing, the corners and the weeps. */
final class FoundPlaceFindings {

    /** Rounding in a conversion of units, m. */
    private static final double ROUNDING = 1e-9;

    /** The places where the field expects blocks, as a part of the width. */
    private static final double QUARTER = 0.25;

    private final SettingBlocksRequest request;
    private final Installed installed;
    private final Reporting reporting;
    private final FoundPlaces places;
    private final AsFoundVerdict verdict;

    FoundPlaceFindings(
            SettingBlocksRequest request,
            Installed installed,
            Reporting reporting,
            FoundPlaces places,
            AsFoundVerdict verdict) {
        this.request = request;
        this.installed = installed;
        this.reporting = reporting;
        this.places = places;
        this.verdict = verdict;
    }

    /**
     * All of one block.
     *
     * @param drawn where it belongs, from the corner on its side, m, or null where that is not
     *     known
     * @param harmless whether the limits are kept with the blocks as found
     * @param consequence what comes of the blocks as found, in a sentence, or empty
     */
    void of(int i, @Nullable Double drawn, boolean harmless, String consequence) {
        if (places.outermost(i)) {
            if (drawn != null) {
                offDrawing(i, drawn, harmless, consequence);
            }
            nearCorner(i);
            accepted(i);
        }
        weeps(i);
    }

    private void offDrawing(int i, double drawn, boolean harmless, String consequence) {
        double found = places.fromCorner(i);
        if (Math.abs(found - drawn) <= installed.tolerance() + ROUNDING) {
            return;
        }
        String text =
                "Block "
                        + (i + 1)
                        + " stands "
                        + reporting.dimensioned(found)
                        + " from its glass corner"
                        + point(found)
                        + " where the drawing has "
                        + reporting.dimensioned(drawn)
                        + point(drawn)
                        + ", "
                        + reporting.dimensioned(Math.abs(found - drawn))
                        + (found > drawn ? " too far in." : " too far out.")
                        + (consequence.isEmpty() ? "" : " " + consequence)
                        + (harmless
                                ? " Record it, or move the block."
                                : " Move it to where it is drawn.");
        String at = FoundPlaces.pointer(i) + "/position";
        String code = "BLOCK_OFF_THE_DRAWING";
        verdict.says(harmless ? Finding.note(code, at, text) : Finding.action(code, at, text));
    }

    /** The point that a place is at, in brackets, or nothing. */
    private String point(double distance) {
        for (BlockPoint point : BlockPoint.values()) {
            Double fraction = point.fraction(request);
            double place = fraction == null ? -1 : fraction * request.width();
            if (point != BlockPoint.CHOSEN
                    && Math.abs(distance - place) <= installed.tolerance() + ROUNDING) {
                return " (" + point.words() + ")";
            }
        }
        return "";
    }

    private void nearCorner(int i) {
        Double end = places.end(i);
        double found = places.fromCorner(i);
        double quarter = QUARTER * request.width();
        if (end == null || found >= quarter - installed.tolerance()) {
            return;
        }
        double least = SettingBlock.LEAST_END_DISTANCE;
        boolean kept = end > 0 && verdict.keeps(least + found - end, found);
        if (!kept) {
            verdict.broken(
                    "BLOCK_TOO_NEAR_THE_CORNER",
                    FoundPlaces.pointer(i) + "/position",
                    places.name(i, reporting)
                            + (end > 0
                                    ? " ends " + reporting.dimensioned(end) + " from"
                                    : " reaches to or beyond")
                            + " the glass corner; "
                            + reporting.dimensioned(least)
                            + " must be left, or the corner of the glass is overloaded. Move its"
                            + " center to at least "
                            + reporting.dimensioned(least + found - end)
                            + " from the corner.");
        }
    }

    /** Between the quarter and the eighth points nobody has to be asked. */
    private void accepted(int i) {
        double found = places.fromCorner(i);
        double slack = installed.tolerance() + ROUNDING;
        double outermost = BlockCandidates.leastDistance(request);
        boolean agreed = outermost < 0.125 * request.width() - ROUNDING;
        String at = FoundPlaces.pointer(i) + "/position";
        if (found < outermost - slack) {
            verdict.open(
                    "BLOCK_BEYOND_ACCEPTED_POINT",
                    at,
                    places.name(i, reporting)
                            + " stands further out than "
                            + reporting.dimensioned(outermost)
                            + (agreed
                                    ? " from its corner, as far as the fabricator's word goes."
                                    : " from its corner, the eighth point: that needs the glass"
                                            + " fabricator's word in writing for this lite.")
                            + " Move it in, or ask.");
        } else if (found > QUARTER * request.width() + slack) {
            verdict.open(
                    "BLOCK_INSIDE_QUARTER_POINT",
                    at,
                    places.name(i, reporting)
                            + " stands further in than the quarter point, "
                            + reporting.dimensioned(QUARTER * request.width())
                            + " from its corner: the lite stands less firmly and the horizontal"
                            + " bends more. Move it out, or have the glass fabricator agree.");
        }
    }

    private void weeps(int i) {
        List<Weep> weeps = installed.weeps();
        InstalledBlock block = places.blocks().get(i);
        Double length = block.length();
        if (weeps == null || length == null) {
            return;
        }
        for (Weep weep : weeps) {
            double size = weep.length() == null ? 0 : weep.length();
            double overlap = overlap(block.position(), length, weep);
            boolean over = size == 0 ? overlap >= 0 : overlap > ROUNDING;
            if (!over) {
                continue;
            }
            double reach = (length + size) / 2 - Math.abs(weep.position() - block.position());
            String text =
                    places.name(i, reporting)
                            + " covers "
                            + (size == 0
                                    ? "the center of the weep "
                                    : reporting.text(Dimension.LENGTH, overlap)
                                            + " of the "
                                            + reporting.text(Dimension.LENGTH, size)
                                            + " of the weep ")
                            + reporting.dimensioned(weep.position())
                            + " from the left glass corner; water stays in the pocket at the edge"
                            + " of the glass. Move the block by at least "
                            + reporting.text(Dimension.LENGTH, reach)
                            + ", or set it on a bridge that lets the water pass.";
            String at = FoundPlaces.pointer(i) + "/position";
            if (size > 0 && overlap >= size - ROUNDING) {
                verdict.broken("WEEP_COVERED", at, text);
            } else {
                verdict.open("WEEP_COVERED", at, text);
            }
        }
    }

    /** Length of a weep under a block, m; below zero by as much as they are apart. */
    private static double overlap(double position, double length, Weep weep) {
        double size = weep.length() == null ? 0 : weep.length();
        double from = Math.max(position - length / 2, weep.position() - size / 2);
        double to = Math.min(position + length / 2, weep.position() + size / 2);
        return to - from;
    }

    /** Length of weeps under a block, m, or null where weeps or lengths were not given. */
    static @Nullable Double covered(Installed installed, InstalledBlock block) {
        List<Weep> weeps = installed.weeps();
        Double length = block.length();
        if (weeps == null
                || length == null
                || weeps.stream().anyMatch(weep -> weep.length() == null)) {
            return null;
        }
        return weeps.stream()
                .mapToDouble(weep -> Math.max(0, overlap(block.position(), length, weep)))
                .sum();
    }
}
