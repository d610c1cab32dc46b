package org.bayledger.wind;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Specified pressures beside those that the site's standard gives, both at the level of the
 * specified ones.
 *
 * <p>The specified pressures govern the checks, as the engineer of record's: the comparison changes
 * no number. Where one is below the standard's somebody has to say why (a wind tunnel, another
 * exposure, a slip), so that the finding is an ACTION, however small the difference.
 */
public final class SpecifiedComparison {

    /** Outweighs the rounding of units. */
    private static final double ROUNDING = 1e-5;

    private final SpecifiedPressures specified;
    private final Reporting reporting;

    public SpecifiedComparison(SpecifiedPressures specified, Reporting reporting) {
        this.specified = specified;
        this.reporting = reporting;
    }

    /**
     * What takes a computed pressure to the level of the specified ones: 0.6 W is the
     * allowable-stress level (ASCE/SEI 7, 2.4.1, from memory); null between levels that no factor
     * joins.
     *
     * @param basis level of the computed pressure
     */
    public @Nullable Double factor(LoadBasis basis) {
        if (basis == specified.basis()) {
            return 1.0;
        }
        if (basis == LoadBasis.STRENGTH && specified.basis() == LoadBasis.ALLOWABLE_STRESS) {
            return Load.ALLOWABLE_STRESS_FACTOR;
        }
        if (basis == LoadBasis.ALLOWABLE_STRESS && specified.basis() == LoadBasis.STRENGTH) {
            return 1 / Load.ALLOWABLE_STRESS_FACTOR;
        }
        return null;
    }

    /**
     * One pressure of each kind.
     *
     * @param sign its sign in a word
     * @param line the specified one with its line
     * @param computed the standard's at the level of the specified ones, Pa
     */
    public record Pair(String sign, SpecifiedPick.Line line, double computed) {

        /** Share by which the specified pressure is below the standard's, negative if above. */
        public double shortfall() {
            return 1 - line.pressure() / computed;
        }
    }

    /** The pairs in which the specified pressure is below the standard's. */
    public List<Pair> below(SpecifiedPick pick, GoverningPressure computed) {
        List<Pair> below = new ArrayList<>();
        Double factor = factor(computed.basis());
        if (factor != null) {
            add(below, "positive", pick.positive(), factor * computed.positive().positive());
            add(below, "negative", pick.negative(), factor * computed.negative().negative());
        }
        return below;
    }

    private static void add(
            List<Pair> below, String sign, SpecifiedPick.@Nullable Line line, double computed) {
        if (line != null && new Pair(sign, line, computed).shortfall() > ROUNDING) {
            below.add(new Pair(sign, line, computed));
        }
    }

    /**
     * What to say of a pair.
     *
     * @param place zone and heights in words
     * @param what what the standard's pressure was read for, in words
     */
    public Finding finding(Pair pair, String place, String what) {
        return Finding.action(
                "SPECIFIED_BELOW_COMPUTED",
                "/pressures/" + pair.line().index() + "/" + pair.sign(),
                "The "
                        + pair.sign()
                        + " pressure specified for "
                        + place
                        + " is "
                        + reporting.text(Dimension.PRESSURE, pair.line().pressure())
                        + "; the site's standard gives "
                        + reporting.text(Dimension.PRESSURE, pair.computed())
                        + " for "
                        + what
                        + ", both at the level "
                        + specified.basis()
                        + ". The specified pressure was used; have the difference explained by who"
                        + " gave it.");
    }

    /** What to say of a comparison that can't be made. */
    public Finding notCompared(LoadBasis basis) {
        return Finding.note(
                "SPECIFIED_NOT_COMPARED",
                "/basis",
                "The specified pressures are at the level "
                        + specified.basis()
                        + ", those of the site's standard at "
                        + basis
                        + ": no factor joins them, and they were not compared.");
    }

    /** That the specified pressures are used. */
    public Finding govern() {
        return Finding.note(
                "SPECIFIED_PRESSURES_GOVERN",
                "",
                "The wind pressures are those specified, at the level "
                        + specified.basis()
                        + ", and not computed. Source: "
                        + specified.source());
    }
}
