package org.bayledger.review;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A whole job through all checks.
 *
 * @param engineVersion version of the rules and sums that made it
 * @param verdict on all bays
 * @param governing for each check the item that governs
 * @param windSchedule design pressures, both signs, for each zone of each elevation, of those
 *     without bays as well
 * @param elevationZones for each elevation where its zones lie, and its pressures band by band
 * @param windTrace how the building's velocity pressure came about
 * @param notes notes for the shop drawings, those of several lites merged
 * @param bays results bay by bay
 * @param findings what a reviewer has to read first: of the document, and of items where somebody
 *     has to act, alike ones merged
 * @param notChecked what this review does not look at
 * @param cautions what the numbers do not replace
 */
public record ReviewResult(
        String engineVersion,
        Verdict verdict,
        List<Governing> governing,
        List<WindRow> windSchedule,
        List<ElevationZones> elevationZones,
        List<TraceStep> windTrace,
        List<Note> notes,
        List<BayResult> bays,
        List<ReviewFinding> findings,
        List<String> notChecked,
        List<String> cautions) {

    public ReviewResult {
        governing = List.copyOf(governing);
        windSchedule = List.copyOf(windSchedule);
        elevationZones = List.copyOf(elevationZones);
        windTrace = List.copyOf(windTrace);
        notes = List.copyOf(notes);
        bays = List.copyOf(bays);
        findings = List.copyOf(findings);
        notChecked = List.copyOf(notChecked);
        cautions = List.copyOf(cautions);
    }

    /** The same with other results bay for bay. */
    ReviewResult with(List<BayResult> bays) {
        return new ReviewResult(
                engineVersion,
                verdict,
                governing,
                windSchedule,
                elevationZones,
                windTrace,
                notes,
                bays,
                findings,
                notChecked,
                cautions);
    }

    /**
     * The item that governs a check: the one with the worst verdict, and of those the greatest
     * utilization.
     *
     * @param check name of the check
     * @param item id of the item
     * @param verdict its verdict
     * @param utilization its utilization
     * @param satisfied items of this check that are SATISFIED
     * @param undetermined items that are UNDETERMINED
     * @param exceeded items that are EXCEEDED
     */
    public record Governing(
            String check,
            String item,
            Verdict verdict,
            @Nullable Double utilization,
            int satisfied,
            int undetermined,
            int exceeded) {}

    /**
     * The pressures of one zone of an elevation for one kind of component: those of the component
     * with the smallest effective wind area that the elevation has; on an elevation without any,
     * the smallest of the whole document. In the schedule of the whole job they are those at the
     * greatest height at which the elevation has such a component, or at its top; in the bands of
     * an elevation those at the top of the band.
     *
     * @param elevation name of the elevation
     * @param zone zone of the standard
     * @param component kind of component
     * @param strips where the zone lies: distances from the elevation's left edge
     * @param effectiveWindArea area that picked the coefficients; of an anchor, that of the
     *     vertical whose reaction it takes
     * @param band levels above the building datum between which the row holds
     * @param height height above ground
     * @param positive pressure toward the wall; null where none is called out
     * @param negative pressure away from the wall; null likewise
     * @param basis level of both
     * @param source where they come from
     */
    public record WindRow(
            String elevation,
            String zone,
            Component component,
            List<Strip> strips,
            Quantity effectiveWindArea,
            ElevationZones.HeightBand band,
            Quantity height,
            @Nullable Quantity positive,
            @Nullable Quantity negative,
            LoadBasis basis,
            PressureSource source) {

        public WindRow {
            strips = List.copyOf(strips);
        }
    }

    /**
     * A strip of an elevation.
     *
     * @param from distance of its left edge from the elevation's left edge, seen from outside
     * @param to distance of its right edge
     */
    public record Strip(Quantity from, Quantity to) {}

    /** A kind of component that sees wind. */
    public enum Component {
        /** A lite of glass. */
        LITE,
        /** A vertical. */
        MULLION,
        /** A horizontal. */
        HORIZONTAL,
        /** An anchor, which takes the reactions of verticals. */
        ANCHOR
    }

    /**
     * A note for the shop drawings.
     *
     * @param mark mark that ties the items to the note; null for shims, which need none
     * @param items ids of the lites that it applies to
     * @param text the note
     */
    public record Note(@Nullable String mark, List<String> items, String text) {}

    /**
     * A finding of the review. Alike findings of several items, of one code, severity and text, are
     * merged into one that names all the items and keeps the pointer of the first.
     *
     * @param code stable name of the kind of finding
     * @param severity how much it matters
     * @param pointer the input it is about, as a JSON pointer into the document; where findings of
     *     several items were merged, that of the first
     * @param text the finding
     * @param items ids of the items that it is about
     */
    public record ReviewFinding(
            String code,
            Finding.Severity severity,
            String pointer,
            String text,
            List<String> items) {}
}
