package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What happens in one vertical joint, from the installed state. What is not known is not in the
 * sums, and the verdict is then at best undetermined.
 *
 * @param joint id of the joint
 * @param opening plain sum of what opens it
 * @param closing plain sum of what closes it
 * @param openingShares what opens it, tolerances included, each with its percentage
 * @param closingShares what closes it, likewise
 * @param requiredWidth least width as drawn; null without the sealant's movement capability
 * @param widthWhenClosed metal to metal, built too narrow by the tolerance and closed, negative
 *     where the metal would touch; null without a width as drawn
 * @param utilization required width over width as drawn; null where either is not known
 * @param verdict on this joint
 */
public record ExpansionJointResult(
        String joint,
        Quantity opening,
        Quantity closing,
        List<MovementShare> openingShares,
        List<MovementShare> closingShares,
        @Nullable Quantity requiredWidth,
        @Nullable Quantity widthWhenClosed,
        @Nullable Double utilization,
        Verdict verdict) {

    public ExpansionJointResult {
        openingShares = List.copyOf(openingShares);
        closingShares = List.copyOf(closingShares);
    }
}
