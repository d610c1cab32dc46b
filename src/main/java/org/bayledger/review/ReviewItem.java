package org.bayledger.review;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One check of one lite, member or anchor.
 *
 * @param id stable id: bay, kind and place
 * @param check name of the check, as the last part of its own address
 * @param verdict what it concludes
 * @param utilization governing demand over limit; null where there is no limit or no number
 * @param wind the wind that it sees, of an anchor that of the vertical whose reaction it takes;
 *     null where it sees none or none could be found
 * @param inputs the request that the review made of the document, as the check's own address takes
 *     it; null where the document left out what it needs
 * @param result the check's answer; null likewise
 * @param findings what the review itself has to say of it, with pointers into the document
 */
public record ReviewItem(
        String id,
        String check,
        Verdict verdict,
        @Nullable Double utilization,
        @Nullable Wind wind,
        @Nullable Object inputs,
        @Nullable Object result,
        List<Finding> findings) {

    public ReviewItem {
        findings = List.copyOf(findings);
    }

    /** Whether this one governs over another of the same check. */
    boolean governsOver(ReviewItem other) {
        int byVerdict = verdict.compareTo(other.verdict);
        if (byVerdict != 0) {
            return byVerdict > 0;
        }
        Double mine = utilization;
        Double theirs = other.utilization;
        return mine != null && (theirs == null || mine > theirs);
    }

    ReviewItem verdictOnly() {
        return new ReviewItem(id, check, verdict, utilization, null, null, null, List.of());
    }

    /**
     * The wind that an item sees.
     *
     * @param zones zones that it touches
     * @param governingZone zone of the greatest suction among them; null where it is not known
     * @param governingZonePositive zone of the greatest pressure toward the wall; null likewise
     * @param effectiveWindArea area that picked the coefficients
     * @param height height of its top above ground
     * @param positive pressure toward the wall; null where none is called out
     * @param negative pressure away from the wall; null likewise
     * @param basis level of both
     * @param source where they come from
     */
    public record Wind(
            List<String> zones,
            @Nullable String governingZone,
            @Nullable String governingZonePositive,
            Quantity effectiveWindArea,
            Quantity height,
            @Nullable Quantity positive,
            @Nullable Quantity negative,
            LoadBasis basis,
            PressureSource source) {

        public Wind {
            zones = List.copyOf(zones);
        }
    }
}
