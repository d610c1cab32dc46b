package org.bayledger.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wind pressure at the level at which glass, allowable stresses and deflections are checked; the
 * only way to one is {@link Load#allowable}, so that the factor on strength loads can't be applied
 * twice.
 *
 * @param positive pressure toward the wall, Pa, or null where it was not called out
 * @param negative pressure away from the wall, Pa (zero or smaller), or null likewise
 */
public record AllowableLoad(@Nullable Double positive, @Nullable Double negative) {

    /** Whether both signs were called out, without which no verdict can be SATISFIED. */
    public boolean complete() {
        return positive != null && negative != null;
    }

    /** Whether any sign was called out, without which there is no demand, not one of nought. */
    public boolean calledOut() {
        return positive != null || negative != null;
    }

    /**
     * The greatest pressure in either direction, Pa, of the signs that were called out; 0 if none.
     */
    public double greatest() {
        return Math.max(positive == null ? 0 : positive, negative == null ? 0 : -negative);
    }

    /**
     * What to say of the signs that were not called out.
     *
     * @param pointer pointer to the load in the request
     */
    public List<Finding> missingSigns(String pointer) {
        List<Finding> findings = new ArrayList<>();
        if (positive == null) {
            findings.add(
                    Finding.action(
                            "POSITIVE_PRESSURE_NOT_CALLED_OUT",
                            pointer + "/positive",
                            "No positive (toward the wall) design pressure was given. It is not"
                                    + " assumed; call it out."));
        }
        if (negative == null) {
            findings.add(
                    Finding.action(
                            "NEGATIVE_PRESSURE_NOT_CALLED_OUT",
                            pointer + "/negative",
                            "No negative (away from the wall) design pressure was given. It is not"
                                    + " assumed; call it out."));
        }
        return List.copyOf(findings);
    }
}
